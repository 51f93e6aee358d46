import { createHash } from 'node:crypto';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { FileList } from '../../../src/site/offline/kept-files.ts';
import { dropOthers, fillLayer, isWhole, type Place, versionsOf } from '../../../src/site/offline/layers.ts';

const place: Place = { address: 'https://shop.example/sub/', folder: '/sub/' };
const hash = (text: string) => createHash('sha256').update(text).digest('base64');

/** Caches of a browser, as far as they are used. */
class Shelf {
  readonly entries = new Map<string, string>();
  most = Number.POSITIVE_INFINITY;
  async put(url: string, response: Response) {
    if (this.entries.size >= this.most) throw Object.assign(new Error('full'), { name: 'QuotaExceededError' });
    this.entries.set(url, await response.text());
  }
  async match(url: string) {
    const text = this.entries.get(url);
    return text === undefined ? undefined : new Response(text);
  }
  async keys() {
    return [...this.entries.keys()].map((url) => ({ url }));
  }
}

const shelves = new Map<string, Shelf>();
/** What the server has now, and what was asked of it. */
let server: Record<string, string> = {};
let asked: string[] = [];

beforeEach(() => {
  shelves.clear();
  asked = [];
  vi.stubGlobal('caches', {
    has: async (name: string) => shelves.has(name),
    open: async (name: string) => shelves.get(name) ?? shelves.set(name, new Shelf()).get(name),
    keys: async () => [...shelves.keys()],
    delete: async (name: string) => shelves.delete(name),
  });
  vi.stubGlobal('fetch', async (url: string, { integrity }: { integrity?: string } = {}) => {
    const path = url.slice(place.address.length);
    const text = server[path.endsWith('/') || path === '' ? `${path}index.html` : path];
    if (integrity) asked.push(path);
    // A browser fails alike where the network is gone and where the bytes are others.
    if (text === undefined || (integrity && integrity !== `sha256-${hash(text)}`)) throw new TypeError('Failed');
    return new Response(text);
  });
});
afterEach(() => vi.unstubAllGlobals());

function listOf(version: string, files: Record<string, string>): FileList {
  const first = Object.fromEntries(Object.entries(files).map(([path, text]) => [path, hash(text)]));
  return { version, first, second: {}, sizes: {} as FileList['sizes'] };
}

const one = { 'index.html': 'home', 'how-to/index.html': 'pages', 'assets/js/main.01234567.js': 'main' };

test('a layer is whole when its last file lies there, and is asked for by the folder', async () => {
  server = one;
  await fillLayer(place, 'first', listOf('v1', one));
  expect(await isWhole(place, 'first', 'v1')).toBe(true);
  expect(asked.sort()).toEqual(['', 'assets/js/main.01234567.js', 'how-to/']);
});

test('half a deployment leaves the old version whole, and goes on when the rest has come', async () => {
  server = one;
  await fillLayer(place, 'first', listOf('v1', one));
  const two = { ...one, 'index.html': 'new home', 'how-to/index.html': 'new pages' };
  server = { ...one, 'index.html': 'new home' };
  asked = [];
  await expect(fillLayer(place, 'first', listOf('v2', two))).rejects.toMatchObject({
    why: 'other',
    path: 'how-to/index.html',
  });
  expect(await isWhole(place, 'first', 'v1')).toBe(true);
  expect(await isWhole(place, 'first', 'v2')).toBe(false);
  // What did not change came from the old version, not over the network.
  expect(asked).not.toContain('assets/js/main.01234567.js');
  server = two;
  asked = [];
  await fillLayer(place, 'first', listOf('v2', two));
  expect(asked).toEqual(['how-to/']);
  await dropOthers(place, 'first', 'v2');
  expect(await versionsOf(place, 'first')).toEqual(['v2']);
});

test('a network that goes away and a full disk are told apart', async () => {
  server = {};
  await expect(fillLayer(place, 'first', listOf('v1', one))).rejects.toMatchObject({ why: 'network' });
  server = one;
  const shelf = new Shelf();
  shelf.most = 2;
  shelves.set('kerf /sub/ first v2', shelf);
  await expect(fillLayer(place, 'first', listOf('v2', one))).rejects.toMatchObject({ why: 'full' });
  shelf.most = 9;
  await fillLayer(place, 'first', listOf('v2', one));
  expect(await isWhole(place, 'first', 'v2')).toBe(true);
});
