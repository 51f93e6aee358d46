import { expect, test } from 'vitest';
import { Calm, quiet, takesText } from '../../../src/site/offline/calm.ts';
import { cacheName, filesOf, isNamedByContent, readCacheName } from '../../../src/site/offline/kept-files.ts';
import { heardWords, isWanted, sizeWords, stateWords } from '../../../src/site/offline/offline-words.ts';

test.each([
  ['', 'index.html'],
  ['index.html', 'index.html'],
  ['how-to/bubbles', 'how-to/bubbles/index.html'],
  ['how-to/bubbles/', 'how-to/bubbles/index.html'],
  ['how-to/bubbles.html', 'how-to/bubbles/index.html'],
  ['how-to/bubbles/index.html', 'how-to/bubbles/index.html'],
  ['404', '404.html'],
  ['assets/js/main.01234567.js', 'assets/js/main.01234567.js'],
])('the address “%s” may mean %s', (path, file) => {
  expect(filesOf(path)).toContain(file);
});

test.each([
  ['assets/js/main.01234567.js', true],
  ['assets/js/calculator-pour-heat.01234567.js', true],
  ['assets/fonts/KaTeX_AMS-Regular-73ea273a72f4aca30ca528cf9117470a.woff2', true],
  ['search.json', false],
  ['data/methods/first-tray.yaml', false],
  ['fonts/kerf-book.woff2', false],
])('whether %s is named by its content: %s', (path, named) => {
  expect(isNamedByContent(path)).toBe(named);
});

test('caches of other sites on the host are told apart by their folder', () => {
  expect(readCacheName('/a/', cacheName('/a/', 'second', 'v1'))).toEqual({ layer: 'second', version: 'v1' });
  expect(readCacheName('/', cacheName('/a/', 'first', 'v1'))).toBeUndefined();
  expect(readCacheName('/a/', 'something else')).toBeUndefined();
});

test('sizes have no more digits than they deserve', () => {
  expect([4_236, 3_460_000, 9_949_999, 9_950_000, 27_990_000].map(sizeWords)).toEqual([
    '0.0 MB',
    '3.5 MB',
    '9.9 MB',
    '10 MB',
    '28 MB',
  ]);
  const size = { files: 392, bytes: 28e6, gzip: 8e6 };
  expect(stateWords({ kept: 392, whole: true }, size)).toBe(
    'Kept whole: 28 MB, 8.0 MB over a network that compresses.',
  );
  expect(stateWords({ kept: 12, whole: false }, size)).toContain('12 of 392 files kept');
  expect(stateWords({ kept: 0, whole: false }, undefined)).toBe('Not kept.');
});

test('each way in which keeping may fail is said with a way out', () => {
  expect(heardWords({ refused: 'full', path: 'a' })).toMatch(/no space left .* press the button again/);
  expect(heardWords({ refused: 'network', path: 'a' })).toMatch(/goes on from there/);
  expect(heardWords({ refused: 'other', path: 'a' })).toMatch(/open the site again/);
});

test.each([
  ['/woods/ash?x=1', true],
  ['//elsewhere.example', false],
  ['/\\elsewhere.example', false],
  ['https://elsewhere.example', false],
  ['javascript:alert(1)', false],
])('an address from the address bar, %s, is linked to: %s', (page, wanted) => {
  expect(isWanted(page)).toBe(wanted);
});

test('nobody is disturbed who has typed lately', () => {
  let now = 1_000_000;
  const calm = new Calm(() => now);
  expect(calm.is(null)).toBe(true);
  calm.typed();
  now += quiet - 1;
  expect(calm.is(null)).toBe(false);
  now += 1;
  expect(calm.is(null)).toBe(true);
  expect(takesText(null)).toBe(false);
});
