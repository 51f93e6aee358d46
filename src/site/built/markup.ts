import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Parser } from 'htmlparser2';

/** An attribute as it stands in a page. */
export interface Attribute {
  /** In small letters. */
  name: string;
  /** What it says, its entities read. */
  value: string;
  /** Where it begins and ends in the text of the page, its value and quotes with it. */
  from: number;
  to: number;
}

/** A start tag of a page. */
export interface Tag {
  name: string;
  /** Where it begins and ends in the text of the page. */
  from: number;
  to: number;
  attributes: readonly Attribute[];
  /** What stands between a `script` or `style` and its end, byte by byte, as a browser hashes it. */
  text?: string;
}

/** Names of attributes with their values, one after the other, as they stand in a start tag. */
const written = /([^\s"'<>/=]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'=<>`]+))?/g;

/** Elements whose text is no markup, though the parser reads on in it. */
const texts = ['textarea', 'noembed', 'noframes', 'xmp'];

/**
 * The start tags of a page, in their order. What stands in a script, a style, a title or a text area is no markup.
 *
 * @param html the text of the page
 */
export function tagsOf(html: string): Tag[] {
  const tags: Tag[] = [];
  let within: string | undefined;
  let raw: Tag | undefined;
  const parser = new Parser(
    {
      onopentag(name, values) {
        if (within) return;
        const from = parser.startIndex;
        const to = parser.endIndex + 1;
        const tag: Tag = { name, from, to, attributes: attributesOf(html.slice(from, to), from, values) };
        tags.push(tag);
        if (texts.includes(name)) within = name;
        if (name === 'script' || name === 'style') raw = tag;
      },
      onclosetag(name) {
        if (name === within) within = undefined;
        if (raw && name === raw.name) {
          raw.text = html.slice(raw.to, parser.startIndex);
          raw = undefined;
        }
      },
    },
    { lowerCaseTags: true, lowerCaseAttributeNames: true, decodeEntities: true },
  );
  parser.end(html);
  return tags;
}

function attributesOf(source: string, offset: number, values: Readonly<Record<string, string>>): Attribute[] {
  const begin = /^<[^\s/>]+/.exec(source)?.[0].length ?? 0;
  const found: Attribute[] = [];
  for (const match of source.slice(begin).matchAll(written)) {
    const name = (match[1] as string).toLowerCase();
    const from = offset + begin + match.index;
    found.push({ name, value: values[name] ?? '', from, to: from + match[0].length });
  }
  return found;
}

/** What an attribute of a tag says; undefined where it has none of the name. */
export function said(tag: Tag, name: string): string | undefined {
  return tag.attributes.find((one) => one.name === name)?.value;
}

/** The pages of a built site, as paths within its folder, in one order on every machine. */
export function pagesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.html'))
    .map((path) => path.replaceAll('\\', '/'))
    .sort();
}

/**
 * The address under which the site stands, from a page's own reference to its files: `/` at the root, `/boards/` in a sub-folder.
 *
 * @throws Error where a page refers to no file of the site
 */
export function baseOf(html: string, page: string): string {
  const found = /(?:href|src)=["']?([^"'\s>]*?)assets\/(?:css|js)\//.exec(html)?.[1];
  if (found === undefined)
    throw new Error(`${page}: refers to no style sheet or script of the site, so its address is not known`);
  return found;
}

/** The first characters of a text, for a message. */
export const beginning = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 60)}…` : line;
};

/** The path of a page on disk. */
export const pathOf = (folder: string, page: string): string => join(folder, page);

/**
 * Write each page of a folder anew as a function gives it; one that it leaves alone is not touched.
 *
 * @returns how many pages changed
 */
export function rewritePages(folder: string, rewrite: (html: string) => string): number {
  let count = 0;
  for (const page of pagesIn(folder)) {
    const before = readFileSync(join(folder, page), 'utf8');
    const after = rewrite(before);
    if (after === before) continue;
    writeFileSync(join(folder, page), after);
    count += 1;
  }
  return count;
}
