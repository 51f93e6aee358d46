import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Step } from './finish.ts';
import { headerFiles, headersFor, type InlineHashes, policyFor } from './headers.ts';
import { beginning, pagesIn, said, type Tag, tagsOf } from './markup.ts';

/**
 * What the pages hold is read, hashed and written into their policy, so that a browser runs nothing that somebody else brought in. A page
 * that holds what no policy of ours would let run stops the build.
 */
export const policy: Step = { does: 'Policy of content', run: writePolicy };

/** Scripts that stand in the pages themselves, each known by words that only it holds; of each there is one text on all pages. */
const knownScripts: readonly { name: string; mark: string }[] = [
  { name: 'units of the reader', mark: 'kerf-units' },
  { name: 'light or dark', mark: 'docusaurus-theme' },
  { name: 'units of a drawn part', mark: 'data-coming' },
  { name: 'a case that is not yet the reader’s', mark: 'previousElementSibling.hidden' },
  { name: 'code after the first paint', mark: 'code-after-paint' },
];

/** More styles in the pages than this would make a header that some hosts refuse. */
const mostStyles = 8;

/** Types of a script that a browser runs. */
const runs = /^(|module|(text|application)\/(x-)?(java|ecma)script)$/i;

/** Attributes that hold an address which a browser loads by itself. */
const loaded: Readonly<Record<string, readonly string[]>> = {
  audio: ['src'],
  embed: ['src'],
  form: ['action'],
  button: ['formaction'],
  input: ['src', 'formaction'],
  frame: ['src'],
  iframe: ['src'],
  image: ['href', 'xlink:href'],
  img: ['src', 'srcset'],
  object: ['data'],
  script: ['src'],
  source: ['src', 'srcset'],
  track: ['src'],
  use: ['href', 'xlink:href'],
  video: ['src', 'poster'],
};

/** Links that only tell of an address. */
const told = ['alternate', 'author', 'canonical', 'help', 'license', 'next', 'prev'];

/** Elements that no page of the site has a use for. */
const unwanted = ['base', 'embed', 'frame', 'object', 'portal'];

/** The hash of a text as a policy writes it. */
export const hashOf = (text: string): string => `sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`;

/** What a page holds of its own: names of known scripts and styles with their hashes. */
export interface Held {
  scripts: ReadonlyMap<string, string>;
  styles: ReadonlySet<string>;
}

/**
 * Read a page.
 *
 * @throws Error that says what in it the policy would not allow
 */
export function heldBy(html: string): Held {
  const scripts = new Map<string, string>();
  const styles = new Set<string>();
  for (const tag of tagsOf(html)) {
    const fault = faultOf(tag);
    if (fault) throw new Error(fault);
    if (tag.name === 'style') styles.add(hashOf(tag.text ?? ''));
    if (tag.name !== 'script' || said(tag, 'src') !== undefined) continue;
    const text = tag.text ?? '';
    const type = said(tag, 'type')?.trim() ?? '';
    if (!runs.test(type)) {
      if (type === 'application/ld+json') JSON.parse(text);
      else throw new Error(`a script of the type “${type}”, which nothing on the site reads: “${beginning(text)}”`);
      continue;
    }
    const known = knownScripts.filter(({ mark }) => text.includes(mark));
    const [one] = known;
    if (!one || known.length > 1)
      throw new Error(
        `a script in the page that nobody knows: “${beginning(text)}”. Put it in a file of the site, or name it in knownScripts`,
      );
    if ((scripts.get(one.name) ?? hashOf(text)) !== hashOf(text))
      throw new Error(`two scripts that say to be “${one.name}”`);
    scripts.set(one.name, hashOf(text));
  }
  return { scripts, styles };
}

/** What is wrong with a tag, in words; undefined where nothing is. */
function faultOf(tag: Tag): string | undefined {
  if (unwanted.includes(tag.name)) return `a <${tag.name}>, which no page has a use for`;
  for (const { name, value } of tag.attributes) {
    if (/^on/.test(name))
      return `<${tag.name} ${name}>: a script in an attribute, which no policy can let run by its hash`;
    if (name === 'style') return `<${tag.name} style>: a style in markup, which the step before turns into a class`;
    if (name === 'srcdoc') return `<${tag.name} srcdoc>: a page within an attribute`;
    // Browsers pass over blanks and control characters in the name of a scheme.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what a browser passes over.
    if (/^(javascript|vbscript):/i.test(value.replace(/[\u0000-\u0020]/g, '')))
      return `<${tag.name} ${name}>: an address that is a script: “${beginning(value)}”`;
  }
  if (tag.name === 'meta' && /refresh/i.test(said(tag, 'http-equiv') ?? ''))
    return 'a <meta> that sends the reader elsewhere';
  const names =
    tag.name === 'link' && !told.includes((said(tag, 'rel') ?? '').toLowerCase()) ? ['href'] : loaded[tag.name];
  for (const name of names ?? []) {
    const value = said(tag, name);
    if (value === undefined) continue;
    const addresses = name === 'srcset' ? value.split(',').map((one) => one.trim()) : [value];
    const foreign = addresses.find((address) => isForeign(address));
    if (foreign !== undefined)
      return `<${tag.name} ${name}>: asks another place than the site: “${beginning(foreign)}”`;
  }
  return undefined;
}

/** Whether an address leaves the site: one with a scheme or a host of its own; pictures may stand in the page itself. */
function isForeign(address: string): boolean {
  const read = address.trim();
  return /^[\\/]{2}/.test(read) || (/^[a-z][a-z0-9+.-]*:/i.test(read) && !/^data:image\//i.test(read));
}

/** What all pages hold together; of each known script there is one text. */
export function heldByAll(pages: Iterable<readonly [page: string, html: string]>): InlineHashes {
  const scripts = new Map<string, string>();
  const styles = new Set<string>();
  for (const [page, html] of pages) {
    let held: Held;
    try {
      held = heldBy(html);
    } catch (fault) {
      throw new Error(`${page}: ${fault instanceof Error ? fault.message : fault}`);
    }
    for (const [name, hash] of held.scripts) {
      if ((scripts.get(name) ?? hash) !== hash)
        throw new Error(
          `${page}: its script “${name}” is another than on the pages before; of each there may be one alone`,
        );
      scripts.set(name, hash);
    }
    for (const hash of held.styles) styles.add(hash);
    if (styles.size > mostStyles)
      throw new Error(`${page}: more than ${mostStyles} styles stand in the pages themselves; put them into a sheet`);
  }
  return { scripts: [...scripts.values()].sort(), styles: [...styles].sort() };
}

/** Our own element, so that a second run replaces what the first wrote. */
const written = /<meta http-equiv="Content-Security-Policy" content="[^"]*">/;

/** A page with a policy in its head, before anything that a browser would load. */
export function withPolicy(html: string, content: string): string {
  const bare = html.replace(written, '');
  // The encoding must stand among the first 1024 bytes, so it stays in front.
  const head = /<head[^>]*>(?:\s*<meta charset=["']?utf-8["']?\s*\/?>)?/i.exec(bare);
  if (!head) throw new Error('has no <head>, where its policy would stand');
  const at = head.index + head[0].length;
  return `${bare.slice(0, at)}<meta http-equiv="Content-Security-Policy" content="${content}">${bare.slice(at)}`;
}

function writePolicy(folder: string): string {
  const pages = pagesIn(folder).map((page) => [page, readFileSync(join(folder, page), 'utf8')] as const);
  const hashes = heldByAll(pages.map(([page, html]) => [page, html.replace(written, '')]));
  const content = policyFor(hashes, 'page');
  for (const [page, html] of pages) writeFileSync(join(folder, page), withPolicy(html, content));
  for (const [name, text] of Object.entries(headerFiles(headersFor(hashes)))) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return `${pages.length} pages, ${hashes.scripts.length} scripts and ${hashes.styles.length} styles by hash, ${content.length} bytes`;
}
