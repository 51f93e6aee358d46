import { describe, expect, test } from 'vitest';
import { careCardCalculator } from '../../src/calculators/care-card/calculator.ts';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';

// Beside a reader's own sheet the times of a kind count as unknown, and a sheet at war with itself gives none.

const run = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify([raw, outcome.errors]));
  return outcome.value.result;
};
const board = { market: 'us', species: 'sugar-maple', finish: 'mineral-oil', resinPlace: 'beside-food' };
const asked = (sheet: object) => {
  const resin = JSON.stringify({ name: 'Ours', ...sheet });
  return {
    clock: run(cureClockCalculator, { resin, shopTemperature: '20 °C' }),
    work: run(workingTimeCalculator, { resin, mass: '200 g', shopTemperature: '20 °C' }),
    food: run(foodContactCalculator, {
      ...board,
      resin,
      food: 'dry',
      roomTemperature: '20 °C',
      daysSinceCoat: '4',
      daysSincePour: '4',
    }),
    card: run(careCardCalculator, { ...board, resin, roomTemperature: '20 °C' }),
  };
};
const timed = ({ figures }: Result) =>
  Object.keys(figures).filter((name) => !['upkeep', 'lines'].includes(name) && figures[name] !== undefined);

describe('a sheet that names no full cure gives no day for machine, oil, food or handing over', () => {
  test.each([
    ['only a name', {}],
    ['only a pot life', { potLife: '40 min' }],
    ['a day for food alone', { foodService: '7 d' }],
  ])('%s', (_, sheet) => {
    const { clock, food, card } = asked(sheet);
    for (const result of [clock, food, card]) {
      expect(result.verdict?.level).toBe('unknown');
      expect(result.verdict?.text).toMatch(/your sheet names no full cure/i);
      expect(timed(result)).toEqual([]);
    }
    expect(clock.tables ?? []).toEqual([]);
    expect(clock.series ?? []).toEqual([]);
    expect(clock.verdict?.text).not.toMatch(/^Not enough known/);
    expect(food.tables?.some(({ id }) => id === 'label')).toBe(false);
    expect(JSON.stringify(clock.verdict)).not.toMatch(/\d+ ?(?:h|d|min)\b/);
  });

  test('the times that it states itself stay', () => {
    const { clock } = asked({ recoatOpens: '5 h', recoatCloses: '10 h', sandable: '30 h', cureTemperature: '20 °C' });
    expect(clock.verdict?.level).toBe('unknown');
    expect(timed(clock).sort()).toEqual(['recoatCloses', 'recoatOpens', 'sandable']);
    expect(clock.figures.recoatOpens?.value).toBeCloseTo(5 * 3600, 3);
    expect(clock.verdict?.text).toMatch(/By the sheet, .*next coat from.*sand by hand/);
  });
});

test('without a pot life nothing is read off the clock of a kind', () => {
  const sheet = { cure: '7 d', foodService: '8 d', cureTemperature: '20 °C' };
  const { clock, card } = asked(sheet);
  expect(clock.verdict?.level).toBe('care');
  expect(clock.verdict?.text).toMatch(/gives no window/);
  expect(timed(clock).sort()).toEqual(['foodService', 'fullCure', 'lightUse', 'oil']);
  expect(clock.series ?? []).toEqual([]);
  expect(card.figures.resinCure?.value).toBe(8);
});

describe('a sheet at war with itself gives no times, and its verdict says why', () => {
  const whole = { potLife: '40 min', cure: '7 d', cureTemperature: '20 °C' };
  const dense = { densityA: '1.1 g/ml', densityB: '1 g/ml' };
  test.each([
    ['two ratios', { ...whole, ...dense, mixByVolume: '2:1', mixByWeight: '100:60' }, /ratios by volume and by weight/],
    [
      'depth and pot life',
      { ...whole, mixByVolume: '2:1', greatestDepth: '100 mm' },
      /pot life and its greatest depth/,
    ],
  ])('%s', (_, sheet, why) => {
    for (const result of Object.values(asked(sheet))) {
      expect(result.verdict?.level).toBe('unknown');
      expect(result.verdict?.text).toMatch(why);
      expect(timed(result)).toEqual([]);
    }
  });

  test('a difference by rounding is no war', () => {
    const { clock } = asked({ ...whole, ...dense, mixByVolume: '2:1', mixByWeight: '100:46' });
    expect(clock.verdict?.level).toBe('care');
  });
});
