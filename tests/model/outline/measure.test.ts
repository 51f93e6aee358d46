import cephes from 'cephes';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { ellipsePerimeter } from '../../../src/model/outline/checks.ts';
import {
  areaOfShape,
  boxAlongGrain,
  movedShape,
  offsetShape,
  parametricOutlines,
  perimeterOfShape,
  prepare,
  ringArea,
} from '../../../src/model/outline/index.ts';
import { lengthOf } from '../../../src/model/outline/segments.ts';
import { simplifyClosed } from '../../../src/model/outline/simplify.ts';
import { distance, drawn, grown, pointsOf, polygon, referenceOf, sound, wavyOutline } from './reference.ts';

// The special functions are compiled when the module loads.
beforeAll(() => cephes.compiled);

describe('area and perimeter', () => {
  test.each(parametricOutlines.map(({ id }) => id))('of the %s agree with a second geometry library', (id) => {
    const shape = sound(drawn(id));
    const reference = referenceOf(shape);
    // The second library measures the polyline, which lies within the tolerance of the curves.
    expect(Math.abs(areaOfShape(shape) - reference.getArea())).toBeLessThan(shape.tolerance * reference.getLength());
    const edge = polygon(pointsOf(shape.outer)).getLength();
    expect(perimeterOfShape(shape)).toBeGreaterThanOrEqual(edge - 1e-9);
    expect(perimeterOfShape(shape) - edge).toBeLessThan(0.001 * edge);
  });

  test.each([
    [100, 100, 9],
    [210, 130, 9],
    [200, 20, 9],
    [1000, 3, 5],
  ])(
    'of an ellipse of half axes %d and %d mm agree with the elliptic integral of a special-function library to %d digits',
    (a, b, digits) => {
      const shape = sound({ outer: `M0 ${b}A${a} ${b} 0 0 1 ${2 * a} ${b}A${a} ${b} 0 0 1 0 ${b}Z`, holes: [] });
      // The library takes the complementary parameter, 1 − m = b²/a²; the circle, whose perimeter is 2πr, tells it apart.
      const expected = 4 * a * cephes.ellpe((b * b) / (a * a));
      expect(perimeterOfShape(shape) / expected).toBeCloseTo(1, digits);
      expect(ellipsePerimeter(a, b) / expected).toBeCloseTo(1, 10);
    },
  );

  test('a cubic that is a straight line has the length of the line', () => {
    expect(lengthOf({ kind: 'cubic', x0: 0, y0: 0, ax: 1, ay: 1, bx: 2, by: 2, x1: 3, y1: 3 })).toBeCloseTo(
      Math.hypot(3, 3),
      9,
    );
  });

  test('of wavy polygons agree with a second geometry library', () => {
    fc.assert(
      fc.property(wavyOutline, (outline) => {
        const shape = sound(outline);
        expect(areaOfShape(shape)).toBeCloseTo(referenceOf(shape).getArea(), 4);
        expect(perimeterOfShape(shape)).toBeCloseTo(polygon(pointsOf(shape.outer)).getLength(), 6);
      }),
      { numRuns: 40 },
    );
  });

  test('do not change when the outline is turned, moved or turned over', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...parametricOutlines.map(({ id }) => id)),
        fc.double({ min: -360, max: 360, noNaN: true }),
        fc.boolean(),
        (id, degrees, mirrored) => {
          const outline = drawn(id);
          const [before, after] = [sound(outline), movedShape(sound(outline), { degrees, mirrored, dx: 30, dy: -20 })];
          expect(areaOfShape(after) / areaOfShape(before)).toBeCloseTo(1, 5);
          expect(perimeterOfShape(after) / perimeterOfShape(before)).toBeCloseTo(1, 5);
          expect(after.holes.length).toBe(before.holes.length);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the box along the grain', () => {
  test('of a rectangle of 400 × 250 mm with square corners at 30°', () => {
    const shape = sound(drawn('rounded-rectangle', { cornerRadius: 0 }));
    const box = boxAlongGrain(shape, 30);
    expect(box.length).toBeCloseTo(400 * Math.cos(Math.PI / 6) + 250 * Math.sin(Math.PI / 6), 6);
    expect(box.width).toBeCloseTo(400 * Math.sin(Math.PI / 6) + 250 * Math.cos(Math.PI / 6), 6);
  });

  test('holds every point, touches on all sides, and turns with the outline', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 0, max: 180, noNaN: true }), (outline, grain) => {
        const shape = sound(outline);
        const box = boxAlongGrain(shape, grain);
        const turned = movedShape(sound(outline), { degrees: 37 });
        expect(boxAlongGrain(turned, grain + 37).length).toBeCloseTo(box.length, 2);
        const [c, s] = [Math.cos((grain * Math.PI) / 180), Math.sin((grain * Math.PI) / 180)];
        const along = pointsOf(shape.outer).map(({ x, y }) => x * c + y * s);
        expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(box.length, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('finds the middle of a curve that bulges past its ends', () => {
    // The curve's highest point is 3/4 of its control points' height.
    const shape = sound({ outer: 'M0 0C0 -40 100 -40 100 0Z', holes: [] });
    expect(boxAlongGrain(shape, 0).width).toBeCloseTo(30, 9);
  });
});

describe('the rough outline', () => {
  test.each(parametricOutlines.map(({ id }) => id))('of the %s at 3 mm agrees with a second geometry library', (id) => {
    const shape = sound(drawn(id));
    const reference = grown(referenceOf(shape), 3);
    const ours = offsetShape(shape, 3).reduce((sum, ring) => sum + ringArea(ring.points), 0);
    expect(Math.abs(ours - reference.getArea())).toBeLessThan(0.06 * reference.getLength());
  });

  test('of wavy polygons, outwards and inwards, agrees with a second geometry library', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 0.1, max: 12, noNaN: true }), fc.boolean(), (outline, far, inwards) => {
        const by = inwards ? -far * 0.7 : far;
        const shape = sound(outline);
        const reference = grown(referenceOf(shape), by);
        const rings = offsetShape(shape, by);
        const ours = rings.reduce((sum, ring) => sum + ringArea(ring.points), 0);
        expect(Math.abs(ours - reference.getArea())).toBeLessThan(0.07 * reference.getLength() + 0.5);
      }),
      { numRuns: 30 },
    );
  });

  test('stays at the clearance from the line everywhere', () => {
    const shape = sound(drawn('paddle'));
    const rough = offsetShape(shape, 3).find(({ hole }) => !hole);
    const line = polygon(pointsOf(shape.outer));
    for (const { x, y } of rough?.points ?? []) {
      const off = distance(
        line,
        polygon([
          { x, y },
          { x: x + 1e-6, y },
          { x, y: y + 1e-6 },
        ]),
      );
      expect(Math.abs(off - 3)).toBeLessThan(0.07);
    }
  });

  test('drops what is too narrow for it', () => {
    expect(offsetShape(sound(drawn('rounded-rectangle', { length: 40, width: 30, cornerRadius: 2 })), -16)).toEqual([]);
  });
});

describe('a simplified polyline', () => {
  test('stays within its tolerance', () => {
    fc.assert(
      fc.property(wavyOutline, fc.double({ min: 0.005, max: 1, noNaN: true }), (outline, tolerance) => {
        const { outer } = sound(outline);
        const thin = simplifyClosed(outer, tolerance);
        const kept = polygon(pointsOf(thin));
        const full = polygon(pointsOf(outer));
        expect(Math.abs(kept.getArea() - full.getArea())).toBeLessThanOrEqual(tolerance * full.getLength() + 1e-9);
        expect(thin.x.length).toBeLessThanOrEqual(outer.x.length);
      }),
      { numRuns: 40 },
    );
  });
});

describe('an outline that cannot be measured', () => {
  test.each([
    ['two paths', 'M0 0H10V10H0ZM20 0h5v5h-5z', 'not one closed path'],
    ['an open path', 'M0 0H10V10', 'open'],
    ['a path around nothing', 'M0 0H10V0Z', 'encloses no area'],
    ['what is no path', 'hello', 'not one closed path'],
    ['nothing', '', 'not one closed path'],
    ['a path past ten metres', 'M0 0H20000V10H0Z', 'further than 10 m'],
    ['a number past all bounds', 'M0 0H1e999V10H0Z', 'further than 10 m'],
  ])('%s is refused', (_what, outer, words) => {
    const shape = prepare({ outer, holes: [] });
    expect(shape.ok).toBe(false);
    expect(shape.ok ? '' : shape.errors[0]?.message).toContain(words);
  });
});
