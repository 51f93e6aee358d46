import type { Arc, Model } from './compile.ts';
import type { Lag } from './problem.ts';
import { holderBefore, type Settled } from './settle.ts';
import { pushed } from './windows.ts';

/** What keeps an activity from starting earlier. */
export type HeldBy =
  /** A wait: `by` is the other activity; by the `most` of a wait an activity is held that may not run too far ahead of `by`. */
  | { readonly kind: 'lag'; readonly lag: Lag; readonly part: 'least' | 'most'; readonly by: string }
  /** A hold that `by` begins and this one ends: it cannot be given back before it is taken. */
  | { readonly kind: 'hold'; readonly resource: string; readonly by: string }
  /** A resource that `by` holds until then. */
  | { readonly kind: 'resource'; readonly resource: string; readonly by: string }
  /** Its earliest start. */
  | { readonly kind: 'earliest' }
  /** Nothing but the plan's zero. */
  | { readonly kind: 'start' };

/** One link of the chain that makes the plan as long as it is. */
export interface CriticalLink {
  readonly activity: string;
  readonly start: number;
  readonly end: number;
  readonly heldBy: HeldBy;
  /** It could go on earlier but for closed hours: minutes that it waits for the opening of its calendar. */
  readonly opening?: { readonly calendar: string; readonly wait: number };
}

/** What keeps an activity where it is: an arc, or a resource that another gave back; and when it could start but for its calendar. */
interface Bond {
  readonly by: number;
  readonly heldBy: HeldBy;
  readonly asked: number;
}

/** All that forbids an activity its next earlier start, what binds most first. */
function bondsOf(model: Model, { starts, arcs }: Settled, activity: number): Bond[] {
  const track = model.tracks[activity] as Model['tracks'][number];
  const earlier = track.down((starts[activity] as number) - 1);
  const bonds = arcs
    .filter((arc) => arc.to === activity && pushed(model, arc, starts[arc.from] as number) > earlier)
    .map((arc) => ({
      by: arc.from,
      heldBy: heldBy(model, arc),
      asked: minuteAsked(model, arc, starts[arc.from] as number),
    }))
    .sort((one, two) => two.asked - one.asked);
  // The order on a resource is kept where there is enough of it too; whoever is in its way says which is short.
  const inWay = holderBefore(model, starts, activity);
  if (inWay === undefined) return bonds;
  const short = bonds.filter(({ heldBy: held }) => held.kind !== 'resource' || held.resource === inWay.resource);
  const by = model.ids[inWay.by] as string;
  return [...short, { by: inWay.by, heldBy: { kind: 'resource', resource: inWay.resource, by }, asked: inWay.until }];
}

/**
 * The chain of reasons from the end of the plan back to its beginning: each activity with what kept it from starting earlier. Where activities
 * are bound to each other both ways and nothing else holds them, it ends with the link that names one of its own.
 *
 * @param calendars the calendar of each activity, by number
 */
export function criticalChain(
  model: Model,
  settled: Settled,
  calendars: readonly (string | undefined)[],
): CriticalLink[] {
  const { starts, arcs } = settled;
  const link = (activity: number, held: HeldBy, asked: number): CriticalLink => {
    const start = starts[activity] as number;
    const calendar = calendars[activity];
    return {
      activity: model.ids[activity] as string,
      start,
      end: model.tracks[activity]?.end(start) as number,
      heldBy: held,
      ...(calendar !== undefined && start > asked ? { opening: { calendar, wait: start - asked } } : {}),
    };
  };
  const seen = new Set<number>();
  /** The chain from an activity on, or nothing where all its bonds lead round in a circle. */
  const from = (activity: number): CriticalLink[] | undefined => {
    seen.add(activity);
    const floor = model.earliest[activity] as number;
    if (starts[activity] === model.tracks[activity]?.up(floor))
      return [link(activity, floor > 0 ? { kind: 'earliest' } : { kind: 'start' }, floor)];
    for (const { by, heldBy: held, asked } of bondsOf(model, settled, activity)) {
      const rest = seen.has(by) ? undefined : from(by);
      if (rest !== undefined) return [link(activity, held, asked), ...rest];
    }
    return undefined;
  };
  const last = arcs
    .filter((arc) => arc.to === model.last && pushed(model, arc, starts[arc.from] as number) === starts[model.last])
    .map((arc) => arc.from);
  for (const activity of last) {
    const chain = seen.has(activity) ? undefined : from(activity);
    if (chain !== undefined) return chain;
  }
  // Some are bound to each other both ways: as far as the circle, which the last link names.
  const round: CriticalLink[] = [];
  seen.clear();
  for (let at = last[0]; at !== undefined && !seen.has(at); ) {
    seen.add(at);
    const bonds = bondsOf(model, settled, at);
    const bond: Bond | undefined = bonds.find(({ by }) => !seen.has(by)) ?? bonds[0];
    if (bond === undefined) break;
    round.push(link(at, bond.heldBy, bond.asked));
    at = bond.by;
  }
  return round;
}

/** When the activity held by an arc could start but for its calendar; where the arc holds its end, its start as the arc leaves it. */
function minuteAsked(model: Model, arc: Arc, start: number): number {
  if (arc.toEnd) return pushed(model, arc, start);
  return (arc.fromEnd ? (model.tracks[arc.from]?.end(start) as number) : start) + arc.weight;
}

function heldBy({ ids }: Model, arc: Arc): HeldBy {
  const by = ids[arc.from] as string;
  const { cause } = arc;
  if (cause.kind === 'lag') return { kind: 'lag', lag: cause.lag, part: cause.part, by };
  if (cause.kind === 'hold') return { kind: 'hold', resource: cause.hold.resource, by };
  if (cause.kind === 'resource') return { kind: 'resource', resource: cause.resource, by };
  return { kind: 'start' };
}
