import { EndType, FillRule, inflatePaths, JoinType, type Paths64, union } from '@countertype/clipper2-ts';
import { thinnedLoop } from './simplify.ts';
import type { Point, Polyline, Shape } from './types.ts';

/** A closed polyline of an offset; counter-clockwise around wood, clockwise around a hole. */
export interface Ring {
  hole: boolean;
  points: readonly Point[];
}

/** The clipping library counts in whole numbers: ten-thousandths of a millimetre. */
const unitsPerMm = 1e4;

function toPath(line: Polyline): Paths64[number] {
  const path: Paths64[number] = [];
  for (let i = 0; i < line.x.length; i++) {
    path.push({ x: Math.round((line.x[i] as number) * unitsPerMm), y: Math.round((line.y[i] as number) * unitsPerMm) });
  }
  return path;
}

function toRing(path: Paths64[number]): Ring {
  let twice = 0;
  const points = path.map(({ x, y }, index) => {
    const next = path[(index + 1) % path.length] as { x: number; y: number };
    twice += (x / unitsPerMm) * (next.y / unitsPerMm) - (next.x / unitsPerMm) * (y / unitsPerMm);
    return { x: x / unitsPerMm, y: y / unitsPerMm };
  });
  return { hole: twice < 0, points };
}

/**
 * The edge at a distance: outwards from the wood for a positive one (the outline grows, holes shrink), inwards for a
 * negative one, round at corners. It departs from the true offset by no more than the shape's tolerance plus 0.04 mm.
 *
 * @param by mm
 * @returns rings in no particular order; none where nothing is left
 */
export function offsetShape(shape: Shape, by: number): Ring[] {
  const paths = shape.loops.map((loop) => toPath(thinnedLoop(loop)));
  if (by === 0) return paths.map(toRing);
  const moved = inflatePaths(paths, by * unitsPerMm, JoinType.Round, EndType.Polygon, 2, 0.02 * unitsPerMm);
  return moved.map(toRing);
}

/** The wood that closed polylines enclose under the non-zero rule, as rings that do not cross. */
export function mergeRings(lines: readonly Polyline[]): Ring[] {
  return union(lines.map(toPath), FillRule.NonZero).map(toRing);
}

/** Signed area of a ring in mm², positive counter-clockwise. */
export function ringArea(points: readonly Point[]): number {
  let twice = 0;
  for (let i = 0; i < points.length; i++) {
    const a = points[i] as Point;
    const b = points[(i + 1) % points.length] as Point;
    twice += a.x * b.y - b.x * a.y;
  }
  return twice / 2;
}

/** Length of a ring in mm. */
export function ringLength(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < points.length; i++) {
    const a = points[i] as Point;
    const b = points[(i + 1) % points.length] as Point;
    sum += Math.hypot(b.x - a.x, b.y - a.y);
  }
  return sum;
}
