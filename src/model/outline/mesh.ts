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
  /** Twice the area swept from the loop's first point to this one, about the origin, in mm². */
  swept: Float64Array;
  /** Twice the whole area swept by each loop. */
  sweptWhole: readonly number[];
  /** Distance between neighbouring points, in mm. */
  pitch: number;
  chords: readonly Chord[];
}

export interface Chord {
  a: number;
  b: number;
  length: number;
  /** Whether it runs through the wood; otherwise through the space around it or in a hole. */
  inWood: boolean;
  /** Chords that share a triangle with it. */
  neighbours: number[];
}

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
  const spread = shape.loops.map((loop) => spreadAlong(loop, pitch));
  const count = spread.reduce((sum, each) => sum + each.x.length, 0);
  const coordinates = new Float64Array(2 * count);
  const mesh = {
    count,
    x: new Float64Array(count),
    y: new Float64Array(count),
    loop: new Int32Array(count),
    along: new Float64Array(count),
    next: new Int32Array(count),
    previous: new Int32Array(count),
    swept: new Float64Array(count),
    sweptWhole: [] as number[],
    pitch,
  };
  let at = 0;
  spread.forEach((each, loop) => {
    const start = at;
    const size = each.x.length;
    let swept = 0;
    for (let i = 0; i < size; i++, at++) {
      mesh.x[at] = each.x[i] as number;
      mesh.y[at] = each.y[i] as number;
      mesh.loop[at] = loop;
      mesh.along[at] = each.along[i] as number;
      mesh.next[at] = i + 1 === size ? start : at + 1;
      mesh.previous[at] = i === 0 ? start + size - 1 : at - 1;
      coordinates[2 * at] = mesh.x[at] as number;
      coordinates[2 * at + 1] = mesh.y[at] as number;
      mesh.swept[at] = swept;
      const j = i + 1 === size ? 0 : i + 1;
      swept += (each.x[i] as number) * (each.y[j] as number) - (each.x[j] as number) * (each.y[i] as number);
    }
    mesh.sweptWhole.push(swept);
  });
  return { ...mesh, chords: chordsOf(mesh, coordinates) };
}

/** Points along a loop no further apart than the pitch, corners among them; short edges of a fine polyline are skipped. */
function spreadAlong(loop: Loop, pitch: number): { x: number[]; y: number[]; along: number[] } {
  const count = loop.x.length;
  const result = { x: [] as number[], y: [] as number[], along: [] as number[] };
  const add = (px: number, py: number, s: number) => {
    result.x.push(px);
    result.y.push(py);
    result.along.push(s);
  };
  let last = Number.NEGATIVE_INFINITY;
  const whole = loop.along[count] as number;
  for (let i = 0; i < count; i++) {
    const j = i + 1 === count ? 0 : i + 1;
    const [ax, ay] = [loop.x[i] as number, loop.y[i] as number];
    const [bx, by] = [loop.x[j] as number, loop.y[j] as number];
    const s = loop.along[i] as number;
    const length = (loop.along[i + 1] as number) - s;
    // A loop is never left with fewer than eight points, so a small hole keeps its shape.
    const step = Math.min(pitch, whole / 8);
    if (i === 0 || s - last >= step * 0.75 || isCorner(loop, i)) {
      add(ax, ay, s);
      last = s;
    }
    const pieces = Math.ceil(length / step);
    for (let k = 1; k < pieces; k++) {
      const t = k / pieces;
      add(ax + (bx - ax) * t, ay + (by - ay) * t, s + length * t);
      last = s + length * t;
    }
  }
  return result;
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

function chordsOf(mesh: Points, coordinates: Float64Array): Chord[] {
  const { triangles, halfedges } = new Delaunator(coordinates);
  const chordOfHalf = new Int32Array(triangles.length).fill(-1);
  const chords: Chord[] = [];
  for (let half = 0; half < triangles.length; half++) {
    const twin = halfedges[half] as number;
    if (twin >= 0 && twin < half) {
      chordOfHalf[half] = chordOfHalf[twin] as number;
      continue;
    }
    const a = triangles[half] as number;
    const b = triangles[half % 3 === 2 ? half - 2 : half + 1] as number;
    if (mesh.next[a] === b || mesh.next[b] === a) continue;
    const dx = (mesh.x[b] as number) - (mesh.x[a] as number);
    const dy = (mesh.y[b] as number) - (mesh.y[a] as number);
    chordOfHalf[half] = chords.length;
    chords.push({ a, b, length: Math.hypot(dx, dy), inWood: leavesIntoWood(mesh, a, dx, dy), neighbours: [] });
  }
  for (let triangle = 0; triangle < triangles.length; triangle += 3) {
    const sides = [chordOfHalf[triangle], chordOfHalf[triangle + 1], chordOfHalf[triangle + 2]] as number[];
    for (const side of sides) {
      for (const other of sides) if (side >= 0 && other >= 0 && side !== other) chords[side]?.neighbours.push(other);
    }
  }
  return chords;
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

/** The directions square to the edge at a point: from the outward normal before it to the one after it. */
export interface NormalCone {
  /** Unit normals out of the wood. */
  before: readonly [number, number];
  after: readonly [number, number];
}

export function normalsAt(mesh: Mesh, at: number): NormalCone {
  const normal = (from: number, to: number): [number, number] => {
    const dx = (mesh.x[to] as number) - (mesh.x[from] as number);
    const dy = (mesh.y[to] as number) - (mesh.y[from] as number);
    const length = Math.hypot(dx, dy) || 1;
    return [dy / length, -dx / length];
  };
  return { before: normal(mesh.previous[at] as number, at), after: normal(at, mesh.next[at] as number) };
}

/**
 * Cosine of the angle between a unit direction out of the wood and the nearest direction square to the edge at a point.
 * At a corner that points towards the chord every direction between its two normals is square to it: an outward corner
 * for a chord through the air, an inside corner for one through the wood. Elsewhere the mean of the normals is.
 */
export function squareness({ before, after }: NormalCone, dx: number, dy: number, inWood: boolean): number {
  const sign = inWood ? -1 : 1;
  const turn = sign * (before[0] * after[1] - before[1] * after[0]);
  const [mx, my] = [before[0] + after[0], before[1] + after[1]];
  if (turn > 0 && dx * mx + dy * my > 0) {
    const fromBefore = sign * (before[0] * dy - before[1] * dx);
    const fromAfter = sign * (dx * after[1] - dy * after[0]);
    if (fromBefore >= 0 && fromAfter >= 0) return 1;
    return Math.max(dx * before[0] + dy * before[1], dx * after[0] + dy * after[1]);
  }
  return (dx * mx + dy * my) / (Math.hypot(mx, my) || 1);
}
