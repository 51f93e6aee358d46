import type { Arc, Model, Occupation } from './compile.ts';
import { coversAt, lastOver, profileOf, stretchesOf } from './profile.ts';
import { greatestStarts, leastStarts, pushed } from './windows.ts';

/** A plan slid to its earliest in its own order, and how far each activity may slip then. */
export interface Settled {
  readonly starts: readonly number[];
  /** Minutes that each may start later, others giving way in the same order, without a later end. */
  readonly slack: readonly number[];
  /** All waits, and the order on each resource that it keeps. */
  readonly arcs: readonly Arc[];
}

type Starts = readonly number[];

const beginIn =
  (starts: Starts) =>
  ({ from }: Occupation) =>
    starts[from] as number;
const finishIn =
  ({ tracks }: Model, starts: Starts) =>
  ({ to }: Occupation) =>
    tracks[to]?.end(starts[to] as number) as number;

/** Who comes after whom on the same resource in a plan: the rules by which its order is kept when it slides. */
function orderOf(model: Model, starts: Starts): { arcs: Arc[]; knotted: Set<number> } {
  const [begin, finish] = [beginIn(starts), finishIn(model, starts)];
  const arcs: Arc[] = [];
  const knotted = new Set<number>();
  for (const { name, occupations } of model.stores)
    for (const one of occupations)
      for (const two of occupations) {
        if (one === two || begin(one) >= finish(one) || begin(two) >= finish(two)) continue;
        const cause = { kind: 'resource', resource: name } as const;
        if (finish(one) <= begin(two))
          arcs.push({ from: one.to, fromEnd: true, to: two.from, toEnd: false, weight: 0, cause });
        else if (begin(one) < finish(two) && one.open !== two.open)
          // One may lie in a pause of the other; neither is moved.
          for (const { from, to } of [one, two]) knotted.add(from).add(to);
      }
  return { arcs, knotted };
}

/** Who takes part where more is held than there is, or nobody. */
function clashing(model: Model, starts: Starts): number[] {
  const [begin, finish] = [beginIn(starts), finishIn(model, starts)];
  for (const store of model.stores) {
    const { times, units, most } = profileOf(stretchesOf(store, begin, finish));
    if (most <= store.capacity) continue;
    const minute = times[units.findIndex((each) => each > store.capacity)] as number;
    return store.occupations
      .filter((each) => coversAt(each, begin(each), finish(each), minute))
      .flatMap(({ from, to }) => [from, to]);
  }
  return [];
}

/** Slide with ever more activities kept where they are, until no resource is short; at worst none moves. */
function slideWith(model: Model, knotted: ReadonlySet<number>, slide: (fixed: ReadonlySet<number>) => Starts): Starts {
  const fixed = new Set<number>();
  for (;;) {
    const slid = slide(fixed);
    const clash = clashing(model, slid);
    if (clash.length === 0) return slid;
    const before = fixed.size;
    for (const each of fixed.size === 0 && knotted.size > 0 ? knotted : clash) fixed.add(each);
    if (fixed.size === before) for (let each = 0; each < model.last; each += 1) fixed.add(each);
  }
}

/** Start each activity as early as those around it leave room, one by one; the same list where none can move. */
function nudged(model: Model, starts: Starts): Starts {
  const { tracks, stores, arcs, earliest, last } = model;
  const now = [...starts];
  const order = now.slice(0, last).map((_, at) => at);
  order.sort((one, two) => (now[one] as number) - (now[two] as number));
  let moved = false;
  for (const activity of order) {
    const start = now[activity] as number;
    const track = tracks[activity] as Model['tracks'][number];
    let floor = track.up(earliest[activity] as number);
    for (const arc of arcs)
      if (arc.to === activity) floor = Math.max(floor, pushed(model, arc, now[arc.from] as number));
    if (floor >= start) continue;
    // Room begins at the floor or where somebody's hold on the same resource ends.
    const ends = stores
      .filter(({ occupations }) => occupations.some(({ from }) => from === activity))
      .flatMap((store) => stretchesOf(store, beginIn(now), finishIn(model, now)).map(({ span }) => track.up(span.end)));
    const candidates = [...new Set([floor, ...ends.filter((each) => each > floor && each < start)])];
    for (const earlier of candidates.sort((one, two) => one - two)) {
      now[activity] = earlier;
      if (clashing(model, now).length === 0) {
        moved = true;
        break;
      }
      now[activity] = start;
    }
  }
  return moved ? now : starts;
}

/**
 * Slide every activity as early as the order on each resource allows, and find how late each may start.
 *
 * @param starts a plan: start of each activity and of the end of all
 */
export function settle(model: Model, starts: readonly number[]): Settled {
  let plan = starts;
  for (;;) {
    const { arcs, knotted } = orderOf(model, plan);
    const all = [...model.arcs, ...arcs];
    const slid = slideWith(model, knotted, (fixed) => {
      const floors = model.earliest.map((minute, at) => (fixed.has(at) ? (plan[at] as number) : minute));
      return leastStarts(model, all, floors) ?? plan;
    });
    // What was kept in place may have room before it all the same.
    const earlier = nudged(model, slid);
    if (earlier === slid) return { starts: slid, slack: slackOf(model, slid), arcs: all };
    plan = earlier;
  }
}

function slackOf(model: Model, starts: Starts): readonly number[] {
  const { arcs, knotted } = orderOf(model, starts);
  const all = [...model.arcs, ...arcs];
  const end = starts[model.last] as number;
  const latest = model.latest.map((minute) => Math.min(minute, end));
  const late = slideWith(model, knotted, (fixed) => {
    const ceilings = latest.map((minute, at) => (fixed.has(at) ? (starts[at] as number) : minute));
    return greatestStarts({ ...model, latest }, all, ceilings) ?? starts;
  });
  return late.map((start, at) => start - (starts[at] as number));
}

/**
 * Whose release of which resource an activity had to wait for since its next earlier start, and until when; `by` is whoever ends the hold.
 */
export function holderBefore(
  model: Model,
  starts: readonly number[],
  activity: number,
): { readonly by: number; readonly resource: string; readonly until: number } | undefined {
  const start = starts[activity] as number;
  const earlier = model.tracks[activity]?.down(start - 1) as number;
  const [begin, finish] = [beginIn(starts), finishIn(model, starts)];
  for (const store of model.stores) {
    const own = store.occupations.filter(({ from }) => from === activity);
    if (own.length === 0) continue;
    const occupations = store.occupations.filter(({ from }) => from !== activity);
    const limit = store.capacity - own.reduce((sum, { units }) => sum + units, 0);
    const profile = profileOf(stretchesOf({ ...store, occupations }, begin, finish));
    const hours = own.length === 1 ? own[0]?.open : undefined;
    const minute = lastOver(profile, limit, earlier, start, hours);
    if (minute !== undefined) {
      const until = minute + 1;
      const holds = (each: Occupation, at: number) => coversAt(each, begin(each), finish(each), at);
      const holder = occupations.find((each) => holds(each, minute) && !holds(each, until));
      if (holder !== undefined) return { by: holder.to, resource: store.name, until };
    }
    // Its own hold is in its way, until the other that ends that hold has ended.
    const other = own.find(({ to }) => to !== activity && limit < 0);
    if (other !== undefined) return { by: other.to, resource: store.name, until: finish(other) };
  }
  return undefined;
}
