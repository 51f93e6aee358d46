import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoatsRequest, coatedArea, mostCoats, planCoats } from '../../../src/model/finish/coats.ts';
import { finishById, finishes } from '../../../src/model/finish/kinds.ts';
import type { Finish } from '../../../src/model/finish/types.ts';

const oil = finishById('mineral-oil') as Finish;
const plan = (change: Partial<CoatsRequest>) => {
  const outcome = planCoats({ finish: oil, area: 1e6, coats: 3, spare: 0, ...change });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value;
};
const hours = (seconds: number) => seconds / 3600;

describe('by hand', () => {
  test('a square metre at 10, then 20 m² from a litre: 100 ml, then 50 and 50', () => {
    const { coats, volume, mass } = plan({ spreadingFirst: 10, spreadingNext: 20 });
    expect(coats.map((coat) => coat.volume.value)).toEqual([100, 50, 50]);
    expect(volume.value).toBe(200);
    expect(mass).toBeCloseTo(200 * oil.figures.density.value, 9);
  });
  test('a tenth spare is a tenth more', () => {
    expect(plan({ spreadingFirst: 10, coats: 1, spare: 0.1 }).volume.value).toBeCloseTo(110, 9);
  });
  // The handbook’s stain, 4.9 to 9.8 m² from a litre on smooth wood, is 102 to 204 ml on a square metre.
  test('the handbook’s spreading rates', () => {
    expect(plan({ coats: 1, spreadingFirst: 9.8 }).volume.value).toBeCloseTo(102, 0);
    expect(plan({ coats: 1, spreadingFirst: 4.9 }).volume.value).toBeCloseTo(204, 0);
  });
  test('a tray of 400 × 250 × 20 mm, both faces and edges', () => {
    expect(coatedArea(400 * 250, 2 * 650, 20, 'all')).toBe(226_000);
    expect(coatedArea(400 * 250, 2 * 650, 20, 'faces')).toBe(200_000);
    expect(coatedArea(400 * 250, 2 * 650, 20, 'face-and-edges')).toBe(126_000);
    expect(coatedArea(400 * 250, 2 * 650, 20, 'face')).toBe(100_000);
  });
  test('times of three coats: on, wiped after the soak, the next a night later', () => {
    const { coats, light, use } = plan({});
    expect(coats.map(({ start }) => hours(start))).toEqual([0, 12, 24]);
    expect(coats.map(({ start, wipe }) => ((wipe ?? 0) - start) / 60)).toEqual([40, 40, 40]);
    expect(hours(light)).toBe(36);
    expect(use.value).toBe(light);
  });
});

test('what is not wiped has no time of wiping', () => {
  for (const { wipe } of plan({ finish: finishById('varnish') as Finish }).coats) expect(wipe).toBeNull();
});

test('curing counts from the last coat', () => {
  const finish = finishById('linseed-oil') as Finish;
  const { use, light } = plan({ finish, coats: 2 });
  expect(use.value).toBe(finish.figures.recoat.value + (finish.figures.fullCure?.value ?? 0));
  expect(light).toBe(finish.figures.recoat.value + finish.figures.lightUse.value);
});

test('coats outside what is usual are told', () => {
  expect(plan({ coats: 3 }).usualCoats).toBe(true);
  expect(plan({ coats: 1 }).usualCoats).toBe(false);
  expect(plan({ coats: 4 }).usualCoats).toBe(false);
});

test('amounts grow in proportion to the area and keep their band, whichever finish', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...finishes),
      fc.double({ min: 1, max: 1e9, noNaN: true }),
      fc.integer({ min: 1, max: mostCoats }),
      (finish, area, coats) => {
        const one = plan({ finish, area, coats });
        const two = plan({ finish, area: 2 * area, coats });
        expect(two.volume.value).toBeCloseTo(2 * one.volume.value, 6);
        expect(one.volume.low).toBeLessThanOrEqual(one.volume.value);
        expect(one.volume.high).toBeGreaterThanOrEqual(one.volume.value);
        expect(one.coats.reduce((sum, coat) => sum + coat.volume.value, 0)).toBeCloseTo(one.volume.value, 6);
        expect(one.use.value).toBeGreaterThanOrEqual(one.light);
      },
    ),
  );
});

test.each([
  [{ coats: 0 }, 'coats'],
  [{ coats: 2.5 }, 'coats'],
  [{ coats: 99 }, 'coats'],
  [{ area: 0 }, 'area'],
  [{ area: Number.NaN }, 'area'],
  [{ spreadingFirst: 0 }, 'spreadingFirst'],
  [{ spreadingNext: -1 }, 'spreadingNext'],
  [{ spare: -0.1 }, 'spare'],
] as const)('%j is refused at its field', (change, field) => {
  const outcome = planCoats({ finish: oil, area: 1e6, coats: 3, spare: 0, ...change });
  expect(outcome.ok).toBe(false);
  if (!outcome.ok) expect(outcome.errors.map((error) => error.field)).toEqual([field]);
});
