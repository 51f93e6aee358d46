import Delaunator from 'delaunator';
import type { Loop, Shape } from './types.ts';

/**
 * Points spread along the edges of a shape, and the chords that a Delaunay triangulation draws between them.
 *
 * Where the points lie densely, the triangulation's edges inside the wood are the ways across it, those outside are the
 * ways across its bays and holes, and the shortest way between two neighbouring stretches of edge is among them.
 */
export interface Mesh {
  count: number;
  x: Float64Array;
  y: Float64Array;
  /** Loop of each point, as an index into `shape.loops`. */
  loop: Int32Array;
  /** Length along its loop's polyline, in mm. */
  along: Float64Array;
  next: Int32Array;
  previous: Int32Array;
  /** Unit normal out of the wood of the piece of edge from each point to the next. */
  normalX: Float64Array;
  normalY: Float64Array;
  /** Twice the area swept from the loop's first point to this one, about the origin, in mm². */
  swept: Float64Array;
  /** Twice the whole area swept by each loop. */
  sweptWhole: readonly number[];
  /** Distance between neighbouring points, in mm. */
  pitch: number;
  chords: Chords;
}

/**
 * The chords of a mesh, each by its number. They are kept as columns: a thousand of them are made for every size that somebody tries, and a slow
 * phone takes longer to make as many objects than to look at them.
 */
export interface Chords {
  count: number;
  /** The points at their ends. */
  a: Int32Array;
  b: Int32Array;
  /** mm */
  length: Float64Array;
  /** 1 for a chord that runs through the wood; 0 through the space around it or in a hole. */
  inWood: Uint8Array;
  /** The chords that share a triangle with each, four places a chord; -1 where there are fewer. */
  beside: Int32Array;
}

/** Places for the neighbours of a chord: it is a side of two triangles at most. */
export const mostBeside = 4;

/** How many points are spread along the edges, about. */
const usualPoints = 900;

/**
 * Spread points along a shape's edges and triangulate them.
 *
 * Chords are told apart by the side of the edge on which they leave their first end; a place where that decides wrongly
 * lies within a pitch of a corner.
 */
export function meshOf(shape: Shape, points = usualPoints): Mesh {
  const whole = shape.loops.reduce((sum, loop) => sum + (loop.along[loop.x.length] as number), 0);
  const pitch = whole / points;
  const spread: Spread = { x: [], y: [], along: [] };
  const starts: number[] = [];
  for (const loop of shape.loops) {
    starts.push(spread.x.length);
    spreadAlong(loop, pitch, spread);
  }
  const count = spread.x.length;
  const x = new Float64Array(spread.x);
  const y = new Float64Array(spread.y);
  const mesh = {
    count,
    x,
    y,
    loop: new Int32Array(count),
    along: new Float64Array(spread.along),
    next: new Int32Array(count),
    previous: new Int32Array(count),
    normalX: new Float64Array(count),
    normalY: new Float64Array(count),
    swept: new Float64Array(count),
    sweptWhole: [] as number[],
    pitch,
  };
  starts.forEach((start, loop) => {
    const end = starts[loop + 1] ?? count;
    let swept = 0;
    for (let at = start; at < end; at++) {
      const next = at + 1 === end ? start : at + 1;
      mesh.loop[at] = loop;
      mesh.next[at] = next;
      mesh.previous[next] = at;
      mesh.swept[at] = swept;
      const px = x[at] as number;
      const py = y[at] as number;
      const qx = x[next] as number;
      const qy = y[next] as number;
      swept += px * qy - qx * py;
      const length = Math.hypot(qx - px, qy - py) || 1;
      mesh.normalX[at] = (qy - py) / length;
      mesh.normalY[at] = -(qx - px) / length;
    }
    mesh.sweptWhole.push(swept);
  });
  return { ...mesh, chords: chordsOf(mesh) };
}

interface Spread {
  x: number[];
  y: number[];
  along: number[];
}

/** Points along a loop no further apart than the pitch, corners among them; short edges of a fine polyline are skipped. */
function spreadAlong(loop: Loop, pitch: number, into: Spread): void {
  const count = loop.x.length;
  let last = Number.NEGATIVE_INFINITY;
  const whole = loop.along[count] as number;
  // A loop is never left with fewer than eight points, so a small hole keeps its shape.
  const step = Math.min(pitch, whole / 8);
  for (let i = 0; i < count; i++) {
    const j = i + 1 === count ? 0 : i + 1;
    const ax = loop.x[i] as number;
    const ay = loop.y[i] as number;
    const bx = loop.x[j] as number;
    const by = loop.y[j] as number;
    const s = loop.along[i] as number;
    const length = (loop.along[i + 1] as number) - s;
    if (i === 0 || s - last >= step * 0.75 || isCorner(loop, i)) {
      into.x.push(ax);
      into.y.push(ay);
      into.along.push(s);
      last = s;
    }
    const pieces = Math.ceil(length / step);
    for (let k = 1; k < pieces; k++) {
      const t = k / pieces;
      into.x.push(ax + (bx - ax) * t);
      into.y.push(ay + (by - ay) * t);
      last = s + length * t;
      into.along.push(last);
    }
  }
}

/** Whether the polyline turns by more than 15° at a point. */
function isCorner(loop: Loop, i: number): boolean {
  const count = loop.x.length;
  const h = i === 0 ? count - 1 : i - 1;
  const j = i + 1 === count ? 0 : i + 1;
  const ux = (loop.x[i] as number) - (loop.x[h] as number);
  const uy = (loop.y[i] as number) - (loop.y[h] as number);
  const vx = (loop.x[j] as number) - (loop.x[i] as number);
  const vy = (loop.y[j] as number) - (loop.y[i] as number);
  const dot = ux * vx + uy * vy;
  const cross = ux * vy - uy * vx;
  return dot <= 0 || Math.abs(cross) > 0.268 * dot;
}

type Points = Omit<Mesh, 'chords'>;

/** As much of the library as is used, and of its own as is touched below. */
interface Triangulation {
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
  _hullStart: number;
  readonly _triangles: Uint32Array;
  _legalize(half: number): number;
}
const Library = Delaunator as unknown as new (coordinates: Float64Array) => Triangulation;

/**
 * The triangulation of points that all lie along edges.
 *
 * Where the library turns a side over that lies on the hull, which it expects to be rare, it walks round the hull for the end of that side. Of points
 * along an edge nearly all lie on the hull, and the walks take longer than all else. One comes round wherever it begins; begun beside the new point it
 * is short. The triangles are the same.
 */
export class EdgeTriangulation extends Library {
  override _legalize(half: number): number {
    const start = this._hullStart;
    this._hullStart = this._triangles[half] as number;
    const last = super._legalize(half);
    this._hullStart = start;
    return last;
  }
}

function chordsOf(mesh: Points): Chords {
  const coordinates = new Float64Array(2 * mesh.count);
  for (let at = 0; at < mesh.count; at++) {
    coordinates[2 * at] = mesh.x[at] as number;
    coordinates[2 * at + 1] = mesh.y[at] as number;
  }
  const { triangles, halfedges } = new EdgeTriangulation(coordinates);
  const halves = triangles.length;
  const chordOfHalf = new Int32Array(halves).fill(-1);
  const most = halves;
  const a = new Int32Array(most);
  const b = new Int32Array(most);
  const length = new Float64Array(most);
  const inWood = new Uint8Array(most);
  let count = 0;
  for (let half = 0; half < halves; half++) {
    const twin = halfedges[half] as number;
    if (twin >= 0 && twin < half) {
      chordOfHalf[half] = chordOfHalf[twin] as number;
      continue;
    }
    const from = triangles[half] as number;
    const to = triangles[half % 3 === 2 ? half - 2 : half + 1] as number;
    if (mesh.next[from] === to || mesh.next[to] === from) continue;
    const dx = (mesh.x[to] as number) - (mesh.x[from] as number);
    const dy = (mesh.y[to] as number) - (mesh.y[from] as number);
    a[count] = from;
    b[count] = to;
    length[count] = Math.hypot(dx, dy);
    inWood[count] = leavesIntoWood(mesh, from, dx, dy) ? 1 : 0;
    chordOfHalf[half] = count++;
  }
  return { count, a, b, length, inWood, beside: besideOf(chordOfHalf, count) };
}

/** For each chord those that share a triangle with it, in the order of the triangles. */
function besideOf(chordOfHalf: Int32Array, count: number): Int32Array {
  const beside = new Int32Array(mostBeside * count).fill(-1);
  const filled = new Uint8Array(count);
  const add = (side: number, other: number) => {
    if (side < 0 || other < 0) return;
    beside[mostBeside * side + (filled[side] as number)] = other;
    filled[side] = (filled[side] as number) + 1;
  };
  for (let triangle = 0; triangle < chordOfHalf.length; triangle += 3) {
    const one = chordOfHalf[triangle] as number;
    const two = chordOfHalf[triangle + 1] as number;
    const three = chordOfHalf[triangle + 2] as number;
    add(one, two);
    add(one, three);
    add(two, one);
    add(two, three);
    add(three, one);
    add(three, two);
  }
  return beside;
}

/** Whether a direction leaves a point of the edge into the wood, which lies to the left of the edge. */
function leavesIntoWood(mesh: Points, at: number, dx: number, dy: number): boolean {
  const next = mesh.next[at] as number;
  const previous = mesh.previous[at] as number;
  const nx = (mesh.x[next] as number) - (mesh.x[at] as number);
  const ny = (mesh.y[next] as number) - (mesh.y[at] as number);
  const px = (mesh.x[previous] as number) - (mesh.x[at] as number);
  const py = (mesh.y[previous] as number) - (mesh.y[at] as number);
  // The wood fills the angle from the way on, counter-clockwise, to the way back.
  const afterNext = nx * dy - ny * dx > 0;
  const beforePrevious = dx * py - dy * px > 0;
  return nx * py - ny * px > 0 ? afterNext && beforePrevious : afterNext || beforePrevious;
}

/**
 * Cosine of the angle between a unit direction out of the wood and the nearest direction square to the edge at a point: those from the outward normal
 * before it to the one after it.
 * At a corner that points towards the chord every direction between its two normals is square to it: an outward corner
 * for a chord through the air, an inside corner for one through the wood. Elsewhere the mean of the normals is.
 */
export function squareness(mesh: Points, at: number, dx: number, dy: number, inWood: boolean): number {
  const previous = mesh.previous[at] as number;
  const beforeX = mesh.normalX[previous] as number;
  const beforeY = mesh.normalY[previous] as number;
  const afterX = mesh.normalX[at] as number;
  const afterY = mesh.normalY[at] as number;
  const sign = inWood ? -1 : 1;
  const turn = sign * (beforeX * afterY - beforeY * afterX);
  const mx = beforeX + afterX;
  const my = beforeY + afterY;
  if (turn > 0 && dx * mx + dy * my > 0) {
    const fromBefore = sign * (beforeX * dy - beforeY * dx);
    const fromAfter = sign * (dx * afterY - dy * afterX);
    if (fromBefore >= 0 && fromAfter >= 0) return 1;
    return Math.max(dx * beforeX + dy * beforeY, dx * afterX + dy * afterY);
  }
  return (dx * mx + dy * my) / (Math.hypot(mx, my) || 1);
}
