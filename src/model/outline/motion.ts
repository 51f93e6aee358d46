import { shapeOf } from './shape.ts';
import type { Segment, Shape } from './types.ts';

/** How a shape is turned over, turned and moved, in this order. */
export interface Motion {
  /** Turn about the origin, counter-clockwise, in degrees. */
  degrees?: number;
  /** Turned over before that, so that left and right change places. */
  mirrored?: boolean;
  /** Moved after that, in mm, y upwards. */
  dx?: number;
  dy?: number;
}

/** A shape turned over, turned and moved; its curves stay curves. */
export function movedShape(shape: Shape, { degrees = 0, mirrored = false, dx = 0, dy = 0 }: Motion): Shape {
  const turn = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const flip = mirrored ? -1 : 1;
  const x = (px: number, py: number) => flip * px * c - py * s + dx;
  const y = (px: number, py: number) => flip * px * s + py * c + dy;
  const move = (segment: Segment): Segment => {
    const { x0, y0, x1, y1 } = segment;
    const ends = { x0: x(x0, y0), y0: y(x0, y0), x1: x(x1, y1), y1: y(x1, y1) };
    if (segment.kind === 'line') return { kind: 'line', ...ends };
    if (segment.kind === 'cubic') {
      const { ax, ay, bx, by } = segment;
      return { kind: 'cubic', ...ends, ax: x(ax, ay), ay: y(ax, ay), bx: x(bx, by), by: y(bx, by) };
    }
    // Turned over, an axis at an angle a lies at 180° − a, and the ellipse is run the other way round.
    const [cos, sin] = [flip * segment.cos, segment.sin];
    return {
      ...segment,
      ...ends,
      cx: x(segment.cx, segment.cy),
      cy: y(segment.cx, segment.cy),
      cos: cos * c - sin * s,
      sin: cos * s + sin * c,
      from: flip * segment.from,
      sweep: flip * segment.sweep,
    };
  };
  const [outer, ...holes] = shape.loops.map((loop) => loop.segments.map(move)) as [Segment[], ...Segment[][]];
  return shapeOf(outer, holes, shape.tolerance);
}
