import { leftToSand } from './limits.ts';
import { type Mesh, squareness } from './mesh.ts';
import { curvatureAt, isCircular, pointAt, velocityAt } from './segments.ts';
import type { Loop, Point, Segment, Shape } from './types.ts';

/** The tightest hollow of a shape. */
export interface InsideRadius {
  /** mm; 0 at a sharp inside corner. */
  radius: number;
  at: Point;
  /** `corner`: a sharp inside corner. `curve`: the hollow of a curve. `gap`: a slot or hole too narrow for more. */
  kind: 'corner' | 'curve' | 'gap';
}

/** A turn of more than this at one point is a corner; less is read as a point of a sampled curve (sine of 15°). */
const cornerSine = Math.sin((15 * Math.PI) / 180);

/** Hollows wider than this, in mm, are no limit to any router bit and are not looked for. */
const widestHollow = 500;

/**
 * The least radius of the hollows of a shape: the largest cutter that fits everywhere is twice as wide.
 *
 * Arcs give their own radius and curves the least radius of curvature of their hollow stretches. A turn of more than 15°
 * into the wood at one point is a sharp corner. Smaller turns between straight pieces are taken for a curve that was cut
 * up, and its radius for that of the largest circle which leaves no more than 0.1 mm there. Slots and
 * holes count with half their width, found from the triangulation to about a hundredth of their width.
 *
 * @returns undefined where no hollow is tighter than 500 mm: any bit follows the edge
 */
export function leastInsideRadius(shape: Shape, mesh: Mesh): InsideRadius | undefined {
  let best: InsideRadius = { radius: widestHollow, at: { x: 0, y: 0 }, kind: 'curve' };
  let sharpest = cornerSine;
  let corner: Point | undefined;
  for (const loop of shape.loops) {
    const { segments } = loop;
    segments.forEach((segment, index) => {
      const curve = hollowOf(segment, best.radius);
      if (curve) best = { ...curve, kind: 'curve' };
      const turn = rightTurn(segments[index === 0 ? segments.length - 1 : index - 1] as Segment, segment);
      if (turn > sharpest) {
        sharpest = turn;
        corner = { x: segment.x0, y: segment.y0 };
      }
    });
  }
  if (corner) return { radius: 0, at: corner, kind: 'corner' };
  for (const loop of shape.loops) {
    const sampled = sampledHollow(loop, best.radius);
    if (sampled) best = { ...sampled, kind: 'curve' };
  }
  const gap = narrowestGap(mesh);
  // Across a round hollow every chord is a gap of about its radius.
  if (gap && gap.radius < best.radius * 0.97) best = { ...gap, kind: 'gap' };
  return best.radius < widestHollow ? best : undefined;
}

/** Direction in which a segment starts (t = 0) or ends (t = 1), also where its first control point stands on its end. */
function direction(segment: Segment, t: 0 | 1): Point {
  const v = velocityAt(segment, t);
  const speed = Math.hypot(v.x, v.y);
  if (speed > 1e-9) return { x: v.x / speed, y: v.y / speed };
  const near = pointAt(segment, t === 0 ? 1e-3 : 1 - 1e-3);
  const dx = t === 0 ? near.x - segment.x0 : segment.x1 - near.x;
  const dy = t === 0 ? near.y - segment.y0 : segment.y1 - near.y;
  const length = Math.hypot(dx, dy) || 1;
  return { x: dx / length, y: dy / length };
}

/** Sine of the turn to the right between two segments, 1 for 90° and more, 0 for a turn to the left. */
function rightTurn(before: Segment, after: Segment): number {
  const u = direction(before, 1);
  const v = direction(after, 0);
  const cross = v.x * u.y - v.y * u.x;
  if (cross <= 0) return 0;
  return u.x * v.x + u.y * v.y <= 0 ? 1 + (1 - cross) : cross;
}

/** The tightest hollow place of a curved segment, where it is tighter than a radius. */
function hollowOf(segment: Segment, below: number): { radius: number; at: Point } | undefined {
  if (segment.kind === 'line') return undefined;
  if (segment.kind === 'arc' && (segment.sweep > 0 || isCircular(segment))) {
    return segment.sweep < 0 && segment.rx < below ? { radius: segment.rx, at: pointAt(segment, 0.5) } : undefined;
  }
  const steps = segment.kind === 'arc' ? 32 : 12;
  let tightest = 0;
  let at = -1;
  for (let step = 0; step <= steps; step++) {
    const curvature = -curvatureAt(segment, step / steps);
    if (curvature > tightest) {
      tightest = curvature;
      at = step / steps;
    }
  }
  if (at < 0) return undefined;
  // Golden-section search between the neighbours of the best sample.
  let [low, high] = [Math.max(0, at - 1 / steps), Math.min(1, at + 1 / steps)];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let round = 0; round < 24; round++) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (curvatureAt(segment, left) < curvatureAt(segment, right)) high = right;
    else low = left;
  }
  const fine = (low + high) / 2;
  const curvature = Math.max(tightest, -curvatureAt(segment, fine));
  const radius = 1 / curvature;
  return radius < below ? { radius, at: pointAt(segment, curvature > tightest ? fine : at) } : undefined;
}

/**
 * The tightest hollow among points where straight pieces meet: the largest circle that leaves no more than sanding takes at
 * any of them.
 *
 * A circle over p, its middle on the edge's normal n there, stays clear of a point q when its radius is at most
 * |q−p|²/(2(q−p)·n), and of a line through f with outward normal m when it is at most (p−f)·m/(1−n·m). With p lifted off the
 * edge by what sanding takes, the circle leaves that much at p itself.
 */
function sampledHollow(loop: Loop, below: number): { radius: number; at: Point } | undefined {
  const { x, y, segmentOf, segments } = loop;
  const count = x.length;
  const hollow: Hollow[] = [];
  let least = below;
  for (let i = 0; i < count; i++) {
    const before = i === 0 ? count - 1 : i - 1;
    if ((segments[segmentOf[i] as number] as Segment).kind !== 'line') continue;
    if ((segments[segmentOf[before] as number] as Segment).kind !== 'line') continue;
    const place = liftedAt(loop, before, i);
    if (!place) continue;
    const radius = glance(loop, place, 2 * least);
    hollow.push({ ...place, radius });
    least = Math.min(least, radius);
  }
  let at = -1;
  for (const place of hollow) {
    // Points further on can only lower what a glance allows, by little where the points lie closely.
    if (place.radius > 2 * least) continue;
    const radius = look(loop, place, least);
    if (radius < least || at < 0) {
      least = Math.min(least, radius);
      at = place.i;
    }
  }
  return at < 0 || least >= below ? undefined : { radius: least, at: { x: x[at] as number, y: y[at] as number } };
}

/** A point where the edge turns into the wood, its outward normal, and the place lifted off it by what sanding takes. */
interface Lifted {
  i: number;
  nx: number;
  ny: number;
  lx: number;
  ly: number;
}

interface Hollow extends Lifted {
  radius: number;
}

function liftedAt({ x, y, along }: Loop, before: number, i: number): Lifted | undefined {
  const after = i + 1 === x.length ? 0 : i + 1;
  const [px, py] = [x[i] as number, y[i] as number];
  const [ux, uy] = [px - (x[before] as number), py - (y[before] as number)];
  const [vx, vy] = [(x[after] as number) - px, (y[after] as number) - py];
  if (ux * vy - uy * vx >= 0) return undefined;
  const ul = (along[before + 1] as number) - (along[before] as number);
  const vl = (along[i + 1] as number) - (along[i] as number);
  const [tx, ty] = [ux / ul + vx / vl, uy / ul + vy / vl];
  const size = Math.hypot(tx, ty) || 1;
  const [nx, ny] = [ty / size, -tx / size];
  return { i, nx, ny, lx: px + leftToSand * nx, ly: py + leftToSand * ny };
}

/** What a few points at doubling distances along the edge allow, as far as a circle of radius `within` reaches; never less than `look` does. */
function glance({ x, y, along }: Loop, { i, nx, ny, lx, ly }: Lifted, within: number): number {
  const count = x.length;
  const whole = along[count] as number;
  let least = Number.POSITIVE_INFINITY;
  for (const way of [-1, 1]) {
    for (let jump = 1; jump < count; jump *= 2) {
      const k = (((i + way * jump) % count) + count) % count;
      const between = Math.abs((along[k] as number) - (along[i] as number));
      if (jump > 1 && Math.min(between, whole - between) > 4 * Math.min(least, within)) break;
      const [dx, dy] = [(x[k] as number) - lx, (y[k] as number) - ly];
      const ahead = dx * nx + dy * ny;
      if (ahead > 0) least = Math.min(least, (dx * dx + dy * dy) / (2 * ahead));
    }
  }
  return least;
}

/** What all edges near along the loop allow. */
function look({ x, y, along }: Loop, { i, nx, ny, lx, ly }: Lifted, below: number): number {
  const count = x.length;
  const whole = along[count] as number;
  let least = below;
  for (const way of [-1, 1]) {
    let k = i;
    let gone = 0;
    for (let taken = 0; taken < count; taken++) {
      const from = way > 0 ? k : k === 0 ? count - 1 : k - 1;
      const to = from + 1 === count ? 0 : from + 1;
      const length = (along[from + 1] as number) - (along[from] as number);
      gone += length;
      // Around a hollow of this radius the way along the edge is at most π/2 times the way across.
      if (gone > 4 * least || gone > whole / 2) break;
      const [fx, fy] = [x[from] as number, y[from] as number];
      const [ex, ey] = [(x[to] as number) - fx, (y[to] as number) - fy];
      k = way < 0 ? from : to;
      // Clear of the edge's line, where the circle touches the edge between its ends.
      const leaning = (ey * nx - ex * ny) / length;
      const clear = ((lx - fx) * ey - (ly - fy) * ex) / length;
      if (clear > 0 && clear < least * (1 - leaning)) {
        const radius = clear / (1 - leaning);
        const foot = (lx + radius * nx - fx) * ex + (ly + radius * ny - fy) * ey;
        if (foot >= 0 && foot <= length * length) least = radius;
      }
      // Clear of the edge's far end.
      const [dx, dy] = [(x[k] as number) - lx, (y[k] as number) - ly];
      const ahead = dx * nx + dy * ny;
      const square = dx * dx + dy * dy;
      if (square < 2 * ahead * least) least = square / (2 * ahead);
    }
  }
  return least;
}

/** Half the narrowest way through the air between two stretches of edge that face each other within 35°. */
function narrowestGap(mesh: Mesh): { radius: number; at: Point } | undefined {
  const squareEnough = Math.cos((35 * Math.PI) / 180);
  const { chords } = mesh;
  let best: { radius: number; at: Point } | undefined;
  for (let chord = 0; chord < chords.count; chord++) {
    const length = chords.length[chord] as number;
    if (chords.inWood[chord] || length === 0 || (best && length / 2 >= best.radius)) continue;
    const a = chords.a[chord] as number;
    const b = chords.b[chord] as number;
    const [ax, ay, bx, by] = [mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b]] as [number, number, number, number];
    const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
    const square = Math.min(squareness(mesh, a, dx, dy, false), squareness(mesh, b, -dx, -dy, false));
    if (square < squareEnough) continue;
    const radius = length / (2 * square);
    if (!best || radius < best.radius) best = { radius, at: { x: (ax + bx) / 2, y: (ay + by) / 2 } };
  }
  return best;
}
