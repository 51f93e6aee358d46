import { matchPath } from '@docusaurus/router';
import routes from '@generated/routes';
import { isGoingBack, isReached, pageStands, stay } from '../offline/stay.ts';

interface Loaded {
  preload?: () => unknown;
}

type Route = (typeof routes)[number];

/** The routes that a page stands in, the outermost first. */
function routesOf(pathname: string, among: readonly Route[] = routes): Route[] {
  const route = among.find((each) => matchPath(pathname, each));
  return route ? [route, ...routesOf(pathname, (route.routes ?? []) as Route[])] : [];
}

/** Fetch the code and data of a page. */
const fetchPage = (pathname: string): Promise<unknown> =>
  Promise.all(
    [...new Set([pathname, decodeURI(pathname)])]
      .flatMap((path) => routesOf(path))
      .map(({ component }) => (component as Loaded | undefined)?.preload?.()),
  );

/** Whether it is the page that the reader goes to, and not one that a link in sight leads to. */
const isGoneTo = (pathname: string) => decodeURI(pathname) === decodeURI(window.location.pathname);

/**
 * Get a page ready before it is shown, in place of the framework's own way, which loads the page anew where a part of it does not arrive. That is
 * right where the server has a newer site; where there is no network it would put the browser's own page of an error in the place of what
 * the reader has before them, with all that was typed there. The page that stands then stays, and says why.
 *
 * @param pathname of the page
 */
export default async function preload(pathname: string): Promise<unknown> {
  const goesBack = isGoingBack();
  try {
    const page = await fetchPage(pathname);
    if (isGoneTo(pathname)) pageStands();
    return page;
  } catch (error) {
    // The first page of a visit has nothing before it.
    if (!('docusaurusRoot' in window)) throw error;
    // It was to be ready should somebody go there: nobody waits for it.
    if (!isGoneTo(pathname)) return undefined;
    if (await isReached(window.location.href)) throw error;
    // A link that was reached for asks for its page too, before and beside whoever goes there.
    if (isGoneTo(pathname)) stay(goesBack);
    // It is never ready: what stands is not drawn anew.
    return new Promise(() => undefined);
  }
}
