import { describe, expect, test } from 'vitest';
import { checks } from '../../../src/model/movement/checks.ts';
import { equations } from '../../../src/model/movement/equations.ts';
import { flatsawnChange } from '../../../src/model/movement/index.ts';
import { allSpecies, type Species, speciesById } from '../../../src/model/species/index.ts';

describe('a flatsawn board of a wood', () => {
  test('sugar maple, 300 mm, 6 to 12 %, by Eq. 13-2', () => {
    const figure = flatsawnChange(speciesById('sugar-maple') as Species, 300, 6, 12);
    expect(figure?.value).toBeCloseTo(300 * 0.00353 * 6, 9);
    expect(figure?.low).toBeCloseTo(300 * 0.00353 * 6 * 0.75325, 9);
    expect(figure).toMatchObject({ unit: 'mm', basis: 'derived', citation: { locator: 'Eq. 13-2' } });
  });

  test('every wood gives a figure with a band, or none where neither shrinkage nor coefficients are published', () => {
    for (const species of allSpecies) {
      const figure = flatsawnChange(species, 300, 6, 12);
      const { tangentialShrinkage, radialShrinkage, tangentialCoefficient, radialCoefficient } = species.figures;
      if ((tangentialShrinkage && radialShrinkage) || (tangentialCoefficient && radialCoefficient)) {
        expect(figure?.value, species.id).toBeGreaterThan(0);
        expect(figure?.low as number, species.id).toBeLessThan(figure?.high as number);
        expect(figure?.band?.length, species.id).toBeGreaterThan(10);
      } else expect(figure, species.id).toBeNull();
    }
  });
});

// A mixed lot has coefficients in print, and no shrinkage.
test('commercial red oak, 300 mm, 8 to 12 %: 300 × 0.00369 × 4 (Table 13-5, Eq. 13-2)', () => {
  const lot = speciesById('commercial-red-oak') as Species;
  expect(flatsawnChange(lot, 300, 8, 12)?.value).toBeCloseTo(4.43, 2);
  expect(flatsawnChange(lot, 300, 8, 15)).toBeNull();
});

describe('what the pages list', () => {
  test('each equation once, with only symbols that stand in its formula', () => {
    const ids = equations.map(({ record }) => record.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { record } of equations) {
      expect(record.symbols.length, record.id).toBeGreaterThan(1);
      for (const { tex } of record.symbols) {
        expect(record.tex.includes(tex), `${record.id}: ${tex}`).toBe(true);
      }
    }
  });

  test('the figures of the woods in the checks are those of the tables', () => {
    const coefficients = checks.find(({ id }) => id === 'movement-13-3-from-10')?.values ?? [];
    expect(coefficients).toHaveLength(6);
    for (const { id, published, what } of coefficients) {
      const [, wood, direction] = /^(.*)-(radial|tangential)$/.exec(id) as unknown as [
        string,
        string,
        'radial' | 'tangential',
      ];
      const figures = speciesById(wood)?.figures;
      expect(figures?.[`${direction}Coefficient`]?.value, id).toBe(published);
      expect(what).toContain(`shrinkage ${figures?.[`${direction}Shrinkage`]?.value} %`);
    }
  });
});
