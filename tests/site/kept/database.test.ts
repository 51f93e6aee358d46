import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  allThings,
  closeKerf,
  dropThings,
  newId,
  oneThing,
  openKerf,
  putThings,
  snapshotsOf,
} from '../../../src/site/kept/database.ts';

beforeEach(async () => {
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
});
afterEach(async () => {
  await closeKerf();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

const draft = (id: string, changed = 1) => ({ id, changed, text: `text of ${id}` });

describe('the database', () => {
  test('keeps, replaces, reads and drops things, apart by store', async () => {
    expect(await putThings('drafts', [draft('a'), draft('b')])).toBe('kept');
    expect(await putThings('batches', [draft('a', 5)])).toBe('kept');
    expect(await putThings('drafts', [draft('a', 2)])).toBe('kept');
    expect((await allThings('drafts'))?.map(({ id, changed }) => [id, changed])).toEqual([
      ['a', 2],
      ['b', 1],
    ]);
    expect(await dropThings('drafts', ['a', 'not there'])).toBe('kept');
    expect(await oneThing('drafts', 'a')).toBeUndefined();
    expect(await oneThing('batches', 'a')).toEqual(draft('a', 5));
  });

  test('finds the snapshots of one thing, the oldest first', async () => {
    const states = [3, 1, 2].map((changed) => ({ id: `s${changed}`, of: 'a', changed }));
    await putThings('snapshots', [...states, { id: 'other', of: 'b', changed: 9 }, { id: 'of nothing', changed: 9 }]);
    expect((await snapshotsOf('a'))?.map(({ id }) => id)).toEqual(['s1', 's2', 's3']);
  });

  test('is opened once for many who ask, and still holds everything when it is opened again', async () => {
    const open = vi.spyOn(indexedDB, 'open');
    await Promise.all([putThings('drafts', [draft('a')]), putThings('classes', [draft('b')]), allThings('batches')]);
    expect(open).toHaveBeenCalledTimes(1);
    await closeKerf();
    expect(await oneThing('classes', 'b')).toEqual(draft('b'));
  });

  test('a write that cannot be done leaves all of its things as they were', async () => {
    await putThings('drafts', [draft('a')]);
    const impossible = { ...draft('b'), text: () => 'a function cannot be stored' };
    expect(await putThings('drafts', [draft('a', 9), impossible])).toBe('refused');
    expect(await oneThing('drafts', 'a')).toEqual(draft('a'));
  });

  test('a full disk shows in the transaction alone, and is told as such', async () => {
    const database = await openKerf();
    const full = new DOMException('no room', 'QuotaExceededError');
    vi.spyOn(database as object as { transaction: () => unknown }, 'transaction').mockReturnValue({
      store: { put: () => Promise.resolve('a'), delete: () => Promise.resolve() },
      commit: () => undefined,
      done: Promise.reject(full),
    });
    expect(await putThings('drafts', [draft('a')])).toBe('full');
  });
});

describe('where the browser does not store', () => {
  test('without a database at all nothing throws', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await openKerf()).toBeNull();
    expect(await putThings('drafts', [draft('a')])).toBe('refused');
    expect(await allThings('drafts')).toBeNull();
    expect(await oneThing('drafts', 'a')).toBeNull();
    expect(await snapshotsOf('a')).toBeNull();
    vi.unstubAllGlobals();
  });

  test('site data forbidden: told as refused, and tried again when asked again', async () => {
    const open = vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => {
      throw new DOMException('forbidden', 'SecurityError');
    });
    expect(await openKerf()).toBeNull();
    expect(await putThings('drafts', [draft('a')])).toBe('kept');
    expect(open).toHaveBeenCalledTimes(2);
  });

  test('a browser that never answers is not waited for', async () => {
    vi.useFakeTimers();
    vi.spyOn(indexedDB, 'open').mockReturnValue(new EventTarget() as unknown as IDBOpenDBRequest);
    const asked = openKerf();
    await vi.advanceTimersByTimeAsync(4_000);
    expect(await asked).toBeNull();
  });

  test('a newer site in another tab gets the database, and this page is refused from then on', async () => {
    await putThings('drafts', [draft('a')]);
    const newer = await openDB('kerf', 2);
    expect(await newer.get('drafts', 'a')).toEqual(draft('a'));
    expect(await putThings('drafts', [draft('b')])).toBe('refused');
    newer.close();
  });
});

test('ids differ, and are safe in an address and a file name', () => {
  const ids = Array.from({ length: 1000 }, newId);
  expect(new Set(ids).size).toBe(1000);
  expect(ids.every((id) => /^[0-9a-f]{24}$/.test(id))).toBe(true);
});
