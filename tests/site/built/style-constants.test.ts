import postcss from 'postcss';
import { expect, test } from 'vitest';
import { constantsOf, dropOverruled, writeOut } from '../../../src/site/built/style-constants.ts';

const constants = (css: string, named: readonly string[] = []) =>
  Object.fromEntries(constantsOf([postcss.parse(css)], (name) => named.includes(name)));

test('a property that is set once for all, to a plain value or to such ones, is a constant', () => {
  expect(constants(':root{--half:calc(var(--gap)/2);--gap:4px}')).toEqual({ '--half': 'calc(4px/2)', '--gap': '4px' });
});

test.each([
  ['set twice', ':root{--a:1px}[data-theme=dark]{--a:2px}'],
  ['set anew for paper', ':root{--a:1px}@media print{:root{--a:2px}}'],
  ['set for paper only', '@media print{:root{--a:2px}}'],
  ['set on a part', '.part{--a:1px}'],
  ['set before all', ':root{--a:1px!important}'],
  ['asking for what changes', ':root{--a:var(--b);--b:1px}.part{--b:2px}'],
  ['asking for itself', ':root{--a:var(--a)}'],
  ['with another in its place', ':root{--a:var(--c,1px)}'],
])('a property %s is none', (_, css) => {
  expect(constants(css)).not.toHaveProperty('--a');
});

test.each([
  ['set in a layer', '@layer theirs{:root{--a:1px}}'],
  ['set for light and dark alike', ':root,[data-theme=dark]{--a:1px}'],
])('a property %s, and nowhere else, is a constant', (_, css) => {
  expect(constants(css)).toEqual({ '--a': '1px' });
});

test('a property that a page or a script names is none', () => {
  expect(constants(':root{--a:1px}', ['a'])).toEqual({});
});

test('constants are written where they are read, and nothing else is', () => {
  const sheet = postcss.parse('a{margin:0 var(--a) var( --b );width:calc(1px - var(--a));color:var(--a,red)}');
  expect(writeOut(sheet, new Map([['--a', '-2px']]))).toBe(2);
  expect(sheet.toString()).toBe('a{margin:0 -2px var( --b );width:calc(1px - -2px);color:var(--a,red)}');
});

test('values that stand side by side stay two', () => {
  const sheet = postcss.parse('a{margin:var(--a)0 var(--b)var(--a);border:var(--b)solid red;width:calc(var(--b)*-1)}');
  writeOut(
    sheet,
    new Map([
      ['--a', '0'],
      ['--b', '2px'],
    ]),
  );
  expect(sheet.toString()).toMatch(/^a\{margin:0 0 2px +0;border:2px solid red;width:calc\(2px\*-1\)\}$/);
});

test('what the framework sets in a layer and the site sets again goes, and nothing else of either', () => {
  const sheet = postcss.parse(
    '@layer theirs{:root{--a:1px;--b:1px}html[data-theme=dark]{--a:2px}.part{--a:3px}}:root{--a:4px}.part{--b:5px}',
  );
  expect(dropOverruled([sheet])).toBe(2);
  expect(sheet.toString()).toBe('@layer theirs{:root{--b:1px}.part{--a:3px}}:root{--a:4px}.part{--b:5px}');
});
