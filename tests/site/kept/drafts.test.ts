import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Channel } from '../../../src/site/kept/channel.ts';
import { allThings, closeKerf, oneThing, openKerf, putThings } from '../../../src/site/kept/database.ts';
import { DraftShelf } from '../../../src/site/kept/drafts.ts';

beforeEach(async () => {
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
});
afterEach(async () => {
  await closeKerf();
  vi.restoreAllMocks();
});

/** Two tabs: what one says the other hears. */
function twoTabs(): [DraftShelf, DraftShelf] {
  const ends: Channel[] = [0, 1].map((at) => ({
    onmessage: null,
    postMessage: (data) => ends[1 - at]?.onmessage?.({ data } as MessageEvent),
    close: () => undefined,
  }));
  return [new DraftShelf(ends[0]), new DraftShelf(ends[1])];
}

const settled = async (shelf: DraftShelf) => {
  while (shelf.shelf().unstored.length > 0) await shelf.flush();
};

describe('drafts', () => {
  test('what is typed is on the page at once and in the database when typing pauses', async () => {
    const shelf = new DraftShelf();
    await shelf.load();
    const { id } = shelf.create('Tray', 'a');
    await settled(shelf);
    shelf.change(id, { text: 'ab' });
    shelf.change(id, { text: 'abc', history: { done: [1] } });
    expect(shelf.get(id)?.text).toBe('abc');
    expect((await oneThing('drafts', id))?.text).toBe('a');
    await vi.waitFor(async () =>
      expect(await oneThing('drafts', id)).toMatchObject({ text: 'abc', history: { done: [1] } }),
    );
    expect(shelf.shelf().unstored).toEqual([]);
  });

  test('a text that comes without its history has none, and a new name keeps it', async () => {
    const shelf = new DraftShelf();
    const { id } = shelf.create('Tray', 'a');
    shelf.change(id, { text: 'ab', history: [1] });
    shelf.change(id, { name: 'Board' });
    expect(shelf.get(id)).toMatchObject({ name: 'Board', text: 'ab', history: [1] });
    shelf.change(id, { text: 'other' });
    expect(shelf.get(id)).not.toHaveProperty('history');
    shelf.change(id, { text: 'big', history: 'x'.repeat(400_001) });
    await settled(shelf);
    expect(await oneThing('drafts', id)).not.toHaveProperty('history');
  });

  test('come back after a reload, the last changed first; what was typed before they came stays', async () => {
    const before = new DraftShelf();
    const old = before.create('Old', '1');
    await settled(before);
    before.change(old.id, { text: '2' });
    await settled(before);
    const after = new DraftShelf();
    const fresh = after.create('Fresh', '3');
    await after.load();
    expect(after.shelf()).toMatchObject({ loaded: true, damaged: [], storage: 'kept' });
    expect(after.shelf().drafts.map(({ name, text }) => [name, text])).toEqual([
      ['Fresh', '3'],
      ['Old', '2'],
    ]);
    expect(after.get(fresh.id)?.text).toBe('3');
  });

  test('what cannot be read as a draft is shown as it is, and stays until it is removed', async () => {
    await putThings('drafts', [
      { id: 'no text', changed: 1, name: 'Lost', text: 7 },
      { id: 'no name', changed: 1, text: 'title: Tray' },
    ]);
    const shelf = new DraftShelf();
    await shelf.load();
    expect(shelf.shelf().drafts).toEqual([]);
    expect(shelf.shelf().damaged).toEqual([
      { id: 'no name', content: 'title: Tray' },
      { id: 'no text', content: expect.stringContaining('"name": "Lost"') },
    ]);
    shelf.remove('no name');
    await vi.waitFor(async () => expect(await allThings('drafts')).toHaveLength(1));
    expect(shelf.shelf().damaged.map(({ id }) => id)).toEqual(['no text']);
  });

  test('a removed draft can be put back as it was, history and all', async () => {
    const shelf = new DraftShelf();
    const { id } = shelf.create('Tray', 'a');
    shelf.change(id, { text: 'ab', history: [1] });
    await settled(shelf);
    const removed = shelf.remove(id);
    await vi.waitFor(async () => expect(await oneThing('drafts', id)).toBeUndefined());
    if (removed) shelf.put(removed);
    await settled(shelf);
    expect(await oneThing('drafts', id)).toMatchObject({ name: 'Tray', text: 'ab', history: [1] });
  });
});

describe('a disk that is full, and a browser that stores nothing', () => {
  test('the text stays on the page, it is said, and the next write that is done stores all of it', async () => {
    const shelf = new DraftShelf();
    const { id } = shelf.create('Tray', 'a');
    await settled(shelf);
    const real = await openKerf();
    const broken = vi.spyOn(real as object as { transaction: () => unknown }, 'transaction').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    shelf.change(id, { text: 'ab' });
    expect(await shelf.flush()).toBe('full');
    expect(shelf.shelf()).toMatchObject({ storage: 'full', unstored: [id] });
    expect(shelf.get(id)?.text).toBe('ab');
    broken.mockRestore();
    expect(await shelf.flush()).toBe('kept');
    expect(shelf.shelf()).toMatchObject({ storage: 'kept', unstored: [] });
    expect((await oneThing('drafts', id))?.text).toBe('ab');
  });

  test('without a database everything works until the page is left', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const shelf = new DraftShelf();
    await shelf.load();
    expect(shelf.shelf().storage).toBe('refused');
    const { id } = shelf.create('Tray', 'a');
    shelf.change(id, { text: 'ab' });
    expect(await shelf.flush()).toBe('refused');
    expect(shelf.shelf().drafts.map(({ text }) => text)).toEqual(['ab']);
    vi.unstubAllGlobals();
  });
});

describe('two tabs', () => {
  test('see each other’s drafts, and one that is removed goes from both', async () => {
    const [one, other] = twoTabs();
    const { id } = one.create('Tray', 'a');
    await settled(one);
    await vi.waitFor(() => expect(other.get(id)?.text).toBe('a'));
    one.change(id, { text: 'ab' });
    await settled(one);
    await vi.waitFor(() => expect(other.get(id)?.text).toBe('ab'));
    other.remove(id);
    await vi.waitFor(() => expect(one.get(id)).toBeUndefined());
  });

  test('what is typed and not stored yet is not overwritten by the other tab', async () => {
    const [one, other] = twoTabs();
    const { id } = one.create('Tray', 'a');
    await settled(one);
    await vi.waitFor(() => expect(other.get(id)).toBeDefined());
    one.change(id, { text: 'typed here' });
    other.change(id, { text: 'typed there' });
    await other.flush();
    expect(one.get(id)?.text).toBe('typed here');
    const saved = await one.fork(id, 'Tray (from this tab)');
    expect(saved?.text).toBe('typed here');
    expect(one.get(id)?.text).toBe('typed there');
    await settled(one);
    expect((await allThings('drafts'))?.map(({ text }) => text).sort()).toEqual(['typed here', 'typed there']);
  });
});
