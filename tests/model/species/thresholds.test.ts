import { describe, expect, test } from 'vitest';
import { assessFoodContact, type FoodInput } from '../../../src/model/species/food.ts';
import { distance } from '../../../src/model/species/nearest.ts';
import type { FigureName, Species } from '../../../src/model/species/types.ts';
import { dossier } from './world.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

/** American beech, whose name the Code does not give, with another hardness. */
function ofHardness(newtons: number, name: 'sideHardness12' | 'sideHardnessGreen' = 'sideHardness12'): FoodInput {
  const beech = dossier('american-beech');
  const figure = {
    ...(beech.figures.sideHardness12 as NonNullable<typeof beech.figures.sideHardness12>),
    value: newtons,
  };
  return { ...beech, figures: { ...beech.figures, sideHardness12: null, sideHardnessGreen: null, [name]: figure } };
}

const hardnessOf = (wood: FoodInput) =>
  assessFoodContact(wood).reasons.find((reason) => reason.rule === 'hard-enough') ?? { speaks: 'none', text: '' };

describe('hardness of a wood for food', () => {
  test.each([
    ['half as hard as hard maple', 3199, 'scores it at once', 3200, 'marks it sooner'],
    ['as hard as hard maple but for the spread', 5499, 'marks it sooner', 5500, 'nearly as hard'],
    ['at least as hard as hard maple', 6399, 'nearly as hard', 6400, 'at least as hard'],
  ])('%s', (_, below, belowWords, above, aboveWords) => {
    expect(hardnessOf(ofHardness(below)).text).toContain(belowWords);
    expect(hardnessOf(ofHardness(above)).text).toContain(aboveWords);
  });

  test('decides the level', () => {
    const level = (newtons: number) => assessFoodContact(ofHardness(newtons)).level;
    expect([3199, 3200, 5499, 5500].map(level)).toEqual(['better-not', 'with-care', 'with-care', 'usual']);
  });

  test('measured green settles the matter only from half of hard maple on', () => {
    expect(hardnessOf(ofHardness(3199, 'sideHardnessGreen')).speaks).toBe('unknown');
    expect(hardnessOf(ofHardness(3200, 'sideHardnessGreen')).text).toContain('even green');
  });
});

describe('distance between two woods', () => {
  const wood = (figures: Partial<Record<FigureName, number>>) =>
    ({
      figures: Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, { value }])),
    }) as unknown as Species;
  const same = { sideHardness12: 5000, radialCoefficient: 0.002, tangentialCoefficient: 0.003 };

  test.each<[FigureName, number]>([
    ['sideHardness12', 0.2],
    ['radialCoefficient', 0.15],
    ['tangentialCoefficient', 0.15],
  ])('a difference of %s by %d of its logarithm is one step', (name, spread) => {
    const other = { ...same, [name]: same[name as keyof typeof same] * Math.exp(spread) };
    expect(distance(wood(same), wood(other))).toBeCloseTo(1, 9);
  });

  test('a tenth in hardness lies nearer than a tenth in movement', () => {
    const harder = distance(wood(same), wood({ ...same, sideHardness12: 5500 })) as number;
    const livelier = distance(wood(same), wood({ ...same, radialCoefficient: 0.0022 })) as number;
    expect(harder).toBeLessThan(livelier);
    expect(harder).toBeGreaterThan(0.45);
  });
});
