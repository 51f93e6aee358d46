import { describe, expect, test } from 'vitest';
import { docstringsOf } from '../../src/library/docstrings.ts';
import { entries } from '../../src/library/entries.ts';
import { root } from '../../src/store/index.ts';

const rooms = Object.entries(entries).map(([name, { source }]) => ({ name, items: docstringsOf(root, source) }));
const functions = rooms.flatMap(({ name, items }) =>
  items.filter(({ kind }) => kind === 'function').map((item) => ({ ...item, of: `${name} ${item.name}` })),
);

describe.each(rooms)('$name', ({ items }) => {
  test('says of every export what it is', () => {
    expect(items.length).toBeGreaterThan(5);
    expect(items.filter(({ about }) => !/^\S.{10,}/s.test(about)).map(({ name }) => name)).toEqual([]);
  });

  test('describes no argument that the export does not take', () => {
    const unknown = items.flatMap(({ name, declared, params }) =>
      params
        .filter(({ name: param }) => !new RegExp(`\\b${param.split('.').at(-1)}\\b`).test(declared))
        // What is taken apart in the head of a function bears a name in its docstring alone.
        .filter(() => !/[({,]\s*[[{]/.test(declared))
        .map(({ name: param }) => `${name}: ${param}`),
    );
    expect(unknown).toEqual([]);
  });
});

/** Units as docstrings name them, and words for what has none. */
const unit =
  /\b(mm|cm|m|g|kg|ml|l|s|min|h|d|K|W|J|Pa|kPa|N|in|ft|degrees?|radians?|percent|inch(es)?|minutes|hours|days|seconds|board feet|metres?|millimetres?|grams?|pixels?|pt)\b|°|%|²|³|\bper\b|share|fraction|ratio|factor|count|number|index|digits|how many|times|unit|specific gravity|conversion|from 0 to 1|0 to 1|\bpieces?\b|same/i;

test('a function that takes a bare number says in which unit', () => {
  const silent = functions
    .filter(({ declared }) => /[(,]\s*\w+\??: number\b/.test(declared.slice(declared.indexOf('('))))
    .filter(
      ({ about, params, returns = '' }) => !unit.test([about, returns, ...params.map(({ text }) => text)].join(' ')),
    );
  expect(silent.map(({ of }) => of)).toEqual([]);
});

describe('what the pages show', () => {
  const find = (room: string, name: string) =>
    rooms.find((each) => each.name === room)?.items.find((item) => item.name === name);

  test('is the head of a function, its arguments, what it gives and its errors', () => {
    expect(find('store', 'readTable')).toEqual({
      name: 'readTable',
      kind: 'function',
      declared: 'function readTable(definition: TableDefinition): Table',
      about: 'Read one table.',
      params: [],
      throws: ['DataError that lists file:line:column of everything wrong in the file'],
      see: [],
    });
    expect(find('movement', 'assumedSection')?.params.map(({ text }) => text.split(' ')[0])).toEqual([
      'mm',
      'mm',
      'degrees',
    ]);
  });

  test('is where an equation is read, and that it was not where it is from memory', () => {
    expect(find('movement', 'changeByCoefficient')?.see).toEqual([
      'Equations: `wood-handbook-13-2`, fpl-gtr-190, Eq. 13-2',
    ]);
    expect(find('movement', 'changeByShrinkage')?.see).toEqual([
      'Equations: `wood-handbook-13-3`, fpl-gtr-190, Eq. 13-3, from memory and not yet checked',
    ]);
  });

  test('is a type with what its fields mean', () => {
    expect(find('calculators', 'Calculator')?.declared).toMatch(/^interface Calculator<[\s\S]*\/\*\* Also its address/);
  });

  test('is the same export under whichever entry it comes', () => {
    expect(find('method', 'problemLine')).toEqual(find('store', 'problemLine'));
  });
});
