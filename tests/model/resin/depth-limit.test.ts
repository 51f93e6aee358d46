import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DepthLimit, depthLimitOf, withOwnDepth } from '../../../src/model/resin/depth-limit.ts';
import { resinKindIds, resinOf } from '../../../src/model/resin/kinds.ts';
import { layResinSheet, type ResinSheet } from '../../../src/model/resin/resin.ts';
import type { Resin } from '../../../src/model/resin/types.ts';

const hour = 3600;
const sheet = (figures: ResinSheet['figures']) => layResinSheet({ name: 'A sheet', figures });
const slow = resinOf('slow-casting-2-1') as Resin;
const depth = (limit: DepthLimit) => (limit.kind === 'known' ? limit.depth : Number.NaN);

describe('the greatest depth of one pour', () => {
  test('is the stated one in a shop at its temperature, or of which nothing is said', () => {
    expect(depthLimitOf(slow)).toMatchObject({ kind: 'known', depth: 19, statedAt: 20, hotter: false });
    expect(depth(depthLimitOf(slow, 20))).toBe(19);
  });

  test('is never more in a colder shop, and less the warmer it is', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...resinKindIds),
        fc.integer({ min: 0, max: 44 }),
        fc.integer({ min: 1, max: 10 }),
        (id, shop, more) => {
          const resin = resinOf(id) as Resin;
          const stated = resin.figures.greatestDepth?.value ?? 0;
          const [here, warmer] = [depthLimitOf(resin, shop), depthLimitOf(resin, shop + more)];
          expect(depth(here)).toBeLessThanOrEqual(stated);
          if (warmer.kind === 'known') expect(warmer.depth).toBeLessThanOrEqual(depth(here) * 1.01);
        },
      ),
      { numRuns: 40 },
    );
  });

  // By the rule that needs no run: 19 mm · 0.78 / 1.30 at 30 °C, within its tenth.
  test('in a shop of 30 °C the slow kind takes two thirds of its 19 mm at most', () => {
    const here = depth(depthLimitOf(slow, 30));
    expect(here).toBeGreaterThan(0.9 * 11.4);
    expect(here).toBeLessThan(1.1 * 11.4);
  });

  test('is nobody’s word where a sheet gives none, also where the kind under it does', () => {
    expect(depthLimitOf(sheet({ volumeRatio: 0.5 })).kind).toBe('silent');
    expect(depthLimitOf(sheet({ volumeRatio: 0.5, potLife: 6 * hour })).kind).toBe('silent');
  });

  test('is contradicted where the pot life makes that pour run away', () => {
    const coating = { potLife: 0.5 * hour, greatestDepth: 50, greatestDepthTemperature: 25 };
    expect(depthLimitOf(sheet(coating)).kind).toBe('contradicted');
    expect(depthLimitOf(sheet({ ...coating, greatestDepth: 3 })).kind).toBe('known');
    expect(depthLimitOf(sheet({ potLife: 5, greatestDepth: 3 })).kind).toBe('contradicted');
  });
});

test('of a sheet without a pot life is not known in a shop warmer than its depth is stated for', () => {
  const depthOnly = sheet({ greatestDepth: 4, greatestDepthTemperature: 22 });
  expect(depth(depthLimitOf(depthOnly, 22))).toBe(4);
  expect(depthLimitOf(depthOnly, 23)).toMatchObject({ kind: 'less-unknown', stated: 4, statedAt: 22 });
});

describe('a depth of the reader’s own', () => {
  test('stands in for a silent sheet and for a kind, and is held against the pot life as well', () => {
    const silent = sheet({ volumeRatio: 0.5, potLife: 6 * hour });
    expect(depth(depthLimitOf(withOwnDepth(silent, 15, 20)))).toBe(15);
    expect(depthLimitOf(withOwnDepth(silent, 60, 20)).kind).toBe('contradicted');
    expect(depth(depthLimitOf(withOwnDepth(slow, 12, 20)))).toBe(12);
  });

  test('does not go beyond the sheet’s', () => {
    const stated = sheet({ potLife: 6 * hour, greatestDepth: 20, greatestDepthTemperature: 20 });
    expect(depth(depthLimitOf(withOwnDepth(stated, 30, 20)))).toBe(20);
    expect(depth(depthLimitOf(withOwnDepth(stated, 10, 20)))).toBe(10);
  });
});
