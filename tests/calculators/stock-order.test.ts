import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { stockOrderCalculator } from '../../src/calculators/stock-order/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const tray = { length: '24 in', width: '10 in', thickness: '3/4 in', count: '12' };
const run = (raw: Record<string, unknown>) => answer(stockOrderCalculator, { ...tray, ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

test('twelve trays by hand: 14 pieces of 28 1/4 by 10 1/4 in, three to an 8 ft board', () => {
  const result = calc({});
  expect(value(result, 'pieces')).toBe(14);
  expect(value(result, 'roughLength')).toBeCloseTo(28.25 * 25.4, 6);
  expect(value(result, 'roughWidth')).toBeCloseTo(10.25 * 25.4, 6);
  expect(value(result, 'perBoard')).toBe(3);
  expect(value(result, 'boards')).toBe(5);
  // 11 in × 8 ft ÷ 12 = 7.33 a board; the tally rounds each to 7.
  expect(value(result, 'boardFeet')).toBeCloseTo(36.6667, 3);
  expect(value(result, 'boardFeetTally')).toBe(35);
  expect(value(result, 'volume')).toBeCloseTo(36.6667 / 423.776, 6);
});

test('both ways of counting say which they are, and the price has both', () => {
  const result = calc({ rate: '9.50', ratePer: 'board-foot' });
  expect(result.figures.boardFeetTally?.label).toMatch(/grader/);
  expect(result.figures.boardFeet?.label).toMatch(/fractions/);
  expect(value(result, 'cost')).toBeCloseTo(348.33, 2);
  expect(value(result, 'costTally')).toBeCloseTo(332.5, 2);
});

test('planed lumber needs no planing allowance', () => {
  expect(calc({ surfacing: 's2s' }).figures.nominal?.note).toMatch(/^4\/4/);
  expect(calc({ surfacing: 's2s', planing: '3 mm' }).figures.nominal?.note).toMatch(/^5\/4/);
});

test('a thick piece that leaves nothing to spare is warned of', () => {
  expect(calc({ thickness: '13/16 in' }).cautions.map((caution) => caution.id)).toContain('thin-lumber');
});

describe('refusals', () => {
  test.each([
    [{ count: '2.5' }, 'count'],
    [{ boardLength: '8 ft' }, 'boardWidth'],
    [{ boardLength: '8 ft', boardWidth: '8 in' }, 'boardWidth'],
    [{ thickness: '4 in' }, 'thickness'],
    [{ surfacing: 'planed' }, 'surfacing'],
  ])('%j', (patch, field) => {
    const outcome = run(patch);
    expect(outcome.ok ? [] : outcome.errors.map((error) => error.field)).toEqual([field]);
  });
});
