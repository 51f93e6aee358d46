import type { ArcSegment, Point, Segment } from './types.ts';

/** Nodes and weights of the ten-point Gauss-Legendre rule on [-1, 1], positive half. */
const gauss = [
  [0.14887433898163122, 0.29552422471475287],
  [0.4333953941292472, 0.26926671930999635],
  [0.6794095682990244, 0.21908636251598204],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.06667134430868814],
] as const;

/** Place on a segment at parameter t, 0 at its start and 1 at its end. */
export function pointAt(segment: Segment, t: number): Point {
  if (segment.kind === 'line') {
    return { x: segment.x0 + (segment.x1 - segment.x0) * t, y: segment.y0 + (segment.y1 - segment.y0) * t };
  }
  if (segment.kind === 'arc') {
    const angle = segment.from + segment.sweep * t;
    const u = segment.rx * Math.cos(angle);
    const v = segment.ry * Math.sin(angle);
    return { x: segment.cx + segment.cos * u - segment.sin * v, y: segment.cy + segment.sin * u + segment.cos * v };
  }
  const s = 1 - t;
  const [w0, w1, w2, w3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return {
    x: w0 * segment.x0 + w1 * segment.ax + w2 * segment.bx + w3 * segment.x1,
    y: w0 * segment.y0 + w1 * segment.ay + w2 * segment.by + w3 * segment.y1,
  };
}

/** First derivative by t, in mm. */
export function velocityAt(segment: Segment, t: number): Point {
  if (segment.kind === 'line') return { x: segment.x1 - segment.x0, y: segment.y1 - segment.y0 };
  if (segment.kind === 'arc') {
    const angle = segment.from + segment.sweep * t;
    const u = -segment.rx * Math.sin(angle) * segment.sweep;
    const v = segment.ry * Math.cos(angle) * segment.sweep;
    return { x: segment.cos * u - segment.sin * v, y: segment.sin * u + segment.cos * v };
  }
  const s = 1 - t;
  const [w0, w1, w2] = [3 * s * s, 6 * s * t, 3 * t * t];
  return {
    x: w0 * (segment.ax - segment.x0) + w1 * (segment.bx - segment.ax) + w2 * (segment.x1 - segment.bx),
    y: w0 * (segment.ay - segment.y0) + w1 * (segment.by - segment.ay) + w2 * (segment.y1 - segment.by),
  };
}

function accelerationAt(segment: Segment, t: number): Point {
  if (segment.kind === 'line') return { x: 0, y: 0 };
  if (segment.kind === 'arc') {
    const place = pointAt(segment, t);
    const square = segment.sweep * segment.sweep;
    return { x: (segment.cx - place.x) * square, y: (segment.cy - place.y) * square };
  }
  const [w0, w1] = [6 * (1 - t), 6 * t];
  return {
    x: w0 * (segment.bx - 2 * segment.ax + segment.x0) + w1 * (segment.x1 - 2 * segment.bx + segment.ax),
    y: w0 * (segment.by - 2 * segment.ay + segment.y0) + w1 * (segment.y1 - 2 * segment.by + segment.ay),
  };
}

/** Curvature at parameter t in 1/mm, positive where the segment turns left; 0 where it stands still. */
export function curvatureAt(segment: Segment, t: number): number {
  if (segment.kind === 'line') return 0;
  const v = velocityAt(segment, t);
  const a = accelerationAt(segment, t);
  const speed = Math.hypot(v.x, v.y);
  return speed < 1e-9 ? 0 : (v.x * a.y - v.y * a.x) / (speed * speed * speed);
}

/**
 * Length of a segment in mm: exact for lines and circular arcs, by Gauss-Legendre quadrature for the rest, to nine digits
 * for curves of an outline and to five for an ellipse that is a needle.
 */
export function lengthOf(segment: Segment): number {
  if (segment.kind === 'line') return Math.hypot(segment.x1 - segment.x0, segment.y1 - segment.y0);
  if (segment.kind === 'arc' && isCircular(segment)) return segment.rx * Math.abs(segment.sweep);
  // Ten points to a panel.
  const panels = segment.kind === 'arc' ? 2 + Math.ceil(Math.abs(segment.sweep) / 0.4) : 8;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = (panel + 0.5) / panels;
    for (const [node, weight] of gauss) {
      const before = velocityAt(segment, middle - node / 2 / panels);
      const after = velocityAt(segment, middle + node / 2 / panels);
      sum += weight * (Math.hypot(before.x, before.y) + Math.hypot(after.x, after.y));
    }
  }
  return sum / 2 / panels;
}

export function isCircular(arc: ArcSegment): boolean {
  return Math.abs(arc.rx - arc.ry) <= 1e-9 * Math.max(arc.rx, arc.ry);
}

/** What a segment adds to the area that its path encloses, ½∮(x dy − y dx), in mm²; exact. */
export function areaOf(segment: Segment): number {
  const { x0, y0, x1, y1 } = segment;
  if (segment.kind === 'line') return (x0 * y1 - x1 * y0) / 2;
  if (segment.kind === 'arc') {
    return (segment.cx * (y1 - y0) - segment.cy * (x1 - x0) + segment.rx * segment.ry * segment.sweep) / 2;
  }
  const { ax, ay, bx, by } = segment;
  return (
    (x0 * (6 * ay + 3 * by + y1) +
      3 * (ax * (-2 * y0 + by + y1) - bx * (y0 + ay - 2 * y1)) -
      x1 * (y0 + 3 * ay + 6 * by)) /
    20
  );
}

/** How far a segment reaches in a direction: the largest p·(dx, dy) of its points, exact. (dx, dy) has length 1. */
export function reachOf(segment: Segment, dx: number, dy: number): number {
  const ends = Math.max(segment.x0 * dx + segment.y0 * dy, segment.x1 * dx + segment.y1 * dy);
  if (segment.kind === 'line') return ends;
  if (segment.kind === 'arc') {
    const u = segment.rx * (segment.cos * dx + segment.sin * dy);
    const v = segment.ry * (-segment.sin * dx + segment.cos * dy);
    const turn = Math.atan2(v, u) - segment.from;
    const onward = segment.sweep >= 0 ? turn : -turn;
    const within = ((onward % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI) <= Math.abs(segment.sweep);
    return within ? Math.max(ends, segment.cx * dx + segment.cy * dy + Math.hypot(u, v)) : ends;
  }
  // Roots of the derivative, a quadratic in t.
  const d0 = (segment.ax - segment.x0) * dx + (segment.ay - segment.y0) * dy;
  const d1 = (segment.bx - segment.ax) * dx + (segment.by - segment.ay) * dy;
  const d2 = (segment.x1 - segment.bx) * dx + (segment.y1 - segment.by) * dy;
  let best = ends;
  for (const t of quadraticRoots(d0 - 2 * d1 + d2, 2 * (d1 - d0), d0)) {
    if (t > 0 && t < 1) {
      const place = pointAt(segment, t);
      best = Math.max(best, place.x * dx + place.y * dy);
    }
  }
  return best;
}

function quadraticRoots(a: number, b: number, c: number): number[] {
  const scale = Math.max(Math.abs(a), Math.abs(b), Math.abs(c));
  if (scale === 0) return [];
  if (Math.abs(a) < 1e-12 * scale) return Math.abs(b) < 1e-12 * scale ? [] : [-c / b];
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
  return q === 0 ? [0] : [q / a, c / q];
}

/** Whether a segment lies within so many mm of the origin in x and y, and all its numbers are finite; its radius may be any. */
export function liesWithin(segment: Segment, limit: number): boolean {
  if (!Object.values(segment).every((value) => typeof value !== 'number' || Math.abs(value) < 1e12)) return false;
  return (
    reachOf(segment, 1, 0) <= limit &&
    reachOf(segment, -1, 0) <= limit &&
    reachOf(segment, 0, 1) <= limit &&
    reachOf(segment, 0, -1) <= limit
  );
}

/** The same segment run the other way. */
export function reversed(segment: Segment): Segment {
  const { x0, y0, x1, y1 } = segment;
  const ends = { x0: x1, y0: y1, x1: x0, y1: y0 };
  if (segment.kind === 'line') return { kind: 'line', ...ends };
  if (segment.kind === 'arc') {
    return { ...segment, ...ends, from: segment.from + segment.sweep, sweep: -segment.sweep };
  }
  return { kind: 'cubic', ...ends, ax: segment.bx, ay: segment.by, bx: segment.ax, by: segment.ay };
}
