/**
 * The path of a page as every host of files answers it at once: a page is a folder with an `index.html` in it, and a host sends whoever
 * asks for the folder without the slash to the one with it, or does not find it.
 *
 * @param path within the site, with or without `?…` and `#…`; that of a file, as `/data/methods.json`, stays as it is
 */
export function asPage(path: string): string {
  const [, page = '', rest = ''] = /^([^?#]*)(.*)$/s.exec(path) ?? [];
  const last = page.slice(page.lastIndexOf('/') + 1);
  return last === '' || last.includes('.') ? path : `${page}/${rest}`;
}
