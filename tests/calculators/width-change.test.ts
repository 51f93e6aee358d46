import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { widthChangeCalculator } from '../../src/calculators/width-change/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { allSpecies } from '../../src/model/species/index.ts';

const calc = (raw: Record<string, unknown>): Result => {
  const outcome = answer(widthChangeCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const refusal = (raw: Record<string, unknown>) => {
  const outcome = answer(widthChangeCalculator, raw);
  return outcome.ok
    ? []
    : outcome.errors.map(({ field, message }) => inReaderUnits(`${field}: ${message}`, defaultUnits));
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

test('the handbook’s worked example: white fir, 232 mm, 8 to 11 % (Wood Handbook 2010, chapter 13)', () => {
  // Printed 1.7 mm and 233.7 mm; the sum printed from rounded parts.
  const result = calc({
    species: 'white-fir',
    width: '232 mm',
    moistureFrom: '8 %',
    moistureTo: '11 %',
    cut: 'flatsawn',
  });
  expect(value(result, 'change')).toBeCloseTo(1.7, 1);
  expect(value(result, 'widthAfter')).toBeCloseTo(233.7, 1);
  expect(result.evidence[0]?.equation).toBe('wood-handbook-13-2');
});

test('a wood without coefficients of its own, or a moisture outside 6 to 14 %, is computed by Eq. 13-3', () => {
  const dry = calc({ species: 'sugar-maple', width: 300, moistureFrom: 8, moistureTo: 5 });
  expect(dry.evidence[0]?.equation).toBe('wood-handbook-13-3');
  // By hand: 300 (5 − 8) / (30 · 100 / 9.9 − 30 + 8).
  expect(value(dry, 'change')).toBeCloseTo(-900 / (3000 / 9.9 - 22), 9);
  const derived = calc({ species: 'black-oak', width: 300, moistureFrom: 8, moistureTo: 10 });
  expect(derived.evidence[0]?.equation).toBe('wood-handbook-13-3');
});

describe('rings', () => {
  const board = { species: 'sugar-maple', width: 300, moistureFrom: 7, moistureTo: 12 };
  test.each([
    ['flatsawn', 0],
    ['rift', 45],
    ['quartersawn', 90],
  ])('%s is a ring angle of %d°', (cut, ringAngle) => {
    expect(value(calc({ ...board, cut }), 'change')).toBe(value(calc({ ...board, ringAngle }), 'change'));
  });

  test('quartersawn takes the radial, flatsawn the tangential coefficient of Table 13-5', () => {
    expect(value(calc({ ...board, cut: 'quartersawn' }), 'change')).toBeCloseTo(300 * 5 * 0.00165, 9);
    expect(value(calc({ ...board, cut: 'flatsawn' }), 'change')).toBeCloseTo(300 * 5 * 0.00353, 9);
  });
});

test('above the start of shrinkage a board does not swell, and the answer says so', () => {
  const result = calc({ species: 'white-ash', width: 300, moistureFrom: 60, moistureTo: 30 });
  expect(value(result, 'change')).toBe(0);
  expect(result.cautions.map((caution) => caution.id)).toContain('above-fibre-saturation');
});

describe('refusals', () => {
  test.each([
    [{ cut: 'rift', ringAngle: '45°' }, 'ringAngle: Both “Cut” and “Angle between rings and face” were given'],
    [{ species: 'suger maple' }, 'species: “suger maple” is not a wood in the tables. Did you mean sugar-maple?'],
    [{ width: '0 mm' }, 'width: 0 mm is less than this takes: 1 mm to 3000 mm'],
    [{ moistureTo: '12 mm' }, 'moistureTo: '],
    [{ species: 'koa' }, 'species: The radial and tangential shrinkage of Koa is not published'],
  ])('%j', (patch, message) => {
    const raw = { species: 'white-ash', width: '300 mm', moistureFrom: '8 %', moistureTo: '11 %', ...patch };
    expect(refusal(raw).join('\n')).toContain(message);
  });
});

test('within one equation a board that ends wetter ends wider, whatever the wood', () => {
  const woods = allSpecies.filter((species) => species.figures.radialShrinkage && species.figures.tangentialShrinkage);
  const property = fc.property(
    fc.constantFrom(...woods),
    fc.double({ min: 0, max: 22, noNaN: true }),
    fc.double({ min: 0, max: 22, noNaN: true }),
    fc.double({ min: 0, max: 22, noNaN: true }),
    fc.constantFrom('flatsawn', 'rift', 'quartersawn'),
    (species, moistureFrom, a, b, cut) => {
      const [low, high] = [a, b].sort((x, y) => x - y) as [number, number];
      if (high - low < 0.01) return;
      const of = (moistureTo: number) => calc({ species: species.id, width: 500, moistureFrom, moistureTo, cut });
      const [dry, wet] = [of(low), of(high)];
      if (dry.evidence[0]?.equation !== wet.evidence[0]?.equation) return;
      expect(value(wet, 'widthAfter')).toBeGreaterThan(value(dry, 'widthAfter'));
    },
  );
  fc.assert(property, { numRuns: 500 });
});
