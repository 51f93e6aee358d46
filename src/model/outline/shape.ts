import { answer, type Outcome, refuse } from '../evidence/index.ts';
import { flattenLoop, usualTolerance } from './flatten.ts';
import { largestSize } from './limits.ts';
import { readPathData, writePathData } from './path.ts';
import { areaOf, liesWithin, reversed } from './segments.ts';
import type { Loop, Outline, Point, Segment, Shape } from './types.ts';

/** Signed area of a closed run of segments in mm², positive where it runs counter-clockwise; exact. */
export function signedArea(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => sum + areaOf(segment), 0);
}

/**
 * Make a loop of closed segments run so that the wood lies on its left.
 *
 * @param hole whether the wood lies outside it
 * @param tolerance of its polyline, in mm
 */
function loopOf(segments: readonly Segment[], hole: boolean, tolerance: number): Loop {
  const backwards = signedArea(segments) < 0 !== hole;
  const run = backwards ? segments.map(reversed).reverse() : segments;
  return flattenLoop(run, hole, tolerance);
}

/** A shape of closed runs of segments: the outer one and the holes. */
export function shapeOf(
  outer: readonly Segment[],
  holes: readonly (readonly Segment[])[],
  tolerance: number = usualTolerance,
): Shape {
  const edge = loopOf(outer, false, tolerance);
  const inner = holes.map((hole) => loopOf(hole, true, tolerance));
  return { outer: edge, holes: inner, loops: [edge, ...inner], tolerance };
}

/**
 * Make an outline ready to be measured.
 *
 * @param outline path data in mm, as our own parametric outlines and `readDrawing` give it
 * @param tolerance largest distance between polylines and curves, in mm
 * @param field name of the input that an error names
 * @returns a refusal where a path cannot be read, is open, or encloses nothing
 */
export function prepare(outline: Outline, tolerance: number = usualTolerance, field = 'outline'): Outcome<Shape> {
  const runs: Segment[][] = [];
  for (const [index, data] of [outline.outer, ...outline.holes].entries()) {
    const name = index === 0 ? 'The outline' : `Hole ${index}`;
    const { subpaths, problem } = readPathData(data);
    const only = subpaths[0];
    if (problem !== undefined || !only || subpaths.length > 1) {
      return refuse(
        field,
        `${name} is not one closed path${problem ? `: ${problem}` : ''}`,
        'Give path data of one path that ends in Z.',
      );
    }
    if (!only.segments.every((segment) => liesWithin(segment, largestSize))) {
      return refuse(field, `${name} reaches further than ${largestSize / 1000} m`, 'Give it in millimetres.');
    }
    if (!isClosed(only.segments)) return refuse(field, `${name} is open`, 'End its path data in Z.');
    if (!(Math.abs(signedArea(only.segments)) > 1e-6)) {
      return refuse(field, `${name} encloses no area`, 'Give a path that goes around something.');
    }
    runs.push(only.segments);
  }
  const [outer, ...holes] = runs as [Segment[], ...Segment[][]];
  return answer(shapeOf(outer, holes, tolerance));
}

/** Whether a run of segments ends where it starts, within a ten-thousandth of a millimetre. */
function isClosed(segments: readonly Segment[]): boolean {
  const first = segments[0];
  const last = segments[segments.length - 1];
  return first !== undefined && last !== undefined && Math.hypot(last.x1 - first.x0, last.y1 - first.y0) < 1e-4;
}

/** The outline of a shape, moved so that its left and upper edges touch the axes. */
export function outlineOf(shape: Shape, origin: Point = { x: 0, y: 0 }): Outline {
  const write = (loop: Loop) => writePathData(loop.segments, -origin.x, -origin.y);
  return { outer: write(shape.outer), holes: shape.holes.map(write) };
}

/** Whether a place lies inside a closed polyline, both in the same unit (even-odd rule; the edge itself is undecided). */
export function isInside(loop: { x: Float64Array; y: Float64Array }, px: number, py: number): boolean {
  const { x, y } = loop;
  let inside = false;
  for (let i = 0, j = x.length - 1; i < x.length; j = i++) {
    const yi = y[i] as number;
    const yj = y[j] as number;
    if (yi > py === yj > py) continue;
    const xi = x[i] as number;
    if (px < (((x[j] as number) - xi) * (py - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

/** Whether a place lies in the wood of a shape: inside its edge and in none of its holes. */
export function isInWood(shape: Shape, px: number, py: number): boolean {
  return isInside(shape.outer, px, py) && !shape.holes.some((hole) => isInside(hole, px, py));
}
