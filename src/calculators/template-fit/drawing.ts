import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import { axisBox, type Point, pointsOfArc, type Ring } from '../../model/outline/index.ts';
import type { Found } from './found.ts';
import { type Place, riskyArcs } from './tables.ts';

const tuples = (points: readonly Point[]): [number, number][] => points.map(({ x, y }) => [x, y]);

/** The outline with a line pattern for each way in which the cut meets the grain, numbered stretches and lettered places. */
export function outlineDrawing(found: Found, rough: readonly Ring[], places: readonly Place[]): Drawing {
  const { shape, tears, pockets, grain, routing } = found;
  const shapes: DrawingShape[] = rough.map(({ points }) => ({ role: 'rough', closed: true, points: tuples(points) }));
  for (const { outline } of pockets) shapes.push({ role: 'left', closed: true, points: tuples(outline) });
  for (const arc of tears.arcs) {
    shapes.push({ role: roleOf(arc), closed: false, points: tuples(pointsOfArc(shape, arc)) });
  }
  shapes.push({ role: 'grain', closed: false, points: grainLine(found, grain) });
  riskyArcs(found).forEach(({ middle }, index) => {
    shapes.push({ role: 'place', closed: false, points: [[middle.x, middle.y]], label: `${index + 1}` });
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
        : `${uphill.length} ${uphill.length === 1 ? 'stretch runs' : 'stretches run'} uphill, ${steep} of them steeply`
    }. Numbers and letters are those of the tables.`,
    shapes,
  };
}

function roleOf({ meeting, steepness }: Found['tears']['arcs'][number]): DrawingShape['role'] {
  if (meeting === 'end-grain') return 'end-grain';
  if (meeting === 'uphill') return steepness === 'steep' ? 'uphill-steep' : 'uphill';
  return 'edge';
}

/** A line along the grain through the middle of the outline's box, half as long as its smaller side. */
function grainLine({ shape }: Found, degrees: number): [number, number][] {
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
