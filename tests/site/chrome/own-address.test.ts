import { expect, test } from 'vitest';
import { addressChange } from '../../../src/site/chrome/own-address.ts';
import { asPage } from '../../../src/site/page/address.ts';

test.each([
  ['/woods', '/woods/'],
  ['/woods/', '/woods/'],
  ['/', '/'],
  ['/boards/woods/white-ash?width=250+mm#dry', '/boards/woods/white-ash/?width=250+mm#dry'],
  ['/woods/?q=a/b', '/woods/?q=a/b'],
  ['/how-to#a/b', '/how-to/#a/b'],
  ['/data/methods/first-tray.yaml', '/data/methods/first-tray.yaml'],
])('%s leads to %s', (path, page) => {
  expect(asPage(path)).toBe(page);
});

test.each([
  ['/woods', '/woods/'],
  ['/woods/index.html', '/woods/'],
  ['/woods.html', '/woods/'],
  ['/boards/index.html', '/boards/'],
  ['/index.html', '/'],
])('a page asked for as %s is written as its own address %s', (path, own) => {
  expect(addressChange(path, own)).toEqual({ write: own });
});

test('a page asked for by its own address stays as it is', () => {
  expect(addressChange('/woods/', '/woods/')).toBeUndefined();
});

test.each([
  ['/woods/white-ash.html', '/woods/white-ash/'],
  ['/woods/white-ash/index.html', '/woods/white-ash/'],
  ['/index.html', '/'],
  ['/boards/index.html', '/boards/'],
])('where there is no page, %s is tried as %s', (path, page) => {
  expect(addressChange(path, '/404.html')).toEqual({ go: page });
});

test.each(['/404.html', '/no/such/page', '/no/such/page/'])(
  'where there is no page, %s stays as it was typed',
  (path) => {
    expect(addressChange(path, '/404.html')).toBeUndefined();
    expect(addressChange(`/boards${path}`, '/boards/404.html')).toBeUndefined();
  },
);
