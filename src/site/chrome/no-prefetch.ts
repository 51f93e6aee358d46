/**
 * Fetch no page before somebody reaches for a link to it.
 *
 * The framework fetches the code and data of every page whose link comes into sight, which on the poor signal of a lumber
 * yard is more than the page itself: its head and foot link to the largest tables. A link is still fetched early once a
 * finger or a pointer is on it.
 */
export function onRouteDidUpdate(): void {
  window.docusaurus = { ...window.docusaurus, prefetch: () => false };
}
