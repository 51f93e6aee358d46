/** Where a browser keeps its reader's shop record. */
export const shopKey = 'kerf-shop';

/** Keys under which a browser keeps what a calculator may begin with. */
const all = ['kerf-remembered', shopKey];

/**
 * Whether this browser keeps something that a calculator may begin with, without reading it.
 *
 * @param keys where that lies
 */
export function keepsOwn(keys: readonly string[] = all): boolean {
  try {
    return keys.some((key) => window.localStorage.getItem(key) !== null);
  } catch {
    // A browser that forbids storage keeps nothing.
    return false;
  }
}
