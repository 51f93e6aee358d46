import { pointAt } from './segments.ts';
import type { Loop, Segment } from './types.ts';

/** Largest distance between a curve and the polyline that stands for it, in mm, unless told. */
export const usualTolerance = 0.02;

/** No curve is cut into more pieces than this, however large it is or small the tolerance. */
const mostPieces = 2000;

/**
 * How many straight pieces keep a segment within a tolerance.
 *
 * An arc of a circle of radius r departs from its chord by r(1 − cos(step/2)); an ellipse is a squeezed circle and departs
 * less than the circle of its larger radius. A cubic departs by at most an eighth of its largest second derivative over
 * the square of the number of pieces.
 */
function piecesFor(segment: Segment, tolerance: number): number {
  if (segment.kind === 'line') return 1;
  if (segment.kind === 'arc') {
    const radius = Math.max(segment.rx, segment.ry);
    const step = tolerance >= radius ? Math.PI / 2 : 2 * Math.acos(1 - tolerance / radius);
    return Math.min(mostPieces, Math.max(1, Math.ceil(Math.abs(segment.sweep) / step)));
  }
  const bend = Math.max(
    Math.hypot(segment.x0 - 2 * segment.ax + segment.bx, segment.y0 - 2 * segment.ay + segment.by),
    Math.hypot(segment.ax - 2 * segment.bx + segment.x1, segment.ay - 2 * segment.by + segment.y1),
  );
  return Math.min(mostPieces, Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance)))));
}

/**
 * The polyline of a closed run of segments. Its points lie on the curves; between them it departs from the curves by no
 * more than the tolerance (mm).
 */
export function flattenLoop(segments: readonly Segment[], hole: boolean, tolerance: number): Loop {
  const pieces = segments.map((segment) => piecesFor(segment, tolerance));
  const count = pieces.reduce((sum, each) => sum + each, 0);
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const segmentOf = new Int32Array(count);
  let at = 0;
  segments.forEach((segment, index) => {
    const steps = pieces[index] as number;
    x[at] = segment.x0;
    y[at] = segment.y0;
    segmentOf[at++] = index;
    for (let step = 1; step < steps; step++) {
      const place = pointAt(segment, step / steps);
      x[at] = place.x;
      y[at] = place.y;
      segmentOf[at++] = index;
    }
  });
  return { hole, segments, x, y, along: lengthsAlong(x, y), segmentOf };
}

/** Length along a closed polyline to each of its points, and the whole at the end, in mm. */
export function lengthsAlong(x: Float64Array, y: Float64Array): Float64Array {
  const count = x.length;
  const along = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) {
    const next = i + 1 === count ? 0 : i + 1;
    along[i + 1] =
      (along[i] as number) + Math.hypot((x[next] as number) - (x[i] as number), (y[next] as number) - (y[i] as number));
  }
  return along;
}
