import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { angleThatHolds, capillaryLength, puddleThickness } from '../../../src/model/resin/flood.ts';

describe('thickness of a puddle', () => {
  // Water at 20 °C, 0.0728 N/m: its capillary length of 2.7 mm stands in textbooks of physics.
  test('water', () => expect(capillaryLength(0.0728, 998)).toBeCloseTo(2.73, 2));

  test('both forms of the equation agree, and it grows with the angle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.08, noNaN: true }),
        fc.double({ min: 700, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 170, noNaN: true }),
        (tension, density, angle) => {
          const other = 1000 * Math.sqrt((2 * tension * (1 - Math.cos((angle * Math.PI) / 180))) / (density * 9.80665));
          expect(puddleThickness(tension, density, angle)).toBeCloseTo(other, 9);
          expect(puddleThickness(tension, density, angle + 5)).toBeGreaterThan(other);
        },
      ),
    );
  });

  test('a liquid that wets the face wholly runs out to nothing, and none stands higher than twice its capillary length', () => {
    expect(puddleThickness(0.04, 1100, 0)).toBe(0);
    expect(puddleThickness(0.04, 1100, 180)).toBeCloseTo(2 * capillaryLength(0.04, 1100), 12);
  });
});

describe('angle that holds a thickness', () => {
  test('undoes the thickness', () => {
    for (const angle of [10, 45, 90, 150])
      expect(angleThatHolds(puddleThickness(0.04, 1100, angle), 0.04, 1100)).toBeCloseTo(angle, 9);
  });
  test('a coat of 3 mm of usual resin needs more than 100°, one of 4 mm no angle holds', () => {
    expect(angleThatHolds(3, 0.04, 1100)).toBeGreaterThan(100);
    expect(angleThatHolds(4, 0.04, 1100)).toBeNull();
  });
});
