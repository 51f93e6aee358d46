import { EdgeGrid, type OnEdge } from './grid.ts';
import { leftToSand } from './limits.ts';
import { offsetShape, type Ring, ringArea } from './offset.ts';
import { isInside } from './shape.ts';
import { thinnedLoop } from './simplify.ts';
import type { Point, Polyline, Shape } from './types.ts';

/** Wood that a bit leaves standing outside the line, because it does not fit. */
export interface Pocket {
  /** `corner`: in a hollow that is tighter than the bit. `hole`: a hole that the bit does not enter at all. */
  kind: 'corner' | 'hole';
  /** 0 for the outer edge, from 1 on for the holes in the order of the outline. */
  loop: number;
  /** The place of the line furthest from the bit. */
  at: Point;
  /** How far the bit stays from that place, in mm; absent for a hole. */
  depth?: number;
  /** mm² */
  area: number;
  /** The piece left, as a closed polyline. */
  outline: readonly Point[];
}

/** Turns of the cutter's path smaller than this are steps of a polyline (sine of 1°). */
const stepSine = Math.sin(Math.PI / 180);

/**
 * What a bit leaves where it runs along the line.
 *
 * The middle of the bit runs on the line offset by its radius. Where that path turns sharply into the wood, the bit rests
 * against two places of the line at once and the stretch between them is not reached.
 *
 * @param diameter of the bit, in mm
 * @returns pockets deeper than 0.1 mm, the deepest first; holes that the bit does not enter come before them
 */
export function bitLeaves(shape: Shape, diameter: number): Pocket[] {
  const radius = diameter / 2;
  const rings = offsetShape(shape, radius);
  const lines = shape.loops.map(thinnedLoop);
  const holes = shape.holes.flatMap((hole, index): Pocket[] => {
    if (rings.some((ring) => ring.hole && isInside(hole, ring.points[0]?.x ?? 0, ring.points[0]?.y ?? 0))) return [];
    const outline = pointsOf(lines[index + 1] as Polyline);
    return [{ kind: 'hole', loop: index + 1, at: middleOf(outline), area: Math.abs(ringArea(outline)), outline }];
  });
  const grid = new EdgeGrid(lines, 2);
  const corners = rings.flatMap((ring) => pocketsAlong(ring, lines, grid, radius));
  corners.sort((p, q) => (q.depth ?? 0) - (p.depth ?? 0));
  const told: Pocket[] = [];
  for (const pocket of corners) {
    // One rest of the bit may show as two turns close together, which then share their deepest place.
    if (!told.some((other) => Math.hypot(other.at.x - pocket.at.x, other.at.y - pocket.at.y) < 0.5)) told.push(pocket);
  }
  return [...holes, ...told];
}

function pocketsAlong(ring: Ring, lines: readonly Polyline[], grid: EdgeGrid, radius: number): Pocket[] {
  const { points } = ring;
  const count = points.length;
  const pockets: Pocket[] = [];
  for (let i = 0; i < count; i++) {
    const [h, c, j] = [points[(i + count - 1) % count], points[i], points[(i + 1) % count]] as [Point, Point, Point];
    const [ux, uy, vx, vy] = [c.x - h.x, c.y - h.y, j.x - c.x, j.y - c.y];
    const [ul, vl] = [Math.hypot(ux, uy), Math.hypot(vx, vy)];
    if (ul === 0 || vl === 0) continue;
    const sine = (ux * vy - uy * vx) / (ul * vl);
    const ahead = ux * vx + uy * vy > 0;
    if (ahead ? sine > -stepSine : sine > 0) continue;
    // The wood lies to the left of the path, a radius away.
    const a = grid.nearest(c.x - (uy / ul) * radius, c.y + (ux / ul) * radius);
    const b = grid.nearest(c.x - (vy / vl) * radius, c.y + (vx / vl) * radius);
    if (!a || !b || a.line !== b.line) continue;
    const pocket = pocketBetween(lines[a.line] as Polyline, a, b, c, radius);
    if (pocket) pockets.push(pocket);
  }
  return pockets;
}

/** The piece between the line from a on to b and the bit that rests against both. */
function pocketBetween(line: Polyline, a: OnEdge, b: OnEdge, centre: Point, radius: number): Pocket | undefined {
  const count = line.x.length;
  const outline: Point[] = [a.place];
  let deepest = a.place;
  let depth = 0;
  const backwards = a.edge === b.edge && b.t < a.t;
  if (backwards) return undefined;
  for (let i = a.edge; i !== b.edge; ) {
    i = i + 1 === count ? 0 : i + 1;
    const place = { x: line.x[i] as number, y: line.y[i] as number };
    outline.push(place);
    const off = Math.hypot(place.x - centre.x, place.y - centre.y) - radius;
    if (off > depth) {
      depth = off;
      deepest = place;
    }
    if (outline.length > count + 1) return undefined;
  }
  if (depth <= leftToSand) return undefined;
  outline.push(b.place);
  const from = Math.atan2(b.place.y - centre.y, b.place.x - centre.x);
  const to = Math.atan2(a.place.y - centre.y, a.place.x - centre.x);
  // Back along the bit on the side of the wood, which is the shorter way round.
  const turn = Math.atan2(Math.sin(to - from), Math.cos(to - from));
  const steps = Math.max(2, Math.ceil(Math.abs(turn) / 0.05));
  for (let k = 1; k < steps; k++) {
    const angle = from + (turn * k) / steps;
    outline.push({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
  }
  return { kind: 'corner', loop: a.line, at: deepest, depth, area: Math.abs(ringArea(outline)), outline };
}

function pointsOf({ x, y }: Polyline): Point[] {
  return Array.from(x, (px, i) => ({ x: px, y: y[i] as number }));
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}
