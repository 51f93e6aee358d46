import { forgetLeft } from '../../calculators/view/leaving.ts';
import { allThings, closeKerf, type KeptThing, type KerfStore } from '../kept/database.ts';
import { forgetOffline, ownCaches } from '../offline/forget.ts';

/** What one thing in the browser's own storage is, for who reads of it. */
interface PlaceWords {
  /** What it holds, as a line of a list. */
  what: string;
  /** Page on which it is changed. */
  page?: string;
}

/** Names in local storage. A test finds every key that the code writes and asks for its line here. */
export const storageWords: Readonly<Record<string, PlaceWords>> = {
  'kerf-units': { what: 'whether you read in millimetres or in inches' },
  'kerf-remembered': { what: 'your last case of each calculator, and what several of them begin with', page: '/kept' },
  'kerf-resin-sheets': { what: 'data sheets of your resins', page: '/resin-sheets' },
  'kerf-resin-sheets-damaged': { what: 'a data sheet that could not be read, as it was', page: '/resin-sheets' },
  'kerf-resin-sheet-draft': { what: 'a data sheet that is still being filled in', page: '/resin-sheets' },
  'kerf-shop': { what: 'your shop record', page: '/shop' },
  'kerf-quotes': {
    what: 'quotes that are being written, with your name and address where you gave them',
    page: '/quote',
  },
  'kerf-offline': { what: 'whether pages are kept for reading without a network' },
  'kerf-batch-typed': { what: 'what is typed in a batch and not yet written down', page: '/batches' },
};

/** Stores of the database. */
export const storeWords: Readonly<Record<KerfStore, PlaceWords>> = {
  drafts: { what: 'drafts of methods', page: '/bench' },
  snapshots: { what: 'earlier states of these drafts', page: '/bench' },
  batches: { what: 'records of what was made', page: '/batches' },
  classes: { what: 'classes, with the names that were entered', page: '/class' },
};

const stores = Object.keys(storeWords) as KerfStore[];

/** Whether a key of local storage is this site's: another site in another folder of the same host shares the store. */
export const isOwnKey = (key: string): boolean => /^kerf-|^theme(-[0-9a-f]+)?$|^docusaurus\./.test(key);

/** One thing that is kept now. */
export interface KeptPlace {
  kind: 'storage' | 'database' | 'files';
  /** Its name in the browser. */
  name: string;
  words: PlaceWords;
  /** Things in it; one for a key of local storage. */
  count: number;
  /** Bytes of its text in UTF-8; undefined where the browser does not tell. */
  bytes?: number;
}

const bytesOf = (text: string) => new TextEncoder().encode(text).length;

/** The keys of this site in local storage; none where the browser forbids it. */
function ownKeys(): string[] {
  try {
    return Object.keys(window.localStorage).filter(isOwnKey).sort();
  } catch {
    return [];
  }
}

/** What a store holds. Where there is no database, none is made by looking for it. */
async function thingsOf(name: KerfStore): Promise<KeptThing[]> {
  try {
    // An older browser cannot tell; there it is opened, and made.
    if (typeof indexedDB.databases === 'function' && !(await indexedDB.databases()).some((one) => one.name === 'kerf'))
      return [];
    return (await allThings(name)) ?? [];
  } catch {
    return [];
  }
}

/** What a thing comes to as text; what has no text, as a step that may be undone, counts nothing. */
const textOf = (value: unknown): string => JSON.stringify(value) ?? '';

/**
 * Everything that the browser keeps of this site, now.
 *
 * @param folder the site's folder on its host, as `/` or `/boards/`
 */
export async function keptPlaces(folder: string): Promise<KeptPlace[]> {
  const found: KeptPlace[] = ownKeys().map((name) => ({
    kind: 'storage',
    name,
    words: storageWords[name] ?? { what: name.startsWith('theme') ? 'light or dark' : 'a choice on a page' },
    count: 1,
    bytes: bytesOf(name) + bytesOf(window.localStorage.getItem(name) ?? ''),
  }));
  for (const name of stores) {
    const things = await thingsOf(name);
    if (things.length > 0)
      found.push({
        kind: 'database',
        name,
        words: storeWords[name],
        count: things.length,
        bytes: bytesOf(textOf(things)),
      });
  }
  for (const name of await cachesOf(folder)) {
    const files = await (await caches.open(name)).keys();
    found.push({
      kind: 'files',
      name,
      words: { what: 'pages and files of the site, to be read without a network' },
      count: files.length,
    });
  }
  return found;
}

async function cachesOf(folder: string): Promise<string[]> {
  try {
    return await ownCaches(folder);
  } catch {
    return [];
  }
}

/** Everything that was entered, as the text of one JSON file: what clearing takes away and cannot be fetched again. */
export async function everythingAsText(): Promise<string> {
  const storage = Object.fromEntries(ownKeys().map((key) => [key, window.localStorage.getItem(key)]));
  const database = Object.fromEntries(await Promise.all(stores.map(async (name) => [name, await thingsOf(name)])));
  return `${JSON.stringify({ format: 'kerf-and-cure/kept', version: 1, storage, database }, null, 2)}\n`;
}

/** How long a browser may take to drop the database while another tab still holds it, ms. */
const patience = 5_000;

/**
 * Take away all that this browser keeps of the site: local storage, the database, files for reading without a network and the worker
 * that fetches them.
 *
 * @param folder the site's folder on its host
 * @returns what could not be taken away, in words; empty where nothing is left
 */
export async function clearAll(folder: string): Promise<string[]> {
  const left: string[] = [];
  try {
    for (const key of ownKeys()) window.localStorage.removeItem(key);
  } catch {
    left.push('local storage: the browser forbids it');
  }
  forgetLeft();
  await closeKerf();
  if (!(await dropDatabase())) left.push('the database: another tab of the site still holds it');
  if (!(await forgetOffline(folder))) left.push('files for reading without a network: the browser refused');
  // Whoever shows what is kept in this tab looks anew; other tabs are told by the browser.
  window.dispatchEvent(new StorageEvent('storage'));
  return left;
}

function dropDatabase(): Promise<boolean> {
  if (typeof indexedDB === 'undefined') return Promise.resolve(true);
  return new Promise((resolve) => {
    const asked = indexedDB.deleteDatabase('kerf');
    asked.onsuccess = () => resolve(true);
    asked.onerror = () => resolve(false);
    setTimeout(() => resolve(false), patience);
  });
}
