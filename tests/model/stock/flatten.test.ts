import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flattenPlan, type MeasuredPoint } from '../../../src/model/stock/flatten.ts';
import { type BoardPoint, heightOf, spansArea, thickestSlab } from '../../../src/model/stock/flatten-plane.ts';
import { defaultMachines, machineAdvice, machineDefaults, machineGuards } from '../../../src/model/stock/machines.ts';

const grid = (rows: readonly (readonly number[])[], length = 600, width = 300): MeasuredPoint[] =>
  rows.flatMap((row, i) =>
    row.map((height, j) => ({ x: (length * i) / (rows.length - 1), y: (width * j) / (row.length - 1), height })),
  );
const plan = (points: readonly MeasuredPoint[], target = 20, thickness = 30) => {
  const outcome = flattenPlan({ points, thickness, target, depthOfCut: 1 });
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};

/** Thickness left by the slopes b and c: the concave function of which the programme finds the top. */
function leftBy(points: readonly BoardPoint[], b: number, c: number): number {
  const at = (point: BoardPoint) => b * point.x + c * point.y;
  return (
    Math.min(...points.map((point) => point.top - at(point))) -
    Math.max(...points.map((point) => point.bottom - at(point)))
  );
}

/** Every four of the limits held tight at once, solved by Cramer’s rule: the best that keeps the others. */
function byEnumeration(points: readonly BoardPoint[]): number {
  const rows = points.flatMap((p) => [
    { row: [1, p.x, p.y, 0], side: p.top },
    { row: [-1, -p.x, -p.y, 1], side: -p.bottom },
  ]);
  const det = (m: number[][]): number =>
    m.length === 1
      ? (m[0]?.[0] as number)
      : (m[0] as number[]).reduce(
          (sum, value, j) =>
            sum + (j % 2 ? -1 : 1) * value * det(m.slice(1).map((line) => line.filter((_, k) => k !== j))),
          0,
        );
  let best = Number.NEGATIVE_INFINITY;
  const pick = (from: number, chosen: number[]): void => {
    if (chosen.length < 4) {
      for (let at = from; at < rows.length; at += 1) pick(at + 1, [...chosen, at]);
      return;
    }
    const matrix = chosen.map((at) => (rows[at] as { row: number[] }).row);
    const whole = det(matrix);
    if (Math.abs(whole) < 1e-6) return;
    const x = [0, 1, 2, 3].map(
      (column) =>
        det(
          matrix.map((line, i) =>
            line.map((value, j) => (j === column ? (rows[chosen[i] as number] as { side: number }).side : value)),
          ),
        ) / whole,
    );
    if (
      rows.every(({ row, side }) => row.reduce((sum, value, j) => sum + value * (x[j] as number), 0) <= side + 1e-6)
    ) {
      best = Math.max(best, x[3] as number);
    }
  };
  pick(0, []);
  return best;
}

describe('the plane of least removal, worked by hand', () => {
  test.each([
    {
      words: 'a flat board loses nothing',
      rows: [
        [0, 0],
        [0, 0],
      ],
      left: 30,
    },
    {
      words: 'a tilted flat board loses nothing',
      rows: [
        [0, 3],
        [4, 7],
      ],
      left: 30,
    },
    {
      words: 'a cupped board loses its cup',
      rows: [
        [3, 0, 3],
        [3, 0, 3],
      ],
      left: 27,
    },
    {
      words: 'a bowed board loses its bow',
      rows: [
        [0, 0],
        [2, 2],
        [0, 0],
      ],
      left: 28,
    },
    {
      words: 'one corner 4 mm high: half of the wind',
      rows: [
        [0, 0],
        [0, 4],
      ],
      left: 28,
    },
    {
      words: 'twisted 2 mm at all corners: the whole of it',
      rows: [
        [2, 0],
        [0, 2],
      ],
      left: 28,
    },
    {
      words: 'one high spot in the middle: all of it',
      rows: [
        [0, 0, 0],
        [0, 5, 0],
        [0, 0, 0],
      ],
      left: 25,
    },
    {
      words: 'cup and a tilt along the length',
      rows: [
        [3, 0, 3],
        [9, 6, 9],
      ],
      left: 27,
    },
  ])('$words', ({ rows, left }) => {
    expect(plan(grid(rows)).thicknessLeft).toBeCloseTo(left, 9);
  });

  test('a cupped board is not tilted for nothing: it is cut alike along its length', () => {
    const { plane } = plan(
      grid([
        [3, 0, 3],
        [3, 0, 3],
        [3, 0, 3],
      ]),
    );
    expect(plane.b).toBeCloseTo(0, 9);
    expect(plane.c).toBeCloseTo(0, 9);
  });
  test('thickness measured at each place is used there', () => {
    const points = grid([
      [0, 0],
      [0, 0],
    ]).map((point, at) => ({ ...point, thickness: at === 3 ? 24 : 30 }));
    // No tilt helps: the slab is as thick at the thin corner as elsewhere.
    expect(plan(points).thicknessLeft).toBeCloseTo(24, 9);
  });
});

describe('the plan', () => {
  test('a spare thickness is cut from both faces alike, and the cuts add up at every place', () => {
    const flat = plan(
      grid([
        [3, 0, 3],
        [3, 0, 3],
      ]),
      22,
    );
    expect(flat.meetsTarget).toBe(true);
    expect(flat.deepest).toBeCloseTo(5.5, 9);
    expect(flat.deepestBelow).toBeCloseTo(5.5, 9);
    expect([flat.passes, flat.passesBelow]).toEqual([6, 6]);
    for (const point of flat.points) expect(point.cut + point.cutBelow).toBeCloseTo(30 - 22, 9);
  });
  test('a target that cannot be met is said, with what is left', () => {
    const flat = plan(
      grid([
        [6, 0, 6],
        [6, 0, 6],
      ]),
      26,
    );
    expect(flat.meetsTarget).toBe(false);
    expect(flat.shortfall).toBeCloseTo(2, 9);
    expect(flat.thickness).toBeCloseTo(24, 9);
  });
  test('shims lift the board until the plane is level, and one place at least rests on the sled', () => {
    const flat = plan(
      grid([
        [2, 0],
        [0, 2],
      ]),
    );
    expect(flat.points.map((point) => point.shim)).toEqual([2, 0, 0, 2].map((value) => expect.closeTo(value, 9)));
    expect(flat.highestShim).toBeCloseTo(2, 9);
  });
  test('a flat board at its target needs no pass', () => {
    const flat = plan(
      grid([
        [0, 0],
        [0, 0],
      ]),
      30,
    );
    expect([flat.passes, flat.passesBelow, flat.deepest]).toEqual([0, 0, 0]);
  });
  test.each([
    {
      words: 'three points',
      points: grid([
        [0, 0],
        [0, 0],
      ]).slice(0, 3),
      field: 'heights',
    },
    {
      words: 'points on one line',
      points: [0, 1, 2, 3].map((x) => ({ x, y: 2 * x, height: x % 2 })),
      field: 'heights',
    },
    {
      words: 'a height that is no number',
      points: grid([
        [0, Number.NaN],
        [0, 0],
      ]),
      field: 'heights',
    },
    {
      words: 'a board more out of flat than thick',
      points: grid([
        [40, 0, 40],
        [40, 0, 40],
      ]),
      field: 'heights',
    },
  ])('refuses $words', ({ points, field }) => {
    const outcome = flattenPlan({ points, thickness: 30, target: 20, depthOfCut: 1 });
    expect(!outcome.ok && outcome.errors[0]?.field).toBe(field);
  });
  test('refuses a depth of cut of nothing', () => {
    const outcome = flattenPlan({
      points: grid([
        [0, 0],
        [0, 0],
      ]),
      thickness: 30,
      target: 20,
      depthOfCut: 0,
    });
    expect(!outcome.ok && outcome.errors[0]?.field).toBe('depthOfCut');
  });
});

describe('the programme against search', () => {
  // Tenths of a millimetre, as a rule and feeler gauges give them.
  const tenths = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((value) => value / 10);
  const place = fc.record({
    x: fc.integer({ min: 0, max: 60 }),
    y: fc.integer({ min: 0, max: 25 }),
    top: tenths(-8, 8),
    t: tenths(20, 40),
  });
  const board = (most: number) =>
    fc
      .array(place, { minLength: 4, maxLength: most })
      .map((points): BoardPoint[] => points.map(({ x, y, top, t }) => ({ x: 10 * x, y: 10 * y, top, bottom: top - t })))
      .filter((points) => spansArea(points));

  test('leaves as much as the best of all corners of the limits', () => {
    fc.assert(
      fc.property(board(5), (points) => {
        expect(thickestSlab(points)?.thickness).toBeCloseTo(byEnumeration(points), 6);
      }),
      { numRuns: 60 },
    );
  });
  test('no pair of slopes on a fine grid leaves more, and the slab lies inside the board', () => {
    fc.assert(
      fc.property(board(30), (points) => {
        const slab = thickestSlab(points);
        if (!slab) throw new Error('not settled');
        for (const point of points) {
          expect(heightOf(slab.plane, point)).toBeLessThanOrEqual(point.top + 1e-9);
          expect(heightOf(slab.plane, point) - slab.thickness).toBeGreaterThanOrEqual(point.bottom - 1e-9);
        }
        for (let i = -20; i <= 20; i += 1) {
          for (let j = -20; j <= 20; j += 1) {
            const near = leftBy(points, slab.plane.b + i * 2e-4, slab.plane.c + j * 2e-4);
            const far = leftBy(points, i * 5e-3, j * 5e-3);
            expect(Math.max(near, far)).toBeLessThanOrEqual(slab.thickness + 1e-7);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
  test('regular grids, with all their ties, settle', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 10 }),
        fc.integer({ min: 2, max: 10 }),
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 100, maxLength: 100 }),
        (n, m, values) => {
          const rows = Array.from({ length: n }, (_, i) =>
            Array.from({ length: m }, (_, j) => values[i * m + j] as number),
          );
          const outcome = flattenPlan({ points: grid(rows), thickness: 30, target: 20, depthOfCut: 1 });
          expect(outcome.ok).toBe(true);
          if (outcome.ok) expect(outcome.value.thicknessLeft).toBeGreaterThanOrEqual(27 - 1e-8);
        },
      ),
    );
  });
});

describe('machines', () => {
  const board = { length: 900, width: 120, thickness: 30, finished: 22 };
  test('a board that every machine takes gets no advice', () => {
    expect(machineAdvice(board, defaultMachines)).toEqual([]);
  });
  test('a machine that is not there asks nothing', () => {
    expect(machineAdvice({ length: 100, width: 900, thickness: 3, finished: 2 }, {})).toEqual([]);
    const { planerWidth, planerLeastLength } = defaultMachines;
    const found = machineAdvice({ ...board, width: 250, length: 100 }, { planerWidth, planerLeastLength });
    expect(found.map(({ id }) => id)).toEqual(['too-short']);
    expect(JSON.stringify(found)).not.toMatch(/jointer/);
  });
  test.each([
    ['wider-than-jointer', { width: 250 }, /router/],
    ['wider-than-planer', { width: 400 }, /rip/],
    ['too-short', { length: 200 }, /long board/],
    ['too-thin', { thickness: 9 }, /tape/],
    ['too-thin', { finished: 4 }, /sand/],
    ['push-blocks', { width: 60 }, /push blocks/],
  ])('%s is said, with the safe way round', (id, change, words) => {
    const found = machineAdvice({ ...board, ...change }, defaultMachines).find((caution) => caution.id === id);
    expect(`${found?.text} ${found?.why}`).toMatch(words);
    expect(found?.own).toBe(true);
    expect(found?.basis).toBe('shop-practice');
  });
  test('least lengths are marked common practice, and the guards cite the rule', () => {
    for (const { basis } of machineDefaults) expect(basis).toBe('shop-practice');
    for (const { basis, citation } of machineGuards) {
      expect(basis).toBe('published');
      expect(citation?.source).toBe('cfr-29-1910-213');
    }
    expect(machineGuards.find((caution) => caution.id === 'least-lengths')?.why).toMatch(/no least length/);
  });
});
