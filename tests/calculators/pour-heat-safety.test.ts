import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { report } from '../../src/calculators/kit/report.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { holdsAmount } from '../../src/model/quantity/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';
import { runs } from './runs.ts';

/** An answer takes far longer than a test's other work: a quarter of the usual runs, and 2000 where many are asked for. */
const numRuns = Math.min(Math.ceil(runs / 4), 2000);

// What must hold of every pour, whatever stands on the sheet.

const calculator: Calculator = pourHeatCalculator;

/** Now and then not there. */
const mostly = <T>(entry: fc.Arbitrary<T>) => fc.option(entry, { freq: 9, nil: undefined });
const celsius = fc.integer({ min: 18, max: 28 }).map((degrees) => `${degrees} °C`);

/** Entries of a sheet: any may be missing, and the depth is now and then one that the pot life cannot mean. */
const sheets = fc
  .record({
    mixByVolume: fc.constantFrom('1:1', '2:1', '3:1'),
    potLife: mostly(fc.integer({ min: 15, max: 1500 }).map((minutes) => `${minutes} min`)),
    potLifeMass: mostly(fc.constantFrom('50 g', '100 g', '500 g')),
    potLifeTemperature: mostly(celsius),
    greatestDepth: mostly(
      fc.oneof(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 60 })).map((mm) => `${mm} mm`),
    ),
    greatestDepthTemperature: mostly(celsius),
    greatestVolume: fc.constantFrom(undefined, undefined, '500 ml', '10 l'),
    cure: fc.constantFrom(undefined, '4 h', '7 d'),
    cureTemperature: fc.constantFrom(undefined, '22 °C', '60 °C'),
  })
  .map((sheet) => ({
    ...sheet,
    // What says nothing without the other is left out, as the form would.
    potLifeMass: sheet.potLife && sheet.potLifeMass,
    potLifeTemperature: sheet.potLife && sheet.potLifeTemperature,
    greatestDepthTemperature: sheet.greatestDepth && sheet.greatestDepthTemperature,
  }));
const pours = fc
  .record({
    sheet: fc.option(sheets, { freq: 8, nil: undefined }),
    kind: fc.constantFrom(...resinKindIds),
    depth: fc.oneof(fc.double({ min: 0.5, max: 15, noNaN: true }), fc.double({ min: 0.5, max: 60, noNaN: true })),
    shop: fc.double({ min: 5, max: 32, noNaN: true }),
    warmer: fc.constantFrom(0, 0, 0, 5, 20),
    base: fc.constantFrom('hardwood', 'mdf', 'hdpe', 'none'),
    air: fc.constantFrom('still', 'covered', 'moving'),
    area: fc.constantFrom(undefined, '100 cm²', '5000 cm²'),
  })
  .map(({ sheet: figures, kind, depth, shop, warmer, base, air, area }) => {
    const raw = {
      resin: figures ? JSON.stringify({ name: 'Lakeside', ...figures }) : kind,
      depth,
      shopTemperature: shop,
      resinTemperature: shop + warmer,
      base,
      air,
      ...(area ? { area } : {}),
    };
    return { figures, raw };
  });

describe('every pour', () => {
  test('has a verdict, and good means all of what it must', () => {
    const levels = { good: 0, care: 0, stop: 0, unknown: 0 };
    fc.assert(
      fc.property(pours, ({ figures: sheet, raw }) => {
        const outcome = answer(calculator, raw);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
        const found = report(calculator, raw, outcome.value.result);
        const { verdict, figures, cautions } = found;
        if (!verdict) throw new Error('no verdict');
        levels[verdict.level] += 1;
        const words = JSON.stringify(found);
        expect(holdsAmount(words)).toBe(false);
        const stated = sheet?.greatestDepth ? Number.parseFloat(sheet.greatestDepth) : undefined;
        const rise = figures.peakRise?.value ?? 0;
        const runaway = figures.peakRise?.note?.startsWith('Runaway') ?? false;

        if (verdict.level === 'good') {
          expect(stated).toBeDefined();
          expect(sheet).toMatchObject({
            potLife: expect.any(String),
            potLifeMass: expect.any(String),
            potLifeTemperature: expect.any(String),
            greatestDepthTemperature: expect.any(String),
          });
          expect(raw.depth).toBeLessThanOrEqual(stated ?? 0);
          expect(rise).toBeLessThanOrEqual(40);
          expect(cautions.filter(({ own, level }) => own && level !== 'note')).toEqual([]);
        }
        // Whatever the yardstick, a hot pour is stopped and has a danger of its own at the head.
        if (runaway || rise > 40) {
          expect(verdict.level).toBe('stop');
          expect(cautions[0]).toMatchObject({ level: 'danger', own: true });
        }
        // Deeper than its sheet is never inside it, and no depth beyond it is given.
        if (stated !== undefined && raw.depth > stated) {
          expect(['stop', 'unknown']).toContain(verdict.level);
          expect(words).not.toMatch(/inside (the|your) sheet/i);
        }
        if (stated !== undefined && figures.greatestDepthHere)
          expect(figures.greatestDepthHere.high ?? figures.greatestDepthHere.value).toBeLessThanOrEqual(stated);
        if (verdict.level === 'unknown') {
          expect(figures.greatestDepthHere ?? figures.layers ?? figures.heatIndex).toBeUndefined();
          expect(found.tables ?? []).toEqual([]);
          expect(words).not.toMatch(/inside (the|your) sheet/i);
        }
        // Only the maker's own numbers wear the maker's mark.
        for (const [name, { basis }] of Object.entries(figures))
          if (basis === 'supplier-sheet') expect(name).toBe('sheetDepth');
        // A layer is within all that one pour must be within.
        if (figures.layerDepth && figures.greatestDepthHere)
          expect(figures.layerDepth.value).toBeLessThanOrEqual(figures.greatestDepthHere.value * 1.000001);
      }),
      { numRuns },
    );
    // Every level is met: otherwise the property would say little.
    for (const [level, count] of Object.entries(levels)) expect(count, level).toBeGreaterThan(numRuns / 100);
  }, 300_000);
});
