import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxAlongGrain, nestCopies, parametricOutlines, placedShape } from '../../../src/model/outline/index.ts';
import { distance, drawn, pointsOf, polygon, sound } from './reference.ts';

const sheet = { grainDegrees: 0, sheetLength: 1220, sheetWidth: 610, spacing: 15 };

describe('nested copies', () => {
  test('of a rectangle fill rows', () => {
    const nest = nestCopies(sound(drawn('rounded-rectangle', { length: 380, width: 180, cornerRadius: 0 })), sheet);
    // (1220 − 15) / (380 + 15) and (610 − 15) / (180 + 15), rounded down.
    expect(nest.placements).toHaveLength(3 * 3);
    expect(nest.usedLength).toBeCloseTo(3 * 395 + 15, 1);
  });

  test('of a half-moon are turned about by turns, because more fit so', () => {
    const nest = nestCopies(sound(drawn('half-moon', { length: 420, rise: 200 })), sheet);
    expect(new Set(nest.placements.map(({ degrees }) => degrees))).toEqual(new Set([0, 180]));
    expect(nest.placements.length).toBeGreaterThan(4);
  });

  test('are as many as asked for, and none where none fits', () => {
    expect(nestCopies(sound(drawn('oval')), { ...sheet, copies: 2 }).placements).toHaveLength(2);
    expect(nestCopies(sound(drawn('oval')), { ...sheet, sheetWidth: 200 })).toMatchObject({
      placements: [],
      usedLength: 0,
    });
  });

  test('keep the spacing between each other and to the sheet’s edge, and their grain along the sheet', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...parametricOutlines),
        fc.double({ min: 600, max: 1400, noNaN: true }),
        fc.double({ min: 400, max: 900, noNaN: true }),
        fc.double({ min: 3, max: 40, noNaN: true }),
        fc.constantFrom(0, 90, 30),
        ({ id }, sheetLength, sheetWidth, spacing, grainDegrees) => {
          const drawing = sound(drawn(id));
          const nest = nestCopies(drawing, { grainDegrees, sheetLength, sheetWidth, spacing });
          const box = boxAlongGrain(drawing, grainDegrees);
          const shapes = nest.placements.map((placement) => placedShape(nest, placement));
          const polygons = shapes.map((shape) => polygon(pointsOf(shape.outer)));
          shapes.forEach((shape, index) => {
            expect(boxAlongGrain(shape, 0).length).toBeCloseTo(box.length, 2);
            for (const { x, y } of pointsOf(shape.outer)) {
              expect(Math.min(x, y, sheetLength - x, sheetWidth - y)).toBeGreaterThan(spacing - 0.01);
              expect(x).toBeLessThanOrEqual(nest.usedLength - spacing + 0.01);
            }
            for (let other = 0; other < index; other++) {
              expect(distance(polygons[index] as never, polygons[other] as never)).toBeGreaterThan(spacing - 0.06);
            }
          });
        },
      ),
      { numRuns: 25 },
    );
  });
});
