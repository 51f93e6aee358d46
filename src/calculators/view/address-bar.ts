import { useSyncExternalStore } from 'react';
import { leaveBehind, takeUp } from './leaving.ts';

/** Told on the window when the address was changed: the browser itself tells only of going back and on. */
const changed = 'kerf:address';

/** Browsers limit how often the address may be replaced; typing is faster than that. ms */
export const writeDelay = 250;

function subscribe(listener: () => void): () => void {
  window.addEventListener('popstate', listener);
  window.addEventListener(changed, listener);
  return () => {
    window.removeEventListener('popstate', listener);
    window.removeEventListener(changed, listener);
  };
}

/**
 * The query part of the address, kept live.
 *
 * The server, and the first paint after it, see an empty one: reading the router's location while rendering would make
 * the two differ.
 */
export function useSearch(): string {
  return useSyncExternalStore(
    subscribe,
    () => window.location.search,
    () => '',
  );
}

/** Whether the address has a query part, kept live: whoever asks no more is not drawn again at every change of it. */
export function useHasSearch(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => window.location.search.length > 1,
    () => false,
  );
}

/** Replace the query part of the address without adding to the history, and tell every part of the page. */
export function replaceSearch(search: string): void {
  const { pathname, hash } = window.location;
  window.history.replaceState(window.history.state, '', `${pathname}${search}${hash}`);
  window.dispatchEvent(new Event(changed));
}

/** Go to another query part of the same page, so that the browser’s Back leads to where the reader was. */
export function pushSearch(search: string): void {
  window.history.pushState(null, '', `${window.location.pathname}${search}`);
  window.dispatchEvent(new Event(changed));
}

/** Replace what stands behind the # without adding to the history or scrolling. */
export function replaceHash(hash: string): void {
  const { pathname, search } = window.location;
  window.history.replaceState(window.history.state, '', `${pathname}${search}${hash}`);
  window.dispatchEvent(new Event(changed));
}

/**
 * Write what waits to be written into the address while the page is left. A browser that loads a page anew has chosen the address by then, so
 * that what is written now would be lost: it is left behind for the page that comes.
 *
 * @param write writes by `replaceSearch`
 */
export function writeLeaving(write: () => void): void {
  const { pathname, search: from } = window.location;
  write();
  const { search } = window.location;
  if (search !== from) leaveBehind('address', JSON.stringify([pathname, from, search]));
}

/** Go on with the address that this page had when it was loaded anew, if it is still the one that the browser asked for. */
export function goOnWithAddress(): void {
  const left = takeUp('address');
  if (left === undefined) return;
  try {
    const [pathname, from, search] = JSON.parse(left) as unknown[];
    if (pathname !== window.location.pathname || from !== window.location.search) return;
    if (typeof search === 'string' && /^(\?|$)/.test(search)) replaceSearch(search);
  } catch {
    // What another page wrote under this name is none of ours.
  }
}

// Before anything reads the address.
if (typeof window !== 'undefined') goOnWithAddress();
