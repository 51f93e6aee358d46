import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Every page carries the framework's list of all pages: a route, the names of its parts, where each part is fetched. The pages of the woods
 * are alike but for the facts of their wood, so that a browser is given one line for all of them and the names of the woods, and fetches the
 * facts as data. Whoever looks for a page tries one after the other, and does so four times before a page is alive: what leads to the page that was
 * loaded stands first. Whoever writes the pages keeps the whole list.
 */

/** The framework's list, as it writes it for the bundler. */
export interface PageList {
  routes: string;
  registry: string;
  /** JSON. */
  routesChunkNames: string;
}

/** A wood's page in the list. */
export interface WoodInList {
  /** Its route, by which the names of its parts are found. */
  key: string;
  /** Its address, with the folder of the site. */
  path: string;
  id: string;
  /** The part with its facts, by its name in the registry. */
  facts: string;
  /** The file of its facts, as the registry names it. */
  file: string;
}

const names = ['routes', 'registry', 'routesChunkNames'] as const;

/** The route, with its hash, of a wood's page. */
const ofWood = /^((?:\/[^/]+)*\/woods\/([^/]+)\/)-[0-9a-f]{3}$/;

interface Parts {
  facts?: string;
  [name: string]: unknown;
}

const partsOfPages = ({ routesChunkNames }: PageList) =>
  Object.entries(JSON.parse(routesChunkNames) as Record<string, Parts>);

/** The parts in the registry, each a line: its name, and the file that it is made from. */
const inRegistry = /^ *"?([^"\s:]+)"?: \[\(\) => import\([^)]*\), "([^"]*)", require\.resolveWeak\("[^"]*"\)\],?/gm;

/** The routes with nothing under them, each with its address. */
const inRoutes = /^ *\{\s*path: '([^']*)',\s*component: ComponentCreator\([^)]*\),\s*exact: true\s*\},?\n/gm;

/**
 * The woods' pages in the framework's list.
 *
 * @throws Error where it is written otherwise than is known
 */
export function woodsIn(list: PageList): WoodInList[] {
  // Looked through once for all of them: the list of a site of thousands is long.
  const files = new Map([...list.registry.matchAll(inRegistry)].map(([, name, file]) => [name, file]));
  return partsOfPages(list).flatMap(([key, { facts }]) => {
    const [, path, id] = ofWood.exec(key) ?? [];
    // Other pages of woods hold no facts of one.
    if (path === undefined || id === undefined || facts === undefined) return [];
    const file = files.get(facts);
    if (!file) throw unknownForm(`${key} names no part with the facts of its wood`);
    return [{ key, path, id, facts, file }];
  });
}

/** A text without what a pattern finds in it under one of these names, its first group; each of them must be there. */
function without(text: string, pattern: RegExp, named: readonly string[]): string {
  const left = new Set(named);
  const rest = text.replace(pattern, (part, name: string) => (left.delete(name) ? '' : part));
  const [missing] = left;
  if (missing !== undefined) throw unknownForm(`it does not hold ${missing}`);
  return rest;
}

const unknownForm = (what: string) =>
  new Error(
    `The framework writes its list of pages otherwise now: ${what}. Look at src/site/plugin/pages-of-woods.ts.`,
  );

/**
 * The list as a browser is given it.
 *
 * @param versions part of the name of the file of facts that tells its bytes, by wood
 * @param baseUrl the folder of the site
 * @returns modules of JavaScript, `woods` beside the three of the framework
 * @throws Error where the list is written otherwise than is known
 */
export function shortList(
  list: PageList,
  versions: ReadonlyMap<string, string>,
  baseUrl: string,
): Record<(typeof names)[number] | 'woods', string> {
  const woods = woodsIn(list);
  if (woods.length === 0) throw unknownForm('it holds no page of a wood');
  const all = new Map(partsOfPages(list));
  const shared = new Set<string>();
  for (const { key } of woods) {
    const { facts, ...parts } = all.get(key) as Parts;
    all.delete(key);
    shared.add(JSON.stringify(parts));
  }
  const registry = without(
    list.registry,
    inRegistry,
    woods.map(({ facts }) => facts),
  );
  let routes = without(
    list.routes,
    inRoutes,
    woods.map(({ path }) => path),
  );
  const made = /component: ComponentCreator\('[^']*', ('[^']*')\)/g;
  if (!made.test(routes)) throw unknownForm('it makes no component of a page');
  // What draws a page is made when that page is looked for: of the hundreds, most visits want a few.
  routes = routes.replace(made, 'get component() { return drawnBy(this.path, $1); }');
  if (shared.size > 1) throw unknownForm('the pages of two woods have other parts than their facts apart');
  const [parts = '{}'] = shared;
  const address = `${JSON.stringify(`${baseUrl}woods/`)} + id + '/'`;
  const each = `import { woods } from './woods.js';\n`;
  return {
    woods: `export const woods = ${JSON.stringify(woods.map(({ id }) => `${id}.${versions.get(id)}`).join(','))}.split(',').map((name) => name.split('.'));\n`,
    routes: `${each}const made = new Map();
function drawnBy(path, hash) {
  if (!made.has(path + hash)) made.set(path + hash, ComponentCreator(path, hash));
  return made.get(path + hash);
}
${routes.replace('export default [', 'const routes = [').trimEnd()}
const all = [...woods.map(([id]) => ({ path: ${address}, get component() { return drawnBy(this.path, 'wood'); }, exact: true })), ...routes];
const leadsHere = ({ path, routes = [] }) => path === window.location.pathname || routes.some(leadsHere);
function hereFirst(list) {
  const own = list.find(leadsHere);
  if (!own) return list;
  if (own.routes) own.routes = hereFirst(own.routes);
  return [own, ...list.filter((one) => one !== own)];
}
export default hereFirst(all);
`,
    routesChunkNames: `${each}const names = ${JSON.stringify(Object.fromEntries(all))};
for (const [id] of woods) names[${address} + '-wood'] = { ...${parts}, facts: 'facts-' + id };
export default names;
`,
    registry: `${each}import { fetchFacts } from '@site/src/site/wood/fetch-facts.ts';
${registry.replace('export default {', 'const registry = {').trimEnd()}
for (const [id, version] of woods) registry['facts-' + id] = [() => fetchFacts(${JSON.stringify(`${baseUrl}data/woods/`)} + id + '.' + version + '.json'), '', 0];
export default registry;
`,
  };
}

/** Part of the name of a file of facts that tells its bytes. */
const versionOf = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 6);

const readList = (generated: string): PageList => ({
  routes: readFileSync(join(generated, 'routes.js'), 'utf8'),
  registry: readFileSync(join(generated, 'registry.js'), 'utf8'),
  routesChunkNames: readFileSync(join(generated, 'routesChunkNames.json'), 'utf8'),
});

/**
 * Write the short list beside the framework's own.
 *
 * @param generated the folder of what the framework makes for the bundler
 * @returns for each module of the framework's the file that a browser's bundle takes in its place
 */
export function writeShortList(generated: string, baseUrl: string): Map<string, string> {
  const list = readList(generated);
  const versions = new Map(woodsIn(list).map(({ id, file }) => [id, versionOf(readFileSync(file, 'utf8'))]));
  const folder = join(generated, 'short');
  mkdirSync(folder, { recursive: true });
  const modules = shortList(list, versions, baseUrl);
  for (const [name, text] of Object.entries(modules)) {
    const file = join(folder, `${name}.js`);
    // A file that is written anew is compiled anew.
    if (!existsSync(file) || readFileSync(file, 'utf8') !== text) writeFileSync(file, text);
  }
  return new Map(names.map((name) => [`@generated/${name}`, join(folder, `${name}.js`)]));
}

/**
 * Write the facts of every wood into the built site, and into each wood's page that a browser may fetch them at once.
 *
 * @param generated the folder of what the framework makes for the bundler
 * @param built the built site
 */
export function writeFacts(generated: string, built: string, baseUrl: string): void {
  mkdirSync(join(built, 'data', 'woods'), { recursive: true });
  for (const { id, file } of woodsIn(readList(generated))) {
    const text = readFileSync(file, 'utf8');
    const name = `data/woods/${id}.${versionOf(text)}.json`;
    writeFileSync(join(built, name), text);
    const page = join(built, 'woods', id, 'index.html');
    const ahead = `<link rel="preload" as="fetch" crossorigin="anonymous" href="${baseUrl}${name}">`;
    writeFileSync(
      page,
      readFileSync(page, 'utf8').replace('</head>', () => `${ahead}</head>`),
    );
  }
}
