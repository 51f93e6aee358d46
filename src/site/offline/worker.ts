import { cacheName, type FileList, filesOf, isNamedByContent, type LayerName, listName } from './kept-files.ts';
import { dropOthers, fetchFile, fillLayer, keptList, LayerError, type Place } from './layers.ts';
import { Rest } from './rest.ts';
import type { AskedEvent, FetchedEvent, WorkerScope } from './worker-scope.ts';

/** Of the version for which this worker was built: written in by the build. */
declare const VERSION: string;
/** SHA-256 of the list of files, in base 64. */
declare const LIST_HASH: string;

const scope = globalThis as unknown as WorkerScope;
const address = scope.registration.scope;
const place: Place = { address, folder: new URL(address).pathname };

/** What a page asks of the worker, and what it hears. */
export type Asked = { say: 'take over' } | { say: 'keep the rest' } | { say: 'in use' };
export type Heard = { kept: number; of: number } | { done: true } | { refused: LayerError['why']; path: string };

/** The list of this version's files: of the first layer once that is kept, before from the server, which must still have this version. */
async function theList(): Promise<FileList> {
  const kept = await keptList(place, 'first', VERSION);
  if (kept) return kept;
  return (await fetchFile(new URL(listName, address).href, listName, LIST_HASH)).json();
}

scope.addEventListener('install', (event) => event.waitUntil(fillFirst()));

scope.addEventListener('activate', (event) => event.waitUntil(begin()));

async function begin(): Promise<void> {
  // A version that began later may have taken away what this one kept: then it is fetched anew.
  await fillFirst().catch(() => undefined);
  await dropOthers(place, 'first', VERSION);
  await scope.clients.claim();
}

const rest = new Rest();
const fill = (layer: LayerName, list: FileList, told?: (kept: number) => void) =>
  fillLayer(place, layer, list, told, () => rest.comes());
const fillFirst = async () => fill('first', await theList());

scope.addEventListener('message', (event) => {
  const asked = event.data as Partial<Asked> | null;
  if (asked?.say === 'take over') event.waitUntil(scope.skipWaiting());
  if (asked?.say === 'in use') rest.used();
  if (asked?.say === 'keep the rest') event.waitUntil(keepTheRest(event));
});

let filling: Promise<void> | undefined;

async function keepTheRest({ ports }: AskedEvent): Promise<void> {
  const tell = (heard: Heard) => ports[0]?.postMessage(heard);
  try {
    const list = await theList();
    const of = list.sizes.second.files;
    await fillFirst();
    filling ??= fill('second', list, (kept) => tell({ kept, of })).then(() => dropOthers(place, 'second', VERSION));
    await filling;
    tell({ done: true });
  } catch (error) {
    tell(error instanceof LayerError ? { refused: error.why, path: error.path } : { refused: 'network', path: '' });
  } finally {
    filling = undefined;
  }
}

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(address) || request.headers.has('range')) return;
  const path = pathOf(request.url);
  if (path === undefined || path === listName) return;
  event.respondWith(request.mode === 'navigate' ? page(event, path) : part(event, path));
});

/** The path behind the site's folder, or undefined where it cannot be read. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURI(new URL(url).pathname.slice(place.folder.length));
  } catch {
    return undefined;
  }
}

const opened: Partial<Record<LayerName, Cache>> = {};

/** The cache of a layer, once it stands: it is never made by looking for it. */
async function cacheOf(layer: LayerName): Promise<Cache | undefined> {
  const name = cacheName(place.folder, layer, VERSION);
  if (!opened[layer] && (await caches.has(name))) opened[layer] = await caches.open(name);
  return opened[layer];
}

/** A kept file, by any form of its address. */
async function kept(path: string): Promise<Response | undefined> {
  for (const layer of ['first', 'second'] as const) {
    const cache = await cacheOf(layer);
    for (const file of cache ? filesOf(path) : []) {
      const found = await cache?.match(address + encodeURI(file));
      if (found) return found;
    }
  }
  return undefined;
}

async function page(event: FetchedEvent, path: string): Promise<Response> {
  const found = await kept(path);
  if (found) return found;
  try {
    const response = await fetch(event.request);
    event.waitUntil(noteFromServer(event.resultingClientId, path, response.clone()));
    return response;
  } catch {
    return withoutNetwork(event.request.url, path);
  }
}

/** What is said of an address that is not kept where there is no network: that it can be, or that there is no such page. */
async function withoutNetwork(asked: string, path: string): Promise<Response> {
  const list = await theList().catch(() => undefined);
  if (list && filesOf(path).some((file) => file in list.second || file in list.first)) {
    const { pathname, search } = new URL(asked);
    return Response.redirect(`${address}offline/?${new URLSearchParams({ page: pathname + search })}`, 302);
  }
  return (await kept('404.html')) ?? Response.error();
}

/**
 * What a page asks for. A page that came from the server may be of a newer version than what is kept: it gets the kept files whose names
 * change with their bytes, and all others from the server.
 */
async function part(event: FetchedEvent, path: string): Promise<Response> {
  const mayMix = !isNamedByContent(path) && (await isOfServer(event.clientId));
  return (mayMix ? undefined : await kept(path)) ?? fetch(event.request);
}

const pagesName = `kerf-pages ${place.folder}`;
const pageEntry = (client: string) => `${address}?client=${client}`;

/**
 * Note that a page came from the server, unless it turns out to be of this version. The worker may be stopped and started while the page is
 * open, so the note lies in a cache.
 */
async function noteFromServer(client: string, path: string, response: Response): Promise<void> {
  const cache = await caches.open(pagesName);
  await cache.put(pageEntry(client), new Response());
  const hash = btoa(
    String.fromCharCode(...new Uint8Array(await crypto.subtle.digest('SHA-256', await response.arrayBuffer()))),
  );
  const list = await theList().catch(() => undefined);
  if (list && filesOf(path).some((file) => list.second[file] === hash || list.first[file] === hash))
    await cache.delete(pageEntry(client));
  const open = new Set((await scope.clients.matchAll({ includeUncontrolled: true })).map(({ id }) => pageEntry(id)));
  for (const request of await cache.keys()) {
    if (request.url !== pageEntry(client) && !open.has(request.url)) await cache.delete(request);
  }
}

async function isOfServer(client: string): Promise<boolean> {
  if (!(await caches.has(pagesName))) return false;
  return (await (await caches.open(pagesName)).match(pageEntry(client))) !== undefined;
}
