import fc from 'fast-check';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { newtonsPerPound } from '../../../src/model/quantity/constants.ts';
import {
  coefficientFromShrinkage,
  densityAt,
  equations,
  kilogramsPerCubicMetre,
  maximumMoisture,
  shrinkageTo,
  specificGravityAt,
  volumeFromShrinkage,
} from '../../../src/model/species/equations.ts';

describe('equation records', () => {
  test.each(equations.map(({ record }) => ({ id: record.id, record })))(
    '$id can be typeset and names its symbols',
    ({ record }) => {
      for (const tex of [record.tex, ...record.symbols.map((symbol) => symbol.tex)]) {
        expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error' })).not.toThrow();
      }
      expect(record.symbols.length).toBeGreaterThan(1);
      expect(record.validity.length).toBeGreaterThan(10);
    },
  );

  test('ids are each used once', () => {
    expect(new Set(equations.map(({ record }) => record.id)).size).toBe(equations.length);
  });
});

const shrinkage = fc.double({ min: 0, max: 20, noNaN: true });
const start = fc.constantFrom(22, 30);

test('a coefficient grows with shrinkage and is 0 without any', () => {
  expect(coefficientFromShrinkage(0, 30)).toBe(0);
  fc.assert(
    fc.property(shrinkage, fc.double({ min: 0.01, max: 5, noNaN: true }), start, (s, more, f) => {
      expect(coefficientFromShrinkage(s + more, f)).toBeGreaterThan(coefficientFromShrinkage(s, f));
    }),
  );
});

test('the coefficient is shrinkage spread evenly: from 10 % to dry it gives the size that Eq. 4-9 gives', () => {
  fc.assert(
    fc.property(shrinkage, start, (s, f) => {
      const dimensionAt = (moisture: number) => 1 - shrinkageTo(s, moisture, f) / 100;
      const change = (dimensionAt(10) - dimensionAt(0)) / dimensionAt(10);
      expect(10 * coefficientFromShrinkage(s, f)).toBeCloseTo(change, 12);
    }),
  );
});

test('shrinkage is total when dry, nothing at and above its start, and falls between', () => {
  expect(shrinkageTo(8, 0, 30)).toBe(8);
  expect(shrinkageTo(8, 30, 30)).toBe(0);
  expect(shrinkageTo(8, 90, 30)).toBe(0);
  expect(shrinkageTo(8, 15, 30)).toBe(4);
});

test('volume shrinks at least as much as either direction', () => {
  fc.assert(
    fc.property(shrinkage, shrinkage, (radial, tangential) => {
      expect(volumeFromShrinkage(radial, tangential)).toBeGreaterThan(Math.max(radial, tangential));
    }),
  );
});

test('specific gravity rises as wood dries, and is basic at the start of shrinkage', () => {
  expect(specificGravityAt(0.5, 30, 30)).toBe(0.5);
  expect(specificGravityAt(0.5, 12, 30)).toBeGreaterThan(0.5);
  expect(specificGravityAt(0.5, 0, 30)).toBeGreaterThan(specificGravityAt(0.5, 12, 30));
});

test('density counts the water; heavier wood holds less of it', () => {
  expect(densityAt(0.5, 0)).toBe(500);
  expect(densityAt(0.5, 12)).toBeCloseTo(560, 9);
  expect(maximumMoisture(0.6)).toBeLessThan(maximumMoisture(0.4));
  expect(maximumMoisture(1.54)).toBe(0);
});

test('pounds and cubic feet convert by definition', () => {
  expect(newtonsPerPound).toBe(0.45359237 * 9.80665);
  expect(kilogramsPerCubicMetre).toBeCloseTo(16.0185, 4);
});
