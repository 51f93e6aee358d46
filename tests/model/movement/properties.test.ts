import { describe, expect, test } from 'vitest';
import type { Basis, Figure } from '../../../src/model/evidence/index.ts';
import { movementProperties } from '../../../src/model/movement/index.ts';
import { deriveCoefficient } from '../../../src/model/species/derive.ts';
import { allSpecies, type FigureName, type Species, speciesById } from '../../../src/model/species/index.ts';

const maple = speciesById('sugar-maple') as Species;

function figure(value: number, basis: Basis): Figure {
  return { label: 'Figure', value, unit: '%', basis, citation: { source: 'fpl-gtr-190', locator: 'Table 13-5, Test' } };
}

/** Sugar maple with some figures replaced. */
function wood(figures: Partial<Record<FigureName, Figure | null>>): Species {
  return { ...maple, figures: { ...maple.figures, ...figures } };
}

describe('what movement is computed from', () => {
  test('sugar maple: coefficients and shrinkage as printed', () => {
    const outcome = movementProperties(maple);
    expect(outcome).toMatchObject({
      ok: true,
      value: {
        properties: {
          radialShrinkage: 4.8,
          tangentialShrinkage: 9.9,
          shrinkageStart: 30,
          radialCoefficient: 0.00165,
          tangentialCoefficient: 0.00353,
        },
      },
    });
  });

  test.each([
    ['radialShrinkage', 'The radial shrinkage'],
    ['tangentialShrinkage', 'The tangential shrinkage'],
  ] as const)('a wood without %s is refused on the field species', (name, words) => {
    const outcome = movementProperties(wood({ [name]: null, radialCoefficient: null }));
    if (outcome.ok) throw new Error('answered');
    expect(outcome.errors).toHaveLength(1);
    expect(outcome.errors[0]?.field).toBe('species');
    expect(outcome.errors[0]?.message).toContain(words);
    expect(outcome.errors[0]?.message).toContain('Sugar maple');
  });

  test('a mixed lot with coefficients and no shrinkage is answered by them', () => {
    const outcome = movementProperties(wood({ radialShrinkage: null, tangentialShrinkage: null }));
    expect(outcome.ok && outcome.value.properties).toMatchObject({
      radialShrinkage: null,
      tangentialShrinkage: null,
      tangentialCoefficient: 0.00353,
    });
  });

  test.each(['published', 'memory'] as const)('a %s coefficient is used', (basis) => {
    const outcome = movementProperties(wood({ radialCoefficient: figure(0.002, basis) }));
    expect(outcome.ok && outcome.value.properties.radialCoefficient).toBe(0.002);
  });

  test.each([
    ['read', 'published'],
    ['remembered', 'memory'],
  ] as const)('one derived from %s shrinkage is not: Eq. 13-3 says the same without rounding', (_, basis) => {
    const radialShrinkage = figure(5, basis);
    const shrinkageStart = figure(30, 'published');
    const radialCoefficient = deriveCoefficient('radialCoefficient', radialShrinkage, shrinkageStart);
    expect(radialCoefficient?.basis).toBe(basis === 'memory' ? 'memory' : 'derived');
    const outcome = movementProperties(wood({ radialShrinkage, shrinkageStart, radialCoefficient }));
    expect(outcome.ok && outcome.value.properties.radialCoefficient).toBeNull();
  });

  test('the basis is the weakest of what the equation uses, and never firmer than derived', () => {
    const outcome = movementProperties(
      wood({
        radialShrinkage: figure(4.8, 'memory'),
        radialCoefficient: figure(0.00165, 'published'),
        tangentialCoefficient: figure(0.00353, 'published'),
      }),
    );
    expect(outcome.ok && outcome.value.basis).toEqual({ '13-2': 'derived', '13-3': 'memory' });
  });

  test('every wood gives properties that can be computed with, or a refusal', () => {
    const answered = allSpecies.flatMap((species) => {
      const outcome = movementProperties(species);
      if (!outcome.ok) {
        const { radialShrinkage, tangentialShrinkage } = species.figures;
        expect(radialShrinkage && tangentialShrinkage, species.id).toBeNull();
        return [];
      }
      return [outcome.value];
    });
    expect(answered.length).toBeGreaterThan(150);
    for (const { properties, evidence } of answered) {
      expect([22, 30]).toContain(properties.shrinkageStart);
      expect(evidence[properties.radialShrinkage === null ? '13-2' : '13-3'].length).toBeGreaterThanOrEqual(2);
      const { elsewhere = [], ...own } = properties;
      for (const value of [own, ...elsewhere].flatMap((each) => Object.values(each))) {
        expect(value === null || value > 0).toBe(true);
      }
    }
  });

  test('no wood shrinks more than half of the largest shrinkage that is believed', () => {
    const largest = Math.max(...allSpecies.map(({ figures }) => figures.tangentialShrinkage?.value ?? 0));
    expect(largest).toBeLessThanOrEqual(15);
  });
});
