import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkSection,
  measureSection,
  type Point,
  pithOf,
  ringMap,
  type Section,
  type Strains,
} from '../../../src/model/movement/index.ts';
import { anySection, anyStrains, smallStrains } from './arbitrary.ts';

const share = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const inside = ({ width, thickness }: Section, across: number, up: number): Point => [across * width, up * thickness];
const far = 1e6;
const board = { width: 300, thickness: 20 };
const below: Section = { ...board, pithDepth: far, pithOffset: 0 };
const beside: Section = { ...board, pithDepth: 0, pithOffset: far };

/** Points of a face, closely spaced, after a change. */
function face(section: Section, strains: Strains, y: number, pieces = 20_000): Point[] {
  const map = ringMap(section, strains);
  return Array.from({ length: pieces + 1 }, (_, at) => map([section.width * (at / pieces - 0.5), y]));
}

/** The map written as its formula stands, in coordinates about the pith. */
function plainMap(section: Section, { radial, tangential }: Strains, [x, y]: Point): Point {
  const [pithX, pithY] = pithOf(section);
  const towards = Math.atan2(-pithY, -pithX);
  const angle = Math.atan2(y - pithY, x - pithX) - towards;
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

describe('limits', () => {
  test('pith far below: the width takes the tangential strain, the thickness the radial, to 1 part in 10⁹', () => {
    fc.assert(
      fc.property(smallStrains, (strains) => {
        const { width, thickness, cup, faceDifference } = measureSection(below, strains);
        expect(Math.abs(width / 300 - 1 - strains.tangential)).toBeLessThan(1e-9);
        expect(Math.abs(thickness / 20 - 1 - strains.radial)).toBeLessThan(1e-9);
        expect(Math.abs(cup.bark)).toBeLessThan(0.002);
        expect(Math.abs(faceDifference)).toBeLessThan(0.002);
      }),
    );
  });

  test('pith far to the side: the width takes the radial strain, the thickness the tangential, to 1 part in 10⁹', () => {
    fc.assert(
      fc.property(anyStrains, fc.constantFrom(-1, 1), (strains, side) => {
        const { width, thickness } = measureSection({ ...beside, pithOffset: side * far }, strains);
        expect(Math.abs(width / 300 - 1 - strains.radial)).toBeLessThan(1e-9);
        expect(Math.abs(thickness / 20 - 1 - strains.tangential)).toBeLessThan(1e-9);
      }),
    );
  });

  test('what is left of the width at a distant pith is the next term of its series, and not rounding', () => {
    fc.assert(
      fc.property(anyStrains, (strains) => {
        // A face at height h and half its width w: with u = w / h and k the turn, the chord is w (1 + ε_t) (1 + u² (1 - k²) / 6).
        const k = (1 + strains.tangential) / (1 + strains.radial);
        const next = ((150 / far) ** 2 * (1 - k * k)) / 6;
        const { width } = measureSection(below, strains);
        expect(Math.abs(width / 300 / (1 + strains.tangential) - 1 - next)).toBeLessThan(2e-13);
      }),
    );
  });

  test('equal strains only scale the board: no cup at any position, to 10⁻⁹ mm', () => {
    fc.assert(
      fc.property(anySection, fc.double({ min: -0.15, max: 0.15, noNaN: true }), (section, strain) => {
        const measures = measureSection(section, { radial: strain, tangential: strain });
        expect(Math.abs(measures.cup.bark)).toBeLessThan(1e-9);
        expect(Math.abs(measures.cup.heart)).toBeLessThan(1e-9);
        expect(Math.abs(measures.faceDifference)).toBeLessThan(1e-9);
        expect(measures.width).toBeCloseTo(section.width * (1 + strain), 9);
        expect(measures.thickness).toBeCloseTo(section.thickness * (1 + strain), 9);
      }),
    );
  });

  test('a pith at a thousand kilometres loses nothing', () => {
    const strains = { radial: -0.02, tangential: -0.04 };
    const { width, cup } = measureSection({ ...board, pithDepth: 1e9, pithOffset: 0 }, strains);
    expect(width / 300 - 1).toBeCloseTo(-0.04, 14);
    const turn = 0.96 / 0.98;
    expect(cup.bark / ((300 ** 2 / 8e9) * 0.98 * (1 - turn * turn))).toBeCloseTo(1, 6);
  });
});

describe('cup', () => {
  // A thin strip at the pith's distance R bends by what its shear gains along it: γ = 2 (ε_r - ε_t) x / R, so the curvature is
  // 2 (ε_r - ε_t) / R and the rise of a width w is w²/8 times that.
  test('for small strains and a distant pith is w²/4R times the difference of the strains', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 50, noNaN: true }), smallStrains, (ratio, { radial, tangential }) => {
        const strains = { radial: radial / 100, tangential: tangential / 100 };
        const width = 200;
        const depth = width * ratio;
        const { cup } = measureSection({ width, thickness: 0.01, pithDepth: depth, pithOffset: 0 }, strains);
        const expected = (width ** 2 / (4 * depth)) * (strains.radial - strains.tangential);
        expect(Math.abs(cup.bark - expected)).toBeLessThanOrEqual(
          Math.abs(expected) * (0.6 / ratio ** 2 + 2e-3) + 1e-11,
        );
      }),
    );
  });

  test('is the largest distance of a closely sampled face from its chord', () => {
    fc.assert(
      fc.property(anySection, anyStrains, fc.constantFrom('bark', 'heart'), (section, strains, side) => {
        const points = face(section, strains, (side === 'bark' ? 1 : -1) * (section.thickness / 2), 4000);
        const [ax, ay] = points[0] as Point;
        const [bx, by] = points.at(-1) as Point;
        const chord = Math.hypot(bx - ax, by - ay);
        const away = points.map(([x, y]) => ((x - ax) * (by - ay) - (y - ay) * (bx - ax)) / chord);
        const sampled = away.reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
        // Samples may miss the place by half a step, and near the pith a face is bent sharply.
        expect(Math.abs(measureSection(section, strains).cup[side] - sampled)).toBeLessThan(
          1e-4 * section.width + 1e-9,
        );
        // A face bends one way only.
        const wrong = away.filter((each) => each * Math.sign(sampled) < -1e-8);
        expect(wrong).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('follows from the curvature of a straight line under the map, integrated twice', () => {
    const section: Section = { width: 240, thickness: 20, pithDepth: 60, pithOffset: 0 };
    const strains = { radial: -0.015, tangential: -0.03 };
    const height = section.pithDepth + section.thickness;
    const k = (1 + strains.tangential) / (1 + strains.radial);
    const m = 1 / k;
    // r = h / cos θ goes to a curve of curvature (1 - m²) cos θ / (h (1 + ε_r) (1 + m² tan² θ)^{3/2}); its direction and place by
    // summing along the arc from the middle, where it runs level.
    let [direction, x, y] = [0, 0, 0];
    const pieces = 200_000;
    for (let at = 0; at < pieces; at += 1) {
      const theta = Math.atan((((at + 0.5) / pieces) * section.width) / 2 / height);
      const [cos, sin] = [Math.cos(theta), Math.sin(theta)];
      const length =
        (Math.hypot((1 + strains.radial) * sin, (1 + strains.tangential) * cos) * section.width) / 2 / pieces;
      const curvature =
        ((1 - m * m) * cos) / (height * (1 + strains.radial) * (1 + m * m * Math.tan(theta) ** 2) ** 1.5);
      // From the middle outward the line is followed clockwise about the pith.
      const half = (-curvature * length) / 2;
      x += length * Math.cos(direction + half);
      y += length * Math.sin(direction + half);
      direction += 2 * half;
    }
    const { barkFace, cup } = measureSection(section, strains);
    expect(2 * x).toBeCloseTo(barkFace, 6);
    expect(y).toBeCloseTo(cup.bark, 6);
  });

  test.each([
    { what: 'drying', strains: { radial: -0.02, tangential: -0.04 }, sign: 1, words: 'hollow on the bark side' },
    {
      what: 'taking up moisture',
      strains: { radial: 0.02, tangential: 0.04 },
      sign: -1,
      words: 'hollow on the heart side',
    },
  ])('a flatsawn board $what becomes $words', ({ strains, sign }) => {
    const section: Section = { ...board, pithDepth: 90, pithOffset: 0 };
    const { cup } = measureSection(section, strains);
    expect(Math.sign(cup.bark)).toBe(sign);
    expect(Math.sign(cup.heart)).toBe(sign);
    const [, middle] = ringMap(section, strains)([0, 10]);
    const [, arris] = ringMap(section, strains)([150, 10]);
    expect(Math.sign(arris - middle)).toBe(sign);
  });

  test('falls with the square of the width and with the distance of the pith', () => {
    const strains = { radial: -0.004, tangential: -0.01 };
    const cup = (width: number, pithDepth: number) =>
      measureSection({ width, thickness: 20, pithDepth, pithOffset: 0 }, strains).cup.bark;
    expect(cup(100, 1000) / cup(200, 1000)).toBeCloseTo(0.25, 2);
    expect(cup(200, 2000) / cup(200, 1000)).toBeCloseTo(0.5, 1);
  });
});

describe('faces and thickness', () => {
  test('the area changes by both strains together, wherever the board lay', () => {
    fc.assert(
      fc.property(anySection, anyStrains, (section, strains) => {
        const map = ringMap(section, strains);
        const [half, top] = [section.width / 2, section.thickness / 2];
        const pieces = 1000;
        const corners: Point[] = [
          [-half, -top],
          [half, -top],
          [half, top],
          [-half, top],
        ];
        const outline = corners.flatMap(([fromX, fromY], side) => {
          const [toX, toY] = corners[(side + 1) % 4] as Point;
          return Array.from({ length: pieces }, (_, at): Point => {
            const part = at / pieces;
            return map([fromX + part * (toX - fromX), fromY + part * (toY - fromY)]);
          });
        });
        const area = outline.reduce((sum, [x, y], at) => {
          const [nextX, nextY] = outline[(at + 1) % outline.length] as Point;
          return sum + (x * nextY - nextX * y) / 2;
        }, 0);
        const expected = section.width * section.thickness * (1 + strains.radial) * (1 + strains.tangential);
        // What lies between a thousand straight pieces a side and the curve.
        expect(Math.abs(area / expected - 1)).toBeLessThan(1e-5);
      }),
      { numRuns: 40 },
    );
  });

  test('the handbook: a board that is not purely flatsawn shrinks less in width and more in thickness than one that is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0.002, max: 0.04, noNaN: true }),
        (pithDepth, pithOffset, radial) => {
          const strains = { radial: -radial, tangential: -2 * radial };
          const { width, thickness } = measureSection({ ...board, pithDepth, pithOffset }, strains);
          expect(width).toBeGreaterThan(300 * (1 + strains.tangential));
          expect(thickness).toBeLessThan(20 * (1 + strains.radial));
        },
      ),
    );
  });

  test('the mean thickness is that found by slicing the board', () => {
    const section: Section = { width: 300, thickness: 20, pithDepth: 40, pithOffset: 50 };
    const strains = { radial: -0.02, tangential: -0.04 };
    const map = ringMap(section, strains);
    const slices = Array.from({ length: 2001 }, (_, at) => {
      const x = section.width * (at / 2000 - 0.5);
      const [bark, heart] = [map([x, 10]), map([x, -10])];
      // Square to the slice's own middle line.
      const [next, last] = [map([x + 0.01, 0]), map([x - 0.01, 0])];
      const length = Math.hypot(next[0] - last[0], next[1] - last[1]);
      return ((next[0] - last[0]) * (bark[1] - heart[1]) - (next[1] - last[1]) * (bark[0] - heart[0])) / length;
    });
    const mean = slices.reduce((sum, each) => sum + each, 0) / slices.length;
    expect(measureSection(section, strains).thickness).toBeCloseTo(mean, 2);
  });

  test('mirroring changes no measure', () => {
    fc.assert(
      fc.property(anySection, anyStrains, (section, strains) => {
        const one = measureSection(section, strains);
        const other = measureSection({ ...section, pithOffset: -section.pithOffset }, strains);
        expect(other.width).toBeCloseTo(one.width, 9);
        expect(other.faceDifference).toBeCloseTo(one.faceDifference, 9);
        expect(other.thickness).toBeCloseTo(one.thickness, 9);
        expect(other.cup.bark).toBeCloseTo(one.cup.bark, 6);
        expect(other.cup.heart).toBeCloseTo(one.cup.heart, 6);
      }),
    );
  });

  test('a board twice as large in everything moves twice as much', () => {
    fc.assert(
      fc.property(anySection, anyStrains, (section, strains) => {
        const one = measureSection(section, strains);
        const doubled: Section = {
          width: 2 * section.width,
          thickness: 2 * section.thickness,
          pithDepth: 2 * section.pithDepth,
          pithOffset: 2 * section.pithOffset,
        };
        const two = measureSection(doubled, strains);
        expect(two.width).toBeCloseTo(2 * one.width, 8);
        expect(two.thickness).toBeCloseTo(2 * one.thickness, 8);
        expect(two.cup.bark).toBeCloseTo(2 * one.cup.bark, 6);
      }),
    );
  });

  test('nothing is ever not a number', () => {
    const any = fc.record({
      width: fc.double({ min: 0.01, max: 1e5, noNaN: true }),
      thickness: fc.double({ min: 0.01, max: 1e5, noNaN: true }),
      pithDepth: fc.double({ min: -1e5, max: 1e9, noNaN: true }),
      pithOffset: fc.double({ min: -1e9, max: 1e9, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.oneof(any, anySection), anyStrains, (section, strains) => {
        fc.pre(checkSection(section).ok);
        const { cup, ...rest } = measureSection(section, strains);
        for (const value of [...Object.values(rest), cup.bark, cup.heart]) expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a section as typed', () => {
  test.each([
    [{ width: 0 }, 'width', 'A width of 0 mm'],
    [{ width: Number.NaN }, 'width', 'A width of NaN mm'],
    [{ thickness: -3 }, 'thickness', 'A thickness of -3 mm'],
    [{ thickness: Number.POSITIVE_INFINITY }, 'thickness', 'A thickness of Infinity mm'],
    [{ pithDepth: 2e9 }, 'pithDepth', 'A distance of 2000000000 mm'],
    [{ pithOffset: Number.NaN }, 'pithOffset', 'A distance of NaN mm'],
    [{ pithDepth: -11 }, 'pithDepth', 'past the middle'],
    [{ pithDepth: -5, pithOffset: 149 }, 'pithDepth', 'The pith is inside the board'],
  ])('%j is refused on %s', (wrong, field, words) => {
    const outcome = checkSection({ ...board, pithDepth: 50, pithOffset: 0, ...wrong });
    if (outcome.ok) throw new Error('accepted');
    expect(outcome.errors.map((error) => error.field)).toEqual([field]);
    expect(outcome.errors[0]?.message).toContain(words);
  });

  test.each([
    { pithDepth: 0, pithOffset: 0 },
    { pithDepth: -10, pithOffset: 150 },
    { pithDepth: -5, pithOffset: -151 },
    { pithDepth: 1e9, pithOffset: -1e9 },
  ])('%j is taken', (pith) => {
    expect(checkSection({ ...board, ...pith }).ok).toBe(true);
  });
});
