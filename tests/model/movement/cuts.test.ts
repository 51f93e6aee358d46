import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  assumedPithNote,
  assumedSection,
  checkSection,
  cuts,
  pithOf,
  ringAngleAt,
  ringAngles,
} from '../../../src/model/movement/index.ts';

describe('the assumed place of the pith', () => {
  const any = fc.record({
    width: fc.double({ min: 1, max: 3000, noNaN: true }),
    thickness: fc.double({ min: 1, max: 500, noNaN: true }),
    angle: fc.double({ min: 0, max: 90, noNaN: true }),
  });

  test('gives a board that can be computed, with the ring angle asked for, and the distance said', () => {
    fc.assert(
      fc.property(any, ({ width, thickness, angle }) => {
        const section = assumedSection(width, thickness, angle);
        expect(checkSection(section).ok).toBe(true);
        expect(ringAngleAt(section.pithDepth, section.pithOffset, thickness)).toBeCloseTo(angle, 9);
        expect(Math.hypot(...pithOf(section))).toBeCloseTo(Math.max(width, thickness, 100), 9);
      }),
    );
  });

  test.each(cuts)('%s: no nearer than 100 mm for a narrow board', (cut) => {
    expect(Math.hypot(...pithOf(assumedSection(30, 20, ringAngles[cut])))).toBeCloseTo(100, 9);
  });

  test('flatsawn: straight below the middle; quartersawn: level with the middle, beyond an edge', () => {
    expect(assumedSection(300, 20, 0)).toEqual({ width: 300, thickness: 20, pithDepth: 290, pithOffset: 0 });
    expect(assumedSection(300, 20, 90)).toEqual({ width: 300, thickness: 20, pithDepth: -10, pithOffset: 300 });
  });

  test('is called common practice', () => {
    expect(assumedPithNote.basis).toBe('shop-practice');
  });
});

describe('the ring angle from the pith', () => {
  test.each([
    [60, 0, 0],
    [90, 100, 45],
    [90, -100, 45],
    [-10, 200, 90],
  ])('pith %d mm below and %d mm aside of a 20 mm board: %d°', (pithDepth, pithOffset, angle) => {
    expect(ringAngleAt(pithDepth, pithOffset, 20)).toBeCloseTo(angle, 12);
  });
});
