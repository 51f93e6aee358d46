import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import {
  axisBox,
  type EdgeArc,
  type Nest,
  type Point,
  placedShape,
  pointsOfArc,
  type Ring,
} from '../../model/outline/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type Found, isNotRouted } from './found.ts';
import { type Place, riskyArcs } from './tables.ts';

export const tuples = (points: readonly Point[]): [number, number][] => points.map(({ x, y }) => [x, y]);

/** The outline with a line pattern for each way in which the cut meets the grain, numbered stretches and lettered places. */
export function outlineDrawing(found: Found, rough: readonly Ring[], places: readonly Place[]): Drawing {
  const { shape, tears, pockets, grain, routing } = found;
  const shapes: DrawingShape[] = rough.map(({ points }) => ({ role: 'rough', closed: true, points: tuples(points) }));
  // A hole that is bored is not wood left standing.
  for (const { outline, kind } of pockets)
    if (kind === 'corner') shapes.push({ role: 'left', closed: true, points: tuples(outline) });
  for (const arc of tears.arcs) {
    shapes.push({ role: roleOf(arc), closed: false, points: tuples(pointsOfArc(shape, arc)) });
  }
  shapes.push({ role: 'grain', closed: false, points: grainLine(found, grain) });
  riskyArcs(found).forEach((arc, index) => {
    // Numbers in a hole that is not routed would only crowd it.
    if (isNotRouted(found, arc.loop)) return;
    shapes.push({ role: 'place', closed: false, points: [besideArc(found, arc)], label: `${index + 1}` });
  });
  for (const { letter, x, y } of places) shapes.push({ role: 'place', closed: false, points: [[x, y]], label: letter });
  const uphill = tears.arcs.filter(({ meeting }) => meeting === 'uphill');
  const steep = uphill.filter(({ steepness }) => steepness === 'steep').length;
  return {
    id: 'outline',
    title: 'The outline as the board lies while it is cut',
    description: `Seen from above, ${routing === 'handheld' ? 'for a handheld router' : 'for a router table'}: ${
      uphill.length === 0
        ? 'no stretch runs uphill'
        : `${uphill.length} ${uphill.length === 1 ? 'stretch runs' : 'stretches run'} uphill, ${steep === uphill.length ? 'all' : steep === 0 ? 'none' : steep} of them steeply`
    }. Numbers and letters are those of the tables.`,
    shapes,
  };
}

/** Sizes as shares of the drawing's longer side: how far a number stands from its stretch, and from its place to its middle. */
const off = 0.032;
const toMiddle = 0.02;

/** The place of a number that stands beside the middle of a stretch, on the side away from the wood, clear of the letters in it. */
function besideArc({ shape }: Found, { loop, from, to, middle }: EdgeArc): [number, number] {
  const box = axisBox(shape.outer);
  const size = Math.max(box.right - box.left, box.top - box.bottom);
  // The edge's direction over a little of it about the middle; the wood lies to the left.
  const near = pointsOfArc(shape, { loop, from: from + 0.45 * (to - from), to: from + 0.55 * (to - from) });
  const [a, b] = [near[0] ?? middle, near[near.length - 1] ?? middle];
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  // A label is written to the upper right of its place.
  return [
    middle.x + size * ((off * (b.y - a.y)) / length - toMiddle),
    middle.y - size * ((off * (b.x - a.x)) / length + toMiddle),
  ];
}

function roleOf({ meeting, steepness }: Found['tears']['arcs'][number]): DrawingShape['role'] {
  if (meeting === 'end-grain') return 'end-grain';
  if (meeting === 'uphill') return steepness === 'steep' ? 'uphill-steep' : 'uphill';
  return 'edge';
}

/** A line along the grain through the middle of the outline's box, half as long as its smaller side. */
export function grainLine({ shape }: Found, degrees: number): [number, number][] {
  const box = axisBox(shape.outer);
  const [x, y] = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const reach = Math.min(box.right - box.left, box.top - box.bottom) / 4;
  const turn = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(turn) * reach, Math.sin(turn) * reach];
  return [
    [x - c, y - s],
    [x + c, y + s],
  ];
}

/** Copies drawn at most: more would be too small to see. */
const mostCopies = 60;

/** The nested copies on their template blank; none where no copy fits. */
export function nestDrawing(nest: Nest | undefined, length: number, width: number): Drawing[] {
  if (!nest || nest.placements.length === 0) return [];
  const blank: DrawingShape = {
    role: 'board',
    closed: true,
    points: [
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ],
  };
  const copies = nest.placements.slice(0, mostCopies).flatMap((placement): DrawingShape[] =>
    placedShape(nest, placement).loops.map((loop) => ({
      role: 'blank',
      closed: true,
      points: Array.from(loop.x, (x, i): [number, number] => [x, loop.y[i] as number]),
    })),
  );
  const count = nest.placements.length;
  return [
    {
      id: 'nest',
      title: 'Copies on the template blank',
      description: `${count === 1 ? 'One copy' : `${count} copies`} on a blank of ${amount(length, 'mm', 4)} by ${amount(width, 'mm', 4)}, grain along its length.${
        count > mostCopies ? ` The first ${mostCopies} are drawn.` : ''
      }`,
      shapes: [blank, ...copies],
    },
  ];
}
