import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import * as here from '../../../src/site/batch/kept-batches.ts';
import { allThings, closeKerf, putThings } from '../../../src/site/kept/database.ts';
import { batchOf, finished, started } from '../../method/batch/kit.ts';

/** The same module once more, as another tab of the browser has it. */
const there = (await import(`${'../../../src/site/batch/kept-batches.ts'}?another-tab`)) as typeof here;

const one = started('s', 'seal', '2027-01-12 09:00');
const other = finished('f', 'seal', '2027-01-12 09:20');
const ids = ({ keptBatches }: typeof here) => keptBatches().batches?.map(({ entries }) => entries.map(({ id }) => id));
const stored = async () =>
  (await allThings('batches'))?.flatMap(({ records }) => records as { entries: { id: string }[] }[]);

beforeEach(async () => {
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
});
afterEach(async () => {
  here.forgetBatches();
  there.forgetBatches();
  await closeKerf();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('two tabs write at the same time: nothing of either is lost, and each sees the other', async () => {
  for (const tab of [here, there]) tab.watchBatches(() => undefined);
  await vi.waitFor(() => expect([ids(here), ids(there)]).toEqual([[], []]));
  await Promise.all([here.addBatches([batchOf([one])]), there.addBatches([batchOf([other])])]);
  expect((await stored())?.map(({ entries }) => entries.map(({ id }) => id))).toEqual([['s', 'f']]);
  await vi.waitFor(() => expect([ids(here), ids(there)]).toEqual([[['s', 'f']], [['s', 'f']]]));
});

test('what is stored is there again, and a batch of the same id that was opened otherwise stands beside it', async () => {
  await here.addBatches([batchOf([one])]);
  await here.addBatches([batchOf([other], { title: 'Another' })]);
  here.forgetBatches();
  here.watchBatches(() => undefined);
  await vi.waitFor(() => expect(here.keptBatches().batches).toHaveLength(2));
  expect(await stored()).toHaveLength(2);
});

test('where the browser stores nothing it lasts as long as the page, is said, and is stored once it may be', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const { kept } = await here.addBatches([batchOf([one])]);
  expect(kept).toBe('refused');
  expect([ids(here), here.keptBatches().kept]).toEqual([[['s']], 'refused']);
  vi.unstubAllGlobals();
  globalThis.indexedDB = new IDBFactory();
  expect((await here.addBatches([batchOf([other])])).kept).toBe('kept');
  expect((await stored())?.map(({ entries }) => entries.map(({ id }) => id))).toEqual([['s', 'f']]);
});

test('stored records that cannot be read stay where they are, and can be taken as text', async () => {
  const bad = { batch: 9, id: 'fair-trays', note: '<script>' };
  await putThings('batches', [{ id: 'fair-trays', changed: 1, records: [bad, batchOf([one])] }]);
  here.watchBatches(() => undefined);
  await vi.waitFor(() => expect(here.keptBatches().damaged.map((text) => JSON.parse(text))).toEqual([bad]));
  await here.addBatches([batchOf([other])]);
  expect(await stored()).toEqual([batchOf([one, other]), bad]);
});

test('a batch is taken out of the browser with all that bears its id', async () => {
  await here.addBatches([batchOf([one]), batchOf([], { id: 'other' })]);
  await here.dropBatch('fair-trays');
  expect(here.keptBatches().batches?.map(({ id }) => id)).toEqual(['other']);
  expect(await stored()).toHaveLength(1);
});
