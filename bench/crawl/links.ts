import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** The path of a page without the last slash, `index.html` or `.html`: every form of its address is one page. */
export function pageOf(path: string): string {
  const plain = decodeURIComponent(path)
    .replace(/(\/index)?\.html$/, '')
    .replace(/\/$/, '');
  return plain === '' || plain === '/index' ? '/' : plain;
}

/**
 * What is wrong with a link within the site, or nothing.
 *
 * @param href the whole address
 * @param folder of the built site
 * @param ids those of every page, by its path
 */
export function linkFault(
  href: string,
  folder: string,
  ids: ReadonlyMap<string, ReadonlySet<string>>,
): 'link' | 'anchor' | undefined {
  const url = new URL(href);
  const page = pageOf(url.pathname);
  const held = ids.get(page);
  if (!held) {
    const file = join(folder, decodeURIComponent(url.pathname));
    return existsSync(file) && statSync(file).isFile() ? undefined : 'link';
  }
  const id = decodeURIComponent(url.hash.slice(1));
  return id === '' || id === 'top' || held.has(id) ? undefined : 'anchor';
}
