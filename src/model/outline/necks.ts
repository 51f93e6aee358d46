import { type Mesh, mostBeside, squareness } from './mesh.ts';
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
  const { chords } = mesh;
  const beyond = new Float64Array(chords.count);
  for (let chord = 0; chord < chords.count; chord++) if (chords.inWood[chord]) beyond[chord] = beyondNeck(mesh, chord);
  const necks = narrowest(shape, mesh, beyond, grainDegrees, () => true);
  const shortGrain = narrowest(
    shape,
    mesh,
    beyond,
    grainDegrees,
    (chord) =>
      (chords.length[chord] as number) < shortGrainBelow * 1.05 &&
      angleToGrain(mesh, chord, grainDegrees) < shortGrainAngle,
  ).filter((neck) => neck.length < shortGrainBelow && neck.toGrain < shortGrainAngle);
  const holeToEdge = leastHoleToEdge(shape, mesh);
  return { necks, shortGrain, ...(holeToEdge ? { holeToEdge } : {}) };
}

/** Twice the area of the lesser side of a chord that crosses a neck, in mm²; infinite for a web, 0 where it crosses none. */
function beyondNeck(mesh: Mesh, chord: number): number {
  const a = mesh.chords.a[chord] as number;
  const b = mesh.chords.b[chord] as number;
  const length = mesh.chords.length[chord] as number;
  if (length === 0) return 0;
  const isWeb = mesh.loop[a] !== mesh.loop[b];
  const beyond = isWeb ? Number.POSITIVE_INFINITY : lesserSide(mesh, a, b);
  if (!(beyond > 2 * length * length)) return 0;
  const dx = ((mesh.x[b] as number) - (mesh.x[a] as number)) / length;
  const dy = ((mesh.y[b] as number) - (mesh.y[a] as number)) / length;
  if (squareness(mesh, a, -dx, -dy, true) < squareEnough) return 0;
  return squareness(mesh, b, dx, dy, true) < squareEnough ? 0 : beyond;
}

/**
 * Twice the area of wood on the smaller side of a chord between two points of one loop; the other loops' holes are not
 * taken off. Going around with the wood on the left, a side that encloses wood has a positive area.
 */
function lesserSide(mesh: Mesh, a: number, b: number): number {
  const i = Math.min(a, b);
  const j = Math.max(a, b);
  const loop = mesh.loop[i] as number;
  const closing = (mesh.x[j] as number) * (mesh.y[i] as number) - (mesh.x[i] as number) * (mesh.y[j] as number);
  const one = (mesh.swept[j] as number) - (mesh.swept[i] as number) + closing;
  const other = (mesh.sweptWhole[loop] as number) - one;
  if (loop === 0) return Math.min(one, other);
  // Of the two sides of a chord across a hole's own wood one is enclosed by the hole; the other is all the rest.
  return Math.max(one, other);
}

function angleToGrain(mesh: Mesh, chord: number, grainDegrees: number): number {
  const a = mesh.chords.a[chord] as number;
  const b = mesh.chords.b[chord] as number;
  return lineToGrain(
    (mesh.x[b] as number) - (mesh.x[a] as number),
    (mesh.y[b] as number) - (mesh.y[a] as number),
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
  beyond: Float64Array,
  grainDegrees: number,
  wanted: (chord: number) => boolean,
): Neck[] {
  const { chords } = mesh;
  const order: number[] = [];
  for (let chord = 0; chord < chords.count; chord++)
    if ((beyond[chord] as number) > 0 && wanted(chord)) order.push(chord);
  if (order.length === 0) return [];
  const lengthOf = (chord: number) => chords.length[chord] as number;
  order.sort((p, q) => lengthOf(p) - lengthOf(q));
  const parent = new Int32Array(chords.count).fill(-1);
  const root = (chord: number): number => {
    let at = chord;
    while (parent[at] !== at) at = parent[at] = parent[parent[at] as number] as number;
    return at;
  };
  /** By the root of a part, which is its shortest chord: the chord that stands for it, and whether it is told apart. */
  const shown = new Map<number, { best: number; least: number; apart: boolean }>();
  for (const here of order) {
    const length = lengthOf(here);
    const parts = new Set<number>();
    for (let place = mostBeside * here; place < mostBeside * (here + 1); place++) {
      const neighbour = chords.beside[place] as number;
      if (neighbour >= 0 && (parent[neighbour] as number) >= 0) parts.add(root(neighbour));
    }
    if (parts.size === 0) {
      parent[here] = here;
      shown.set(here, { best: here, least: length, apart: true });
      continue;
    }
    const [lowest, ...rest] = [...parts].sort((p, q) => lengthOf(p) - lengthOf(q)) as [number, ...number[]];
    parent[here] = lowest;
    const part = shown.get(lowest);
    if (part && length <= part.least * plateau && (beyond[here] as number) > (beyond[part.best] as number))
      part.best = here;
    for (const joined of rest) {
      const other = shown.get(joined);
      if (other && length < other.least * widening) other.apart = false;
      parent[joined] = lowest;
    }
  }
  const necks = [...shown.entries()]
    .filter(([, part]) => part.apart)
    .map(([shortest, { best }]): Neck => {
      const sliding = beyond[best] === Number.POSITIVE_INFINITY;
      const told = nearestBetween(shape, mesh, best, sliding);
      // The place with the most wood beyond it may lie a little beside the narrowest: then that one is told, whose length is exact.
      const least = nearestBetween(shape, mesh, shortest, sliding);
      const gap = told.length > least.length + 1e-6 ? least : told;
      return {
        ...gap,
        kind: sliding ? 'web' : 'part',
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
  if (shape.loops.length === 1) return undefined;
  const { a, b, count, length } = mesh.chords;
  const lengthOf = (chord: number) => length[chord] as number;
  const between: number[] = [];
  for (let chord = 0; chord < count; chord++)
    if (mesh.loop[a[chord] as number] !== mesh.loop[b[chord] as number]) between.push(chord);
  between.sort((p, q) => lengthOf(p) - lengthOf(q));
  const shortest = between[0];
  if (shortest === undefined) return undefined;
  // The points lie up to a pitch apart, so the nearest edges may belong to a chord that is a little longer; but each
  // search slides some way along the edges, so chords that end near one already tried need no search of their own.
  let best: Gap | undefined;
  const tried: number[] = [];
  for (const chord of between) {
    if (lengthOf(chord) > lengthOf(shortest) + 2 * mesh.pitch) break;
    if (tried.some((other) => sharesEnds(mesh, chord, other))) continue;
    tried.push(chord);
    const gap = nearestBetween(shape, mesh, chord, true);
    if (!best || gap.length < best.length) best = gap;
  }
  return best;
}

/** Whether two chords join the same loops and both their ends lie within a pitch. */
function sharesEnds(mesh: Mesh, one: number, other: number): boolean {
  const { a, b } = mesh.chords;
  const near = (p: number, q: number) =>
    mesh.loop[p] === mesh.loop[q] && Math.abs((mesh.along[p] as number) - (mesh.along[q] as number)) <= mesh.pitch;
  const [a1, b1, a2, b2] = [a[one], b[one], a[other], b[other]] as [number, number, number, number];
  return (near(a1, a2) && near(b1, b2)) || (near(a1, b2) && near(b1, a2));
}
