import { useActiveDocContext } from '@docusaurus/plugin-content-docs/client';
import { useLocation } from '@docusaurus/router';
import useRouteContext from '@docusaurus/useRouteContext';

/**
 * The page's path as the server knew it when it wrote the page: one form of it, however the reader typed it, and undefined on the
 * page that says that there is none, which the server wrote for every such address at once. Whatever is drawn from anything else
 * would differ from the server's page, and all of it would be drawn anew.
 */
export function useHere(): string | undefined {
  const { pathname } = useLocation();
  const { plugin } = useRouteContext();
  // Below the address of the how-to pages an unknown one is still theirs by its route, though no page of theirs bears it.
  const { activeDoc } = useActiveDocContext(undefined);
  if (plugin.name === 'native' || (plugin.name === 'docusaurus-plugin-content-docs' && !activeDoc)) return undefined;
  return pathname.replace(/(?<=.)(\/index\.html|\/)$/, '');
}
