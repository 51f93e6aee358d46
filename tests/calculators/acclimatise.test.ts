import { describe, expect, test } from 'vitest';
import { acclimatiseCalculator } from '../../src/calculators/acclimatise/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { equilibriumMoisture } from '../../src/model/moisture/index.ts';

const room = { thickness: '25 mm', moistureNow: '12 %', temperature: '20 °C', relativeHumidity: '45 %' };
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = answer(acclimatiseCalculator, { ...room, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const days = (result: Result, name: string) => (result.figures[name]?.value ?? Number.NaN) / 86_400;

describe('by hand, with coefficients of the reader’s own', () => {
  const bare = { diffusion: '1.5e-10', surface: '8e-8' };
  // Half-times of a 25 mm board by finite volumes: bare 3.8, two coats of varnish 12.7, two coats of epoxy 119 days.
  test.each([
    ['0', 3.8, 0.06],
    ['8.7e7', 12.7, 0.07],
    ['1.15e9', 119, 0.7],
  ])('a coating of %s s/m', (coating, expected, half) => {
    expect(Math.abs(days(calc({ ...bare, coating }), 'halfWay') - expected)).toBeLessThan(half);
  });
  test('are then derived, not remembered', () => {
    expect(calc({ ...bare }).figures.halfWay?.basis).toBe('derived');
    expect(calc({}).figures.halfWay?.basis).toBe('memory');
  });
});

test('balance is that of the handbook’s equation, and the mean ends there', () => {
  const result = calc({});
  expect(result.figures.balance?.value).toBeCloseTo(equilibriumMoisture(20, 45), 9);
  const mean = result.series?.[0]?.lines.find((line) => line.id === 'mean')?.values ?? [];
  expect(mean[0]).toBeCloseTo(12, 9);
  expect(Math.abs((mean.at(-1) ?? 0) - (result.figures.balance?.value ?? 0))).toBeLessThan(1.001);
});

test('the band is half and twice the time, and the shell leads the core', () => {
  const result = calc({});
  const { value, low, high } = result.figures.withinOne ?? { value: 0, low: 0, high: 0 };
  expect(low).toBeCloseTo(value / 2, 6);
  expect(high).toBeCloseTo(2 * value, 6);
  const [, shell, core] = result.series?.[0]?.lines ?? [];
  for (const [at, value] of (shell?.values ?? []).entries())
    expect(value).toBeLessThanOrEqual((core?.values[at] ?? 0) + 1e-9);
});

test('a dense wood, a thick board and one face in the air take longer', () => {
  const plain = days(calc({}), 'halfWay');
  expect(days(calc({ species: 'eastern-white-pine' }), 'halfWay')).toBeLessThan(plain);
  expect(days(calc({ thickness: '50 mm' }), 'halfWay')).toBeGreaterThan(2 * plain);
  expect(days(calc({ faces: 'one' }), 'halfWay')).toBeGreaterThan(2 * plain);
});

test('green wood and hasty drying are warned of', () => {
  expect(calc({ moistureNow: '60 %' }).cautions.map((caution) => caution.id)).toContain('green-wood');
  expect(calc({ moistureNow: '14 %' }).cautions.map((caution) => caution.id)).toContain('drying-too-fast');
  expect(calc({ moistureNow: '9 %' }).cautions.map((caution) => caution.id)).not.toContain('drying-too-fast');
});

test('a board near balance has settled already', () => {
  expect(calc({ moistureNow: '8.5 %' }).figures.withinOne?.value).toBe(0);
});

describe('what happens when, from the day the board comes in', () => {
  test('the times are those of the figures, in order, with their bands', () => {
    const { timeline, figures } = calc({});
    const { halfWay, withinOne } = figures;
    expect(timeline?.events).toMatchObject([
      { id: 'half-way', at: halfWay?.value, low: halfWay?.low, high: halfWay?.high },
      { id: 'ready', at: withinOne?.value, low: withinOne?.low, high: withinOne?.high },
    ]);
  });
  test('a board that is hardly out of balance is ready before it is half-way', () => {
    // 1.5 points from balance: a third of the way is enough.
    const near = calc({ moistureNow: equilibriumMoisture(20, 45) + 1.5 }).timeline?.events ?? [];
    expect(near.map(({ id }) => id)).toEqual(['ready', 'half-way']);
  });
  test('a board that is at balance is ready at once, and nothing else follows', () => {
    expect(calc({ moistureNow: '8.5 %' }).timeline?.events).toMatchObject([{ id: 'ready', at: 0 }]);
  });
});
