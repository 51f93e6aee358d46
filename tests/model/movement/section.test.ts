import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSection, measureSection, type Point, ringMap, type Section } from '../../../src/model/movement/index.ts';
import { anySection, anyStrains, smallStrains } from './arbitrary.ts';
import { face } from './face.ts';

const far = 1e6;
const board = { width: 300, thickness: 20 };
const below: Section = { ...board, pithDepth: far, pithOffset: 0 };
const beside: Section = { ...board, pithDepth: 0, pithOffset: far };

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
