import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { type PageList, shortList, woodsIn, writeFacts } from '../../../src/site/plugin/pages-of-woods.ts';
import { fetchFacts } from '../../../src/site/wood/fetch-facts.ts';

const entry = (name: string, file: string) =>
  `  "${name}": [() => import(/* webpackChunkName: "${name}" */ "${file}"), "${file}", require.resolveWeak("${file}")],`;
const route = (path: string, hash: string) =>
  `  {\n    path: '${path}',\n    component: ComponentCreator('${path}', '${hash}'),\n    exact: true\n  },\n`;

/** The list as the framework writes it, the last entry and its end in one line. */
const list = (folder: string): PageList => ({
  routes: `import ComponentCreator from '@docusaurus/ComponentCreator';\n\nexport default [\n${route('/boards/shop/', '0aa')}${route('/boards/woods/', '1aa')}${route('/boards/checks/woods/swelling/', '1ab')}${route('/boards/woods/ash/', '2aa')}${route('/boards/woods/sugar-maple/', '3aa')}];\n`,
  registry: `export default {\n${[
    entry('aaaa0001', '@site/Wood.tsx'),
    entry('aaaa0002', `${folder}/facts-0.json`),
    entry('aaaa0003', `${folder}/facts-1.json`),
  ].join('\n')}};\n`,
  routesChunkNames: JSON.stringify({
    '/boards/shop/-0aa': { __comp: 'aaaa0004' },
    '/boards/woods/-1aa': { __comp: 'aaaa0005' },
    '/boards/checks/woods/swelling/-1ab': { __comp: 'aaaa0006' },
    '/boards/woods/ash/-2aa': { __comp: 'aaaa0001', facts: 'aaaa0002' },
    '/boards/woods/sugar-maple/-3aa': { __comp: 'aaaa0001', facts: 'aaaa0003' },
  }),
});

const versions = new Map([
  ['ash', '000111'],
  ['sugar-maple', '222333'],
]);

/** What a browser would have of a module, with what it imports handed over. */
function run(text: string, given: Readonly<Record<string, unknown>>): never {
  const body = text
    .replace(/^import .*$/gm, '')
    .replace(/^export default /m, 'return ')
    .replace(/^export const (\w+)/m, 'return');
  return new Function(...Object.keys(given), body.replace('return = ', 'return '))(...Object.values(given)) as never;
}

interface Route {
  path: string;
  component: string;
  routes?: Route[];
}

/** The routes that a browser has whose first page is at an address. */
const routesAt = (
  pathname: string,
  text: string,
  woods: readonly (readonly string[])[],
  ComponentCreator = (path: string, hash: string) => `${path}-${hash}`,
): Route[] => run(text, { woods, ComponentCreator, window: { location: { pathname } } });

test('the pages of the woods are found, and no other', () => {
  expect(woodsIn(list('/made'))).toEqual([
    {
      key: '/boards/woods/ash/-2aa',
      path: '/boards/woods/ash/',
      id: 'ash',
      facts: 'aaaa0002',
      file: '/made/facts-0.json',
    },
    {
      key: '/boards/woods/sugar-maple/-3aa',
      path: '/boards/woods/sugar-maple/',
      id: 'sugar-maple',
      facts: 'aaaa0003',
      file: '/made/facts-1.json',
    },
  ]);
});

test('the short list says the same as the long one, and names each wood once', () => {
  const short = shortList(list('/made'), versions, '/boards/');
  const woods = run(short.woods, {}) as [string, string][];
  expect(woods).toEqual([...versions]);
  const routes = routesAt('/boards/elsewhere/', short.routes, woods);
  expect(routes.map(({ path }) => path).sort()).toEqual([
    '/boards/checks/woods/swelling/',
    '/boards/shop/',
    '/boards/woods/',
    '/boards/woods/ash/',
    '/boards/woods/sugar-maple/',
  ]);
  const names = run(short.routesChunkNames, { woods }) as Record<string, unknown>;
  for (const { component } of routes) expect(names, component).toHaveProperty([component]);
  expect(names['/boards/woods/ash/-wood']).toEqual({ __comp: 'aaaa0001', facts: 'facts-ash' });
  const fetched: string[] = [];
  const require = { resolveWeak: (file: string) => file };
  const fetchIt = (address: string) => fetched.push(address);
  const registry = run(short.registry, { woods, require, fetchFacts: fetchIt }) as Record<string, [() => void]>;
  expect(Object.keys(registry)).toEqual(['aaaa0001', 'facts-ash', 'facts-sugar-maple']);
  registry['facts-sugar-maple']?.[0]();
  expect(fetched).toEqual(['/boards/data/woods/sugar-maple.222333.json']);
});

test('what draws a page is made when it is asked for, and once', () => {
  const made: string[] = [];
  const create = (path: string, hash: string) => {
    made.push(path);
    return `${path}-${hash}`;
  };
  const routes = routesAt(
    '/boards/shop/',
    shortList(list('/made'), versions, '/boards/').routes,
    [...versions],
    create,
  );
  expect(made).toEqual([]);
  const [shop, ash] = ['/boards/shop/', '/boards/woods/ash/'].map((path) => routes.find((one) => one.path === path));
  expect([shop?.component, shop?.component, ash?.component]).toEqual([
    '/boards/shop/-0aa',
    '/boards/shop/-0aa',
    '/boards/woods/ash/-wood',
  ]);
  expect(made).toEqual(['/boards/shop/', '/boards/woods/ash/']);
});

test('what leads to the page that was loaded stands first, on every level, and nothing is lost', () => {
  const within = `  {\n    path: '/boards/how-to/',\n    component: ComponentCreator('/boards/how-to/', '4aa'),\n    routes: [\n${route('/boards/how-to/care/', '5aa')}${route('/boards/how-to/oil/', '6aa')}    ]\n  },\n`;
  const long = list('/made');
  const withHowTo = { ...long, routes: long.routes.replace(/\];\n$/, `${within}];\n`) };
  const { routes } = shortList(withHowTo, versions, '/boards/');
  const pathsOf = (routes: readonly Route[]): string[] =>
    routes.flatMap(({ path, routes: inner = [] }) => [path, ...pathsOf(inner)]);
  const elsewhere = pathsOf(routesAt('/boards/nowhere/', routes, [...versions]));
  for (const [here, first] of [
    ['/boards/shop/', ['/boards/shop/']],
    ['/boards/woods/sugar-maple/', ['/boards/woods/sugar-maple/']],
    ['/boards/how-to/oil/', ['/boards/how-to/', '/boards/how-to/oil/', '/boards/how-to/care/']],
  ] as const) {
    const paths = pathsOf(routesAt(here, routes, [...versions]));
    expect(paths.slice(0, first.length)).toEqual(first);
    expect([...paths].sort()).toEqual([...elsewhere].sort());
  }
});

test.each([
  ['without a wood', (one: PageList) => ({ ...one, routesChunkNames: '{}' })],
  ['without their facts', (one: PageList) => ({ ...one, registry: 'export default {};' })],
  ['with routes in another form', (one: PageList) => ({ ...one, routes: 'export default []' })],
])('a list %s stops the build with the place to look at', (_, change) => {
  expect(() => shortList(change(list('/made')), versions, '/')).toThrow(/pages-of-woods\.ts/);
});

let folder = '';
afterEach(() => {
  vi.unstubAllGlobals();
  if (folder) rmSync(folder, { recursive: true });
  folder = '';
});

test('each page fetches ahead the facts of its wood, which lie where the list says', () => {
  folder = mkdtempSync(join(tmpdir(), 'woods-'));
  const [generated, built] = [join(folder, 'made'), join(folder, 'built')];
  mkdirSync(generated);
  const { routes, registry, routesChunkNames } = list(generated);
  writeFileSync(join(generated, 'routes.js'), routes);
  writeFileSync(join(generated, 'registry.js'), registry);
  writeFileSync(join(generated, 'routesChunkNames.json'), routesChunkNames);
  for (const [at, id] of ['ash', 'sugar-maple'].entries()) {
    writeFileSync(join(generated, `facts-${at}.json`), `{"id":"${id}"}`);
    mkdirSync(join(built, 'woods', id), { recursive: true });
    writeFileSync(join(built, 'woods', id, 'index.html'), '<html><head></head></html>');
  }
  writeFacts(generated, built, '/boards/');
  const page = readFileSync(join(built, 'woods/ash/index.html'), 'utf8');
  const address = /href="\/boards\/(data\/woods\/ash\.[0-9a-f]{6}\.json)"/.exec(page)?.[1] as string;
  expect(readFileSync(join(built, address), 'utf8')).toBe('{"id":"ash"}');
});

test('facts that do not arrive are a part of a page that is missing', async () => {
  vi.stubGlobal('fetch', async () => new Response('gone', { status: 404 }));
  await expect(fetchFacts('/data/woods/ash.000111.json')).rejects.toMatchObject({
    name: 'ChunkLoadError',
    message: '/data/woods/ash.000111.json: the host answered 404',
  });
  vi.stubGlobal('fetch', async () => Promise.reject(new TypeError('no network')));
  await expect(fetchFacts('/data/woods/ash.000111.json')).rejects.toMatchObject({ name: 'ChunkLoadError' });
  vi.stubGlobal('fetch', async () => Response.json({ id: 'ash' }));
  expect(await fetchFacts('/data/woods/ash.000111.json')).toEqual({ default: { id: 'ash' } });
});
