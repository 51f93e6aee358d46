import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usualBase } from '../../../src/model/resin/base.ts';
import { changedAfter, dayAndNight, type History, steady } from '../../../src/model/resin/history.ts';
import { type Pour, type PourOptions, runPour } from '../../../src/model/resin/pour.ts';
import { classPour } from '../../../src/model/resin/usual-pour.ts';

const hour = 3600;
const { thickness: _, ...hardwood } = usualBase;
const pourIn = (air: History, depth: number, more: Partial<Pour> = {}): Pour =>
  classPour('slow', depth, air.at(0), { air, ...more });
const run = (air: History, depth: number, options?: PourOptions) => runPour(pourIn(air, depth), options);
const warmedAfter = (hours: number, from: number, to: number) => changedAfter(hours * hour, from, to);
const dailyAir = fc
  .record({
    cool: fc.integer({ min: 5, max: 18 }),
    more: fc.integer({ min: 0, max: 12 }),
    warmHours: fc.integer({ min: 1, max: 23 }),
    begun: fc.integer({ min: 0, max: 23 }),
  })
  .map(({ cool, more, warmHours, begun }) => ({
    warm: cool + more,
    cool,
    air: dayAndNight({ warm: cool + more, cool }, warmHours, warmHours - begun),
  }));

describe('air that keeps still', () => {
  test('given as a history changes nothing', () => {
    for (const [depth, shop] of [
      [19, 20],
      [5, 30],
      [40, 25],
    ] as const) {
      const { record: __, ...plain } = runPour({ ...pourIn(steady(shop), depth), air: undefined } as unknown as Pour);
      const { record: ___, ...told } = run(steady(shop), depth);
      expect(told).toEqual(plain);
    }
  });

  test('by day and night alike comes to the same', () => {
    const even = run(steady(18), 22);
    const daily = run(dayAndNight({ warm: 18, cool: 18 }, 10), 22);
    expect(daily.peakRise).toBeCloseTo(even.peakRise, 1);
    expect(Math.abs((daily.timeToLastGel as number) / (even.timeToLastGel as number) - 1)).toBeLessThan(0.002);
  });
});

describe('poured cold and warmed later', () => {
  test.each([
    [25, 12, 24, 88],
    [28, 12, 30, 105],
    [30, 10, 24, 120],
  ])('%d mm at %d °C stays at %d °C and heated after twelve hours comes to %d °C', (depth, from, kept, heated) => {
    expect(Math.abs(run(steady(from), depth).peakTemperature - kept)).toBeLessThan(0.6);
    const { peakTemperature, peakRise } = run(warmedAfter(12, from, 21), depth);
    expect(Math.abs(peakTemperature - heated)).toBeLessThan(1);
    expect(peakRise).toBeCloseTo(peakTemperature - 21, 6);
  });

  test('a millimetre deeper than 30 mm at 10 °C runs away when it is heated', () => {
    expect(run(warmedAfter(12, 10, 21), 29).outcome).toBe('settled');
    expect(run(warmedAfter(12, 10, 21), 31).outcome).toBe('runaway');
    expect(run(steady(10), 31).outcome).toBe('settled');
  });

  test('long after it has gelled through and cooled grows no hotter than it was', () => {
    const kept = run(steady(15), 25);
    const late = run(warmedAfter((kept.timeToLastGel as number) / hour + 12, 15, 30), 25);
    expect(late.peakTemperature).toBeLessThan(kept.peakTemperature + 3);
    expect(late.peakRise).toBeCloseTo(kept.peakRise, 2);
  });

  test('at its first gel it grows 10 to 22 K hotter', () => {
    const kept = run(steady(15), 25);
    const warmed = run(warmedAfter((kept.timeToFirstGel as number) / hour, 15, 30), 25);
    expect(warmed.peakTemperature - kept.peakTemperature).toBeGreaterThan(10);
    expect(warmed.peakTemperature - kept.peakTemperature).toBeLessThan(22);
  });

  test('after its peak, but before it has gelled through, the run does not end before the warmth', () => {
    // A thin pour that only takes the warmth of the shop: hottest when that comes, without a rise of its own.
    const thin = run(warmedAfter(20, 10, 25), 4, { peakOnly: true });
    expect(thin.end).toBeGreaterThan(20 * hour);
    expect(thin.peakTemperature).toBeGreaterThan(24);
    expect(thin.peakRise).toBeLessThan(4);
  });
});

describe('any day and night', () => {
  test('steps meet the changes, and heat is kept', () => {
    fc.assert(
      fc.property(dailyAir, fc.double({ min: 2, max: 30, noNaN: true }), ({ air }, depth) => {
        const { heat, record, outcome } = run(air, depth, { record: true });
        expect(Math.abs(heat.made - heat.held - heat.lost)).toBeLessThan(1e-6 * heat.made);
        expect(outcome).not.toBe('unfinished');
        const end = record.times.at(-1) as number;
        for (let at = air.nextCorner(0); at < end; at = air.nextCorner(at)) expect(record.times).toContain(at);
      }),
      { numRuns: 60 },
    );
  });

  test('makes it no hotter than the warm temperature throughout, and no cooler than the cold one, but for what it carries over', () => {
    fc.assert(
      fc.property(dailyAir, fc.double({ min: 2, max: 30, noNaN: true }), ({ air, warm, cool }, depth) => {
        const daily = run(air, depth, { stop: Number.POSITIVE_INFINITY });
        const hot = run(steady(warm), depth, { stop: Number.POSITIVE_INFINITY });
        const cold = run(steady(cool), depth, { stop: Number.POSITIVE_INFINITY });
        expect(daily.peakTemperature).toBeLessThan(hot.peakTemperature * 1.03 + 0.1);
        expect(daily.peakTemperature).toBeGreaterThan(cold.peakTemperature - 0.02 * cold.peakRise - 0.1);
      }),
      { numRuns: 100 },
    );
  });

  test('a channel takes it too, and stays no hotter than the pool', () => {
    fc.assert(
      fc.property(
        dailyAir,
        fc.double({ min: 5, max: 30, noNaN: true }),
        fc.double({ min: 4, max: 60, noNaN: true }),
        ({ air }, depth, width) => {
          const options = { cells: [8, 6], conversionStep: 0.02, mostRise: 60 } as const;
          const channel = runPour(pourIn(air, depth, { channel: { width, sides: hardwood } }), options);
          const pool = run(air, depth, { ...options, cells: [10, 8] });
          expect(Math.abs(channel.heat.made - channel.heat.held - channel.heat.lost)).toBeLessThan(
            1e-6 * channel.heat.made,
          );
          expect(channel.peakRise).toBeLessThan(1.04 * pool.peakRise + 0.2);
        },
      ),
      { numRuns: 30 },
    );
  });
});
