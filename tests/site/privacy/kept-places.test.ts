import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, test, vi } from 'vitest';
import { closeKerf, putThings } from '../../../src/site/kept/database.ts';
import {
  clearAll,
  everythingAsText,
  isOwnKey,
  keptPlaces,
  storageWords,
} from '../../../src/site/privacy/kept-places.ts';

const src = fileURLToPath(new URL('../../../src', import.meta.url));

/** The part of local storage that is used: its keys are its own properties, as in a browser. */
class Storage {
  getItem(key: string): string | null {
    return (this as unknown as Record<string, string>)[key] ?? null;
  }
  removeItem(key: string): void {
    delete (this as unknown as Record<string, string>)[key];
  }
}

const tab = () => (globalThis as unknown as { window: { sessionStorage: Storage } }).window.sessionStorage;
const storage = () => (globalThis as unknown as { window: { localStorage: Storage } }).window.localStorage;

beforeEach(async () => {
  // Files of tests share the modules, and so the database.
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
  vi.stubGlobal('window', { localStorage: new Storage(), sessionStorage: new Storage(), dispatchEvent: () => true });
  vi.stubGlobal('StorageEvent', Event);
  vi.stubGlobal('navigator', {});
});

test('what is kept is listed by name and size, saved whole, and taken away to the last; another site’s is left', async () => {
  Object.assign(storage(), { 'kerf-units': 'inch eighths', 'theme-dfe': 'dark', other: 'x' });
  Object.assign(tab(), { 'kerf-left:address': '["/quote","","?maker=A"]', other: 'x' });
  expect(await putThings('drafts', [{ id: 'a', changed: 1, text: 'board: ash' }])).toBe('kept');
  const places = await keptPlaces('/');
  expect(places.map(({ name }) => name)).toEqual(['kerf-units', 'theme-dfe', 'drafts']);
  expect(places[0]).toMatchObject({ kind: 'storage', bytes: 'kerf-unitsinch eighths'.length });
  const saved = JSON.parse(await everythingAsText());
  expect(saved.storage).toEqual({ 'kerf-units': 'inch eighths', 'theme-dfe': 'dark' });
  expect(saved.database.drafts).toEqual([{ id: 'a', changed: 1, text: 'board: ash' }]);

  expect(await clearAll('/')).toEqual([]);
  expect(Object.keys(storage())).toEqual(['other']);
  expect(Object.keys(tab())).toEqual(['other']);
  expect(await keptPlaces('/')).toEqual([]);
  // To look for what is kept makes nothing.
  expect(await indexedDB.databases()).toEqual([]);
});

test('every key that the code writes has its line, and is taken away', () => {
  const keys = readdirSync(src, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .flatMap((file) => [...readFileSync(join(src, file), 'utf8').matchAll(/(?:Key = |localStorage\.\w+\()'([^']+)'/g)])
    .map((match) => match[1] as string);
  expect(keys.length).toBeGreaterThan(5);
  for (const key of keys) {
    expect(Object.keys(storageWords), key).toContain(key);
    expect(isOwnKey(key), key).toBe(true);
  }
});
