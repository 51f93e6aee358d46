import { Marked, type Token, type Tokens } from 'marked';
import type { TextFault } from '../model/data/yaml-guard.ts';
import { cutAtMarks, markOf, maskText, type TextMark, type TextPointer, unmaskedOffset } from './text-marks.ts';

export type { TextFault, TextPointer };

/** A part of a line. */
export type Inline =
  | { kind: 'text'; text: string }
  | { kind: 'strong' | 'emphasis'; parts: Inline[] }
  | { kind: 'code'; text: string }
  | { kind: 'break' }
  /** `href` begins with `https:`, `mailto:`, `#` or one slash. */
  | { kind: 'link'; href: string; parts: Inline[] }
  /** A reference, with its place in the text as written. */
  | ({ kind: 'pointer' } & TextPointer)
  /** A quantity that was written in braces, with its place: as typed, and `marked` for the reader's units (`inReaderUnits`). */
  | { kind: 'quantity'; text: string; marked: string; from: number; to: number };

/** A part of a text that begins in a new line. */
export type Block =
  | { kind: 'paragraph'; parts: Inline[] }
  /** `start` is the first number; undefined where there are none. */
  | { kind: 'list'; start?: number; items: Block[][] };

/** A text as read; no blocks where there are faults. */
export interface TextReading {
  blocks: Block[];
  pointers: readonly TextPointer[];
  /** By offsets in the text as written. */
  faults: TextFault[];
}

/** Characters of one text; a step that needs more is two. */
export const longestText = 4000;

/** How deep lists and emphasis may stand in each other. */
const deepest = 20;

const off = () => undefined;

/** Markdown alone: no HTML, no tables, no links that are defined elsewhere, no heading by a line below, no code by indent. */
const markdown = new Marked({
  gfm: false,
  tokenizer: { html: off, tag: off, def: off, reflink: off, lheading: off, code: off },
});

/** What Markdown knows and the text of a step does not hold. */
const refused: Readonly<Record<string, string>> = {
  heading: 'a heading cannot stand in the text of a step. Write its words in bold, **like this**.',
  blockquote: 'a quotation cannot stand in the text of a step. Remove the > at the head of its lines.',
  hr: 'a rule across the page cannot stand in the text of a step. Leave a line empty instead.',
  code: 'a block of code cannot stand in the text of a step. Write it as a sentence.',
  image: 'a picture cannot stand in the text of a step. Say in words what it shows.',
};

/** Whether a link leads where a page of ours may lead: to a secure address, a letter, a place of this page or a page of this site. */
function mayLead(href: string): boolean {
  if (/^[#/]/.test(href)) return /^(#[^\s\\]*|\/(?![/\\])[^\s\\]*)$/.test(href);
  if (/^mailto:/i.test(href)) return /^mailto:[^\s@\\]+@[^\s@\\]+$/i.test(href);
  return /^https:\/\/[^\s/@\\]+([/?#][^\s\\]*)?$/i.test(href);
}

/** Reads the tokens of one text, noting what it may not hold. */
class Reader {
  readonly faults: TextFault[] = [];
  readonly #masked: string;
  readonly #marks: readonly TextMark[];
  #from = 0;

  constructor(masked: string, marks: readonly TextMark[]) {
    this.#masked = masked;
    this.#marks = marks;
  }

  /** Note a fault at a token: tokens tell what they read and not where, so it is looked for from the last one on. */
  #refuse(raw: string, message: string): void {
    const [line = ''] = raw.trimStart().split('\n');
    const found = this.#masked.indexOf(line, this.#from);
    const from = Math.max(0, found);
    if (found >= 0) this.#from = found + line.length;
    this.faults.push({
      from: unmaskedOffset(from, this.#marks),
      to: unmaskedOffset(from + line.trimEnd().length, this.#marks),
      message,
    });
  }

  /** Where the depth is too great, a fault and true. */
  #tooDeep(depth: number, raw: string): boolean {
    if (depth <= deepest) return false;
    this.#refuse(raw, `lists and emphasis stand more than ${deepest} deep in each other. Write it flatter.`);
    return true;
  }

  blocks(tokens: readonly Token[], depth = 0): Block[] {
    return tokens.flatMap((token): Block[] => {
      if (this.#tooDeep(depth, token.raw)) return [];
      switch (token.type) {
        case 'space':
          return [];
        case 'paragraph':
        case 'text':
          return [{ kind: 'paragraph', parts: this.#inlines(token.tokens ?? [], depth + 1) }];
        case 'list': {
          const { start, items } = token as Tokens.List;
          const read = items.map((item) => this.blocks(item.tokens, depth + 1));
          return [{ kind: 'list', ...(typeof start === 'number' ? { start } : {}), items: read }];
        }
        default:
          this.#refuse(
            token.raw,
            refused[token.type] ?? 'this cannot stand in the text of a step. Write it in plain words.',
          );
          return [];
      }
    });
  }

  #inlines(tokens: readonly Token[], depth: number): Inline[] {
    return tokens.flatMap((token): Inline[] => {
      if (this.#tooDeep(depth, token.raw)) return [];
      switch (token.type) {
        case 'text':
        case 'escape':
          return this.#words(token.text);
        case 'strong':
          return [{ kind: 'strong', parts: this.#inlines(token.tokens ?? [], depth + 1) }];
        case 'em':
          return [{ kind: 'emphasis', parts: this.#inlines(token.tokens ?? [], depth + 1) }];
        case 'br':
          return [{ kind: 'break' }];
        case 'codespan':
          if (this.#holdsMark(token.text))
            this.#refuse(
              token.raw,
              'a brace stands between backquotes, where nothing is filled in. Remove the backquotes.',
            );
          return [{ kind: 'code', text: token.text }];
        case 'link':
          return this.#link(token as Tokens.Link, depth);
        default:
          this.#refuse(
            token.raw,
            refused[token.type] ?? 'this cannot stand in the text of a step. Write it in plain words.',
          );
          return [];
      }
    });
  }

  #link({ href, raw, tokens }: Tokens.Link, depth: number): Inline[] {
    if (this.#holdsMark(href)) this.#refuse(raw, 'a brace stands in the address of a link. Write the address out.');
    else if (!mayLead(href))
      this.#refuse(
        raw,
        `a link cannot lead to “${href.slice(0, 40)}”. Begin its address with https://, mailto:, # or one slash.`,
      );
    return [{ kind: 'link', href, parts: this.#inlines(tokens, depth + 1) }];
  }

  #holdsMark(masked: string): boolean {
    return cutAtMarks(masked).some((piece) => markOf(piece, this.#marks));
  }

  #words(masked: string): Inline[] {
    return cutAtMarks(masked).map((piece): Inline => {
      const mark = markOf(piece, this.#marks);
      if (!mark) return { kind: 'text', text: piece };
      if ('pointer' in mark) return { kind: 'pointer', ...mark };
      const { quantity, from, to } = mark;
      return { kind: 'quantity', text: quantity.text, marked: quantity.marked, from, to };
    });
  }
}

/**
 * Read the text of a step, whoever wrote it: Markdown without HTML, in which a reference in braces, `{/calculations/heat/figures/peakRise}`, stands for
 * a figure, and a quantity in braces, `{20 cm}`, is shown in the reader's units. The tree holds nothing but words, so that a view can show it without trusting it.
 */
export function readText(source: string): TextReading {
  if (source.length > longestText) {
    const message = `the text is ${source.length} characters long; it takes at most ${longestText}. Make two steps of it.`;
    return { blocks: [], pointers: [], faults: [{ from: longestText, to: source.length, message }] };
  }
  const { masked, marks, pointers, faults } = maskText(source);
  if (faults.length > 0) return { blocks: [], pointers, faults: inOrder(faults) };
  const reader = new Reader(masked, marks);
  try {
    const blocks = reader.blocks(markdown.lexer(masked));
    return { blocks: reader.faults.length > 0 ? [] : blocks, pointers, faults: inOrder(reader.faults) };
  } catch {
    // The lexer calls itself for each mark inside another, and runs out of room on thousands of them.
    const message = 'its marks stand so deep in each other that the text cannot be read. Write it in plain words.';
    return { blocks: [], pointers, faults: [{ from: 0, to: source.length, message }] };
  }
}

function inOrder(faults: readonly TextFault[]): TextFault[] {
  return [...faults].sort((one, other) => one.from - other.from).slice(0, 20);
}
