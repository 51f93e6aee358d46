import { trustedScript } from '../../calculators/view/trusted.ts';
import { cacheName, type FileList, type LayerName, listName, readCacheName, workerName } from './kept-files.ts';

/** Where the choice of a reader who wants nothing kept, or everything, is remembered. */
const choiceKey = 'kerf-offline';

/** Where a tab remembers that all was taken away in it. It goes with the tab. */
const restName = 'kerf-offline-rest';

export type Choice = 'nothing' | 'all';

/** What the reader chose, if anything: undefined also where the browser keeps nothing for this page. */
export function choice(): Choice | undefined {
  try {
    const kept = localStorage.getItem(choiceKey);
    if (kept === 'nothing' || kept === 'all') return kept;
    return sessionStorage.getItem(restName) === null ? undefined : 'nothing';
  } catch {
    return undefined;
  }
}

/** Keep nothing of the site's files again in this tab, unless the reader asks for it. */
export function restUntilClosed(): void {
  try {
    sessionStorage.setItem(restName, 'yes');
  } catch {
    // Where a tab remembers nothing, nothing is kept either.
  }
}

/** Remember a choice. @returns whether the browser could */
export function choose(what: Choice | undefined): boolean {
  try {
    sessionStorage.removeItem(restName);
    if (what === undefined) localStorage.removeItem(choiceKey);
    else localStorage.setItem(choiceKey, what);
    return true;
  } catch {
    return false;
  }
}

/** The browser's workers, where it has them: on plain http, as in a classroom, and in some private windows there are none. */
export const workersOf = (): ServiceWorkerContainer | undefined =>
  'serviceWorker' in navigator ? navigator.serviceWorker : undefined;

/** Register the worker that keeps the site. @returns undefined where the browser refuses it */
export async function register(folder: string): Promise<ServiceWorkerRegistration | undefined> {
  try {
    // The browser asks the server for the worker each time, never its own cache: a host's caching cannot hold an update back.
    return await workersOf()?.register(trustedScript(folder + workerName), { scope: folder, updateViaCache: 'none' });
  } catch {
    return undefined;
  }
}

/** How much of a layer is kept. */
export interface LayerState {
  kept: number;
  whole: boolean;
}

/** What this browser keeps of the site for reading without a network. */
export interface KeptState {
  list: FileList | undefined;
  layers: Readonly<Record<LayerName, LayerState>>;
  /** What the browser says that the whole host takes on its disk, bytes, with what readers typed. */
  used: number | undefined;
}

/** Look at what is kept. @returns undefined where the browser has no caches for this page */
export async function keptState(folder: string): Promise<KeptState | undefined> {
  try {
    // Where storage is switched off the very name may throw.
    if (typeof caches === 'undefined') return undefined;
    const version = await activeVersion(folder);
    const layers: Record<LayerName, LayerState> = {
      first: { kept: 0, whole: false },
      second: { kept: 0, whole: false },
    };
    let list: FileList | undefined;
    for (const layer of ['first', 'second'] as const) {
      const name = version && cacheName(folder, layer, version);
      if (!name || !(await caches.has(name))) continue;
      const cache = await caches.open(name);
      const own = await cache.match(`${location.origin}${folder}?kept=${layer}`);
      layers[layer] = { kept: (await cache.keys()).length - (own ? 1 : 0), whole: own !== undefined };
      list ??= await own?.json();
    }
    return { list, layers, used: (await navigator.storage?.estimate?.())?.usage };
  } catch {
    return undefined;
  }
}

/** The version of the worker that serves: the one whose first layer is whole; of two, as while an update waits, the older. */
async function activeVersion(folder: string): Promise<string | undefined> {
  const versions = (await caches.keys()).flatMap((name) => {
    const one = readCacheName(folder, name);
    return one?.layer === 'first' ? [one.version] : [];
  });
  for (const version of versions) {
    const cache = await caches.open(cacheName(folder, 'first', version));
    if (await cache.match(`${location.origin}${folder}?kept=first`)) return version;
  }
  return versions[0];
}

/** What the server has now, for its sizes where nothing is kept yet. */
export async function serverList(folder: string): Promise<FileList | undefined> {
  try {
    const answer = await fetch(folder + listName, { cache: 'no-cache' });
    return answer.ok ? await answer.json() : undefined;
  } catch {
    return undefined;
  }
}
