import { type PithView, type Point, pithOf, pointOf, polarOf, type Section, seenFromPith } from './section.ts';

/** Most rings drawn in one section; more only blacken it. */
const mostRings = 48;
/** Most that a drawn arc may depart from its circle, mm, and the most pieces that it is drawn in. */
const arcPrecision = 0.02;
const mostPieces = 64;
/** Pieces in which a face is drawn. */
const facePieces = 24;

/** The outline of a flat, square board: anticlockwise from the left end of its heart-side face, not closed. */
export function outline({ width, thickness }: Section): Point[] {
  const [half, top] = [width / 2, thickness / 2];
  const along = Array.from({ length: facePieces + 1 }, (_, at) => -half + (width * at) / facePieces);
  return [...along.map((x): Point => [x, -top]), ...along.reverse().map((x): Point => [x, top])];
}

/**
 * Arcs of evenly spaced circles about the pith, as far as they lie in a board. They show how the rings run; the board's
 * own rings lie at their own distances.
 *
 * @param section the board when flat and square
 * @param spacing mm from ring to ring; a fifth of the thickness unless told, and never more than 48 rings in all
 * @returns arcs as points, before any change: `ringMap` moves them
 */
export function ringArcs(section: Section, spacing = section.thickness / 5): Point[][] {
  const view = seenFromPith(section);
  const corners = cornersOf(section).map((corner) => polarOf(view, corner).beyond);
  const nearest = Math.min(...corners, polarOf(view, nearestToPith(section)).beyond);
  const span = Math.max(...corners) - nearest;
  const step = Math.max(spacing, span / mostRings);
  const count = Math.max(1, Math.floor(span / step));
  // Half a step from either end, so that no ring lies in an arris.
  const first = nearest + (span - (count - 1) * step) / 2;
  return Array.from({ length: count }, (_, at) => arcsIn(section, view, first + at * step)).flat();
}

function cornersOf({ width, thickness }: Section): Point[] {
  const [half, top] = [width / 2, thickness / 2];
  return [
    [-half, -top],
    [half, -top],
    [half, top],
    [-half, top],
  ];
}

function nearestToPith(section: Section): Point {
  const [x, y] = pithOf(section);
  const within = (value: number, limit: number) => Math.min(Math.max(value, -limit), limit);
  return [within(x, section.width / 2), within(y, section.thickness / 2)];
}

/** The parts of one circle that lie in the board; the circle is named by its distance beyond the board's middle. */
function arcsIn(section: Section, view: PithView, beyond: number): Point[][] {
  const radius = view.distance + beyond;
  const [half, top] = [section.width / 2, section.thickness / 2];
  const angles = crossings(section, view, beyond).sort((a, b) => a - b);
  const at = (angle: number) => pointOf(view, { beyond, radius, angle });
  const arcs: Point[][] = [];
  for (const [index, end] of angles.entries()) {
    const start = angles[index - 1];
    if (start === undefined) continue;
    const [x, y] = at((start + end) / 2);
    if (Math.abs(x) > half || Math.abs(y) > top) continue;
    // A piece of angle a departs from the circle by r a²/8.
    const wanted = Math.ceil((end - start) * Math.sqrt(radius / (8 * arcPrecision)));
    const pieces = Math.min(Math.max(wanted, 1), mostPieces);
    arcs.push(Array.from({ length: pieces + 1 }, (_, step) => at(start + ((end - start) * step) / pieces)));
  }
  return arcs;
}

/** Angles about the pith at which a circle crosses the outline of the board. */
function crossings(section: Section, view: PithView, beyond: number): number[] {
  const [pithX, pithY] = pithOf(section);
  const [half, top] = [section.width / 2, section.thickness / 2];
  const angles: number[] = [];
  for (const x of [-half, half]) {
    for (const y of crossingsOfLine(view, beyond, pithX, pithY, x)) {
      if (Math.abs(y) <= top) angles.push(polarOf(view, [x, y]).angle);
    }
  }
  for (const y of [-top, top]) {
    for (const x of crossingsOfLine(view, beyond, pithY, pithX, y)) {
      if (Math.abs(x) <= half) angles.push(polarOf(view, [x, y]).angle);
    }
  }
  return angles;
}

/** Where a circle about the pith crosses one line: `pith` and `line` along one axis, `other` the pith along the other. */
function crossingsOfLine(view: PithView, beyond: number, pith: number, other: number, line: number): number[] {
  const side = Math.abs(pith);
  const outward = pith <= 0 ? line : -line;
  // (radius - reach)(radius + reach), where reach = side + outward; the first factor from parts of the board's size, since
  // radius and reach are of the log's size and may be nearly equal.
  const gap = (other * other) / (view.distance + side) + beyond - outward;
  const rest = gap * (view.distance + beyond + side + outward);
  if (!(rest >= 0)) return [];
  const away = Math.sqrt(rest);
  return [other - away, other + away];
}
