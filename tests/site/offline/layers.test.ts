import { afterEach, beforeEach, expect, test } from 'vitest';
import type { FileList } from '../../../src/site/offline/kept-files.ts';
import { dropOthers, fillLayer, isWhole, type Place, versionsOf } from '../../../src/site/offline/layers.ts';
import { browserOf, hash, Shelf } from './browser-caches.ts';

const place: Place = { address: 'https://shop.example/sub/', folder: '/sub/' };

const { shelves, server, beginAnew, end } = browserOf(place.address);
beforeEach(beginAnew);
afterEach(end);

function listOf(version: string, files: Record<string, string>): FileList {
  const first = Object.fromEntries(Object.entries(files).map(([path, text]) => [path, hash(text)]));
  return { version, first, second: {}, sizes: {} as FileList['sizes'] };
}

const one = { 'index.html': 'home', 'how-to/index.html': 'pages', 'assets/js/main.01234567.js': 'main' };

test('a layer is whole when its last file lies there, and is asked for by the folder', async () => {
  server.files = one;
  await fillLayer(place, 'first', listOf('v1', one));
  expect(await isWhole(place, 'first', 'v1')).toBe(true);
  expect(server.asked.sort()).toEqual(['', 'assets/js/main.01234567.js', 'how-to/']);
});

test('half a deployment leaves the old version whole, and goes on when the rest has come', async () => {
  server.files = one;
  await fillLayer(place, 'first', listOf('v1', one));
  const two = { ...one, 'index.html': 'new home', 'how-to/index.html': 'new pages' };
  server.files = { ...one, 'index.html': 'new home' };
  server.asked = [];
  await expect(fillLayer(place, 'first', listOf('v2', two))).rejects.toMatchObject({
    why: 'other',
    path: 'how-to/index.html',
  });
  expect(await isWhole(place, 'first', 'v1')).toBe(true);
  expect(await isWhole(place, 'first', 'v2')).toBe(false);
  // What did not change came from the old version, not over the network.
  expect(server.asked).not.toContain('assets/js/main.01234567.js');
  server.files = two;
  server.asked = [];
  await fillLayer(place, 'first', listOf('v2', two));
  expect(server.asked).toEqual(['how-to/']);
  await dropOthers(place, 'first', 'v2');
  expect(await versionsOf(place, 'first')).toEqual(['v2']);
});

test('a network that goes away and a full disk are told apart', async () => {
  server.files = {};
  await expect(fillLayer(place, 'first', listOf('v1', one))).rejects.toMatchObject({ why: 'network' });
  server.files = one;
  const shelf = new Shelf();
  shelf.most = 2;
  shelves.set('kerf /sub/ first v2', shelf);
  await expect(fillLayer(place, 'first', listOf('v2', one))).rejects.toMatchObject({ why: 'full' });
  shelf.most = 9;
  await fillLayer(place, 'first', listOf('v2', one));
  expect(await isWhole(place, 'first', 'v2')).toBe(true);
});

test('no file is fetched before its rest has come', async () => {
  server.files = one;
  let come: () => void = () => undefined;
  const rest = new Promise<void>((resolve) => {
    come = resolve;
  });
  const filled = fillLayer(
    place,
    'first',
    listOf('v1', one),
    () => undefined,
    () => rest,
  );
  await new Promise((resolve) => setTimeout(resolve));
  expect(server.asked).toEqual([]);
  come();
  await filled;
  expect(server.asked).toHaveLength(3);
});
