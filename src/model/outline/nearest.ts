import type { Mesh } from './mesh.ts';
import type { Gap, Loop, Point, Shape } from './types.ts';

/**
 * The shortest way between the two stretches of edge at the ends of a chord, measured between the polylines.
 *
 * @param chord its number
 * @param sliding whether the search follows the edges as long as the way gets shorter (between a hole and the edge);
 *   otherwise it stays within two pitches of the chord's ends
 */
export function nearestBetween(shape: Shape, mesh: Mesh, chord: number, sliding: boolean): Gap {
  const a = mesh.chords.a[chord] as number;
  const b = mesh.chords.b[chord] as number;
  const one = shape.loops[mesh.loop[a] as number] as Loop;
  const two = shape.loops[mesh.loop[b] as number] as Loop;
  let s = mesh.along[a] as number;
  let t = mesh.along[b] as number;
  let best: Nearest | undefined;
  for (let round = 0; round < (sliding ? 8 : 1); round++) {
    const found = nearestStretch(one, two, s, t, 2 * mesh.pitch);
    if (best && found.length >= best.length - 1e-9) break;
    best = found;
    [s, t] = [found.s, found.t];
  }
  const { from, to, length } = best as Nearest;
  return { from, to, length };
}

interface Nearest extends Gap {
  s: number;
  t: number;
}

function nearestStretch(one: Loop, two: Loop, s: number, t: number, reach: number): Nearest {
  const mine = edgesAround(one, s, reach);
  const theirs = edgesAround(two, t, reach);
  let least = Number.POSITIVE_INFINITY;
  let pair = [mine[0], theirs[0]] as [Edge, Edge];
  for (const p of mine) {
    for (const q of theirs) {
      const square = squareBetween(p, q);
      if (square < least) {
        least = square;
        pair = [p, q];
      }
    }
  }
  const [p, q] = pair;
  const { from, to, length } = betweenEdges(p, q);
  return {
    from,
    to,
    length,
    s: p.s + Math.hypot(from.x - p.ax, from.y - p.ay),
    t: q.s + Math.hypot(to.x - q.ax, to.y - q.ay),
  };
}

/** Square of the least distance between two edges that do not cross. */
function squareBetween(p: Edge, q: Edge): number {
  return Math.min(squareTo(p.ax, p.ay, q), squareTo(p.bx, p.by, q), squareTo(q.ax, q.ay, p), squareTo(q.bx, q.by, p));
}

function squareTo(px: number, py: number, edge: Edge): number {
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - edge.ax) * dx + (py - edge.ay) * dy) / square));
  const ex = px - edge.ax - t * dx;
  const ey = py - edge.ay - t * dy;
  return ex * ex + ey * ey;
}

interface Edge {
  ax: number;
  ay: number;
  bx: number;
  by: number;
  /** Length along the loop at its start. */
  s: number;
}

/** The pieces of edge within `reach` of a length along a loop, clipped to it. */
function edgesAround(loop: Loop, at: number, reach: number): Edge[] {
  const count = loop.x.length;
  const whole = loop.along[count] as number;
  const from = at - reach;
  const to = at + reach;
  const edges: Edge[] = [];
  let i = edgeAt(loop, ((from % whole) + whole) % whole);
  let lap = from < 0 ? -whole : from >= whole ? whole : 0;
  for (let steps = 0; steps <= count; steps++) {
    const start = (loop.along[i] as number) + lap;
    const end = (loop.along[i + 1] as number) + lap;
    if (start > to) break;
    const j = i + 1 === count ? 0 : i + 1;
    const length = end - start;
    const [ax, ay, bx, by] = [loop.x[i], loop.y[i], loop.x[j], loop.y[j]] as [number, number, number, number];
    const low = length === 0 ? 0 : Math.max(0, (from - start) / length);
    const high = length === 0 ? 1 : Math.min(1, (to - start) / length);
    if (low < high) {
      edges.push({
        ax: ax + (bx - ax) * low,
        ay: ay + (by - ay) * low,
        bx: ax + (bx - ax) * high,
        by: ay + (by - ay) * high,
        s: start + low * length,
      });
    }
    i = j;
    if (i === 0) lap += whole;
  }
  return edges;
}

/** Index of the polyline edge that holds a length along the loop. */
export function edgeAt(loop: Loop, along: number): number {
  let low = 0;
  let high = loop.x.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((loop.along[middle] as number) <= along) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Place on a loop's polyline at a length along it. */
export function placeAt(loop: Loop, along: number): Point {
  const whole = loop.along[loop.x.length] as number;
  const s = ((along % whole) + whole) % whole;
  const i = edgeAt(loop, s);
  const j = i + 1 === loop.x.length ? 0 : i + 1;
  const length = (loop.along[i + 1] as number) - (loop.along[i] as number);
  const t = length === 0 ? 0 : (s - (loop.along[i] as number)) / length;
  const [ax, ay] = [loop.x[i] as number, loop.y[i] as number];
  return { x: ax + ((loop.x[j] as number) - ax) * t, y: ay + ((loop.y[j] as number) - ay) * t };
}

/** The shortest way between two straight edges that do not cross. */
function betweenEdges(p: Edge, q: Edge): Gap {
  const candidates = [
    flip(toEdge(p.ax, p.ay, q)),
    flip(toEdge(p.bx, p.by, q)),
    toEdge(q.ax, q.ay, p),
    toEdge(q.bx, q.by, p),
  ];
  return candidates.reduce((best, each) => (each.length < best.length ? each : best));
}

/** From the nearest place of an edge to a point. */
function toEdge(px: number, py: number, edge: Edge): Gap {
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - edge.ax) * dx + (py - edge.ay) * dy) / square));
  const from = { x: edge.ax + t * dx, y: edge.ay + t * dy };
  return { from, to: { x: px, y: py }, length: Math.hypot(px - from.x, py - from.y) };
}

function flip({ from, to, length }: Gap): Gap {
  return { from: to, to: from, length };
}
