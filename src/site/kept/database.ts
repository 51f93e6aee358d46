import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';

/** One thing that the database keeps. Its other parts belong to the room that wrote it, which checks them when it reads them back. */
export interface KeptThing {
  id: string;
  /** When it was changed last, in milliseconds since 1970. */
  changed: number;
  /** Id of the thing that it is a state of; snapshots are found by it. */
  of?: string;
  [part: string]: unknown;
}

interface OneStore {
  key: string;
  value: KeptThing;
}

interface KerfSchema extends DBSchema {
  drafts: OneStore;
  batches: OneStore;
  classes: OneStore;
  snapshots: OneStore & { indexes: { of: string } };
}

export type KerfStore = 'drafts' | 'batches' | 'classes' | 'snapshots';

export type KerfDatabase = IDBPDatabase<KerfSchema>;

const name = 'kerf';
const version = 1;
/** Some browsers never answer where storage is forbidden, nor while another tab holds an older database: a page does not wait for them. */
const patience = 4_000;

let opening: Promise<KerfDatabase | null> | undefined;

/**
 * The database of this browser, opened once for the page and again after it was closed.
 *
 * @returns null where the browser has none, forbids it, holds a newer one, or does not answer in four seconds: keep things in memory then, and say so
 */
export function openKerf(): Promise<KerfDatabase | null> {
  if (opening) return opening;
  const asked = open();
  opening = asked;
  // Whoever asks after a refusal is given a new try: the other tab may have gone.
  asked.then((database) => !database && forget(asked));
  return asked;
}

const forget = (what?: Promise<KerfDatabase | null>) => {
  if (what === undefined || opening === what) opening = undefined;
};

async function open(): Promise<KerfDatabase | null> {
  try {
    if (typeof indexedDB === 'undefined') return null;
    const asked = openDB<KerfSchema>(name, version, {
      upgrade(database) {
        for (const store of ['drafts', 'batches', 'classes'] as const) {
          database.createObjectStore(store, { keyPath: 'id' });
        }
        database.createObjectStore('snapshots', { keyPath: 'id' }).createIndex('of', 'of');
      },
      // A newer site in another tab waits for this one to let go: what is written from here on is refused, and kept in memory.
      blocking(_now, _wanted, event) {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: () => forget(),
    });
    asked.catch(() => undefined);
    return await Promise.race([asked, later(patience)]);
  } catch {
    // Forbidden (UnknownError, SecurityError), or newer than this page (VersionError).
    return null;
  }
}

const later = (milliseconds: number) => new Promise<null>((resolve) => setTimeout(() => resolve(null), milliseconds));

/** How a write ended: `full` where the space of this browser is used up, `refused` where it stores nothing for this page. */
export type Kept = 'kept' | 'full' | 'refused';

type Writing = IDBPTransaction<KerfSchema, [KerfStore], 'readwrite'>['store'];

/** Run the requests of one transaction, all of them or none, and say how it ended: with the disk full each request still succeeds. */
async function written<T>(
  store: KerfStore,
  items: readonly T[],
  request: (into: Writing, item: T) => Promise<unknown>,
): Promise<Kept> {
  const database = await openKerf();
  if (!database) return 'refused';
  try {
    const transaction = database.transaction(store, 'readwrite', { durability: 'strict' });
    const done = transaction.done;
    try {
      // Why a request failed is told by the transaction, which fails with it.
      for (const item of items) request(transaction.store, item).catch(() => undefined);
      // A page that is being left waits for no answer: what is not asked to be committed by then is dropped.
      transaction.commit();
    } catch (error) {
      // A thing that cannot be stored throws at once, and what was asked before it would stay.
      done.catch(() => undefined);
      transaction.abort();
      throw error;
    }
    await done;
    return 'kept';
  } catch (error) {
    return (error as { name?: string } | null)?.name === 'QuotaExceededError' ? 'full' : 'refused';
  }
}

/** Write things into a store, all of them or none; one of the same id is replaced. They are on the disk when this says `kept`. */
export function putThings(store: KerfStore, things: readonly KeptThing[]): Promise<Kept> {
  return written(store, things, (into, thing) => into.put(thing));
}

/** Take things out of a store, all of them or none. Ids that are not there do no harm. */
export function dropThings(store: KerfStore, ids: readonly string[]): Promise<Kept> {
  return written(store, ids, (into, id) => into.delete(id));
}

/** All things of a store in no order of meaning, or null where they cannot be read. What they hold is to be checked: an older page may have written it. */
export async function allThings(store: KerfStore): Promise<KeptThing[] | null> {
  try {
    return (await (await openKerf())?.getAll(store)) ?? null;
  } catch {
    return null;
  }
}

/** One thing of a store: undefined where there is none of that id, null where the store cannot be read. */
export async function oneThing(store: KerfStore, id: string): Promise<KeptThing | undefined | null> {
  try {
    const database = await openKerf();
    return database ? await database.get(store, id) : null;
  } catch {
    return null;
  }
}

/** The states kept of one thing, the oldest first, or null where they cannot be read. */
export async function snapshotsOf(id: string): Promise<KeptThing[] | null> {
  try {
    const found = await (await openKerf())?.getAllFromIndex('snapshots', 'of', id);
    return found?.sort((one, other) => one.changed - other.changed) ?? null;
  } catch {
    return null;
  }
}

/** An id for a new thing. A server on plain http, as in a classroom, has no `randomUUID`. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Close the database and forget that it was open, so that the next asks anew. */
export async function closeKerf(): Promise<void> {
  const was = await opening;
  was?.close();
  forget();
}
