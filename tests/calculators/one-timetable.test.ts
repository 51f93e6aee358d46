import fc from 'fast-check';
import { expect, test } from 'vitest';
import { careCardCalculator } from '../../src/calculators/care-card/calculator.ts';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';

// One resin in one room has one recoat window, one time to sand and one day for food, whichever calculator is asked.

const run = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify([raw, outcome.errors]));
  return outcome.value.result;
};
const at = (result: Result, name: string) => result.figures[name]?.value;

const sheets = fc
  .record(
    {
      potLife: fc.integer({ min: 25, max: 720 }).map((minutes) => `${minutes} min`),
      greatestDepth: fc.integer({ min: 3, max: 30 }).map((depth) => `${depth} mm`),
      window: fc.tuple(fc.integer({ min: 3, max: 24 }), fc.integer({ min: 2, max: 30 })),
      sandable: fc.integer({ min: 20, max: 90 }).map((hours) => `${hours} h`),
      cure: fc.integer({ min: 3, max: 14 }).map((days) => `${days} d`),
      foodService: fc.integer({ min: 3, max: 40 }).map((days) => `${days} d`),
      cureTemperature: fc.integer({ min: 18, max: 60 }).map((celsius) => `${celsius} °C`),
    },
    { requiredKeys: ['potLife'] },
  )
  .map(({ window, ...sheet }) =>
    JSON.stringify({
      name: 'Ours',
      mixByVolume: '2:1',
      ...sheet,
      ...(window ? { recoatOpens: `${window[0]} h`, recoatCloses: `${window[0] + window[1]} h` } : {}),
    }),
  );
const resins = fc.oneof(fc.constantFrom(...resinKindIds), sheets);
const rooms = fc.integer({ min: 5, max: 32 });

test('the day for food is the same by the cure clock, on the label and on the card', () => {
  fc.assert(
    fc.property(resins, rooms, fc.option(fc.integer({ min: 1, max: 10 })), (resin, warm, drop) => {
      const cool = drop === null ? undefined : `${Math.max(1, warm - drop)} °C`;
      const clock = run(cureClockCalculator, {
        resin,
        ...(cool ? { dayTemperature: `${warm} °C`, nightTemperature: cool } : { shopTemperature: `${warm} °C` }),
      });
      const food = at(clock, 'foodService');
      const days = food === undefined ? undefined : Math.ceil(food / 86_400 - 1e-6);
      const room = { roomTemperature: `${warm} °C`, ...(cool ? { nightTemperature: cool } : {}) };
      const board = {
        market: 'us',
        species: 'sugar-maple',
        finish: 'mineral-oil',
        resinPlace: 'beside-food',
        resin,
        ...room,
      };
      expect(at(run(foodContactCalculator, { ...board, food: 'dry', daysSincePour: '0' }), 'resinCure')).toBe(days);
      expect(at(run(careCardCalculator, board), 'resinCure')).toBe(days);
      if (days === undefined) expect(clock.verdict?.level).toMatch(/stop|unknown/);
    }),
    { numRuns: 60 },
  );
});

test('layers are poured within the window of the cure clock, or when its time to sand has come', () => {
  let compared = 0;
  fc.assert(
    fc.property(resins, rooms, (resin, celsius) => {
      const shopTemperature = `${celsius} °C`;
      const clock = run(cureClockCalculator, { resin, shopTemperature });
      const pour = run(pourHeatCalculator, { resin, shopTemperature, depth: '60 mm', base: 'hardwood' });
      const wait = pour.figures.waitBetween;
      if (!wait || clock.verdict?.level === 'unknown') return;
      compared += 1;
      const [opens, closes, sand] = ['recoatOpens', 'recoatCloses', 'sandable'].map((name) => at(clock, name));
      if (/sand and wipe/.test(wait.note ?? '')) {
        expect(wait.value).toBeGreaterThanOrEqual((sand ?? Number.POSITIVE_INFINITY) * (1 - 1e-9));
      } else {
        expect(wait.value).toBeGreaterThanOrEqual((opens ?? Number.POSITIVE_INFINITY) * (1 - 1e-9));
        if (closes !== undefined) expect(wait.value).toBeLessThanOrEqual(closes * (1 + 1e-9));
      }
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(10);
}, 60_000);
