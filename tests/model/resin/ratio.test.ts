import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  mixedDensity,
  parseMixRatio,
  partsOfMass,
  volumeRatioOfWeight,
  weightRatioOfVolume,
} from '../../../src/model/resin/ratio.ts';

const ratio = fc.double({ min: 0.05, max: 4, noNaN: true });
const density = fc.double({ min: 0.7, max: 3, noNaN: true });

describe('ratio by volume and by weight', () => {
  // Worked by hand: 0.97 / 1.16 = 0.8362, 1.00 / (2 · 1.16) = 0.4310, 0.96 / (3 · 1.13) = 0.2832.
  test.each([
    { volume: '1:1', a: 1.16, b: 0.97, weight: 83.6 },
    { volume: '2:1', a: 1.16, b: 1.0, weight: 43.1 },
    { volume: '3:1', a: 1.13, b: 0.96, weight: 28.3 },
  ])('$volume with $a and $b g/ml is 100 : $weight by weight', ({ volume, a, b, weight }) => {
    const read = parseMixRatio(volume);
    if (!read.ok) throw new Error(read.problem);
    expect(100 * weightRatioOfVolume(read.value, a, b)).toBeCloseTo(weight, 1);
  });

  test('one conversion is the inverse of the other', () => {
    fc.assert(
      fc.property(ratio, density, density, (volume, a, b) => {
        expect(volumeRatioOfWeight(weightRatioOfVolume(volume, a, b), a, b)).toBeCloseTo(volume, 12);
      }),
    );
  });

  test('parts have the ratio, the mass and, together, the density of the mix', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), ratio, density, density, (mass, weight, a, b) => {
        const parts = partsOfMass(mass, weight, a, b);
        expect(parts.massA + parts.massB).toBeCloseTo(mass, 6);
        expect(parts.massB / parts.massA).toBeCloseTo(weight, 9);
        expect((parts.volumeA + parts.volumeB) * mixedDensity(weight, a, b)).toBeCloseTo(mass, 6);
        expect(mixedDensity(weight, a, b)).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-12);
        expect(mixedDensity(weight, a, b)).toBeLessThanOrEqual(Math.max(a, b) + 1e-12);
      }),
    );
  });
});

describe('reading a mix ratio', () => {
  test.each([
    ['2:1', 0.5],
    ['100:43', 0.43],
    [' 100 : 83,6 ', 0.836],
    ['1 to 1', 1],
    ['3/1', 1 / 3],
    ['10 : 4.5', 0.45],
  ])('“%s” is %f of hardener to one of resin', (text, value) => {
    expect(parseMixRatio(text)).toEqual({ ok: true, value: expect.closeTo(value, 9) });
  });

  test.each([
    ['2', 'is not a mix ratio'],
    ['two to one', 'is not a mix ratio'],
    ['2:0', 'leaves one part out'],
    ['0:1', 'leaves one part out'],
    ['1:100', 'is 100 of hardener to one of resin'],
    ['2:1:1', 'is not a mix ratio'],
  ])('“%s” is refused with a way out', (text, problem) => {
    const read = parseMixRatio(text);
    expect(read).toMatchObject({ ok: false, problem: expect.stringContaining(problem) });
    expect(read.ok ? '' : read.wayOut).toMatch(/2:1/);
  });

  test('any text is read or refused', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = parseMixRatio(text);
        expect(read.ok ? Number.isFinite(read.value) && read.value > 0 : read.wayOut.length > 0).toBe(true);
      }),
    );
  });
});
