import type { ResultTable } from '../../model/evidence/index.ts';
import { axisBox, type EdgeArc, remediesFor } from '../../model/outline/index.ts';
import { type Found, isNotRouted } from './found.ts';

/** Most rows of a table; the longest stretches and the worst places are kept. */
const mostRows = 40;

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The stretches that tear or break out, numbered as in the drawing, along the edge. */
export function riskyArcs({ tears }: Found): readonly EdgeArc[] {
  const risky = tears.arcs.filter(({ meeting }) => meeting === 'uphill' || meeting === 'end-grain');
  const kept = new Set([...risky].sort((p, q) => q.length - p.length).slice(0, mostRows));
  return risky.filter((arc) => kept.has(arc));
}

/** The risky stretches with their remedies; no table where there are none. */
export function arcTable(found: Found): ResultTable[] {
  const arcs = riskyArcs(found);
  if (arcs.length === 0) return [];
  return [
    {
      id: 'stretches',
      title: 'Stretches that tear or break out',
      columns: [
        { id: 'number', label: 'No.' },
        { id: 'edge', label: 'Edge' },
        { id: 'meeting', label: 'Cut' },
        { id: 'from', label: 'From', unit: 'mm', digits: 4 },
        { id: 'to', label: 'To', unit: 'mm', digits: 4 },
        { id: 'angle', label: 'Mean angle', unit: 'deg', digits: 2 },
        { id: 'remedies', label: 'What helps, the first first' },
      ],
      rows: arcs.map((arc, index) => [
        index + 1,
        arc.loop === 0 ? 'outer' : `hole ${arc.loop}`,
        arc.meeting === 'end-grain' ? 'end grain' : `uphill, ${arc.steepness ?? 'slight'}`,
        arc.from,
        arc.to,
        arc.meanAngle,
        isNotRouted(found, arc.loop)
          ? 'not routed: this bit does not enter the hole; bore it over a backing block'
          : remediesFor(arc, found.routing)
              .map(({ title }) => title.toLowerCase())
              .join('; '),
      ]),
      basis: 'shop-practice',
    },
  ];
}

/** A tight or thin place, lettered as in the drawing. */
export interface Place {
  letter: string;
  what: string;
  /** mm; null where no one length says it. */
  size: number | null;
  x: number;
  y: number;
}

/** Places that the bit does not reach, short grain, the narrowest neck, the thinnest wood beside a hole. */
export function placesOf({ inside, pockets, necks }: Found): Place[] {
  const middle = ({ from, to }: { from: { x: number; y: number }; to: { x: number; y: number } }) => ({
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
  });
  const list: Omit<Place, 'letter'>[] = pockets.slice(0, 12).map(({ kind, at, depth }) => ({
    what: kind === 'hole' ? 'hole that the bit does not enter' : 'left standing by the bit',
    size: depth ?? null,
    ...at,
  }));
  if (inside && pockets.length === 0)
    list.push({ what: 'tightest hollow, its radius', size: inside.radius, ...inside.at });
  for (const neck of necks.shortGrain.slice(0, 6))
    list.push({ what: 'short grain, its width', size: neck.length, ...middle(neck) });
  const part = necks.necks.find(({ kind }) => kind === 'part');
  if (part && !necks.shortGrain.some((neck) => Math.abs(neck.length - part.length) < 0.01)) {
    list.push({ what: 'narrowest neck, its width', size: part.length, ...middle(part) });
  }
  if (necks.holeToEdge)
    list.push({ what: 'least wood beside a hole', size: necks.holeToEdge.length, ...middle(necks.holeToEdge) });
  return list.slice(0, letters.length).map((place, index) => ({ letter: letters[index] as string, ...place }));
}

/** The lettered places; no table where there are none. */
export function placeTable(found: Found, places: readonly Place[]): ResultTable[] {
  if (places.length === 0) return [];
  const box = axisBox(found.shape.outer);
  return [
    {
      id: 'places',
      title: 'Tight and thin places',
      columns: [
        { id: 'letter', label: 'Place' },
        { id: 'what', label: 'What' },
        { id: 'size', label: 'Size', unit: 'mm', digits: 3 },
        { id: 'x', label: 'From the left', unit: 'mm', digits: 4 },
        { id: 'y', label: 'From below', unit: 'mm', digits: 4 },
      ],
      rows: places.map(({ letter, what, size, x, y }) => [letter, what, size, x - box.left, y - box.bottom]),
      basis: 'derived',
    },
  ];
}
