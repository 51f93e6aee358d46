/**
 * The files of one version of the site, as the build lists them. A path is a file of the built folder, as `how-to/bubbles/index.html`; its
 * value is the SHA-256 of its bytes in base 64.
 */
export interface FileList {
  version: string;
  /** What is kept at once. */
  first: Readonly<Record<string, string>>;
  /** What is kept when the first is whole: the woods one by one, the reference, the booklets. */
  second: Readonly<Record<string, string>>;
  sizes: Readonly<Record<LayerName, LayerSize>>;
}

export type LayerName = 'first' | 'second';

export interface LayerSize {
  files: number;
  /** Bytes as they lie on the disk. */
  bytes: number;
  /** Bytes as they come over the network, compressed. */
  gzip: number;
}

/** Names of what the build writes beside the site. */
export const listName = 'offline-files.json';
export const workerName = 'offline-worker.js';

/**
 * Name of the cache of a layer. Several sites may stand on one host, each in its folder, and share its caches: the folder is part of the name.
 *
 * @param folder the folder of the site on its host, with a slash at both ends
 */
export const cacheName = (folder: string, layer: LayerName, version: string) => `kerf ${folder} ${layer} ${version}`;

/** A cache's layer and version, or undefined where it belongs to another site or another purpose. */
export function readCacheName(folder: string, name: string): { layer: LayerName; version: string } | undefined {
  const [whose, where, layer, version] = name.split(' ');
  if (whose !== 'kerf' || where !== folder || version === undefined) return undefined;
  return layer === 'first' || layer === 'second' ? { layer, version } : undefined;
}

/**
 * The files that an address may mean, the likeliest first. Hosts differ in the form of address that they lead to: `/x`, `/x/`, `/x.html` and
 * `/x/index.html` are one page.
 *
 * @param path what stands behind the site's folder, without a slash at its head, a query or a fragment
 */
export function filesOf(path: string): string[] {
  if (path === '') return ['index.html'];
  if (path.endsWith('/')) return [`${path}index.html`, `${path.slice(0, -1)}.html`];
  const bare = path.endsWith('.html') ? [`${path.slice(0, -'.html'.length)}/index.html`] : [];
  // A name with an ending is a file; only a page of its own may bear one too, as a table's `trgs-907.1` would.
  return [path, ...bare, `${path}/index.html`, `${path}.html`];
}

/** Whether the name of a file changes with its bytes, so that a file of that name is never another. */
export const isNamedByContent = (path: string) => /^assets\/.*[.-][0-9a-f]{8,}\.[a-z0-9]+$/.test(path);
