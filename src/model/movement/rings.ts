import { type Point, pithOf, pointOf, polarOf, type Section, seenFromPith } from './section.ts';

/** Most rings drawn in one section; more only blacken it. */
const mostRings = 48;
/** Points along one arc. */
const arcPoints = 24;
/** Points along one face. */
const facePoints = 32;

/** The outline of a flat, square board: anticlockwise from the left end of its heart-side face, not closed. */
export function outline({ width, thickness }: Section): Point[] {
  const [half, top] = [width / 2, thickness / 2];
  const along = Array.from({ length: facePoints + 1 }, (_, at) => -half + (width * at) / facePoints);
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
  return Array.from({ length: count }, (_, at) => arcsIn(section, first + at * step)).flat();
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
function arcsIn(section: Section, beyond: number): Point[][] {
  const view = seenFromPith(section);
  const radius = view.distance + beyond;
  const [half, top] = [section.width / 2, section.thickness / 2];
  const angles = crossings(section, beyond).sort((a, b) => a - b);
  const at = (angle: number) => pointOf(view, { beyond, radius, angle });
  const inside = ([x, y]: Point) => Math.abs(x) <= half && Math.abs(y) <= top;
  return angles.slice(1).flatMap((end, index) => {
    const start = angles[index] as number;
    if (!inside(at((start + end) / 2))) return [];
    return [Array.from({ length: arcPoints + 1 }, (_, step) => at(start + ((end - start) * step) / arcPoints))];
  });
}

/** Angles at which a circle about the pith crosses the lines of the four sides. */
function crossings(section: Section, beyond: number): number[] {
  const view = seenFromPith(section);
  const [pithX, pithY] = pithOf(section);
  const radius = view.distance + beyond;
  const sides = [
    { from: pithX, lines: [-section.width / 2, section.width / 2], at: (x: number, y: number): Point => [x, y] },
    {
      from: pithY,
      lines: [-section.thickness / 2, section.thickness / 2],
      at: (y: number, x: number): Point => [x, y],
    },
  ];
  return sides.flatMap(({ from, lines, at }, index) => {
    const other = index === 0 ? pithY : pithX;
    return lines.flatMap((line) => {
      const reach = Math.abs(line - from);
      // radius - reach from parts of the board's size: two numbers of the log's size may be nearly equal.
      const side = Math.abs(from);
      const gap = (other * other) / (view.distance + side) + beyond - (from < 0 ? line : from > 0 ? -line : reach);
      const rest = gap * (radius + reach);
      if (!(rest > 0)) return [];
      const away = Math.sqrt(rest);
      return [other + away, other - away].map((across) => polarOf(view, at(line, across)).angle);
    });
  });
}
