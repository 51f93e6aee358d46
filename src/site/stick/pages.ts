import { said, tagsOf } from '../built/markup.ts';
import { fileOf, fromFile } from './addresses.ts';

/** The script that stands in for the server, in the site's own folder. */
export const placeScript = 'stick/place.js';

/** Attributes that hold an address within the site. */
const addressed = ['href', 'src', 'action', 'formaction', 'poster', 'xlink:href'];

/** Links of a head that ask for what a browser refuses to a file, or that only a server has use for. */
const dropped = ['preload', 'modulepreload', 'prefetch', 'manifest', 'preconnect', 'dns-prefetch'];

/** A stick asks nobody: whatever a page might try to fetch is refused by the browser. */
const nobody = '<meta http-equiv="Content-Security-Policy" content="connect-src \'none\'">';

/**
 * A page of the site as a file that is opened by itself: its addresses lead to files, and the script that stands in for the server
 * runs before all others.
 *
 * @param html as the site was built
 * @param file where it stands in the site's folder
 * @param base the folder for which the site was built
 * @throws Error where it has no head
 */
export function stickPage(html: string, file: string, base: string): string {
  const head = /<head[^>]*>(?:\s*<meta charset=["']?utf-8["']?\s*\/?>)?/i.exec(html);
  if (!head) throw new Error(`${file}: has no <head>, where its first script would stand`);
  const begin = head.index + head[0].length;
  const edits: { from: number; to: number; put: string }[] = [
    { from: begin, to: begin, put: `${nobody}<script src="${fromFile(file, placeScript)}"></script>` },
  ];
  for (const tag of tagsOf(html)) {
    const rel = tag.name === 'link' ? said(tag, 'rel')?.toLowerCase() : undefined;
    const policy = tag.name === 'meta' && /^content-security-policy$/i.test(said(tag, 'http-equiv') ?? '');
    if (policy || (rel !== undefined && dropped.includes(rel))) {
      edits.push({ from: tag.from, to: tag.to, put: '' });
      continue;
    }
    if (tag.name === 'style' && tag.text)
      edits.push({ from: tag.to, to: tag.to + tag.text.length, put: stickSheet(tag.text, file, base) });
    for (const one of tag.attributes) {
      // A file may not ask for another by the rules of servers.
      if (one.name === 'crossorigin' || one.name === 'integrity') edits.push({ ...one, put: '' });
      if (!addressed.includes(one.name)) continue;
      const to = fileOf(one.value, base);
      if (to !== undefined) edits.push({ ...one, put: `${one.name}="${quoted(fromFile(file, to))}"` });
    }
  }
  let text = '';
  let done = 0;
  for (const { from, to, put } of edits.sort((one, other) => one.from - other.from)) {
    text += html.slice(done, from) + put;
    done = to;
  }
  return text + html.slice(done);
}

const quoted = (value: string) => value.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

/** A style sheet whose files are named from where it stands. */
export function stickSheet(css: string, file: string, base: string): string {
  return css.replace(/url\(\s*(["']?)([^"')]+)\1\s*\)/g, (whole, quote: string, address: string) => {
    const to = fileOf(address, base);
    return to === undefined ? whole : `url(${quote}${fromFile(file, to)}${quote})`;
  });
}
