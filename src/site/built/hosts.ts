import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Step } from './finish.ts';
import { baseOf } from './markup.ts';

/**
 * What hosts read from the folder itself: `.htaccess`, for Apache, and in `_headers` how long a browser keeps a file, beside the headers
 * that the policy wrote there.
 */
export const hosts: Step = { does: 'Files for hosts', run: writeHosts };

const apacheText = fileURLToPath(new URL('../../../hosting/apache.conf', import.meta.url));

/** Where in the text for Apache the headers of the site stand. */
const headersMark = /^( *)# headers of the site$/m;

/**
 * The text for Apache, with the headers of a site and the folder that it was built for.
 *
 * @param text as it stands in `hosting/apache.conf`
 * @param headers lines of Apache’s configuration
 * @param base the folder: `/`, or `/boards/`
 * @throws Error where the text has no place for one of them
 */
export function htaccess(text: string, headers: string, base: string): string {
  const mark = headersMark.exec(text);
  if (!mark)
    throw new Error('hosting/apache.conf: has no line “# headers of the site”, in whose place the headers stand');
  if (!text.includes('ErrorDocument 404 /404.html'))
    throw new Error(
      'hosting/apache.conf: has no line “ErrorDocument 404 /404.html”, which names the page for what is not there',
    );
  const indented = headers.trimEnd().replace(/^/gm, mark[1] as string);
  return text
    .replace(headersMark, () => indented)
    .replace('ErrorDocument 404 /404.html', () => `ErrorDocument 404 ${base}404.html`);
}

const keepMark = '# How long a browser keeps a file';

/** The text of `_headers` with how long a browser keeps a file; what an earlier run wrote is written anew. */
export function keepingHeaders(text: string, base: string): string {
  const [before = ''] = text.split(keepMark);
  const above = before.trim() === '' ? '' : `${before.trimEnd()}\n\n`;
  return `${above}${keepMark}: names in assets hold a hash of what is in it.\n${base}assets/*\n  Cache-Control: public, max-age=31536000, immutable\n`;
}

function writeHosts(folder: string): string {
  const read = (name: string) => {
    if (!existsSync(join(folder, name)))
      throw new Error(`${name} is not there: the policy, which writes it, comes first`);
    return readFileSync(join(folder, name), 'utf8');
  };
  const base = baseOf(read('404.html'), '404.html');
  const headers = read('hosting/apache-headers.conf');
  writeFileSync(join(folder, '.htaccess'), htaccess(readFileSync(apacheText, 'utf8'), headers, base));
  writeFileSync(join(folder, '_headers'), keepingHeaders(read('_headers'), base));
  return `.htaccess and _headers for ${base}, with ${headers.split('\n').filter(Boolean).length} headers of the site`;
}
