import { Parser } from 'htmlparser2';

/** What stands under a heading of a built page, or before the first. */
export interface Passage {
  /** Its anchor; empty before the first heading. */
  anchor: string;
  heading: string;
  text: string;
}

/** A built page as it is read. */
export interface PageText {
  title: string;
  description: string;
  passages: Passage[];
}

/** What is no text of the page: drawings, formulas, what stands in for it in other units, what leads elsewhere or is pressed. */
const skipped = new Set([
  'script',
  'style',
  'template',
  'svg',
  'nav',
  'button',
  'select',
  'textarea',
  'form',
  'math',
  'footer',
]);
const headings = new Set(['h2', 'h3']);
/** Beside these stands a gap, or two words would become one. */
const apart =
  /^(?:p|li|td|th|tr|h[1-6]|div|dt|dd|br|summary|details|figcaption|section|table|ul|ol|small|header|label)$/;

const tidy = (text: string): string => text.replace(/[\s\u200b]+/g, ' ').trim();

/**
 * The text of a built page, by its headings that an address can lead to.
 *
 * @param html the whole page
 */
export function readPageText(html: string): PageText {
  const passages: Passage[] = [{ anchor: '', heading: '', text: '' }];
  let title = '';
  let description = '';
  let inMain = false;
  let skipping: string | undefined;
  let depth = 0;
  let heading: string | undefined;
  let cellsToCome = 0;
  const write = (text: string) => {
    const last = passages.at(-1) as Passage;
    if (heading === 'h1') title += text;
    else if (heading !== undefined) last.heading += text;
    else last.text += text;
  };
  const parser = new Parser({
    onopentag(name, attributes) {
      if (name === 'meta' && attributes['name'] === 'description') description = attributes['content'] ?? '';
      if (name === 'main') inMain = true;
      if (!inMain) return;
      if (skipping !== undefined) {
        if (name === skipping) depth += 1;
        return;
      }
      const classes = attributes['class'] ?? '';
      if (skipped.has(name) || /\bhash-link\b|\bkatex-mathml\b|tocCollapsible/.test(classes)) {
        skipping = name;
        depth = 1;
        return;
      }
      const anchor = attributes['id'];
      // A row that an address leads to, as a word of the glossary: its first cell is what it is called.
      if (name === 'tr' && anchor) {
        passages.push({ anchor, heading: '', text: '' });
        cellsToCome = 1;
      }
      if (name === 'td' && cellsToCome-- > 0) heading = name;
      if (name === 'h1') heading = name;
      else if (headings.has(name) && anchor) {
        heading = name;
        passages.push({ anchor, heading: '', text: '' });
      }
      if (apart.test(name)) write(' ');
    },
    ontext(text) {
      if (inMain && skipping === undefined) write(text);
    },
    onclosetag(name) {
      if (skipping !== undefined) {
        if (name === skipping) depth -= 1;
        if (depth === 0) skipping = undefined;
        return;
      }
      if (name === 'main') inMain = false;
      if (name === heading) heading = undefined;
      if (apart.test(name) && inMain) write(' ');
    },
  });
  parser.write(html);
  parser.end();
  return {
    title: tidy(title),
    description,
    passages: passages.map(({ anchor, heading: words, text }) => ({
      anchor,
      heading: tidy(words),
      text: tidy(text),
    })),
  };
}
