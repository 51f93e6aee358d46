import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { maximise } from '../../../src/model/stock/linear-programme.ts';

/** Every corner of the limits, by pairs in the plane: the largest is the answer. */
function byCorners(goal: readonly number[], rows: readonly (readonly number[])[], limits: readonly number[]): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < rows.length; i += 1) {
    for (let j = i + 1; j < rows.length; j += 1) {
      const [a, b] = rows[i] as [number, number];
      const [c, d] = rows[j] as [number, number];
      const determinant = a * d - b * c;
      if (Math.abs(determinant) < 1e-9) continue;
      const x = ((limits[i] as number) * d - b * (limits[j] as number)) / determinant;
      const y = (a * (limits[j] as number) - (limits[i] as number) * c) / determinant;
      const inside = rows.every(([p, q], at) => (p as number) * x + (q as number) * y <= (limits[at] as number) + 1e-7);
      if (inside) best = Math.max(best, (goal[0] as number) * x + (goal[1] as number) * y);
    }
  }
  return best;
}

describe('a linear programme', () => {
  test('worked by hand: 3x + 5y under x ≤ 4, 2y ≤ 12, 3x + 2y ≤ 18', () => {
    const outcome = maximise(
      [3, 5],
      [
        [1, 0],
        [0, 2],
        [3, 2],
        [-1, 0],
        [0, -1],
      ],
      [4, 12, 18, 0, 0],
    );
    expect(outcome).toMatchObject({ ok: true });
    if (outcome.ok) {
      expect(outcome.value).toBeCloseTo(36, 9);
      expect(outcome.x[0]).toBeCloseTo(2, 9);
      expect(outcome.x[1]).toBeCloseTo(6, 9);
    }
  });
  test('without a limit in its way it is unbounded, and with limits that exclude each other infeasible', () => {
    expect(
      maximise(
        [1, 0],
        [
          [0, 1],
          [0, -1],
        ],
        [1, 1],
      ),
    ).toEqual({ ok: false, why: 'unbounded' });
    expect(maximise([1], [[1], [-1]], [0, -1])).toEqual({ ok: false, why: 'infeasible' });
  });
  test('agrees with a walk over all corners', () => {
    const coefficient = fc.integer({ min: -5, max: 5 });
    fc.assert(
      fc.property(
        fc.tuple(coefficient, coefficient),
        fc.array(fc.tuple(coefficient, coefficient, fc.integer({ min: 0, max: 6 })), { minLength: 0, maxLength: 8 }),
        (goal, cuts) => {
          // A box keeps it bounded, and limits from 0 upwards keep the origin inside.
          const rows = [[1, 0], [-1, 0], [0, 1], [0, -1], ...cuts.map(([p, q]) => [p, q])];
          const limits = [10, 10, 10, 10, ...cuts.map(([, , limit]) => limit)];
          const outcome = maximise(goal, rows, limits);
          expect(outcome.ok).toBe(true);
          if (!outcome.ok) return;
          for (const [at, row] of rows.entries()) {
            expect(
              (row[0] as number) * (outcome.x[0] as number) + (row[1] as number) * (outcome.x[1] as number),
            ).toBeLessThanOrEqual((limits[at] as number) + 1e-8);
          }
          expect(outcome.value).toBeCloseTo(byCorners(goal, rows, limits), 7);
        },
      ),
      { numRuns: 500 },
    );
  });
});
