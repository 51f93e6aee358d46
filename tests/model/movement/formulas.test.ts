import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeByShrinkage, straightRingStrain } from '../../../src/model/movement/index.ts';
import { coefficientFromShrinkage, shrinkageTo } from '../../../src/model/species/equations.ts';
import { anyStrains } from './arbitrary.ts';

const shrinkage = fc.double({ min: 0.1, max: 20, noNaN: true });
const start = fc.constantFrom(22, 30);
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('Eq. 13-3', () => {
  test('is Eq. 4-9 taken from one moisture content to another', () => {
    fc.assert(
      fc.property(shrinkage, start, share, share, (total, fibre, a, b) => {
        const [from, to] = [a * fibre, b * fibre];
        const left = (moisture: number) => 100 - shrinkageTo(total, moisture, fibre);
        const expected = (250 * (left(to) - left(from))) / left(from);
        expect(changeByShrinkage(250, total, from, to, fibre)).toBeCloseTo(expected, 9);
      }),
    );
  });

  test('is the form that the handbook prints', () => {
    const printed = (250 * (6 - 10)) / ((30 * 100) / 9.9 - 30 + 10);
    expect(changeByShrinkage(250, 9.9, 10, 6)).toBeCloseTo(printed, 12);
  });

  test('over one percent from 10 % gives the coefficient of Table 13-5', () => {
    fc.assert(
      fc.property(shrinkage, start, (total, fibre) => {
        expect(changeByShrinkage(1, total, 10, 11, fibre)).toBeCloseTo(coefficientFromShrinkage(total, fibre), 14);
      }),
    );
  });

  test('comes back: there and back again is no change', () => {
    fc.assert(
      fc.property(shrinkage, share, share, (total, a, b) => {
        const [from, to] = [a * 30, b * 30];
        const there = 300 + changeByShrinkage(300, total, from, to);
        expect(there + changeByShrinkage(there, total, to, from)).toBeCloseTo(300, 9);
      }),
    );
  });

  test('a wood that does not shrink does not move', () => {
    expect(changeByShrinkage(300, 0, 30, 0)).toBe(-0);
  });
});

describe('straight rings', () => {
  test('give exactly the tangential strain at 0° and the radial at 90°', () => {
    fc.assert(
      fc.property(anyStrains, (strains) => {
        expect(Math.abs(straightRingStrain(0, strains) - strains.tangential)).toBe(0);
        expect(Math.abs(straightRingStrain(90, strains) - strains.radial)).toBeLessThan(1e-30);
      }),
    );
  });

  test('follow the formula shown', () => {
    fc.assert(
      fc.property(anyStrains, fc.double({ min: 0, max: 90, noNaN: true }), (strains, angle) => {
        const radians = (angle * Math.PI) / 180;
        const shown =
          Math.sqrt(
            (1 + strains.tangential) ** 2 * Math.cos(radians) ** 2 + (1 + strains.radial) ** 2 * Math.sin(radians) ** 2,
          ) - 1;
        expect(straightRingStrain(angle, strains)).toBeCloseTo(shown, 13);
      }),
    );
  });

  test('lie between the two pure cuts, and pass from one to the other without turning back', () => {
    fc.assert(
      fc.property(anyStrains, share, share, (strains, a, b) => {
        const [near, far] = [Math.min(a, b) * 90, Math.max(a, b) * 90];
        const way = Math.sign(strains.radial - strains.tangential);
        const step = straightRingStrain(far, strains) - straightRingStrain(near, strains);
        expect(way * step).toBeGreaterThanOrEqual(-1e-15);
      }),
    );
  });

  test('do not care for the angle when the wood shrinks alike both ways', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.2, max: 0.2, noNaN: true }), fc.integer({ min: 0, max: 90 }), (strain, angle) => {
        expect(straightRingStrain(angle, { radial: strain, tangential: strain })).toBeCloseTo(strain, 15);
      }),
    );
  });
});
