/**
 * The outline of a template or of a blank: one closed path and the closed paths of its holes.
 *
 * Each is SVG path data with one subpath, in millimetres, in SVG's own axes: x to the right, y down. So a path can be
 * pasted from a drawing and pasted back into one. Everything that is measured is measured on a `Shape`, whose y points
 * up, as the board is seen from above.
 */
export interface Outline {
  outer: string;
  holes: readonly string[];
}

/** A place or a direction on the board, in mm, y upwards. */
export interface Point {
  x: number;
  y: number;
}

export interface LineSegment {
  kind: 'line';
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** An arc of an ellipse: centre + R(turn)·(rx cos t, ry sin t), t from `from` to `from + sweep` (radians). */
export interface ArcSegment {
  kind: 'arc';
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  cx: number;
  cy: number;
  rx: number;
  ry: number;
  /** Cosine and sine of the angle between the x axis and the ellipse's first axis. */
  cos: number;
  sin: number;
  from: number;
  /** Positive where the arc runs counter-clockwise. */
  sweep: number;
}

/** A cubic Bézier curve; quadratic ones are raised to it, which is exact. */
export interface CubicSegment {
  kind: 'cubic';
  x0: number;
  y0: number;
  ax: number;
  ay: number;
  bx: number;
  by: number;
  x1: number;
  y1: number;
}

export type Segment = LineSegment | ArcSegment | CubicSegment;

/** A closed polyline; the last point joins the first, which is not repeated. */
export interface Polyline {
  x: Float64Array;
  y: Float64Array;
}

/**
 * One closed path of a shape, run so that the wood lies on the left: the outer path counter-clockwise, holes clockwise,
 * seen from above.
 */
export interface Loop extends Polyline {
  hole: boolean;
  segments: readonly Segment[];
  /** Length along the path from its start to each point of the polyline, and at the end its whole length, in mm. */
  along: Float64Array;
  /** For each point of the polyline the index of the segment that starts at it or that it lies on. */
  segmentOf: Int32Array;
}

/** An outline made ready to be measured. */
export interface Shape {
  outer: Loop;
  holes: readonly Loop[];
  /** The outer path, then the holes. */
  loops: readonly Loop[];
  /** Largest distance between the polylines and the true curves, in mm. */
  tolerance: number;
}

/** A straight stretch between two places, with its length in mm. */
export interface Gap {
  from: Point;
  to: Point;
  length: number;
}
