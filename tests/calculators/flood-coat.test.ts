import { describe, expect, test } from 'vitest';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const calc = (raw: Record<string, unknown>): Result => {
  const outcome = answer(floodCoatCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const ids = (result: Result) => result.cautions.map(({ id }) => id);
const liquid = { surfaceTension: 0.04, density: 1100 };

describe('thickness at rest', () => {
  // By hand from √[2γ(1 − cos θ)/(ρg)].
  test.each([
    [30, 1.0],
    [45, 1.47],
    [60, 1.93],
    [90, 2.72],
  ])('at %d° is %d mm', (contactAngle, expected) => {
    const { figures } = calc({ ...liquid, contactAngle });
    expect(Math.abs((figures.thickness?.value ?? 0) - expected)).toBeLessThan(0.0051);
    expect(figures.thickness?.basis).toBe('derived');
    expect(figures.thickness?.low).toBeUndefined();
  });

  test('with nothing given has a band from 30 to 60° and says that it is from memory', () => {
    const { thickness } = calc({}).figures;
    expect(thickness?.low).toBeCloseTo(1.0, 2);
    expect(thickness?.high).toBeCloseTo(1.93, 2);
    expect(thickness?.basis).toBe('memory');
  });

  test('mN/m and a bare number in N/m are read alike', () => {
    expect(calc({ surfaceTension: '40 mN/m' }).figures.thickness?.value).toBeCloseTo(
      calc({ surfaceTension: '0.040' }).figures.thickness?.value ?? 0,
      12,
    );
  });
});

describe('a thickness wanted', () => {
  test('of 3 mm needs a dam, and an angle above 100° to stand without', () => {
    const result = calc({ wantedThickness: '3 mm', ...liquid, contactAngle: 45 });
    expect(ids(result)).toContain('dam-needed');
    expect(result.figures.holdingAngle?.value).toBeGreaterThan(100);
  });
  test('between the ends of the band may need one', () => {
    expect(ids(calc({ wantedThickness: '1.2 mm' }))).toContain('dam-perhaps');
  });
  test('of 0.8 mm stands', () => {
    expect(ids(calc({ wantedThickness: '0.8 mm' }))).toContain('no-dam');
  });
});

test('what is poured is what stays and what runs off', () => {
  const { figures } = calc({ wantedThickness: '3 mm', area: '1800 cm²', ...liquid, contactAngle: 60 });
  // 1800 cm² × 3 mm × 1.1 g/cm³.
  expect(figures.amountWanted?.value).toBeCloseTo(594, 9);
  expect((figures.amountAtRest?.value ?? 0) + (figures.overEdge?.value ?? 0)).toBeCloseTo(594, 9);
});

test('heat tool, skin and a level board are warned of always', () => {
  for (const id of ['heat-tool', 'resin-skin', 'level-face']) expect(ids(calc({}))).toContain(id);
});
