import type { MethodEntry } from './method-pages.ts';

/** Name of the file that holds a method worked out at its defaults, among what the build writes. */
export const methodPageFile = (id: string): string => `method-page-${id}.json`;

/** Name of the file that holds the hours that may be chosen for a plan. */
export const calendarsFile = 'method-calendars.json';

/** Name of the file that holds a method as its page names it. */
export const drawnMethodFile = (id: string): string => `drawn-method-${id}.js`;

/**
 * The module of such a page: a `DrawnMethod`. Where pages are written (`KERF_WRITES_PAGES`, which the bundler replaces) it holds the method and
 * what draws it into the page as sent; in a browser it only knows how to fetch them.
 */
export function drawnMethodText({ id, page }: Pick<MethodEntry, 'id' | 'page'>): string {
  const file = JSON.stringify(`./${methodPageFile(id)}`);
  const calendars = JSON.stringify(`./${calendarsFile}`);
  const part = (name: string) => JSON.stringify(`@site/src/site/method/${name}`);
  const said = JSON.stringify({
    id,
    title: page.title,
    for: page.for,
    ...(page.version === undefined ? {} : { version: page.version }),
  });
  return [
    `const here = KERF_WRITES_PAGES ? { page: require(${file}), calendars: require(${calendars}), View: require(${part('MethodLive.tsx')}).MethodLive, Head: require(${part('HowToHead.tsx')}).HowToHead } : undefined;`,
    `const load = () => Promise.all([import(${file}), import(${calendars}), import(${part('MethodLive.tsx')})]).then(([page, calendars, view]) => ({ page: page.default, calendars: calendars.default, View: view.MethodLive }));`,
    `export default { ...${said}, here, load };`,
    '',
  ].join('\n');
}
