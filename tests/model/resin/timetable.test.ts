import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rateFactor } from '../../../src/model/resin/clock.ts';
import { kineticsOf } from '../../../src/model/resin/fit.ts';
import { type History, steady } from '../../../src/model/resin/history.ts';
import { resinKinds, resinOf } from '../../../src/model/resin/kinds.ts';
import { layResinSheet } from '../../../src/model/resin/resin.ts';
import { type CureEventId, timetableOf } from '../../../src/model/resin/timetable.ts';
import type { Resin, ResinFigureName } from '../../../src/model/resin/types.ts';

const hour = 3600;
const day = 24 * hour;
const of = (resin: Resin, history: History) => timetableOf(resin, kineticsOf(resin), history);
const event = (resin: Resin, history: History, id: CureEventId) => {
  const found = of(resin, history).events.find((candidate) => candidate.id === id);
  if (!found) throw new Error(id);
  return found;
};
const kind = (id: string) => resinOf(id) as Resin;
const sheet = (figures: Partial<Record<ResinFigureName, number>>): Resin =>
  layResinSheet({ name: 'Sheet', kind: 'fast-coating-1-1', figures: { potLife: 2400, ...figures } });

test('a coating epoxy at room temperature waits about 24 hours for its next stage, marked as common practice', () => {
  for (const celsius of [21, 22, 23]) {
    const { time, basis } = event(kind('fast-coating-1-1'), steady(celsius), 'sandable');
    expect(Math.abs((time ?? 0) / day - 1)).toBeLessThan(0.1);
    expect(basis).toBe('shop-practice');
  }
  // The same where a sheet says nothing of it.
  const { time, origin, basis } = event(sheet({}), steady(22), 'sandable');
  expect(time).toBeCloseTo(day, 3);
  expect([origin, basis]).toEqual(['practice', 'shop-practice']);
});

describe('the sheet wins where it speaks', () => {
  const said = { recoatOpens: 5, recoatCloses: 11, sandable: 30, cure: 200, foodService: 500 };
  const names = Object.keys(said) as (keyof typeof said)[];
  const figures = Object.fromEntries(names.map((name) => [name, said[name] * hour]));
  const full = sheet({ ...figures, cureTemperature: 23 });
  const idOf = (name: keyof typeof said): CureEventId => (name === 'cure' ? 'fullCure' : name);

  test.each(names)('%s at its own temperature is as it says', (name) => {
    const { time, origin, basis, low, high } = event(full, steady(23), idOf(name));
    expect((time ?? 0) / hour).toBeCloseTo(said[name], 6);
    expect([origin, basis]).toEqual(['sheet', 'supplier-sheet']);
    expect(low).toBeCloseTo(time ?? 0, 3);
    expect(high).toBeCloseTo(time ?? 0, 3);
  });

  const { activationEnergy } = kineticsOf(full).kinetics;
  test.each(['recoatOpens', 'recoatCloses', 'sandable'] as const)(
    '%s in a colder shop is later by the rate of cure, with a band',
    (name) => {
      const { time, low, high } = event(full, steady(13), name);
      expect((time ?? 0) / hour / (said[name] * rateFactor(activationEnergy, 13, 23))).toBeCloseTo(1, 6);
      expect(low ?? 0).toBeLessThan(time ?? 0);
      expect(high ?? 0).toBeGreaterThan(time ?? 0);
    },
  );

  test.each(['cure', 'foodService'] as const)('%s in a shop a little colder is later by the rate of cure', (name) => {
    const { time, decidedBy } = event(full, steady(21), idOf(name));
    expect((time ?? 0) / hour / (said[name] * rateFactor(activationEnergy, 21, 23))).toBeCloseTo(1, 6);
    expect(decidedBy).toBe('stated');
  });

  test('a warm shop brings the recoat forward, but no wait before use', () => {
    expect(event(full, steady(33), 'recoatOpens').time).toBeLessThan(4 * hour);
    for (const id of ['sandable', 'lightUse', 'fullCure', 'foodService', 'oil'] as const)
      expect(event(full, steady(33), id).time, id).toBeCloseTo(event(full, steady(23), id).time ?? 0, 3);
  });

  test('where practice says when to sand, warmth does not hasten that either', () => {
    expect(event(sheet({}), steady(35), 'sandable').time).toBeCloseTo(day, 3);
  });

  test('food never comes before the full cure, whatever the sheet says of it', () => {
    const hasty = sheet({ cure: 10 * day, foodService: 3 * day, cureTemperature: 22 });
    expect(event(hasty, steady(22), 'foodService')).toMatchObject({
      time: expect.closeTo(10 * day, 3),
      decidedBy: 'fullCure',
    });
  });

  test('nothing is cured, oiled or lent to food before it is hard enough to sand', () => {
    const odd = sheet({ sandable: 9 * day, cure: 7 * day, cureTemperature: 22 });
    for (const id of ['lightUse', 'fullCure', 'oil', 'foodService'] as const)
      expect(event(odd, steady(22), id), id).toMatchObject({
        time: expect.closeTo(9 * day, 3),
        decidedBy: 'sandable',
      });
  });

  test('twice the time on the sheet is twice the time here', () => {
    const double = sheet({ sandable: 60 * hour, cureTemperature: 23 });
    expect(
      (event(double, steady(17), 'sandable').time ?? 0) / (event(full, steady(17), 'sandable').time ?? 1),
    ).toBeCloseTo(2, 6);
  });

  test('the opening alone sets when the window shuts', () => {
    const half = sheet({ recoatOpens: 5 * hour, cureTemperature: 23 });
    const { time, origin } = event(half, steady(23), 'recoatCloses');
    expect(origin).toBe('clock');
    expect((time ?? 0) / (5 * hour)).toBeCloseTo(1.47, 2);
  });
});

describe('where nothing speaks', () => {
  const silent = sheet({});
  test('the clock gives the window: from the gel to three quarters of the cure', () => {
    const opens = event(silent, steady(25), 'recoatOpens');
    const shuts = event(silent, steady(25), 'recoatCloses');
    expect([opens.origin, shuts.origin]).toEqual(['clock', 'clock']);
    expect(opens.conversion).toBeCloseTo(0.577, 2);
    expect(shuts.conversion ?? 0).toBeGreaterThan(0.74);
    expect(shuts.conversion ?? 1).toBeLessThan(0.81);
    expect(shuts.high ?? 0).toBeGreaterThan(shuts.time ?? 0);
  });
  test('the clock is good to a quarter either way', () => {
    for (const id of ['work', 'gel'] as const) {
      const { time, low, high } = event(silent, steady(20), id);
      expect((low ?? 0) / (time ?? 1)).toBeCloseTo(0.75, 6);
      expect((high ?? 0) / (time ?? 1)).toBeCloseTo(1.25, 6);
    }
  });
  // Common practice, no source: a week to cure, light use from the third day, two to three days before a slow resin is sanded.
  test('a slow resin is sanded after two to three days, used lightly after three and cured after seven', () => {
    const slow = layResinSheet({ name: 'Slow', kind: 'slow-casting-2-1', figures: { potLife: 6 * hour } });
    const sand = event(slow, steady(22), 'sandable');
    expect([sand.origin, sand.basis]).toEqual(['practice', 'memory']);
    expect(sand.time ?? 0).toBeGreaterThan(2 * day);
    expect(sand.time ?? 0).toBeLessThan(3 * day);
    expect(event(slow, steady(22), 'lightUse')).toMatchObject({
      time: expect.closeTo(3 * day, 3),
      basis: 'shop-practice',
    });
    expect(event(slow, steady(22), 'fullCure')).toMatchObject({
      time: expect.closeTo(7 * day, 3),
      basis: 'shop-practice',
    });
  });
  test('food has the time of the full cure, as common practice, and no word of the sheet', () => {
    const food = event(silent, steady(22), 'foodService');
    expect([food.origin, food.basis]).toEqual(['practice', 'shop-practice']);
    expect(food.time).toBe(event(silent, steady(22), 'fullCure').time);
  });
  test('in the cold the window shuts where the resin turns glassy, before three quarters', () => {
    expect(event(silent, steady(5), 'recoatCloses').conversion ?? 1).toBeLessThan(0.7);
  });
});

test.each(resinKinds.map((one) => [one.kind, one] as const))(
  '%s goes from work to use in order at room temperature: none bonds before it has gelled',
  (_, resin) => {
    const order = ['work', 'gel', 'recoatOpens', 'recoatCloses', 'sandable', 'fullCure'] as const;
    const times = order.map((id) => event(resin, steady(22), id).time ?? Number.NaN);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  },
);

describe('temperature', () => {
  test('warmer makes no event later, for any kind', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...resinKinds),
        fc.double({ min: 5, max: 35, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (resin, celsius, more) => {
          const warm = of(resin, steady(celsius + more)).events;
          for (const [at, { time, id }] of of(resin, steady(celsius)).events.entries()) {
            const sooner = warm[at]?.time ?? null;
            if (time !== null && sooner !== null) expect(sooner, id).toBeLessThanOrEqual(time * 1.0001);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
  test('a colder shop ends softer, one at the sheet’s temperature does not', () => {
    const cold = of(kind('fast-coating-1-1'), steady(12)).cured;
    const same = of(kind('fast-coating-1-1'), steady(22)).cured;
    expect(cold?.here ?? 1).toBeLessThan((cold?.asStated ?? 0) - 0.03);
    expect(same?.here).toBeCloseTo(same?.asStated ?? 0, 4);
  });
  test('bands hold their times, in order', () => {
    for (const resin of resinKinds) {
      for (const celsius of [5, 22, 30]) {
        for (const { low, time, high, id } of of(resin, steady(celsius)).events) {
          if (low === null || high === null || time === null) continue;
          expect(low, id).toBeLessThanOrEqual(time);
          expect(high, id).toBeGreaterThanOrEqual(time);
        }
      }
    }
  });
});
