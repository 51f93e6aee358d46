import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, pithOf, ringMap, type Section, type Strains } from '../../../src/model/movement/index.ts';
import { anySection, anyStrains, smallStrains } from './arbitrary.ts';
import { face } from './face.ts';

const share = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const inside = ({ width, thickness }: Section, across: number, up: number): Point => [across * width, up * thickness];
/** The map written as its formula stands, in coordinates about the pith. */
function plainMap(section: Section, { radial, tangential }: Strains, [x, y]: Point): Point {
  const [pithX, pithY] = pithOf(section);
  const towards = Math.atan2(-pithY, -pithX);
  const apart = Math.atan2(y - pithY, x - pithX) - towards;
  // No point of a board lies more than half a turn from its middle.
  const angle = apart > Math.PI ? apart - 2 * Math.PI : apart < -Math.PI ? apart + 2 * Math.PI : apart;
  const radius = Math.hypot(x - pithX, y - pithY) * (1 + radial);
  const turned = towards + (angle * (1 + tangential)) / (1 + radial);
  return [radius * Math.cos(turned) + pithX * (1 + radial), radius * Math.sin(turned) + pithY * (1 + radial)];
}

describe('the ring map', () => {
  test('is the formula shown, where that loses nothing to rounding', () => {
    fc.assert(
      fc.property(anySection, anyStrains, share, share, (section, strains, across, up) => {
        fc.pre(Math.hypot(...pithOf(section)) < 3000);
        const point = inside(section, across, up);
        const [x, y] = ringMap(section, strains)(point);
        const [plainX, plainY] = plainMap(section, strains, point);
        expect(x).toBeCloseTo(plainX, 8);
        expect(y).toBeCloseTo(plainY, 8);
      }),
      { numRuns: 500 },
    );
  });

  test('stretches by exactly the radial strain outward and the tangential strain around, everywhere, and keeps them square', () => {
    fc.assert(
      fc.property(anySection, anyStrains, share, share, (section, strains, across, up) => {
        const point = inside(section, across, up);
        const [pithX, pithY] = pithOf(section);
        const [fromX, fromY] = [point[0] - pithX, point[1] - pithY];
        const radius = Math.hypot(fromX, fromY);
        // A finite difference needs room about the pith.
        fc.pre(radius > 1);
        const step = 1e-4;
        const map = ringMap(section, strains);
        const along = (dx: number, dy: number): Point => {
          const [ax, ay] = map([point[0] - step * dx, point[1] - step * dy]);
          const [bx, by] = map([point[0] + step * dx, point[1] + step * dy]);
          return [(bx - ax) / (2 * step), (by - ay) / (2 * step)];
        };
        const outward = along(fromX / radius, fromY / radius);
        const around = along(-fromY / radius, fromX / radius);
        expect(Math.hypot(...outward)).toBeCloseTo(1 + strains.radial, 6);
        expect(Math.hypot(...around)).toBeCloseTo(1 + strains.tangential, 6);
        expect(outward[0] * around[0] + outward[1] * around[1]).toBeCloseTo(0, 6);
        // Not folded over.
        expect(outward[0] * around[1] - outward[1] * around[0]).toBeGreaterThan(0);
      }),
    );
  });

  test('is undone by the opposite change of the changed log', () => {
    fc.assert(
      fc.property(anySection, anyStrains, share, share, (section, strains, across, up) => {
        const point = inside(section, across, up);
        const moved = ringMap(section, strains)(point);
        const grown = 1 + strains.radial;
        // Only the place of the pith from the board's middle matters to the map.
        const changed: Section = {
          ...section,
          pithDepth: (section.pithDepth + section.thickness / 2) * grown - section.thickness / 2,
          pithOffset: section.pithOffset * grown,
        };
        const back = ringMap(changed, {
          radial: -strains.radial / (1 + strains.radial),
          tangential: -strains.tangential / (1 + strains.tangential),
        })(moved);
        expect(back[0]).toBeCloseTo(point[0], 8);
        expect(back[1]).toBeCloseTo(point[1], 8);
      }),
    );
  });

  test('mirrors with the board', () => {
    fc.assert(
      fc.property(anySection, anyStrains, share, share, (section, strains, across, up) => {
        const [x, y] = inside(section, across, up);
        const one = ringMap(section, strains)([x, y]);
        const other = ringMap({ ...section, pithOffset: -section.pithOffset }, strains)([-x, y]);
        expect(other[0]).toBeCloseTo(-one[0], 9);
        expect(other[1]).toBeCloseTo(one[1], 9);
      }),
    );
  });

  test('leaves every point where it is when nothing changes', () => {
    fc.assert(
      fc.property(anySection, share, share, (section, across, up) => {
        const point = inside(section, across, up);
        const [x, y] = ringMap(section, { radial: 0, tangential: 0 })(point);
        expect(x).toBeCloseTo(point[0], 9);
        expect(y).toBeCloseTo(point[1], 9);
      }),
    );
  });

  test('keeps the outline free of crossings for the strains of a year', () => {
    fc.assert(
      fc.property(anySection, smallStrains, (section, strains) => {
        const bark = face(section, strains, section.thickness / 2, 24);
        const heart = face(section, strains, -section.thickness / 2, 24);
        expect(crossings([...heart, ...bark.reverse()])).toBe(0);
      }),
    );
  });
});

/** How many pairs of sides of a closed polygon cross. */
function crossings(points: readonly Point[]): number {
  const side = (index: number) => [points[index], points[(index + 1) % points.length]] as [Point, Point];
  const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point) =>
    Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  let count = 0;
  for (let i = 0; i < points.length; i += 1) {
    for (let j = i + 2; j < points.length - (i === 0 ? 1 : 0); j += 1) {
      const [a, b] = side(i);
      const [c, d] = side(j);
      if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) count += 1;
    }
  }
  return count;
}
