import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Anchor,
  anchorOf,
  heatIndex,
  hottestAnchor,
  indexBand,
  indexLevel,
} from '../../../src/model/resin/anchor.ts';
import { kineticsOf } from '../../../src/model/resin/fit.ts';
import { steady } from '../../../src/model/resin/history.ts';
import { resinKinds, resinOf } from '../../../src/model/resin/kinds.ts';
import { classKinetics, classThermal } from '../../../src/model/resin/kinetics.ts';
import { recoatConversion, runPour } from '../../../src/model/resin/pour.ts';
import {
  depthByRule,
  depthRuleBand,
  equalLayers,
  greatestDepth,
  type LayerTimes,
  layerTimesOf,
  layerWait,
} from '../../../src/model/resin/pour-plan.ts';
import { layResinSheet } from '../../../src/model/resin/resin.ts';
import { recoatShuts } from '../../../src/model/resin/stated.ts';
import type { Resin, ResinFigureName } from '../../../src/model/resin/types.ts';
import { usualPour } from '../../../src/model/resin/usual-pour.ts';

const hour = 3600;

function anchorFor(resin: Resin, maySlow = true): Anchor | undefined {
  const { kinetics, thermal } = kineticsOf(resin);
  const { greatestDepth: depth, greatestDepthTemperature } = resin.figures;
  return anchorOf(kinetics, thermal, depth?.value as number, greatestDepthTemperature?.value as number, maySlow);
}
const slowCasting = resinOf('slow-casting-2-1') as Resin;
/** A sheet whose pot life and depth do not go together in the model: it runs away at its own depth. */
const deepSheet = layResinSheet({
  name: 'Deep casting',
  figures: { potLife: 12 * hour, greatestDepth: 50, greatestDepthTemperature: 25 },
});

describe('the anchor', () => {
  test.each(resinKinds.map((kind) => [kind.kind, kind] as const))('of %s is run as it stands', (_, kind) => {
    const anchor = anchorFor(kind);
    expect(anchor?.slowedBy).toBe(1);
    expect(anchor?.rise).toBeGreaterThan(20);
    expect(anchor?.rise).toBeLessThan(30);
  });

  test('of a sheet that would run away by its pot life is slowed to the hottest that counts', () => {
    const anchor = anchorFor(deepSheet);
    expect(anchor?.slowedBy).toBeGreaterThan(1);
    expect(anchor?.rise).toBeGreaterThan(hottestAnchor - 1.5);
    expect(anchor?.rise).toBeLessThanOrEqual(hottestAnchor);
    expect(anchor?.kinetics.k2At25C).toBeLessThan(kineticsOf(deepSheet).kinetics.k2At25C);
  });

  test('is none where the reader’s own kinetics run away at the sheet’s depth', () => {
    expect(anchorFor(deepSheet, false)).toBeUndefined();
  });
});

describe('the heat index', () => {
  test('of the sheet’s own pour is 1', () => {
    for (const resin of [...resinKinds, deepSheet]) {
      const anchor = anchorFor(resin) as Anchor;
      const run = runPour(usualPour(anchor.kinetics, classThermal, anchor.depth, anchor.temperature));
      expect(heatIndex(run.peakRise, anchor.rise)).toBeCloseTo(1, 9);
    }
  });

  test('25 % too deep makes the rise 1.6 times as large or more, and 0.8 of the depth about halves it', () => {
    const { kinetics, thermal } = kineticsOf(slowCasting);
    const rise = (depth: number) => runPour(usualPour(kinetics, thermal, depth, 25)).peakRise;
    // 14.0 mm warms by 25 K.
    expect(rise(1.25 * 14) / rise(14)).toBeGreaterThan(1.6);
    expect(rise(0.8 * 14)).toBeGreaterThan(10.6);
    expect(rise(0.8 * 14)).toBeLessThan(16.3);
  });

  test('has a band that closes at the sheet’s own pour and holds the rises of the invented resins', () => {
    expect(indexBand(1, 0)).toEqual([1, 1]);
    // At 0.8 of the depth 11.8 to 16.0 K, at 1.25 of it 42.6 to 81.8 K, against 25 K; middles by their geometric means.
    for (const [least, most] of [
      [11.8, 16],
      [42.6, 81.8],
    ] as const) {
      const [low, high] = indexBand(Math.sqrt(least * most) / 25, 0);
      expect(low).toBeLessThanOrEqual(least / 25);
      expect(high).toBeGreaterThanOrEqual(most / 25);
    }
  });

  test.each([
    [15, 23.8, 1.605 / 1.715, 1.862 / 1.715],
    [30, 10.97, 0.745 / 0.776, 0.799 / 0.776],
  ])('has a band at %d °C as wide as the depths of the invented resins go apart there', (shop, depth, least, most) => {
    // The class set warms by 25 K at this depth, which is the yardstick’s rise; the resins go from `least` to `most` of it.
    const { kinetics, thermal } = kineticsOf(slowCasting);
    const rise = (share: number) => runPour(usualPour(kinetics, thermal, share * depth, shop)).peakRise;
    const half = Math.sqrt(rise(most) / rise(least));
    const [low, high] = indexBand(1, Math.abs(25 - shop));
    expect(low * high).toBeCloseTo(1, 9);
    expect(high / half).toBeGreaterThan(1);
    expect(high / half).toBeLessThan(1.25);
  });

  test('has four levels, and a run that runs away is the last whatever its index', () => {
    const settled = { outcome: 'settled', peakRise: 30 } as const;
    expect([0.5, 0.8, 0.81, 1, 1.01, 1.6, 1.61].map((index) => indexLevel(index, settled))).toEqual([
      'inside',
      'inside',
      'edge',
      'edge',
      'outside',
      'outside',
      'runaway',
    ]);
    expect(indexLevel(0.9, { outcome: 'runaway', peakRise: 95 })).toBe('runaway');
    expect(indexLevel(2, { outcome: 'settled', peakRise: 4 })).toBe('outside');
  });

  test.each([
    [0.9, 40, false, 'edge'],
    [0.9, 40.01, false, 'hot'],
    [0.5, 10, true, 'deeper'],
    [1.2, 10, true, 'deeper'],
    [0.5, 41, true, 'hot'],
    [1.61, 10, true, 'runaway'],
    [1.61, 9.99, true, 'deeper'],
  ] as const)(
    'names the gravest: index %d, rise %d K, deeper than the sheet %s: %s',
    (index, peakRise, tooDeep, level) => {
      expect(indexLevel(index, { outcome: 'settled', peakRise }, tooDeep)).toBe(level);
    },
  );
});

describe('the greatest depth', () => {
  const anchor = anchorFor(slowCasting) as Anchor;
  const at = (shop: number, more = {}) => {
    const { depth: _, ...pour } = usualPour(anchor.kinetics, classThermal, 1, shop);
    return greatestDepth({ ...pour, ...more }, anchor);
  };
  const depthAt = (shop: number, more = {}) => {
    const found = at(shop, more);
    return found.kind === 'none' ? 0 : found.depth;
  };

  test('is the sheet’s own where the pour is the sheet’s own', () => {
    expect(depthAt(20)).toBeCloseTo(19, 6);
  });

  test.each([15, 20, 25, 30])('at %d °C follows the rule of the invented resins within its band', (shop) => {
    const rule = depthByRule(19, 20, shop) as number;
    expect(Math.abs(depthAt(shop) / rule - 1)).toBeLessThan(depthRuleBand);
  });

  test('has a heat index of 1, within a percent, at any temperature and in any air', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 32 }),
        fc.constantFrom(6, 10, 14),
        fc.integer({ min: -3, max: 8 }),
        (shop, filmTop, warmer) => {
          const more = { filmTop, resinTemperature: shop + warmer };
          const found = at(shop, more);
          if (found.kind !== 'found') throw new Error(found.kind);
          const run = runPour({ ...usualPour(anchor.kinetics, classThermal, found.depth, shop), ...more });
          expect(Math.abs(heatIndex(run.peakRise, anchor.rise) - 1)).toBeLessThan(0.015);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('is smaller in a warmer shop', () => {
    const depths = [5, 10, 15, 20, 25, 30, 35].map((shop) => depthAt(shop));
    for (let index = 1; index < depths.length; index += 1)
      expect(depths[index] as number).toBeLessThan(depths[index - 1] as number);
  });

  test('is none where the resin is poured hotter than the sheet’s pour ever grows', () => {
    expect(at(20, { resinTemperature: 50 }).kind).toBe('none');
  });

  test('is more than is sought where nothing warms', () => {
    expect(at(20, { kinetics: { ...classKinetics.slow, k2At25C: 1e-9 } }).kind).toBe('more');
  });
});

describe('the depth rule', () => {
  test('gives the shares of the invented resins', () => {
    expect([15, 20, 25, 30].map((to) => depthByRule(10, 25, to)?.toFixed(1))).toEqual(['17.0', '13.0', '10.0', '7.8']);
  });

  test('goes there and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 30, noNaN: true }),
        fc.double({ min: 15, max: 30, noNaN: true }),
        (from, to) => {
          expect(depthByRule(depthByRule(10, from, to) as number, to, from)).toBeCloseTo(10, 9);
        },
      ),
    );
  });

  test('says nothing outside 15 to 30 °C', () => {
    expect([depthByRule(10, 25, 14), depthByRule(10, 31, 20)]).toEqual([undefined, undefined]);
  });
});

describe('equal layers', () => {
  test('fill the depth, each within the greatest, and one fewer would not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (depth, greatest) => {
          const layers = equalLayers(depth, greatest);
          expect(layers.count * layers.depth).toBeCloseTo(depth, 9);
          expect(layers.depth).toBeLessThanOrEqual(greatest * (1 + 2e-6));
          if (layers.count > 1) expect(depth / (layers.count - 1)).toBeGreaterThan(greatest);
        },
      ),
    );
  });
});

describe('the wait between layers', () => {
  const known = kineticsOf(slowCasting);
  const run = (shop: number, depth = 12, kinetics = known.kinetics) =>
    runPour(usualPour(kinetics, classThermal, depth, shop));
  const timesAt = (shop: number, resin = slowCasting) => layerTimesOf(resin, kineticsOf(resin), steady(shop));
  const laid = (figures: Partial<Record<ResinFigureName, number>>) => layResinSheet({ name: 'Laid', figures });

  test('goes by the window where that opens last, carried over to this shop', () => {
    const { opens, closes } = timesAt(25);
    expect(opens ?? 0).toBeLessThan(20 * hour);
    expect(layerWait(run(25), { ...timesAt(25), opens: 20 * hour })).toMatchObject({
      from: 20 * hour,
      fromBy: 'window',
      to: closes,
      toBy: 'sheet',
      abrade: false,
    });
  });

  test('goes by the layer below where that sets or cools later', () => {
    const cool = run(12);
    const wait = layerWait(cool, { ...timesAt(12), opens: hour });
    expect(['gel', 'cool']).toContain(wait?.fromBy);
    expect(wait?.from).toBe(Math.max(cool.timeToLastGel as number, cool.timeToCool as number));
  });

  test('where the model closes the window, by the earlier of a thin layer and the pour', () => {
    const below = run(25);
    const silent: LayerTimes = { opens: hour, closes: null, closesBy: 'model', sandable: 60 * hour };
    expect(layerWait(below, silent)).toMatchObject({ to: below.timeToClose, toBy: 'model' });
    expect(below.timeToClose as number).toBeGreaterThan(below.timeToLastGel as number);
    const late = (below.timeToClose as number) - 1;
    expect(layerWait(below, { ...silent, closes: late })?.to).toBe(late);
    expect(layerWait(below, silent, { ...below, timeToClose: late })?.to).toBe(late);
  });

  test('waits until the hottest place is within 5 K of the air', () => {
    const { record, timeToCool } = runPour(usualPour(known.kinetics, classThermal, 19, 22), { record: true });
    const at = record.times.indexOf(timeToCool as number);
    const above = (step: number) =>
      Math.max(...[record.top, record.middle, record.bottom].map((line) => line[step] as number)) - 22;
    expect(above(at)).toBeLessThanOrEqual(5);
    expect(above(at - 1)).toBeGreaterThan(4.8);
  });

  test('the model closes at three quarters of the cure, as the cure clock does', () => {
    expect(recoatConversion).toBe(recoatShuts.from);
    expect(recoatConversion).toBe(0.75);
  });

  test('where the window closes before the layer is ready, it waits until it may be sanded', () => {
    const early = laid({
      potLife: 6 * hour,
      recoatOpens: hour,
      recoatCloses: 3 * hour,
      sandable: 72 * hour,
      cureTemperature: 20,
    });
    expect(layerWait(run(20), timesAt(20, early))).toMatchObject({
      abrade: true,
      toBy: 'sheet',
      from: expect.closeTo(72 * hour, 0),
      fromBy: 'sand',
    });
  });

  // A coating resin without a window: its layer cools after two hours, and nobody sands it then.
  test('a layer that has shut is never sanded after a few hours', () => {
    const fast = laid({ potLife: 1800, greatestDepth: 3, greatestDepthTemperature: 25 });
    const below = run(25, 3, kineticsOf(fast).kinetics);
    const wait = layerWait(below, timesAt(25, fast));
    expect(below.timeToCool as number).toBeLessThan(4 * hour);
    expect(wait?.abrade).toBe(true);
    expect(wait?.from).toBeGreaterThanOrEqual(24 * hour);
  });

  test('where the model leaves too narrow a window to be hit, it is sanded', () => {
    const below = { ...run(20), timeToLastGel: 8 * hour, timeToCool: 10 * hour };
    const times: LayerTimes = { opens: 8 * hour, closes: 30 * hour, closesBy: 'model', sandable: 40 * hour };
    expect(layerWait({ ...below, timeToClose: 10.1 * hour }, times)).toMatchObject({ abrade: true, from: 40 * hour });
    expect(layerWait({ ...below, timeToClose: 12 * hour }, times)).toMatchObject({ abrade: false, from: 10 * hour });
  });

  test('where no time to sand can be given, no wait is', () => {
    const times: LayerTimes = { opens: null, closes: null, closesBy: 'model', sandable: null };
    expect(layerWait(run(20), times)).toBeUndefined();
  });

  test('is not known of a layer that runs away', () => {
    expect(layerWait(run(25, 30), timesAt(25))).toBeUndefined();
  });
});
