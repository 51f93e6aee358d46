import type { LayerName } from '../offline/kept-files.ts';

/** Paths of pages that are kept in the second layer: the woods one by one, the reference, the booklets. The lists of them are in the first. */
const secondPages = /^\/(?:woods\/.|reference(?:\/|$)|booklets\/)/;

/** What nobody reads on a page: what hosts and search engines read, forms of fonts that a browser with a worker does not ask for, pictures of the README. */
const left = [
  /\.(?:ttf|woff|zip|xml|map)$/,
  /^fonts\/.*\.txt$/,
  /^img\/readme-/,
  /(?:^|\/)[._]/,
  /^robots\.txt$/,
  /^hosting\//,
  /^THIRD-PARTY-LICENCES\.txt$/,
  /^offline-(?:files\.json|worker\.js)$/,
];

/** Data and schemas for download; what pages fetch of them is named. */
const downloads = /^(?:data|schemas)\//;
const fetched = /^data\/(?:methods\/.*|[^/]+\.yaml)$/;

/**
 * The route of each page and the names of the chunks that it alone asks for, as the framework wrote them into the main script.
 *
 * @param script text of the main script
 * @param folder the folder of the site, with a slash at both ends
 * @returns page's path, from the site's folder on, to the names of chunks
 */
export function chunksOfPages(script: string, folder: string): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const [, path = '', tree = ''] of script.matchAll(
    /"(\/[^"]*)-[0-9a-f]{3}":(\{(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*\})/g,
  )) {
    if (!path.startsWith(folder) && `${path}/` !== folder) continue;
    // A page is named by its folder, with or without a slash behind it.
    const page = `/${path.slice(folder.length).replace(/\/$/, '')}`;
    found.set(page, [...(found.get(page) ?? []), ...chunksIn(tree)]);
  }
  // The woods’ pages are written as one, for every name of a list (`plugin/pages-of-woods`).
  const all = /\["([^"]*)"\+\w+\+"\/-wood"\]=(\{(?:[^{}]|\{[^{}]*\})*\})/.exec(script);
  if (all) {
    const [, before = '', tree = ''] = all;
    const [list = ''] = /(?<=")[a-z0-9-]+\.[0-9a-f]{6}(?:,[a-z0-9-]+\.[0-9a-f]{6})*(?=")/.exec(script) ?? [];
    for (const name of list.split(','))
      found.set(`/${before.slice(folder.length)}${name.split('.')[0]}`, chunksIn(tree));
  }
  return found;
}

const chunksIn = (tree: string): string[] => [...tree.matchAll(/:?"([\w-]+)"(?=[,}\]])/g)].map(([, name = '']) => name);

/** Names of the chunks that pages of the second layer alone ask for. What no page names is shared, or asked for later, and is in the first. */
export function secondChunks(pages: ReadonlyMap<string, readonly string[]>): Set<string> {
  const first = new Set<string>();
  const second = new Set<string>();
  for (const [page, chunks] of pages) {
    for (const chunk of chunks) (secondPages.test(page) ? second : first).add(chunk);
  }
  return new Set([...second].filter((chunk) => !first.has(chunk)));
}

/**
 * The layer in which a file is kept.
 *
 * @param path of the file in the built folder
 * @param apart names of chunks that pages of the second layer alone ask for
 * @returns undefined where it is not kept
 */
export function layerOf(path: string, apart: ReadonlySet<string>): LayerName | undefined {
  if (left.some((each) => each.test(path))) return undefined;
  if (path.endsWith('.html')) return secondPages.test(`/${path.replace(/\/?index\.html$/, '')}`) ? 'second' : 'first';
  if (downloads.test(path)) return fetched.test(path) ? 'first' : 'second';
  const chunk = /^assets\/js\/([\w-]+)\.[0-9a-f]{8}\.js$/.exec(path)?.[1];
  return chunk !== undefined && apart.has(chunk) ? 'second' : 'first';
}
