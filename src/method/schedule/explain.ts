import type { Arc, Model, Occupation } from './compile.ts';
import type { Lag } from './problem.ts';
import { fits } from './profile.ts';
import { greatestStarts, type Least, leastStarts, pushed } from './windows.ts';

/** What keeps an activity from starting earlier. */
export type HeldBy =
  /** A wait: `by` is the other activity; by the `most` of a wait an activity is held that may not run too far ahead of `by`. */
  | { readonly kind: 'lag'; readonly lag: Lag; readonly part: 'least' | 'most'; readonly by: string }
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

/** Who comes after whom on the same resource in a plan: the rules by which its order is kept when it slides. */
function orderOf({ stores, tracks }: Model, starts: readonly number[]): { arcs: Arc[]; knotted: Set<number> } {
  const begin = ({ from }: Occupation) => starts[from] as number;
  const finish = ({ to }: Occupation) => tracks[to]?.end(starts[to] as number) as number;
  const arcs: Arc[] = [];
  const knotted = new Set<number>();
  for (const { name, occupations } of stores)
    for (const one of occupations)
      for (const two of occupations) {
        if (one === two || begin(one) >= finish(one) || begin(two) >= finish(two)) continue;
        if (finish(one) <= begin(two))
          arcs.push({
            from: one.to,
            fromEnd: true,
            to: two.from,
            toEnd: false,
            weight: 0,
            cause: { kind: 'resource', resource: name },
          });
        else if (begin(one) < finish(two) && (one.open !== undefined || two.open !== undefined))
          // One may lie in a pause of the other; neither is moved.
          for (const { from, to } of [one, two]) knotted.add(from).add(to);
      }
  return { arcs, knotted };
}

/** A plan slid to its earliest in its own order, and how far each activity may slip then. */
export interface Settled {
  readonly starts: readonly number[];
  /** Minutes that each may start later, others giving way in the same order, without a later end. */
  readonly slack: readonly number[];
  readonly least: Least;
}

/**
 * Slide every activity as early as the order on each resource allows, and find how late each may start.
 *
 * @param starts a plan: start of each activity and of the end of all
 */
export function settle(model: Model, starts: readonly number[]): Settled {
  const { arcs, knotted } = orderOf(model, starts);
  const all = [...model.arcs, ...arcs];
  const attempts = [new Set<number>(), knotted, new Set(starts.keys())];
  for (const fixed of attempts) {
    const floors = model.earliest.map((minute, at) => (fixed.has(at) ? (starts[at] as number) : minute));
    const least = leastStarts(model, all, floors);
    if (least === undefined || !fits(model, least.starts)) continue;
    return { starts: least.starts, slack: slackOf(model, least.starts), least };
  }
  throw new Error('A plan does not keep its own order.');
}

function slackOf(model: Model, starts: readonly number[]): readonly number[] {
  const { arcs, knotted } = orderOf(model, starts);
  const all = [...model.arcs, ...arcs];
  const end = starts[model.last] as number;
  const latest = model.latest.map((minute) => Math.min(minute, end));
  for (const fixed of [new Set<number>(), knotted]) {
    const ceilings = latest.map((minute, at) => (fixed.has(at) ? (starts[at] as number) : minute));
    const late = greatestStarts({ ...model, latest }, all, ceilings);
    if (late !== undefined && fits(model, late)) return late.map((start, at) => start - (starts[at] as number));
  }
  return starts.map(() => 0);
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
  while (at >= 0) {
    const raise = raises[at] as (typeof raises)[number];
    const { activity, start, arc, by } = raise;
    const track = model.tracks[activity] as Model['tracks'][number];
    const before = by < 0 ? undefined : (raises[by] as (typeof raises)[number]);
    const floor = model.earliest[activity] as number;
    const asked = arc === undefined || before === undefined ? floor : minuteAsked(model, arc, before.start);
    const calendar = calendars[activity];
    const wait = start - asked;
    chain.push({
      activity: model.ids[activity] as string,
      start,
      end: track.end(start),
      heldBy: heldBy(model, arc, floor),
      ...(calendar !== undefined && wait > 0 ? { opening: { calendar, wait } } : {}),
    });
    at = by;
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
  if (cause.kind === 'hold') return { kind: 'resource', resource: cause.hold.resource, by };
  if (cause.kind === 'resource') return { kind: 'resource', resource: cause.resource, by };
  return { kind: 'start' };
}
