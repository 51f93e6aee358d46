import { lengthOf, reachOf } from './segments.ts';
import { signedArea } from './shape.ts';
import type { Loop, Shape } from './types.ts';

/** A box along and across the grain. */
export interface GrainBox {
  /** Along the grain, in mm. */
  length: number;
  /** Across the grain, in mm. */
  width: number;
}

/** Area of the wood in mm²: the outer path's less the holes'. Exact, from the segments and not from the polylines. */
export function areaOfShape(shape: Shape): number {
  return shape.loops.reduce((sum, loop) => sum + signedArea(loop.segments), 0);
}

/** Length of one loop in mm: exact for lines and circular arcs, to nine digits for other curves. */
export function perimeterOfLoop(loop: Loop): number {
  return loop.segments.reduce((sum, segment) => sum + lengthOf(segment), 0);
}

/** Length of the outer edge in mm, without the holes. */
export function perimeterOfShape(shape: Shape): number {
  return perimeterOfLoop(shape.outer);
}

/** How far the outer edge reaches in a direction: the largest x·cos + y·sin of it, in mm, exact. */
function reachOfShape(shape: Shape, degrees: number): number {
  const turn = (degrees * Math.PI) / 180;
  const [dx, dy] = [Math.cos(turn), Math.sin(turn)];
  let best = Number.NEGATIVE_INFINITY;
  for (const segment of shape.outer.segments) best = Math.max(best, reachOf(segment, dx, dy));
  return best;
}

/**
 * The smallest box around a shape whose sides run along and across the grain.
 *
 * @param grainDegrees angle from the x axis to the grain, counter-clockwise
 */
export function boxAlongGrain(shape: Shape, grainDegrees: number): GrainBox {
  return {
    length: reachOfShape(shape, grainDegrees) + reachOfShape(shape, grainDegrees + 180),
    width: reachOfShape(shape, grainDegrees + 90) + reachOfShape(shape, grainDegrees - 90),
  };
}

/** The box of the outer polyline along the axes, in mm. */
export function axisBox(loop: { x: Float64Array; y: Float64Array }): {
  left: number;
  right: number;
  bottom: number;
  top: number;
} {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [bottom, top] = [left, right];
  for (let i = 0; i < loop.x.length; i++) {
    const [px, py] = [loop.x[i] as number, loop.y[i] as number];
    if (px < left) left = px;
    if (px > right) right = px;
    if (py < bottom) bottom = py;
    if (py > top) top = py;
  }
  return { left, right, bottom, top };
}
