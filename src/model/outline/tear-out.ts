import { edgeAt, placeAt } from './nearest.ts';
import { lineToGrain } from './necks.ts';
import type { Loop, Point, Shape } from './types.ts';

/**
 * How the edge is routed. A handheld router runs bit down and turns clockwise seen from above; in a table the bit points
 * up and turns counter-clockwise seen from above. The outline is drawn as the board lies while it is cut, seen from above.
 */
export type Routing = 'handheld' | 'table';

/**
 * How the cutting edge meets the fibres on a stretch of edge.
 *
 * - `along`: with the fibres, within a few degrees.
 * - `downhill`: the fibres ahead of the cut run out of the wood; it leaves a clean edge.
 * - `uphill`: the fibres ahead of the cut run into the wood; a split runs ahead of the bit and below the line.
 * - `end-grain`: nearly square to the fibres; they are cut across, and the last ones break out where the bit leaves.
 */
export type Meeting = 'along' | 'downhill' | 'uphill' | 'end-grain';

/** Angles, in degrees, that divide the meetings; common practice, and a reader may set others. */
export interface TearOutLimits {
  /** Up to this angle to the fibres the cut runs along them. */
  along: number;
  /** From this angle on it is end grain. */
  endGrain: number;
  /** Mean angle from which an uphill stretch is marked, and from which it is steep. */
  marked: number;
  steep: number;
}

/** Usual limits of the angle between cut and fibres, degrees. Common practice. */
export const usualLimits: TearOutLimits = { along: 5, endGrain: 75, marked: 12, steep: 25 };

/** How steeply the cut runs against the grain. */
export type Steepness = 'slight' | 'marked' | 'steep';

/** A stretch of edge on which the cut meets the fibres in one way. */
export interface EdgeArc {
  /** 0 for the outer edge, from 1 on for the holes in the order of the outline. */
  loop: number;
  meeting: Meeting;
  /** Length along its loop where it starts and ends, in mm, with the wood on the left; `to` may run past the loop's end. */
  from: number;
  to: number;
  /** mm */
  length: number;
  /** Mean and largest angle between edge and fibres, 0 to 90°. */
  meanAngle: number;
  steepestAngle: number;
  /** Only for uphill stretches. */
  steepness?: Steepness;
  start: Point;
  middle: Point;
  end: Point;
}

/** Where the edge of an outline may tear, as it is fed around. */
export interface TearOut {
  arcs: readonly EdgeArc[];
  /** Share of the whole edge, holes included, by meeting; they add up to 1. Turned over, uphill and downhill change places. */
  shares: Record<Meeting, number>;
  /** Share of the outer edge that runs uphill. */
  outerUphill: number;
  /** Places where the bit leaves end grain, fed against its rotation: the last fibres need a block behind them. */
  exits: readonly Point[];
}

/** Stretches shorter than this, in mm, are joined to the one before. */
const shortest = 2;

/** End grain shorter than this, in mm, breaks out too little to be told. */
const shortestExit = 5;

/**
 * Where a router bit tears the edge.
 *
 * Run along an edge with the wood on the left, direction t, outward normal n (t turned a quarter clockwise). A bit beside
 * the wood touches it at −n from its middle; turning clockwise, its cutting edge moves there in the direction +t, turning
 * counter-clockwise in −t. Let c be that direction and g the direction of the fibres, taken so that c·g ≥ 0: the way in
 * which a split started by the cutter would run. If g points into the wood (g·n < 0) the split runs under the line, and the
 * cut is uphill; if it points out, the chip parts from the wood by itself. The same holds around a hole, whose edge also has
 * the wood on its left. The direction of feed does not enter: fed with the rotation instead of against it (a climb cut) the
 * cutting edge moves the same way, but presses the fibres down before it cuts them.
 *
 * @param grainDegrees angle from the x axis to the grain, counter-clockwise; only its line matters, not its sense
 */
export function tearOut(
  shape: Shape,
  grainDegrees: number,
  routing: Routing,
  limits: TearOutLimits = usualLimits,
): TearOut {
  const lengths: Record<Meeting, number> = { along: 0, downhill: 0, uphill: 0, 'end-grain': 0 };
  let outerUphill = 0;
  const arcs: EdgeArc[] = [];
  shape.loops.forEach((loop, index) => {
    const stretches = meetingsOf(loop, grainDegrees, routing, limits);
    for (const stretch of stretches) {
      lengths[stretch.meeting] += stretch.to - stretch.from;
      if (index === 0 && stretch.meeting === 'uphill') outerUphill += stretch.to - stretch.from;
    }
    for (const stretch of joined(stretches, wholeOf(loop))) arcs.push(arcOf(loop, index, stretch, limits));
  });
  const whole = Object.values(lengths).reduce((sum, each) => sum + each, 0);
  const share = (meeting: Meeting) => lengths[meeting] / whole;
  // Against the rotation the bit is fed as its cutting edge moves beside the wood.
  const exits = arcs
    .filter(
      (arc) =>
        arc.meeting === 'end-grain' &&
        arc.length >= shortestExit &&
        arc.length < wholeOf(shape.loops[arc.loop] as Loop),
    )
    .map((arc) => (routing === 'handheld' ? arc.end : arc.start));
  return {
    arcs,
    shares: {
      along: share('along'),
      downhill: share('downhill'),
      uphill: share('uphill'),
      'end-grain': share('end-grain'),
    },
    outerUphill: outerUphill / wholeOf(shape.outer),
    exits,
  };
}

function wholeOf(loop: Loop): number {
  return loop.along[loop.x.length] as number;
}

interface Stretch {
  meeting: Meeting;
  from: number;
  to: number;
  /** Integral of the angle over the length, in degree-mm. */
  swept: number;
  steepest: number;
}

function meetingsOf(loop: Loop, grainDegrees: number, routing: Routing, limits: TearOutLimits): Stretch[] {
  const turn = (grainDegrees * Math.PI) / 180;
  const [gx, gy] = [Math.cos(turn), Math.sin(turn)];
  const way = routing === 'handheld' ? 1 : -1;
  const count = loop.x.length;
  const stretches: Stretch[] = [];
  for (let i = 0; i < count; i++) {
    const j = i + 1 === count ? 0 : i + 1;
    const dx = (loop.x[j] as number) - (loop.x[i] as number);
    const dy = (loop.y[j] as number) - (loop.y[i] as number);
    const [from, to] = [loop.along[i] as number, loop.along[i + 1] as number];
    if (to <= from) continue;
    const angle = lineToGrain(dx, dy, grainDegrees);
    // c·g and n·g, up to the edge's length: their product's sign tells whether the fibres ahead run out of the wood.
    const ahead = way * (dx * gx + dy * gy);
    const outwards = dy * gx - dx * gy;
    const meeting: Meeting =
      angle <= limits.along
        ? 'along'
        : angle >= limits.endGrain
          ? 'end-grain'
          : ahead * outwards < 0
            ? 'uphill'
            : 'downhill';
    const last = stretches[stretches.length - 1];
    if (last && last.meeting === meeting) {
      last.to = to;
      last.swept += angle * (to - from);
      last.steepest = Math.max(last.steepest, angle);
    } else {
      stretches.push({ meeting, from, to, swept: angle * (to - from), steepest: angle });
    }
  }
  return stretches;
}

/** Join the last stretch to the first where they meet in the same way, and short ones to their neighbours. */
function joined(stretches: readonly Stretch[], whole: number): Stretch[] {
  const list: Stretch[] = [];
  for (const stretch of stretches) {
    const last = list[list.length - 1];
    if (last && (last.meeting === stretch.meeting || stretch.to - stretch.from < shortest)) absorb(last, stretch);
    else list.push({ ...stretch });
  }
  const [first, last] = [list[0], list[list.length - 1]];
  if (first && last && first !== last && (first.meeting === last.meeting || first.to - first.from < shortest)) {
    absorb(last, { ...first, from: first.from + whole, to: first.to + whole });
    list.shift();
  }
  return list;
}

function absorb(into: Stretch, next: Stretch): void {
  into.to = next.to;
  if (into.meeting !== next.meeting) {
    into.swept += (into.swept / (next.from - into.from)) * (next.to - next.from);
    return;
  }
  into.swept += next.swept;
  into.steepest = Math.max(into.steepest, next.steepest);
}

function arcOf(loop: Loop, index: number, stretch: Stretch, limits: TearOutLimits): EdgeArc {
  const { meeting, from, to, swept, steepest } = stretch;
  const length = to - from;
  const meanAngle = swept / length;
  return {
    loop: index,
    meeting,
    from,
    to,
    length,
    meanAngle,
    steepestAngle: steepest,
    ...(meeting === 'uphill'
      ? { steepness: meanAngle >= limits.steep ? 'steep' : meanAngle >= limits.marked ? 'marked' : 'slight' }
      : {}),
    start: placeAt(loop, from),
    middle: placeAt(loop, (from + to) / 2),
    end: placeAt(loop, to),
  };
}

/** The points of a stretch of edge, for a drawing. */
export function pointsOfArc(shape: Shape, arc: Pick<EdgeArc, 'loop' | 'from' | 'to'>): Point[] {
  const loop = shape.loops[arc.loop];
  if (!loop) return [];
  const whole = wholeOf(loop);
  const count = loop.x.length;
  const points = [placeAt(loop, arc.from)];
  let lap = Math.floor(arc.from / whole) * whole;
  for (let i = edgeAt(loop, arc.from - lap); ; ) {
    i++;
    if (i === count) {
      i = 0;
      lap += whole;
    }
    const s = (loop.along[i] as number) + lap;
    if (s >= arc.to - 1e-9 || points.length > 2 * count) break;
    if (s > arc.from + 1e-9) points.push({ x: loop.x[i] as number, y: loop.y[i] as number });
  }
  points.push(placeAt(loop, arc.to));
  return points;
}
