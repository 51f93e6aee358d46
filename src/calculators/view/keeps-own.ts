/** Keys under which a browser keeps what a calculator may begin with. */
const keys = ['kerf-remembered', 'kerf-shop'];

/** Whether this browser keeps something that a calculator may begin with, without reading it. */
export function keepsOwn(): boolean {
  try {
    return keys.some((key) => window.localStorage.getItem(key) !== null);
  } catch {
    // A browser that forbids storage keeps nothing.
    return false;
  }
}
