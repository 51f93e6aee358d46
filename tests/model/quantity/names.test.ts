import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlace } from '../../../src/calculators/kit/climate-field.ts';
import { matchOptions } from '../../../src/calculators/view/match-options.ts';
import { searchClimates } from '../../../src/model/moisture/climates.ts';
import { nameKey } from '../../../src/model/quantity/index.ts';
import { searchSpecies } from '../../../src/model/species/index.ts';

describe('the key under which names are compared', () => {
  test.each([
    ['Maple, sugar', 'maple sugar'],
    ['sugar-maple', 'sugar maple'],
    ['Québec', 'quebec'],
    ['  St. John’s ', 'st johns'],
    ["St. John's", 'st johns'],
    ['Bété', 'bete'],
    ['Tromsø', 'tromso'],
    ['Wrocław', 'wroclaw'],
    ['Weißbuche', 'weissbuche'],
    ['½ in', '1 2 in'],
    ['…', ''],
    ['Ясень', 'ясень'],
  ])('%s is %s', (text, key) => {
    expect(nameKey(text)).toBe(key);
  });

  test('an accent never parts a word, and the key of a key is itself', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const key = nameKey(text);
        expect(nameKey(key)).toBe(key);
      }),
    );
    expect(nameKey('e\u0301bene')).toBe(nameKey('\u00e9bene'));
  });
});

describe('every place where a name is typed takes it with and without accents', () => {
  test('a list of options', () => {
    const options = [{ value: 'quebec-qc', label: 'Québec, Quebec' }];
    expect(matchOptions(options, 'quebec')).toEqual(options);
    expect(matchOptions(options, 'Québec')).toEqual(options);
  });

  test('places', () => {
    const found = searchClimates('quebec').map(({ id }) => id);
    expect(found.length).toBeGreaterThan(0);
    expect(searchClimates('québec').map(({ id }) => id)).toEqual(found);
    const place = searchClimates('quebec')[0]?.place ?? '';
    expect(readPlace(place.replace('e', 'é'))).toEqual(readPlace(place));
  });

  test('woods', () => {
    expect(searchSpecies('bété').map(({ id }) => id)).toEqual(searchSpecies('bete').map(({ id }) => id));
  });
});
