import { useSyncExternalStore } from 'react';
import { conflictsOf, type Merged, mergeBatches } from '../../method/batch/merge.ts';
import { type BatchRecord, readBatch } from '../../method/batch/record.ts';
import { type Channel, channelOf } from '../kept/channel.ts';
import { allThings, dropThings, type Kept, type KeptThing, openKerf } from '../kept/database.ts';

/** The batches of this browser as far as they are known. */
export interface KeptBatches {
  /** Undefined until the database has answered. */
  batches: readonly BatchRecord[] | undefined;
  /** How the last writing ended; anything but `kept` lasts as long as this page. */
  kept: Kept;
  /** What is stored and cannot be read, as text: it stays where it is. */
  damaged: readonly string[];
}

const store = 'batches';
const loading: KeptBatches = { batches: undefined, kept: 'kept', damaged: [] };

let now: KeptBatches = loading;
let isRead = false;
const listeners = new Set<() => void>();
let channel: Channel | undefined;

const tell = (next: KeptBatches) => {
  now = next;
  for (const listener of listeners) listener();
};

/** Records of a stored thing, and what of it is none. */
function recordsOf(thing: KeptThing): { good: BatchRecord[]; bad: unknown[] } {
  const records = Array.isArray(thing['records']) ? (thing['records'] as unknown[]) : [thing];
  const good: BatchRecord[] = [];
  const bad: unknown[] = [];
  for (const record of records) {
    const read = readBatch(record);
    if (read.ok) good.push(read.batch);
    else bad.push(record);
  }
  return { good, bad };
}

/** Read what is stored and lay it beside what this page holds: nothing that could not be stored is dropped by it. */
async function load(): Promise<void> {
  const things = await allThings(store);
  if (!things) {
    tell({ ...now, batches: now.batches ?? [], kept: now.kept === 'kept' ? 'refused' : now.kept });
    return;
  }
  const read = things.map(recordsOf);
  const stored = read.flatMap(({ good }) => good);
  const held = now.kept === 'kept' ? [] : (now.batches ?? []);
  tell({
    ...now,
    batches: mergeBatches(held, stored).batches,
    damaged: read.flatMap(({ bad }) => bad.map((each) => JSON.stringify(each, null, 1))),
  });
}

/** Listen to what other tabs write: they say so, and what they wrote is read again. */
function listenToTabs(): void {
  if (channel) return;
  channel = channelOf('kerf-batches');
  if (channel) channel.onmessage = () => void load();
}

/** Write batches in one transaction, each laid over what is stored of it by then: another tab may have added to it. */
async function written(come: readonly BatchRecord[]): Promise<Kept> {
  const database = await openKerf();
  if (!database) return 'refused';
  try {
    const transaction = database.transaction(store, 'readwrite', { durability: 'strict' });
    const { done } = transaction;
    done.catch(() => undefined);
    for (const id of new Set(come.map((batch) => batch.id))) {
      const thing = await transaction.store.get(id);
      const { good, bad } = thing ? recordsOf(thing) : { good: [], bad: [] };
      const { batches } = mergeBatches(
        good,
        come.filter((batch) => batch.id === id),
      );
      await transaction.store.put({ id, changed: Date.now(), records: [...batches, ...bad] });
    }
    await done;
    return 'kept';
  } catch (error) {
    return (error as { name?: string } | null)?.name === 'QuotaExceededError' ? 'full' : 'refused';
  }
}

/**
 * Add batches, or entries to batches: nothing that is there is overwritten. They stand on the page at once, and are on the disk when this says
 * `kept`; else they last as long as the page.
 */
export async function addBatches(come: readonly BatchRecord[]): Promise<{ kept: Kept; merged: Merged }> {
  const merged = mergeBatches(now.batches ?? [], come);
  tell({ ...now, batches: merged.batches });
  // What an earlier writing could not store is tried again with it.
  const kept = await written(now.kept === 'kept' ? come : merged.batches);
  tell({ ...now, kept });
  if (kept === 'kept') channel?.postMessage('written');
  return { kept, merged };
}

/** Take a batch out of this browser, with all that bears its id. */
export async function dropBatch(id: string): Promise<void> {
  tell({ ...now, batches: (now.batches ?? []).filter((batch) => batch.id !== id) });
  const dropped = await dropThings(store, [id]);
  if (dropped === 'kept') channel?.postMessage('dropped');
}

/** What is known now: the same object as long as nothing changes. */
export const keptBatches = (): KeptBatches => now;

/** Listen to changes, by this page or another tab; the first who listens has the browser read. */
export function watchBatches(listener: () => void): () => void {
  listeners.add(listener);
  listenToTabs();
  if (!isRead) void load();
  isRead = true;
  return () => listeners.delete(listener);
}

/** The batches of this browser, followed as this page and other tabs change them. */
export function useKeptBatches(): KeptBatches & { conflicts: readonly string[] } {
  const kept = useSyncExternalStore(watchBatches, keptBatches, () => loading);
  return { ...kept, conflicts: kept.batches ? conflictsOf(kept.batches) : [] };
}

/** Forget what was read, as a page that is opened anew. */
export function forgetBatches(): void {
  channel?.close();
  channel = undefined;
  isRead = false;
  now = loading;
}
