import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  allSpecies,
  distance,
  nearestAlternatives,
  searchSpecies,
  speciesById,
} from '../../../src/model/species/index.ts';

const ids = (query: string) => searchSpecies(query).map((wood) => wood.id);
const wood = (id: string) => {
  const found = speciesById(id);
  if (!found) throw new Error(`no wood ${id}`);
  return found;
};

describe('search', () => {
  test.each([
    ['sugar maple', 'sugar-maple'],
    ['SUGAR MAPLE', 'sugar-maple'],
    ['white oak', 'white-oak'],
    ['yellow poplar', 'yellow-poplar'],
    ['tulipwood', 'yellow-poplar'],
    ['Juglans nigra', 'black-walnut'],
    ['jatoba', 'courbaril'],
    ['sipo', 'utile'],
    ['swietenia', 'true-mahogany'],
    ['walnt', 'black-walnut'],
    ['cherr', 'black-cherry'],
    ['port orford', 'port-orford-cedar'],
    ['ash', 'black-ash'],
  ])('“%s” finds %s', (query, id) => {
    expect(ids(query)).toContain(id);
  });

  test('a wood named outright comes first', () => {
    for (const each of allSpecies) expect(ids(each.name)[0], each.name).toBe(each.id);
  });

  test('a trade name brings all woods that carry it before any other', () => {
    expect(ids('hard maple').slice(0, 2).sort()).toEqual(['black-maple', 'sugar-maple']);
    expect(ids('southern yellow pine').slice(0, 4).sort()).toEqual([
      'loblolly-pine',
      'longleaf-pine',
      'shortleaf-pine',
      'slash-pine',
    ]);
  });

  test('an empty query gives every wood, nonsense none', () => {
    expect(searchSpecies('  ').length).toBe(allSpecies.length);
    expect(searchSpecies('qqqqqqqq')).toEqual([]);
  });

  test('any text gives woods of the list, each once', () => {
    fc.assert(
      fc.property(fc.string(), (query) => {
        const found = ids(query);
        expect(new Set(found).size).toBe(found.length);
        for (const id of found) expect(speciesById(id)).toBeDefined();
      }),
    );
  });
});

describe('nearest alternatives', () => {
  test('are near: black maple is among those of sugar maple, balsa is not', () => {
    const near = nearestAlternatives(wood('sugar-maple'), 12).map((each) => each.id);
    expect(near.length).toBe(12);
    expect(near).not.toContain('sugar-maple');
    expect(near).not.toContain('balsa');
    expect(near).toContain('black-maple');
  });

  test('are of the same kind', () => {
    for (const id of ['black-cherry', 'longleaf-pine']) {
      expect(new Set(nearestAlternatives(wood(id), 8).map((each) => each.kind))).toEqual(new Set([wood(id).kind]));
    }
  });

  test('come in order of distance, which is the same both ways and 0 to itself', () => {
    const ash = wood('white-ash');
    const far = nearestAlternatives(ash, 30).map((each) => distance(ash, each) ?? Number.NaN);
    expect(far).toEqual([...far].sort((one, other) => one - other));
    expect(distance(ash, ash)).toBe(0);
    const cherry = wood('black-cherry');
    expect(distance(ash, cherry)).toBeCloseTo(distance(cherry, ash) ?? Number.NaN, 12);
  });

  test('are none where hardness or coefficients are not published', () => {
    expect(nearestAlternatives(wood('gambel-oak'), 5)).toEqual([]);
    expect(distance(wood('gambel-oak'), wood('white-ash'))).toBeNull();
    expect(nearestAlternatives(wood('white-ash'), -1)).toEqual([]);
  });
});

test('there is a wood for every record: over two hundred and fifty', () => {
  expect(allSpecies.length).toBeGreaterThanOrEqual(261);
});
