/**
 * The list of how-to pages beside a page. Style hides it on a phone, whose head has no menu that it would go into: the theme would take it out of
 * the page there and get that menu ready, as every page comes to life.
 */
export { default } from '@theme/DocSidebar/Desktop';
