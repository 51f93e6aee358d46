/** Scroll the list of how-to pages so that the page that is open stands in its middle; the page itself stays where it is. */
export function onRouteDidUpdate(): void {
  const link = document.querySelector<HTMLElement>('.theme-doc-sidebar-container .menu__link--active[aria-current]');
  const list = link?.closest<HTMLElement>('.menu');
  if (!link || !list) return;
  const above = link.getBoundingClientRect().top - list.getBoundingClientRect().top + list.scrollTop;
  list.scrollTop = Math.max(0, above - list.clientHeight / 2);
}
