import { equation } from '../evidence/index.ts';
import { maximise } from './linear-programme.ts';

/** A place on a board and the two faces there, mm; heights upwards from any flat reference. */
export interface BoardPoint {
  x: number;
  y: number;
  top: number;
  bottom: number;
}

/** A flat face: height = a + b·x + c·y, mm. */
export interface Plane {
  a: number;
  b: number;
  c: number;
}

/** The thickest flat slab inside a board. */
export interface Slab {
  /** Its upper face; the lower one lies `thickness` below it. */
  plane: Plane;
  /** mm; negative where no flat slab lies inside. */
  thickness: number;
}

/** Height of a plane at a place, mm. */
export function heightOf({ a, b, c }: Plane, { x, y }: { x: number; y: number }): number {
  return a + b * x + c * y;
}

/** Places shifted and scaled to about −1 to 1, heights likewise, so that rounding is the same for a spoon and a beam. */
function scaled(points: readonly BoardPoint[]) {
  const range = (values: readonly number[]) => {
    const low = Math.min(...values);
    const high = Math.max(...values);
    return { middle: (low + high) / 2, half: (high - low) / 2 || 1 };
  };
  const [x, y] = [range(points.map((point) => point.x)), range(points.map((point) => point.y))];
  const z = range(points.flatMap((point) => [point.top, point.bottom]));
  return {
    x,
    y,
    z,
    points: points.map((point) => ({
      x: (point.x - x.middle) / x.half,
      y: (point.y - y.middle) / y.half,
      top: (point.top - z.middle) / z.half,
      bottom: (point.bottom - z.middle) / z.half,
    })),
  };
}

/** Slopes of the plane of least squares through the middles of the two faces. */
function meanSlopes(points: readonly BoardPoint[]): { b: number; c: number } {
  const count = points.length;
  const mean = (pick: (point: BoardPoint) => number) => points.reduce((sum, point) => sum + pick(point), 0) / count;
  const middle = (point: BoardPoint) => (point.top + point.bottom) / 2;
  const [mx, my, mz] = [mean((p) => p.x), mean((p) => p.y), mean(middle)];
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0];
  for (const point of points) {
    const [x, y, z] = [point.x - mx, point.y - my, middle(point) - mz];
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
  }
  const determinant = xx * yy - xy * xy;
  if (!(Math.abs(determinant) > 1e-12 * xx * yy)) return { b: 0, c: 0 };
  return { b: (xz * yy - yz * xy) / determinant, c: (yz * xx - xz * xy) / determinant };
}

/** Whether the places span an area, so that a plane over them is settled. */
export function spansArea(points: readonly { x: number; y: number }[]): boolean {
  const [first] = points;
  if (!first) return false;
  const far = points.reduce((most, point) =>
    Math.hypot(point.x - first.x, point.y - first.y) > Math.hypot(most.x - first.x, most.y - first.y) ? point : most,
  );
  const [dx, dy] = [far.x - first.x, far.y - first.y];
  const length = Math.hypot(dx, dy);
  return (
    length > 0 &&
    points.some((point) => Math.abs((point.x - first.x) * dy - (point.y - first.y) * dx) / length > 1e-6 * length)
  );
}

/** Thickness of the thickest flat slab inside a board, mm. */
export const thickestSlab = equation(
  {
    id: 'thickest-flat-slab',
    title: 'Thickest flat slab inside a board',
    tex: '\\max_{a,b,c,T} T \\quad \\text{where} \\quad a + b x_i + c y_i \\le h_i, \\quad a + b x_i + c y_i - T \\ge g_i',
    symbols: [
      { tex: 'T', meaning: 'thickness of the slab', unit: 'mm' },
      { tex: 'a, b, c', meaning: 'height and slopes of its upper face', unit: 'mm, 1, 1' },
      { tex: 'x_i, y_i', meaning: 'places measured', unit: 'mm' },
      { tex: 'h_i, g_i', meaning: 'heights of the upper and lower face there', unit: 'mm' },
    ],
    validity: 'Exact at the places measured. Between them the board may be lower or higher: measure where it is worst.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'linear programme of a flat slab' },
    remarks:
      'For a board of one thickness t this is the plane of Chebyshev, which lies as near as can be to the worst point above and below: the slab is t less twice that distance, and that is also the deepest cut of each face. Where several planes leave the same slab, the one nearest to the plane of least squares is taken, which tilts the board least.',
  },
  /**
   * The thickest slab between two parallel flat faces that only remove wood.
   *
   * @param points at least three that span an area, mm
   * @returns undefined where the arithmetic does not settle
   */
  (points: readonly BoardPoint[]): Slab | undefined => {
    const { x, y, z, points: own } = scaled(points);
    const rows = own.flatMap((point) => [
      [1, point.x, point.y, 0],
      [-1, -point.x, -point.y, 1],
    ]);
    const limits = own.flatMap((point) => [point.top, -point.bottom]);
    const thickest = maximise([0, 0, 0, 1], rows, limits);
    if (!thickest.ok) return undefined;
    const least = meanSlopes(own);
    const [, bestB = 0, bestC = 0] = nearestTo(least, own, thickest.value) ?? thickest.x;
    // The face is laid against the points themselves, so that no rounding lets it leave the board.
    const [b, c] = [(bestB * z.half) / x.half, (bestC * z.half) / y.half];
    const a = Math.min(...points.map((point) => point.top - b * point.x - c * point.y));
    const plane = { a, b, c };
    return { plane, thickness: Math.min(...points.map((point) => heightOf(plane, point) - point.bottom)) };
  },
);

/** Among the planes that leave this thickness, the one whose slopes are nearest to the given ones. */
function nearestTo(
  slopes: { b: number; c: number },
  points: readonly BoardPoint[],
  thickness: number,
): number[] | undefined {
  const kept = thickness - 1e-10;
  const rows = [
    ...points.map((point) => [1, point.x, point.y, 0, 0]),
    ...points.map((point) => [-1, -point.x, -point.y, 0, 0]),
    [0, 1, 0, -1, 0],
    [0, -1, 0, -1, 0],
    [0, 0, 1, 0, -1],
    [0, 0, -1, 0, -1],
  ];
  const limits = [
    ...points.map((point) => point.top),
    ...points.map((point) => -(point.bottom + kept)),
    slopes.b,
    -slopes.b,
    slopes.c,
    -slopes.c,
  ];
  const nearest = maximise([0, 0, 0, -1, -1], rows, limits);
  return nearest.ok ? nearest.x : undefined;
}
