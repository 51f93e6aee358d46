import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileOf, fromFile, pathOf } from '../../../src/site/stick/addresses.ts';

test.each([
  ['/', '/', 'index.html'],
  ['/woods/', '/', 'woods/index.html'],
  ['/woods', '/', 'woods/index.html'],
  ['/woods/white-ash/?width=250+mm#dry', '/', 'woods/white-ash/index.html?width=250+mm#dry'],
  ['/woods?q=a/b.c', '/', 'woods/index.html?q=a/b.c'],
  ['/data/methods/first-tray.yaml', '/', 'data/methods/first-tray.yaml'],
  ['/boards/', '/boards/', 'index.html'],
  ['/boards', '/boards/', 'index.html'],
  ['/boards/woods/', '/boards/', 'woods/index.html'],
])('%s of a site in %s is the file %s', (path, base, file) => {
  expect(fileOf(path, base)).toBe(file);
});

test.each([
  ['https://elsewhere.example/', '/'],
  ['//elsewhere.example/woods/', '/'],
  ['mailto:somebody@school.example', '/'],
  ['#dry', '/'],
  ['../woods/', '/'],
  ['data:,', '/'],
  ['/woods/', '/boards/'],
  ['/boardsmen/', '/boards/'],
])('%s is none of a site in %s', (path, base) => {
  expect(fileOf(path, base)).toBeUndefined();
});

test.each([
  ['index.html', 'woods/index.html', 'woods/index.html'],
  ['woods/index.html', 'index.html', '../index.html'],
  ['woods/white-ash/index.html', 'woods/index.html', '../index.html'],
  ['woods/index.html', 'woods/index.html', 'index.html'],
  ['woods/index.html', 'assets/js/main.js', '../assets/js/main.js'],
  ['a/b/c/index.html', 'a/x/index.html?q=1/2', '../../x/index.html?q=1/2'],
])('from %s to %s it is %s', (from, to, link) => {
  expect(fromFile(from, to)).toBe(link);
});

const name = fc.stringMatching(/^[a-z][a-z0-9-]{0,8}$/);

test('a browser follows a link from any file to any other', () => {
  fc.assert(
    fc.property(fc.array(name, { maxLength: 4 }), fc.array(name, { maxLength: 4 }), (here, there) => {
      const from = [...here, 'index.html'].join('/');
      const to = [...there, 'index.html'].join('/');
      const root = 'file:///media/stick/kerf-and-cure/site/';
      expect(new URL(fromFile(from, to), root + from).href).toBe(root + to);
    }),
  );
});

test('a page’s file stands for its path, and its path for the file', () => {
  fc.assert(
    fc.property(fc.array(name, { maxLength: 4 }), fc.constantFrom('/', '/boards/', '/wood/boards/'), (parts, base) => {
      const path = base + parts.map((part) => `${part}/`).join('');
      expect(pathOf(fileOf(path, base) as string, base)).toBe(path);
    }),
  );
});
