import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timeToConversion } from '../../../src/model/resin/clock.ts';
import { classKinetics, classThermal } from '../../../src/model/resin/kinetics.ts';
import { type Pour, type PourOptions, runPour } from '../../../src/model/resin/pour.ts';
import { referencePours } from '../../../src/model/resin/reference-pours.ts';
import { classPour } from '../../../src/model/resin/usual-pour.ts';
import { stepPour } from '../../second-roads/pour.ts';
import { classes } from '../../second-roads/resins.ts';

const pourOf = classPour;
const run = (kinetics: 'fast' | 'slow', depth: number, shop: number, options?: PourOptions) =>
  runPour(pourOf(kinetics, depth, shop), options);

/** How often a line rises again by more than `slack` after it has fallen by more than that. */
function risesAgain(line: readonly number[], slack: number): number {
  let [high, low, falling, times] = [line[0] ?? 0, line[0] ?? 0, false, 0];
  for (const value of line) {
    if (falling) {
      low = Math.min(low, value);
      if (value > low + slack) {
        [falling, high] = [false, value];
        times += 1;
      }
    } else {
      high = Math.max(high, value);
      if (value < high - slack) [falling, low] = [true, value];
    }
  }
  return times;
}

describe('the pours of the other program', () => {
  test('all forty are compared', () => {
    expect(referencePours).toHaveLength(40);
  });

  test.each(referencePours.filter(([, , , peak]) => peak > 120))(
    '%s, %d mm, %d °C runs away',
    (kinetics, depth, shop) => {
      const outcome = run(kinetics, depth, shop);
      expect(outcome.outcome).toBe('runaway');
      expect(outcome.peakTemperature).toBe(120);
      expect(outcome.peakRise).toBe(120 - shop);
    },
  );
});

/** Pours that settle, thin to deep. */
const settling = fc
  .tuple(
    fc.constantFrom('fast' as const, 'slow' as const),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.integer({ min: 10, max: 28 }),
  )
  .map(([kinetics, share, shop]) => {
    const deepest = (kinetics === 'fast' ? 5 : 30) * 0.95 ** (shop - 10);
    return { kinetics, depth: 1 + share * (deepest - 1), shop };
  });

describe('a pour below the stop', () => {
  test('in a thin layer has one peak, at every length of step', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('fast' as const, 'slow' as const),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.integer({ min: 10, max: 24 }),
        fc.constantFrom(0.002, 0.005, 0.01, 0.02, 0.05, 0.1),
        (kinetics, depth, shop, conversionStep) => {
          const { record, peakTemperature, outcome } = run(kinetics, depth, shop, { conversionStep, record: true });
          fc.pre(outcome === 'settled');
          for (const line of [record.top, record.middle, record.bottom])
            expect(risesAgain(line, 0.02 + 0.002 * (peakTemperature - shop))).toBe(0);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('never sets later or stays cooler for being deeper', () => {
    fc.assert(
      fc.property(settling, fc.double({ min: 1.03, max: 1.4, noNaN: true }), ({ kinetics, depth, shop }, factor) => {
        const [thin, deep] = [run(kinetics, depth, shop), run(kinetics, depth * factor, shop)];
        fc.pre(thin.outcome === 'settled');
        expect(deep.peakRise).toBeGreaterThanOrEqual(0.998 * thin.peakRise);
        expect(deep.timeToFirstGel ?? deep.timeToPeak).toBeLessThanOrEqual(1.002 * (thin.timeToFirstGel as number));
      }),
      { numRuns: 150 },
    );
  });

  test('never sets later or stays cooler in a warmer shop', () => {
    fc.assert(
      fc.property(settling, fc.double({ min: 0.5, max: 4, noNaN: true }), ({ kinetics, depth, shop }, warmer) => {
        const [cool, warm] = [run(kinetics, depth, shop), run(kinetics, depth, shop + warmer)];
        fc.pre(cool.outcome === 'settled');
        expect(warm.peakRise).toBeGreaterThanOrEqual(cool.peakRise);
        expect(warm.timeToFirstGel ?? warm.timeToPeak).toBeLessThan(cool.timeToFirstGel as number);
      }),
      { numRuns: 150 },
    );
  });

  test('keeps the heat that it makes, or loses it to the air', () => {
    fc.assert(
      fc.property(settling, fc.integer({ min: -8, max: 8 }), ({ kinetics, depth, shop }, warmer) => {
        const { heat, conversion } = runPour(pourOf(kinetics, depth, shop, { resinTemperature: shop + warmer }));
        expect(Math.abs(heat.made - heat.held - heat.lost)).toBeLessThan(1e-6 * heat.made);
        const whole = (classThermal.density * classKinetics[kinetics].heatOfReaction * depth) / 1000;
        expect(heat.made / whole).toBeGreaterThanOrEqual(conversion.least - 1e-9);
        expect(heat.made / whole).toBeLessThanOrEqual(conversion.most + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('comes nearer to the finest grid as the grid grows finer', () => {
    for (const [kinetics, depth, shop] of [
      ['fast', 3, 25],
      ['fast', 6, 15],
      ['slow', 25, 15],
      ['slow', 25, 20],
    ] as const) {
      const rise = (cells: readonly [number, number], conversionStep: number) =>
        run(kinetics, depth, shop, { cells, conversionStep }).peakRise;
      const finest = rise([80, 48], 0.002);
      const away = [rise([10, 8], 0.02), rise([20, 12], 0.01), rise([40, 24], 0.005)].map((one) =>
        Math.abs(one / finest - 1),
      );
      expect(away[0]).toBeLessThan(0.008);
      expect(away[1]).toBeLessThan(0.004);
      expect(away[2]).toBeLessThan(0.001);
    }
  });

  test('sets 4 to 6 % sooner with resin 5 K warmer, and rises hardly more', () => {
    for (const [kinetics, depth, shop] of [
      ['fast', 3, 25],
      ['fast', 4, 20],
      ['slow', 14, 25],
      ['slow', 19, 20],
      ['slow', 25, 15],
    ] as const) {
      const level = run(kinetics, depth, shop);
      const warm = runPour(pourOf(kinetics, depth, shop, { resinTemperature: shop + 5 }));
      expect(Math.abs(warm.peakRise / level.peakRise - 1)).toBeLessThanOrEqual(0.04);
      const sooner = 1 - (warm.timeToFirstGel as number) / (level.timeToFirstGel as number);
      expect(sooner).toBeGreaterThan(0.04);
      expect(sooner).toBeLessThan(0.06);
    }
  });

  test('as a film keeps the time of the clock', () => {
    const thin = run('slow', 0.2, 20, { cells: [4, 12] });
    expect((thin.timeToFirstGel as number) / timeToConversion(1 / Math.sqrt(3), 20, classKinetics.slow)).toBeCloseTo(
      1,
      2,
    );
  });
});

describe('a plain explicit scheme', () => {
  test.each([
    ['fast', 3, 25],
    ['fast', 6, 15],
    ['slow', 12, 25],
    ['slow', 25, 15],
  ] as const)('finds the same rise and times for %s, %d mm, %d °C', (kinetics, depth, shop) => {
    const theirs = stepPour(classes[kinetics], { depth, shop });
    const ours = run(kinetics, depth, shop);
    expect(Math.abs(ours.peakRise / (theirs.peak - shop) - 1)).toBeLessThan(0.003);
    expect(Math.abs(ours.timeToPeak / (60 * theirs.timeToPeak) - 1)).toBeLessThan(0.005);
    expect(Math.abs((ours.timeToFirstGel as number) / (60 * (theirs.firstGel as number)) - 1)).toBeLessThan(0.003);
  });
});

describe('what lies around a pour', () => {
  const rise = (more: Partial<Pour>) => runPour(pourOf('slow', 19, 20, more)).peakRise;
  const usual = rise({});

  test('less air over it makes it hotter, moving air cooler', () => {
    expect(rise({ filmTop: 6 }) / usual).toBeGreaterThan(1.8);
    expect(rise({ filmTop: 14 }) / usual).toBeLessThan(0.75);
  });

  test('a base that conducts cools it, one that insulates does not', () => {
    expect(rise({ base: { thickness: 20, density: 980, heatCapacity: 1900, conductivity: 0.5 } })).toBeLessThan(
      0.75 * usual,
    );
    expect(rise({ base: { thickness: 20, density: 35, heatCapacity: 1450, conductivity: 0.035 } })).toBeGreaterThan(
      2 * usual,
    );
  });

  test('air at its underside instead of a base counts as its film', () => {
    expect(rise({ base: null, filmBottom: 10 })).toBeLessThan(usual);
  });

  test('the hottest place lies in the lower half under open air, nearer the base than the air', () => {
    const { hottestHeight } = runPour(pourOf('slow', 19, 20));
    expect(hottestHeight).toBeGreaterThan(2);
    expect(hottestHeight).toBeLessThan(9.5);
  });

  test('warm resin in a thin layer is hottest as it is poured', () => {
    const thin = runPour(pourOf('slow', 3, 20, { resinTemperature: 30 }));
    expect(thin.peakRise).toBeCloseTo(10, 3);
    expect(thin.timeToPeak).toBeLessThan(5);
  });

  test('resin that hardly cures is given up after a month', () => {
    const never = runPour(pourOf('slow', 10, 20, { kinetics: { ...classKinetics.slow, k2At25C: 1e-9 } }));
    expect([never.outcome, never.timeToFirstGel]).toEqual(['unfinished', null]);
    expect(never.end).toBeLessThanOrEqual(30 * 86_400);
  });
});
