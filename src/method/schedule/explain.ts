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

/**
 * The chain of reasons from the end of the plan back to its beginning: each activity with what kept it from starting earlier.
 *
 * @param calendars the calendar of each activity, by number
 */
export function criticalChain(
  model: Model,
  settled: Settled,
  calendars: readonly (string | undefined)[],
): CriticalLink[] {
  const { raises, lastRaise } = settled.least;
  const chain: CriticalLink[] = [];
  let at = lastRaise[model.last] as number;
  // Whoever pushes the end of all is the last activity; of equals the one that pushed first.
  at = (raises[at] as (typeof raises)[number]).by;
  const seen = new Set<number>();
  while (at >= 0 && !seen.has(at)) {
    seen.add(at);
    const raise = raises[at] as (typeof raises)[number];
    const { activity, start, arc, by } = raise;
    const track = model.tracks[activity] as Model['tracks'][number];
    const floor = model.earliest[activity] as number;
    // One that was not slid, since closing time interrupts who shares a resource with it, is held by whoever is in its way.
    const inWay =
      arc === undefined && start > track.up(floor) ? holderBefore(model, settled.starts, activity) : undefined;
    const before = by < 0 ? undefined : (raises[by] as (typeof raises)[number]);
    const asked =
      inWay?.until ?? (arc === undefined || before === undefined ? floor : minuteAsked(model, arc, before.start));
    const calendar = calendars[activity];
    const wait = start - asked;
    chain.push({
      activity: model.ids[activity] as string,
      start,
      end: track.end(start),
      heldBy:
        inWay === undefined
          ? heldBy(model, arc, floor)
          : { kind: 'resource', resource: inWay.resource, by: model.ids[inWay.by] as string },
      ...(calendar !== undefined && wait > 0 ? { opening: { calendar, wait } } : {}),
    });
    at = inWay === undefined ? by : (lastRaise[inWay.by] as number);
  }
  return chain;
}

/** When the activity held by an arc could start but for its calendar; where the arc holds its end, its start as the arc leaves it. */
function minuteAsked(model: Model, arc: Arc, start: number): number {
  if (arc.toEnd) return pushed(model, arc, start);
  return (arc.fromEnd ? (model.tracks[arc.from]?.end(start) as number) : start) + arc.weight;
}

function heldBy({ ids }: Model, arc: Arc | undefined, floor: number): HeldBy {
  if (arc === undefined) return floor > 0 ? { kind: 'earliest' } : { kind: 'start' };
  const by = ids[arc.from] as string;
  const { cause } = arc;
  if (cause.kind === 'lag') return { kind: 'lag', lag: cause.lag, part: cause.part, by };
  if (cause.kind === 'hold') return { kind: 'hold', resource: cause.hold.resource, by };
  if (cause.kind === 'resource') return { kind: 'resource', resource: cause.resource, by };
  return { kind: 'start' };
}
