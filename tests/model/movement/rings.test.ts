import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outline, type Point, pithOf, ringArcs, ringMap, type Section } from '../../../src/model/movement/index.ts';
import { anySection, smallStrains } from './arbitrary.ts';

const radiusAbout =
  ([pithX, pithY]: Point) =>
  ([x, y]: Point) =>
    Math.hypot(x - pithX, y - pithY);

/** Sections near enough that plain coordinates about the pith can judge. */
const nearSection = anySection.filter((section) => Math.hypot(...pithOf(section)) < 2000);

describe('rings for a drawing', () => {
  test('lie in the board, touch its outline at both ends, and are parts of circles about the pith', () => {
    fc.assert(
      fc.property(nearSection, (section) => {
        const [half, top] = [section.width / 2, section.thickness / 2];
        const radius = radiusAbout(pithOf(section));
        for (const arc of ringArcs(section)) {
          const first = radius(arc[0] as Point);
          for (const point of arc) {
            expect(Math.abs(point[0])).toBeLessThanOrEqual(half + 0.05);
            expect(Math.abs(point[1])).toBeLessThanOrEqual(top + 0.05);
            expect(radius(point)).toBeCloseTo(first, 7);
          }
          for (const [x, y] of [arc[0] as Point, arc.at(-1) as Point]) {
            expect(Math.min(Math.abs(Math.abs(x) - half), Math.abs(Math.abs(y) - top))).toBeLessThan(1e-6);
          }
        }
      }),
    );
  });

  test('fill the board: at least one ring, at most 48 distances, evenly spaced', () => {
    fc.assert(
      fc.property(nearSection, (section) => {
        const radius = radiusAbout(pithOf(section));
        const radii = ringArcs(section).map((arc) => radius(arc[0] as Point));
        const distinct = radii.filter((each, at) => at === 0 || each - (radii[at - 1] as number) > 1e-6);
        expect(distinct.length).toBeGreaterThanOrEqual(1);
        expect(distinct.length).toBeLessThanOrEqual(48);
        const steps = distinct.slice(1).map((each, at) => each - (distinct[at] as number));
        for (const step of steps) expect(step).toBeCloseTo(steps[0] as number, 6);
      }),
    );
  });

  test('stay circles about the pith when the wood moves, their radii stretched by the radial strain', () => {
    fc.assert(
      fc.property(nearSection, smallStrains, (section, strains) => {
        const grown = 1 + strains.radial;
        const [pithX, pithY] = pithOf(section);
        const before = radiusAbout([pithX, pithY]);
        const after = radiusAbout([pithX * grown, pithY * grown]);
        const map = ringMap(section, strains);
        for (const point of ringArcs(section).flat()) expect(after(map(point))).toBeCloseTo(before(point) * grown, 7);
      }),
    );
  });

  test.each([
    ['below', { pithDepth: 1e9, pithOffset: 0 }],
    ['to the side', { pithDepth: -10, pithOffset: 1e9 }],
    ['at 45°', { pithDepth: 1e9, pithOffset: 1e9 }],
  ])('are straight lines when the pith is a thousand kilometres %s', (_, pith) => {
    const section: Section = { width: 300, thickness: 20, ...pith };
    const arcs = ringArcs(section);
    expect(arcs.length).toBeGreaterThan(2);
    const [pithX, pithY] = pithOf(section);
    const far = Math.hypot(pithX, pithY);
    for (const arc of arcs) {
      const [x, y] = [(arc.at(-1) as Point)[0] - (arc[0] as Point)[0], (arc.at(-1) as Point)[1] - (arc[0] as Point)[1]];
      // Square to the direction of the pith.
      expect((x * pithX + y * pithY) / far / Math.hypot(x, y)).toBeCloseTo(0, 5);
    }
  });

  test('a board around which the rings turn has arcs on both sides of the pith', () => {
    const arcs = ringArcs({ width: 300, thickness: 20, pithDepth: 5, pithOffset: 0 });
    expect(arcs.some((arc) => arc.every(([x]) => x < 0))).toBe(true);
    expect(arcs.some((arc) => arc.every(([x]) => x > 0))).toBe(true);
  });

  test('a wider spacing gives fewer rings', () => {
    const section: Section = { width: 100, thickness: 20, pithDepth: 60, pithOffset: 0 };
    expect(ringArcs(section, 10).length).toBeLessThan(ringArcs(section, 2).length);
  });
});

describe('the outline', () => {
  test('goes round the rectangle anticlockwise, along both faces', () => {
    fc.assert(
      fc.property(anySection, (section) => {
        const points = outline(section);
        const area = points.reduce((sum, [x, y], at) => {
          const [nextX, nextY] = points[(at + 1) % points.length] as Point;
          return sum + (x * nextY - nextX * y) / 2;
        }, 0);
        expect(area / (section.width * section.thickness)).toBeCloseTo(1, 9);
      }),
    );
  });
});
