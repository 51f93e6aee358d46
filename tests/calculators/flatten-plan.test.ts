import { describe, expect, test } from 'vitest';
import { flattenPlanCalculator } from '../../src/calculators/flatten-plan/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const board = { length: '900 mm', width: '250 mm', thickness: '30 mm', target: '22 mm', depthOfCut: '1 mm' };
const run = (raw: Record<string, unknown>) => answer(flattenPlanCalculator, { ...board, ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

describe('a cupped board of 30 mm, 3 mm high at its edges', () => {
  const cupped = '3, 0, 3; 3, 0, 3';
  test('leaves 27 mm; both faces are cut alike down to 22', () => {
    const result = calc({ grid: cupped });
    expect(value(result, 'thicknessLeft')).toBeCloseTo(27, 6);
    expect(value(result, 'deepest')).toBeCloseTo(5.5, 6);
    expect(value(result, 'passes')).toBe(6);
    expect(value(result, 'highestShim')).toBeCloseTo(3, 6);
  });
  test('whichever way it is written', () => {
    const left = value(calc({ grid: cupped }), 'thicknessLeft');
    for (const raw of [
      { grid: '3 0 3\n3 0 3' },
      {
        grid: [
          [3, 0, 3],
          [3, '0 mm', 3],
        ],
      },
      { measured: 'gaps', grid: '0, 3, 0; 0, 3, 0' },
      { places: '0, 0, 3; 0, 125, 0; 0, 250, 3; 900, 0, 3; 900, 125, 0; 900, 250, 3' },
      {
        places: [
          { x: 0, y: 0, height: 3 },
          { x: 0, y: 125, height: 0 },
          { x: 0, y: 250, height: 3 },
          { x: '90 cm', y: 0, height: 3 },
          { x: 900, y: 125, height: 0 },
          { x: 900, y: 250, height: 3 },
        ],
      },
    ]) {
      expect(value(calc(raw), 'thicknessLeft')).toBeCloseTo(left, 6);
    }
  });
  test('a target that is missed is warned of, with what is lacking', () => {
    const result = calc({ grid: cupped, target: '29 mm' });
    expect(value(result, 'shortfall')).toBeCloseTo(2, 6);
    expect(result.cautions.map((caution) => caution.id)).toContain('target-missed');
  });
});

test('inches in front of a list, and a height below the reference', () => {
  const result = calc({ grid: 'in: 1/8, 0, 1/8; 1/8, 0, 1/8' });
  expect(value(result, 'thicknessLeft')).toBeCloseTo(30 - 25.4 / 8, 6);
  expect(value(calc({ grid: '1, −2, 1; 1, -2, 1' }), 'thicknessLeft')).toBeCloseTo(27, 6);
});

describe('machines', () => {
  test('marked defaults are said, and a limit of the reader’s own replaces one', () => {
    const plain = calc({ grid: '0, 1; 1, 0' });
    expect(plain.cautions.map((caution) => caution.id)).toContain('wider-than-jointer');
    expect(
      plain.evidence.some((note) => /Width of the jointer: 152.4 mm/.test(note.text) && note.basis === 'shop-practice'),
    ).toBe(true);
    const wide = calc({ grid: '0, 1; 1, 0', jointerWidth: '300 mm' });
    expect(wide.cautions.map((caution) => caution.id)).not.toContain('wider-than-jointer');
    expect(wide.evidence.some((note) => /Width of the jointer/.test(note.text))).toBe(false);
  });
  test('the guards of 29 CFR 1910.213 come with every plan', () => {
    const cited = calc({ grid: '0, 1; 1, 0' }).cautions.filter(
      (caution) => caution.citation?.source === 'cfr-29-1910-213',
    );
    expect(cited.map((caution) => caution.citation?.locator)).toEqual(['(j)', '(n)(4)', '(a)(15)', '(a) to (r)']);
  });
});

describe('refusals', () => {
  test.each([
    [{}, 'grid', /four corners/],
    [{ grid: '0, 1; 1, 0', places: '0, 0, 1' }, 'places', /Both/],
    [{ grid: '0, 1' }, 'grid', /1 row of 2 heights does not span/],
    [{ grid: '0, 1; 1, 0, 2' }, 'grid', /Row 2 has 3 heights where the first has 2/],
    [{ grid: '0, x; 1, 0' }, 'grid', /Row 1, height 2/],
    [{ places: '0, 0, 1; 10, 0, 1; 20, 0, 1; 30, 0, 2' }, 'places', /one line/],
    [{ places: '0, 0; 1, 1' }, 'places', /three are needed/],
    [{ grid: '40, 0, 40; 40, 0, 40' }, 'grid', /no flat slab/],
  ])('%j', (raw, field, message) => {
    const outcome = run(raw);
    const [error] = outcome.ok ? [] : outcome.errors;
    expect(error?.field).toBe(field);
    expect(error?.message).toMatch(message);
  });
});
