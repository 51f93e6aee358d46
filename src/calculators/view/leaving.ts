/**
 * Be told when the page is left or hidden: what waits for a pause in typing is written then, since no pause may follow.
 *
 * A phone that takes a page out of its memory tells only of the hiding, a page that is loaded anew first of the leaving.
 *
 * @param flush writes what waits, and has done so when it returns: nothing later is sure to run
 * @returns stops the telling
 */
export function whenLeaving(flush: () => void): () => void {
  const hidden = () => {
    if (document.visibilityState === 'hidden') flush();
  };
  window.addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', hidden);
  return () => {
    window.removeEventListener('pagehide', flush);
    document.removeEventListener('visibilitychange', hidden);
  };
}

/** What the names of all that is left behind begin with. It lies in the storage of the tab, and goes with it. */
const leftPrefix = 'kerf-left:';

const keyOf = (name: string) => `${leftPrefix}${name}`;

/** Leave a text behind for this same page, should it be loaded anew in this tab. */
export function leaveBehind(name: string, text: string): void {
  try {
    window.sessionStorage.setItem(keyOf(name), text);
  } catch {
    // Full or forbidden: what was typed in the last moment goes with the page.
  }
}

/**
 * What this page left behind under a name as it was loaded anew; it is given once.
 *
 * Undefined where the page was come to in another way: whoever follows a link means what the link says.
 */
export function takeUp(name: string): string | undefined {
  try {
    const text = window.sessionStorage.getItem(keyOf(name));
    if (text === null) return undefined;
    window.sessionStorage.removeItem(keyOf(name));
    return isLoadedAnew() ? text : undefined;
  } catch {
    // A browser that forbids storage keeps nothing.
    return undefined;
  }
}

function isLoadedAnew(): boolean {
  const [entry] = performance.getEntriesByType('navigation');
  return (entry as PerformanceNavigationTiming | undefined)?.type === 'reload';
}

/** Take away all that was left behind in this tab. */
export function forgetLeft(): void {
  try {
    const names = Object.keys(window.sessionStorage).filter((name) => name.startsWith(leftPrefix));
    for (const name of names) window.sessionStorage.removeItem(name);
  } catch {
    // A browser that forbids storage keeps nothing.
  }
}
