import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { films, usualBase } from '../../../src/model/resin/base.ts';
import { steady } from '../../../src/model/resin/history.ts';
import { classKinetics, classThermal } from '../../../src/model/resin/kinetics.ts';
import { runPour } from '../../../src/model/resin/pour.ts';
import { airFrom, type DayPour, type DayShop, pouredAt, risesByStart } from '../../../src/model/resin/pour-day.ts';

const hour = 3600;
const { thickness: _, ...hardwood } = usualBase;
const dayPour = (shop: DayShop, width?: number): DayPour => ({
  pour: {
    kinetics: classKinetics.slow,
    resin: classThermal,
    base: usualBase,
    filmTop: films.still,
    filmBottom: films.under,
    ...(width ? { channel: { width, sides: hardwood } } : {}),
  },
  shop,
  resinTemperature: undefined,
});
const anyShop = fc
  .record({
    cool: fc.integer({ min: 5, max: 18 }),
    more: fc.integer({ min: 1, max: 12 }),
    warmHours: fc.integer({ min: 2, max: 22 }),
  })
  .map(({ cool, more, warmHours }): DayShop => ({ warm: cool + more, cool, warmHours }));

describe('the air from a start on', () => {
  const shop = { warm: 21, cool: 12, warmHours: 10 };
  test.each([
    [0, [21, 21, 12, 12, 21]],
    [6, [21, 12, 12, 21, 21]],
    [10, [12, 12, 21, 21, 12]],
    [18, [12, 21, 21, 12, 12]],
  ])('poured %d h after the heating came on', (start, expected) => {
    const air = airFrom(shop, start);
    expect([0, 7, 14, 20, 24].map((hours) => air.at(hours * hour))).toEqual(expected);
  });

  test('base and resin are as warm as the shop then, unless the resin was warmed', () => {
    const pour = pouredAt(dayPour(shop), 12);
    expect([pour.shopTemperature, pour.resinTemperature]).toEqual([12, 12]);
    expect(pouredAt({ ...dayPour(shop), resinTemperature: 25 }, 12).resinTemperature).toBe(25);
    expect(pouredAt(dayPour(shop), 3).shopTemperature).toBe(21);
  });
});

describe('rises by the start', () => {
  test('25 mm poured in the cold evening, heated after twelve hours, is among the hot ones', () => {
    const shop = { warm: 21, cool: 12, warmHours: 12 };
    const { starts } = risesByStart(dayPour(shop), 25, 200);
    const evening = starts.find(({ start }) => start === 12);
    // Warmed for good it comes to 88 °C, 67 K above the air.
    expect(Math.abs((evening?.rise ?? 0) - 67)).toBeLessThan(2);
    expect(starts.map(({ start }) => start)).toEqual([0, 3, 6, 9, 12, 15, 18, 21]);
  });

  test('the end of the warm hours is tried too', () => {
    expect(risesByStart(dayPour({ warm: 20, cool: 15, warmHours: 10 }), 10, 50).starts).toContainEqual({
      start: 10,
      rise: expect.any(Number),
    });
  });

  test('the worst is no cooler than any that was tried, nor hotter than the warm shop throughout', () => {
    fc.assert(
      fc.property(anyShop, fc.double({ min: 4, max: 25, noNaN: true }), (shop, depth) => {
        const { starts, worst } = risesByStart(dayPour(shop), depth, 80);
        for (const { rise } of starts) expect(worst.rise).toBeGreaterThanOrEqual(rise);
        const warm = runPour({ ...pouredAt(dayPour(shop), 0), air: steady(shop.warm), depth });
        expect(worst.rise).toBeLessThan(1.04 * warm.peakRise + 0.3);
      }),
      { numRuns: 60 },
    );
  });

  test('a run that ends once it is spent finds the same rise as one that goes on for a day', () => {
    fc.assert(
      fc.property(
        anyShop,
        fc.integer({ min: 0, max: 23 }),
        fc.double({ min: 4, max: 28, noNaN: true }),
        (shop, start, depth) => {
          const pour = { ...pouredAt(dayPour(shop), start), depth };
          const whole = runPour(pour, { stop: Number.POSITIVE_INFINITY });
          const short = runPour(pour, { stop: Number.POSITIVE_INFINITY, peakOnly: true });
          expect(short.peakRise).toBeCloseTo(whole.peakRise, 1);
        },
      ),
      { numRuns: 80 },
    );
  });

  test('a narrow channel stays far cooler than the pool, whatever the start', () => {
    const shop = { warm: 21, cool: 12, warmHours: 10 };
    const pool = risesByStart(dayPour(shop), 18, 100);
    const channel = risesByStart(dayPour(shop, 12), 18, 100);
    for (const [at, { rise }] of channel.starts.entries())
      expect(rise).toBeLessThan(0.6 * (pool.starts[at]?.rise as number) + 0.5);
    expect(channel.worst.rise).toBeLessThan(0.2 * pool.worst.rise);
  });
});
