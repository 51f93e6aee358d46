import { cacheName, type FileList, isNamedByContent, type LayerName, readCacheName } from './kept-files.ts';

/** So many files are on their way at once: on a poor signal most of the time is waiting. */
const atOnce = 6;

/** Why a layer could not be filled. */
export type Refusal =
  /** The network is gone or the server does not answer. */
  | 'network'
  /** A file is not of this version: another is being put there, or something changes the files on their way. */
  | 'other'
  /** The space of this browser is used up. */
  | 'full';

export class LayerError extends Error {
  readonly why: Refusal;
  readonly path: string;
  constructor(why: Refusal, path: string) {
    super(`${path}: ${why}`);
    this.why = why;
    this.path = path;
  }
}

/** Where the site stands and what its files are. */
export interface Place {
  /** The address of the site's folder, with a slash behind it. */
  address: string;
  folder: string;
}

/** An entry of a cache that holds the list itself, so that a later version can tell which files it need not fetch again. */
const listEntry = ({ address }: Place, layer: LayerName) => `${address}?kept=${layer}`;

export async function keptList(place: Place, layer: LayerName, version: string): Promise<FileList | undefined> {
  const name = cacheName(place.folder, layer, version);
  if (!(await caches.has(name))) return undefined;
  return (await (await caches.open(name)).match(listEntry(place, layer)))?.json();
}

/** Versions of which a cache of the layer stands, whole or begun. */
export async function versionsOf({ folder }: Place, layer: LayerName): Promise<string[]> {
  const found = (await caches.keys()).map((name) => readCacheName(folder, name));
  return found.flatMap((one) => (one?.layer === layer ? [one.version] : []));
}

/** Whether the layer is kept whole. */
export async function isWhole(place: Place, layer: LayerName, version: string): Promise<boolean> {
  return (await keptList(place, layer, version)) !== undefined;
}

/**
 * A response that answers for any address: one that came by way of a redirection is refused by the browser for a page. Its bytes are handed on
 * as they come: a blob of them would be work for the page, too.
 */
const plain = ({ body, headers }: Response) => new Response(body, { headers });

const isFull = (error: unknown) => (error as { name?: string } | null)?.name === 'QuotaExceededError';

/**
 * Keep every file of a layer that is not kept yet. Begun again after it was broken off it goes on where it stopped; it is whole only when the
 * last file lies there.
 *
 * @param told called with the number of files that lie there, now and then
 * @param rest waited for before each file
 * @throws LayerError that names the file and why
 */
export async function fillLayer(
  place: Place,
  layer: LayerName,
  list: FileList,
  told: (kept: number) => void = () => undefined,
  rest: () => Promise<void> = async () => undefined,
): Promise<void> {
  if (await isWhole(place, layer, list.version)) return;
  const cache = await caches.open(cacheName(place.folder, layer, list.version));
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const older = await olderFiles(place, layer, list.version);
  const files = Object.entries(list[layer]);
  let done = 0;
  const next = files.values();
  const work = async () => {
    for (const [path, hash] of next) {
      const url = place.address + encodeURI(path);
      if (!there.has(url)) {
        await rest();
        await keepFile(cache, url, path, hash, older);
      }
      done += 1;
      if (done % 20 === 0) told(done);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  await put(cache, listEntry(place, layer), new Response(JSON.stringify(list)), 'the list of files');
  told(done);
}

async function keepFile(cache: Cache, url: string, path: string, hash: string, older: OlderFiles): Promise<void> {
  const known = await older(path, hash, url);
  await put(cache, url, known ?? (await fetchFile(url, path, hash)), path);
}

async function put(cache: Cache, url: string, response: Response, path: string): Promise<void> {
  try {
    await cache.put(url, response);
  } catch (error) {
    throw new LayerError(isFull(error) ? 'full' : 'network', path);
  }
}

/** A file of this very version, or a refusal: the browser itself compares its bytes with the list. */
export async function fetchFile(url: string, path: string, hash: string): Promise<Response> {
  // Whole folders are asked for as such: some hosts lead `/x/index.html` to `/x/`.
  const address = url.replace(/(^|\/)index\.html$/, '$1');
  let response: Response;
  try {
    // The page for what is not there comes with the status that says so.
    response = await fetch(address, {
      integrity: `sha256-${hash}`,
      cache: isNamedByContent(path) ? 'default' : 'no-cache',
    });
  } catch {
    throw new LayerError(await whyNot(address), path);
  }
  return plain(response);
}

/** A fetch fails alike where the network is gone and where the bytes are others: asked without a hash the two differ. */
async function whyNot(address: string): Promise<Refusal> {
  try {
    await fetch(address, { method: 'HEAD', cache: 'no-store' });
    return 'other';
  } catch {
    return 'network';
  }
}

type OlderFiles = (path: string, hash: string, url: string) => Promise<Response | undefined>;

/** What an earlier version kept and this one has too, byte for byte, need not come over the network again. */
async function olderFiles(place: Place, layer: LayerName, version: string): Promise<OlderFiles> {
  const kept: { list: FileList; cache: Cache }[] = [];
  for (const older of await versionsOf(place, layer)) {
    const list = older === version ? undefined : await keptList(place, layer, older);
    if (list) kept.push({ list, cache: await caches.open(cacheName(place.folder, layer, older)) });
  }
  return async (path, hash, url) => {
    for (const { list, cache } of kept) {
      const found = list[layer][path] === hash ? await cache.match(url) : undefined;
      if (found) return found;
    }
    return undefined;
  };
}

/** Take caches of other versions away. */
export async function dropOthers(place: Place, layer: LayerName, version: string): Promise<void> {
  const others = (await versionsOf(place, layer)).filter((each) => each !== version);
  await Promise.all(others.map((each) => caches.delete(cacheName(place.folder, layer, each))));
}
