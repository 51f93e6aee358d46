import type { Point } from './lines.ts';

/** A stroke of the feed: the way that a hand moves, and where the wood that is cut lies from the middle of the bit. */
export interface Feed {
  from: Point;
  to: Point;
  /** A step of length 1 from the middle of the bit towards the wood. */
  wood: Point;
}

/** What of a side is left free at either end of its arrow, as a part of it: an arrow longer than its side would point back. */
const free = 0.16;

interface Edge {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The four strokes of a hand-held router around an edge, seen from above: `beside` is how far its middle stands off the edge. */
export function handHeld({ x, y, width, height }: Edge, place: 'outside' | 'inside', beside: number): Feed[] {
  const off = place === 'outside' ? beside : -beside;
  const [left, right, top, bottom] = [x - off, x + width + off, y - off, y + height + off];
  const [alongX, alongY] = [free * (right - left), free * (bottom - top)];
  const [west, east, north, south] = [left + alongX, right - alongX, top + alongY, bottom - alongY];
  const inwards = place === 'outside' ? 1 : -1;
  // Outside anticlockwise, so along the near edge from left to right; inside clockwise, so every stroke the other way.
  const anticlockwise: Feed[] = [
    { from: { x: west, y: bottom }, to: { x: east, y: bottom }, wood: { x: 0, y: -inwards } },
    { from: { x: right, y: south }, to: { x: right, y: north }, wood: { x: -inwards, y: 0 } },
    { from: { x: east, y: top }, to: { x: west, y: top }, wood: { x: 0, y: inwards } },
    { from: { x: left, y: north }, to: { x: left, y: south }, wood: { x: inwards, y: 0 } },
  ];
  return place === 'outside'
    ? anticlockwise
    : anticlockwise.map(({ from, to, wood }) => ({ from: to, to: from, wood }));
}

/** The stroke of the work at a router table, seen from above, with the person below: the work lies on this side of the bit. */
export function atTable(bit: Point, reach: number, near: number): Feed {
  return {
    from: { x: bit.x + reach, y: bit.y + near },
    to: { x: bit.x - reach, y: bit.y + near },
    wood: { x: 0, y: 1 },
  };
}
