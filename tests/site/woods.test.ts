import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findWoods } from '../../src/model/species/find-woods.ts';
import {
  compareLimit,
  foodWords,
  origins,
  poreWords,
  readQuery,
  selectWoods,
  sorts,
  type WoodsQuery,
  writeQuery,
} from '../../src/site/woods/query.ts';
import type { WoodRow } from '../../src/site/woods/row.ts';

function wood(id: string, given: Partial<WoodRow> = {}): WoodRow {
  const name = `${id.charAt(0).toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`;
  return {
    id,
    name,
    tradeNames: [],
    botanical: null,
    kind: 'hardwood',
    origin: 'North America',
    hardness: null,
    tangential: null,
    radial: null,
    swing: null,
    gravity: null,
    arrangement: null,
    openness: null,
    food: 'not-enough-known',
    foodSummary: '',
    effects: 0,
    ...given,
  };
}

const published = (value: number) => ({ value, basis: 'published' as const });
const woods: readonly WoodRow[] = [
  wood('black-maple', { tradeNames: ['hard maple'], hardness: published(5200), food: 'usual' }),
  wood('red-alder', { hardness: published(2600), swing: published(1.5), arrangement: 'diffuse-porous' }),
  wood('sugar-maple', {
    tradeNames: ['hard maple'],
    botanical: 'Acer saccharum',
    hardness: published(6400),
    swing: published(2.1),
    food: 'usual',
  }),
  wood('teak', { swing: published(1.1), origin: 'Asia and Oceania', food: 'better-not' }),
  wood('white-fir', { kind: 'softwood', hardness: published(2100), arrangement: 'none' }),
];
const plain = readQuery('');
const ids = (query: Partial<WoodsQuery>) => selectWoods(woods, { ...plain, ...query }).map(({ id }) => id);

describe('findWoods', () => {
  it.each([
    ['sugar', ['sugar-maple']],
    ['MAPLE', ['sugar-maple', 'black-maple']],
    ['hard map', ['sugar-maple', 'black-maple']],
    ['acer', ['sugar-maple']],
    ['saccharum acer', ['sugar-maple']],
    ['sugar-maple', ['sugar-maple']],
    ['aple', []],
    ['fir white', ['white-fir']],
  ])('“%s” finds %j', (text, expected) => {
    expect(findWoods(woods, text).map(({ id }) => id)).toEqual(expected);
  });

  it('finds every wood for an empty text', () => {
    expect(findWoods(woods, '  ')).toEqual(woods);
  });

  it('never throws and never invents, whatever is typed', () => {
    fc.assert(fc.property(fc.string(), (text) => findWoods(woods, text).every((found) => woods.includes(found))));
  });
});

describe('selectWoods', () => {
  it.each<[string, Partial<WoodsQuery>, string[]]>([
    ['names in order', {}, ['black-maple', 'red-alder', 'sugar-maple', 'teak', 'white-fir']],
    [
      'hardest first, unknown last',
      { sort: 'hardest' },
      ['sugar-maple', 'black-maple', 'red-alder', 'white-fir', 'teak'],
    ],
    [
      'softest first, unknown last',
      { sort: 'softest' },
      ['white-fir', 'red-alder', 'black-maple', 'sugar-maple', 'teak'],
    ],
    ['moves least first', { sort: 'moves-least' }, ['teak', 'red-alder', 'sugar-maple', 'black-maple', 'white-fir']],
    ['moves most first', { sort: 'moves-most' }, ['sugar-maple', 'red-alder', 'teak', 'black-maple', 'white-fir']],
    [
      'usual choices for food first, the harder before',
      { sort: 'food' },
      ['sugar-maple', 'black-maple', 'teak', 'red-alder', 'white-fir'],
    ],
    ['softwoods', { kind: 'softwood' }, ['white-fir']],
    ['a pore arrangement', { pores: 'diffuse-porous' }, ['red-alder']],
    ['an origin', { origin: 'Asia and Oceania' }, ['teak']],
    ['at least as hard as another, which counts itself', { hard: 'black-maple' }, ['black-maple', 'sugar-maple']],
    ['moving no more than another', { still: 'red-alder' }, ['red-alder', 'teak']],
    [
      'a yardstick that is no wood is no filter',
      { hard: 'plywood' },
      ['black-maple', 'red-alder', 'sugar-maple', 'teak', 'white-fir'],
    ],
    ['a name and a filter together', { q: 'maple', hard: 'sugar-maple' }, ['sugar-maple']],
  ])('%s', (_title, query, expected) => {
    expect(ids(query)).toEqual(expected);
  });
});

const query: fc.Arbitrary<WoodsQuery> = fc.record({
  q: fc.string(),
  pores: fc.constantFrom('' as const, ...(Object.keys(poreWords) as (keyof typeof poreWords)[])),
  food: fc.constantFrom('' as const, ...(Object.keys(foodWords) as (keyof typeof foodWords)[])),
  origin: fc.constantFrom('' as const, ...origins),
  kind: fc.constantFrom('' as const, 'hardwood' as const, 'softwood' as const),
  hard: fc.constantFrom('', 'sugar-maple'),
  still: fc.constantFrom('', 'teak'),
  sort: fc.constantFrom(...(Object.keys(sorts) as (keyof typeof sorts)[])),
  compare: fc.uniqueArray(fc.stringMatching(/^[a-z]+(-[a-z]+)*$/), { maxLength: compareLimit }),
});

describe('the address of a query', () => {
  it('read again is the query', () => {
    fc.assert(
      fc.property(query, (asked) => {
        expect(readQuery(writeQuery(asked))).toEqual(asked);
      }),
    );
  });

  it('is empty for the plain list', () => {
    expect(writeQuery(plain)).toBe('');
  });

  it('leaves out what it does not know, and all beyond four woods', () => {
    expect(readQuery('?sort=price&pores=many&compare=a,b,a,c,d,e')).toEqual({
      ...plain,
      compare: ['a', 'b', 'c', 'd'],
    });
  });

  it('never throws, whatever stands in it', () => {
    fc.assert(fc.property(fc.string(), (search) => selectWoods(woods, readQuery(`?${search}`)).length <= woods.length));
  });
});
