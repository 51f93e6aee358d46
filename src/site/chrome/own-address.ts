import { asPage } from '../page/address.ts';

/** What is to be done about the address by which a page was asked for. */
export type AddressChange = { write: string } | { go: string } | undefined;

/**
 * A page answers to several forms of its address, as its host pleases: `/woods`, `/woods/`, `/woods/index.html`. It was written for one
 * of them, and drawn for another it would differ from what was sent, so that all of it would be drawn anew.
 *
 * @param path by which the page was asked for
 * @param own the page's own path, as it states it to search engines
 * @returns the path to write in its place, without asking the host again; for the page that says that there is none, and an address with
 *   `.html`, as other sites write them, the one to go to
 */
export function addressChange(path: string, own: string): AddressChange {
  if (!/\/404\.html\/?$/.test(own)) return path === own ? undefined : { write: own };
  if (path === own || !path.endsWith('.html')) return undefined;
  return { go: asPage(path.replace(/(?:(?<=\/)index)?\.html$/, '')) };
}

// Before the site’s own code looks at the address.
if (typeof document !== 'undefined') {
  const link = document.querySelector<HTMLLinkElement>('link[rel="canonical"]');
  const { pathname, search, hash } = window.location;
  const change = link ? addressChange(pathname, new URL(link.href).pathname) : undefined;
  if (change && 'write' in change) window.history.replaceState(window.history.state, '', change.write + search + hash);
  if (change && 'go' in change) window.location.replace(change.go + search + hash);
}
