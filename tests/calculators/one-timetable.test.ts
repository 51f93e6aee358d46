import fc from 'fast-check';
import { expect, test } from 'vitest';
import { careCardCalculator } from '../../src/calculators/care-card/calculator.ts';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
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

test('a sheet whose day for food comes before its full cure is told so wherever the day is shown', () => {
  const why = /sheet’s day for food, 3 d, comes before its own full cure, 7 d: the later one is kept/;
  const sheet = (food: string) =>
    JSON.stringify({ name: 'Ours', mixByVolume: '2:1', potLife: '40 min', cure: '7 d', foodService: food });
  const answers = (food: string) => {
    const resin = sheet(food);
    const board = { market: 'us', species: 'sugar-maple', finish: 'mineral-oil', resinPlace: 'beside-food', resin };
    return {
      days: [
        run(cureClockCalculator, { resin, shopTemperature: '25 °C' }),
        run(foodContactCalculator, { ...board, food: 'dry', daysSincePour: '1' }),
        run(foodContactCalculator, { ...board, food: 'dry' }),
        run(careCardCalculator, board),
      ],
      resin: [
        run(pourHeatCalculator, { resin, shopTemperature: '20 °C', depth: '6 mm', base: 'hardwood' }),
        run(resinDoseCalculator, { resin, shopTemperature: '20 °C', volume: '200 ml' }),
      ],
    };
  };
  const text = (each: unknown) => inReaderUnits(JSON.stringify(each), defaultUnits);
  const early = answers('3 d');
  for (const result of early.days) {
    expect(text(result.verdict)).toMatch(why);
    expect(text((result.figures.foodService ?? result.figures.resinCure)?.note)).toMatch(/later one is kept/i);
  }
  for (const result of early.resin) expect(text(result.cautions)).toMatch(why);
  for (const food of ['7 d', '9 d'])
    for (const result of Object.values(answers(food)).flat()) expect(text(result)).not.toMatch(/later one is kept/);
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
      const due = (pour.timeline?.events ?? []).map(({ id, at }) => [id, at]);
      expect(pour.timeline?.zero).toBe('mixing the first layer');
      expect(due).toHaveLength(Math.min(12, at(pour, 'layers') ?? 0));
      expect(due.slice(0, 2)).toEqual([
        ['layer-1', 0],
        ['layer-2', wait.value],
      ]);
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

test('a thin layer is too thick to work at one time, by the cure clock and by the working time', () => {
  let compared = 0;
  fc.assert(
    fc.property(resins, rooms, (resin, celsius) => {
      const shopTemperature = `${celsius} °C`;
      const clock = run(cureClockCalculator, { resin, shopTemperature }).timeline?.events ?? [];
      const cup = run(workingTimeCalculator, { resin, shopTemperature, mass: '100 g' }).timeline?.events ?? [];
      const [one, other] = [clock, cup].map((events) => events.find(({ id }) => id === 'work')?.at);
      if (one === undefined || other === undefined) return;
      compared += 1;
      expect(Math.abs(one / other - 1)).toBeLessThan(0.01);
      // The wait is for the slower of two clocks, where a sheet gives two.
      const [waited, soonest] = [clock.find(({ id }) => id === 'gel')?.at, cup.find(({ id }) => id === 'film-gel')?.at];
      if (waited !== undefined) expect(waited).toBeGreaterThan(0.99 * (soonest ?? Number.NaN));
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(15);
});

/** The figure of an event: `recoat-opens` is `recoatOpens`. */
const figureOf = (id: string) =>
  id === 'food' ? 'foodService' : id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

test('the figures of the cure clock are its events, from mixing, and a shop too cold to cure in has none', () => {
  let told = 0;
  fc.assert(
    fc.property(resins, rooms, (resin, celsius) => {
      const { figures, timeline, verdict } = run(cureClockCalculator, { resin, shopTemperature: `${celsius} °C` });
      if (verdict.level === 'stop' || verdict.level === 'unknown') {
        expect(timeline).toBeUndefined();
        return;
      }
      told += 1;
      expect(timeline?.zero).toBe('mixing');
      const times = (timeline?.events ?? []).map(({ id, at }) => [id, at]);
      expect(times.length).toBeGreaterThan(4);
      for (const [id, when] of times) expect(figures[figureOf(id as string)]?.value).toBe(when);
      expect(times.map(([, when]) => when)).toEqual(times.map(([, when]) => when as number).sort((a, b) => a - b));
    }),
    { numRuns: 60 },
  );
  expect(told).toBeGreaterThan(20);
});

test('a dose mixes its layers when the heat of a pour has them due, and the first when a seal coat takes it', () => {
  let compared = 0;
  fc.assert(
    fc.property(resins, fc.integer({ min: 15, max: 28 }), fc.boolean(), (resin, celsius, sealed) => {
      const common = { resin, shopTemperature: `${celsius} °C`, depth: '40 mm' };
      const pour = run(pourHeatCalculator, { ...common, base: 'hardwood' });
      const dose = run(resinDoseCalculator, {
        ...common,
        shapes: 'rectangle, 300 mm, 100 mm',
        cupMass: '1 kg',
        scaleDivision: '0.1 g',
        ...(sealed ? { sealCoat: '150 g/m²' } : {}),
      });
      if (dose.verdict.level === 'stop' || dose.verdict.level === 'unknown') {
        expect(dose.timeline).toBeUndefined();
        return;
      }
      const events = dose.timeline?.events ?? [];
      const due = events.filter(({ id }) => id.startsWith('layer-')).map(({ at: when }) => when);
      const [first = 0] = due;
      const clock = run(cureClockCalculator, { resin, shopTemperature: common.shopTemperature }).figures;
      if (events.length > 0) expect(first).toBe(sealed ? (clock.recoatOpens ?? clock.sandable)?.value : 0);
      const theirs = (pour.timeline?.events ?? []).map(({ at: when }) => when);
      if (due.length < 2 || theirs.length !== due.length) return;
      compared += 1;
      for (const [index, when] of due.entries())
        expect(Math.abs(when - first - (theirs[index] ?? Number.NaN))).toBeLessThan(1);
    }),
    { numRuns: 40 },
  );
  expect(compared).toBeGreaterThan(5);
}, 60_000);
