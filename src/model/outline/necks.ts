import { type Chord, type Mesh, normalsAt, squareness } from './mesh.ts';
import { nearestBetween } from './nearest.ts';
import type { Gap, Shape } from './types.ts';

/** A narrow place of the wood, from edge to edge. */
export interface Neck extends Gap {
  /**
   * `part`: between two stretches of one edge, so that a break there takes a part off.
   * `web`: between a hole and the edge or another hole.
   */
  kind: 'part' | 'web';
  /** Angle between the line across the neck and the grain, 0 to 90°. */
  toGrain: number;
}

/** Cosine of 35°: how far from square to the edge a chord across a neck may leave it. */
const squareEnough = Math.cos((35 * Math.PI) / 180);

/** A neck is one of its own where the wood widens by this factor before the next. */
const widening = 1.25;

/** Within this factor of the narrowest, the place with the most wood beyond it stands for the whole part. */
const plateau = 1.005;

/** Below this angle between the line across and the grain, a neck is short-grained. */
const shortGrainAngle = 45;

/** The narrow places of an outline. */
export interface NeckReport {
  /** Narrowest first. */
  necks: readonly Neck[];
  /**
   * Necks whose line across lies within 45° of the grain: the fibres run from side to side, so a split along them takes
   * the part off. Each is the narrowest such place of its part.
   */
  shortGrain: readonly Neck[];
  /** The least wood between a hole and the edge or another hole; undefined without holes. */
  holeToEdge?: Gap;
}

/**
 * Find the narrow places of a shape.
 *
 * A neck is a chord through the wood, square to the edge at both ends within 35°, with more wood beyond it on either side
 * than a square on the chord holds; so a rounded end or a blunt corner is not one, and a handle is. Between a hole and
 * the edge every shortest way counts. Chords that touch form one part, which is named by its narrowest place. Chords come
 * from a triangulation of points spread along the edges (`meshOf`); the lengths are then measured between the edges.
 *
 * @param grainDegrees angle from the x axis to the grain, counter-clockwise
 * @param shortGrainBelow only places narrower than this, in mm, are listed as short-grained
 */
export function findNecks(shape: Shape, mesh: Mesh, grainDegrees: number, shortGrainBelow: number): NeckReport {
  const rated = mesh.chords.map((chord) => (chord.inWood ? rate(mesh, chord) : undefined));
  const necks = narrowest(shape, mesh, rated, grainDegrees, () => true);
  const shortGrain = narrowest(
    shape,
    mesh,
    rated,
    grainDegrees,
    (chord) => chord.length < shortGrainBelow * 1.05 && angleToGrain(mesh, chord, grainDegrees) < shortGrainAngle,
  ).filter((neck) => neck.length < shortGrainBelow && neck.toGrain < shortGrainAngle);
  const holeToEdge = leastHoleToEdge(shape, mesh);
  return { necks, shortGrain, ...(holeToEdge ? { holeToEdge } : {}) };
}

interface Rated {
  chord: Chord;
  kind: Neck['kind'];
  /** Twice the area of the lesser side in mm²; infinite for a web. */
  beyond: number;
}

function rate(mesh: Mesh, chord: Chord): Rated | undefined {
  const { a, b, length } = chord;
  if (length === 0) return undefined;
  const dx = ((mesh.x[b] as number) - (mesh.x[a] as number)) / length;
  const dy = ((mesh.y[b] as number) - (mesh.y[a] as number)) / length;
  if (squareness(normalsAt(mesh, a), -dx, -dy, true) < squareEnough) return undefined;
  if (squareness(normalsAt(mesh, b), dx, dy, true) < squareEnough) return undefined;
  if (mesh.loop[a] !== mesh.loop[b]) return { chord, kind: 'web', beyond: Number.POSITIVE_INFINITY };
  const beyond = lesserSide(mesh, a, b);
  return beyond > 2 * length * length ? { chord, kind: 'part', beyond } : undefined;
}

/**
 * Twice the area of wood on the smaller side of a chord between two points of one loop; the other loops' holes are not
 * taken off. Going around with the wood on the left, a side that encloses wood has a positive area.
 */
function lesserSide(mesh: Mesh, a: number, b: number): number {
  const [i, j] = a < b ? [a, b] : [b, a];
  const [xi, yi, xj, yj] = [mesh.x[i], mesh.y[i], mesh.x[j], mesh.y[j]] as [number, number, number, number];
  const loop = mesh.loop[i] as number;
  const closing = xj * yi - xi * yj;
  const one = (mesh.swept[j] as number) - (mesh.swept[i] as number) + closing;
  const other = (mesh.sweptWhole[loop] as number) - one;
  if (loop === 0) return Math.min(one, other);
  // Of the two sides of a chord across a hole's own wood one is enclosed by the hole; the other is all the rest.
  return Math.max(one, other);
}

function angleToGrain(mesh: Mesh, chord: Chord, grainDegrees: number): number {
  return lineToGrain(
    (mesh.x[chord.b] as number) - (mesh.x[chord.a] as number),
    (mesh.y[chord.b] as number) - (mesh.y[chord.a] as number),
    grainDegrees,
  );
}

/** Angle between a line and the grain, 0 to 90°. */
export function lineToGrain(dx: number, dy: number, grainDegrees: number): number {
  const turn = (((Math.atan2(dy, dx) * 180) / Math.PI - grainDegrees) % 180) + 180;
  const folded = turn % 180;
  return folded > 90 ? 180 - folded : folded;
}

/**
 * The narrowest chord of each part: chords are taken up from the shortest on, each joining the parts that it touches; two
 * parts that meet stay apart where the wood widened between them.
 */
function narrowest(
  shape: Shape,
  mesh: Mesh,
  rated: readonly (Rated | undefined)[],
  grainDegrees: number,
  wanted: (chord: Chord) => boolean,
): Neck[] {
  const order: number[] = [];
  rated.forEach((each, index) => {
    if (each && wanted(each.chord)) order.push(index);
  });
  const lengthOf = (index: number) => (mesh.chords[index] as Chord).length;
  order.sort((p, q) => lengthOf(p) - lengthOf(q));
  const parent = new Int32Array(rated.length).fill(-1);
  const root = (index: number): number => {
    let at = index;
    while (parent[at] !== at) at = parent[at] = parent[parent[at] as number] as number;
    return at;
  };
  /** By the root of a part, which is its shortest chord: the chord that stands for it, and whether it is told apart. */
  const shown = new Map<number, { best: Rated; least: number; apart: boolean }>();
  for (const index of order) {
    const here = rated[index] as Rated;
    const parts = new Set<number>();
    for (const neighbour of here.chord.neighbours) {
      if ((parent[neighbour] as number) >= 0) parts.add(root(neighbour));
    }
    if (parts.size === 0) {
      parent[index] = index;
      shown.set(index, { best: here, least: here.chord.length, apart: true });
      continue;
    }
    const [lowest, ...rest] = [...parts].sort((p, q) => lengthOf(p) - lengthOf(q)) as [number, ...number[]];
    parent[index] = lowest;
    const part = shown.get(lowest);
    if (part && here.chord.length <= part.least * plateau && here.beyond > part.best.beyond) part.best = here;
    for (const joined of rest) {
      const other = shown.get(joined);
      if (other && here.chord.length < other.least * widening) other.apart = false;
      parent[joined] = lowest;
    }
  }
  const necks = [...shown.entries()]
    .filter(([, part]) => part.apart)
    .map(([shortest, { best }]): Neck => {
      const sliding = best.kind === 'web';
      const told = nearestBetween(shape, mesh, best.chord, sliding);
      // The place with the most wood beyond it may lie a little beside the narrowest: then that one is told, whose length is exact.
      const least = nearestBetween(shape, mesh, mesh.chords[shortest] as Chord, sliding);
      const gap = told.length > least.length + 1e-6 ? least : told;
      return {
        ...gap,
        kind: best.kind,
        toGrain: lineToGrain(gap.to.x - gap.from.x, gap.to.y - gap.from.y, grainDegrees),
      };
    });
  // Ways between a hole and the edge slide to the nearest place, where several may meet; and beside a part a wider chord may
  // stand by itself, where the edge between them turns away too far. The narrower one stands for both.
  const told: Neck[] = [];
  for (const neck of necks.sort((p, q) => p.length - q.length)) {
    if (!told.some((other) => other.kind === neck.kind && apart(neck, other) < neck.length)) told.push(neck);
  }
  return told;
}

/** Distance between the middles of two gaps, in mm. */
function apart(one: Gap, other: Gap): number {
  const dx = one.from.x + one.to.x - other.from.x - other.to.x;
  const dy = one.from.y + one.to.y - other.from.y - other.to.y;
  return Math.hypot(dx, dy) / 2;
}

function leastHoleToEdge(shape: Shape, mesh: Mesh): Gap | undefined {
  const between = mesh.chords
    .filter((chord) => mesh.loop[chord.a] !== mesh.loop[chord.b])
    .sort((p, q) => p.length - q.length);
  const shortest = between[0];
  if (!shortest) return undefined;
  // The points lie up to a pitch apart, so the nearest edges may belong to a chord that is a little longer; but each
  // search slides some way along the edges, so chords that end near one already tried need no search of their own.
  let best: Gap | undefined;
  const tried: Chord[] = [];
  for (const chord of between) {
    if (chord.length > shortest.length + 2 * mesh.pitch) break;
    if (tried.some((other) => sharesEnds(mesh, chord, other))) continue;
    tried.push(chord);
    const gap = nearestBetween(shape, mesh, chord, true);
    if (!best || gap.length < best.length) best = gap;
  }
  return best;
}

/** Whether two chords join the same loops and both their ends lie within a pitch. */
function sharesEnds(mesh: Mesh, one: Chord, other: Chord): boolean {
  const near = (p: number, q: number) =>
    mesh.loop[p] === mesh.loop[q] && Math.abs((mesh.along[p] as number) - (mesh.along[q] as number)) <= mesh.pitch;
  return (near(one.a, other.a) && near(one.b, other.b)) || (near(one.a, other.b) && near(one.b, other.a));
}
