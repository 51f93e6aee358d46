import type { Model, Store } from './compile.ts';
import type { Problem, Span } from './problem.ts';
import { clipped, joined } from './track.ts';
import { greatestStarts, leastStarts } from './windows.ts';

/** The hours in which anybody can hold a store; undefined where somebody holds it through closed hours. */
function hoursOf({ occupations }: Store, books: readonly (readonly Span[] | undefined)[]) {
  const spans: Span[] = [];
  for (const { from, to } of occupations) {
    const open = from === to ? books[from] : undefined;
    if (open === undefined) return undefined;
    spans.push(...open);
  }
  return joined(spans.sort((one, two) => one.start - two.start));
}

const minutesOf = (spans: readonly Span[]) => spans.reduce((sum, { start, end }) => sum + end - start, 0);

/**
 * The least minutes from the start of one activity to the end of another that waits alone ask for, whatever the calendars.
 */
function leastLength({ arcs, durations, tracks }: Model, from: number, to: number): number {
  const least = durations.map(() => Number.NEGATIVE_INFINITY);
  least[from] = 0;
  const queue = [from];
  for (let head = 0; head < queue.length && head < 50 * least.length; head += 1) {
    const at = queue[head] as number;
    for (const arc of arcs) {
      // Of an activity that closing time interrupts, an end says nothing of its start.
      if (arc.from !== at || (arc.toEnd && tracks[arc.to]?.open !== undefined)) continue;
      const own = arc.toEnd ? (durations[arc.to] as number) : 0;
      const start = (least[at] as number) + (arc.fromEnd ? (durations[at] as number) : 0) + arc.weight - own;
      if (start <= (least[arc.to] as number)) continue;
      least[arc.to] = start;
      queue.push(arc.to);
    }
  }
  return Math.max(0, (least[to] as number) + (durations[to] as number));
}

/** Must more work be done within some stretch than its open minutes times the units there are? */
function overloaded(
  model: Model,
  store: Store,
  lengths: readonly number[],
  hours: readonly Span[] | undefined,
  least: readonly number[],
  greatest: readonly number[],
): boolean {
  const work = store.occupations
    .map(({ from, to, units }, at) => ({
      start: least[from] as number,
      end: model.tracks[to]?.end(greatest[to] as number) as number,
      load: units * (lengths[at] as number),
    }))
    .sort((one, two) => one.end - two.end);
  for (const since of new Set(work.map(({ start }) => start))) {
    let load = 0;
    for (const each of work) {
      if (each.start < since) continue;
      load += each.load;
      const room = hours === undefined ? each.end - since : minutesOf(clipped(hours, since, each.end));
      if (load > room * store.capacity) return true;
    }
  }
  return false;
}

/** Does no plan end by a minute? True where the windows of waits and calendars, or the work within some stretch, prove it. */
type Refute = (end: number) => boolean;

/** The test of an end, made once for a problem; undefined where no end stands it, since the waits alone leave no plan. */
function refuteOf(problem: Problem, model: Model): { refute: Refute; least: number } | undefined {
  const least = leastStarts(model, model.arcs, model.earliest);
  if (least === undefined) return undefined;
  const calendars = new Map(problem.calendars.map(({ id, open }) => [id, joined(open)]));
  const books = problem.activities.map(({ calendar }) =>
    calendar === undefined ? undefined : calendars.get(calendar),
  );
  const hours = model.stores.map((store) => hoursOf(store, books));
  const lengths = model.stores.map(({ occupations }) =>
    occupations.map(({ from, to }) => (from === to ? (model.durations[from] as number) : leastLength(model, from, to))),
  );
  const refute = (end: number) => {
    const latest = model.latest.map((minute) => Math.min(minute, end));
    const greatest = greatestStarts({ ...model, latest }, model.arcs, latest);
    if (greatest === undefined || least.some((start, at) => start > (greatest[at] as number))) return true;
    return model.stores.some((store, at) =>
      overloaded(model, store, lengths[at] as number[], hours[at], least, greatest),
    );
  };
  return { refute, least: least[model.last] as number };
}

/** Is it proved without any search that there is no plan within the horizon? */
export function refuted(problem: Problem, model: Model): boolean {
  const test = refuteOf(problem, model);
  return test === undefined || test.refute(problem.horizon);
}

/**
 * Minutes from zero before which no plan ends: the longest chain of waits with its calendars, or where more, the least end at which no
 * resource must do more work within a stretch than it can (both at once: windows shrink with the end that is tried). Infinity where no end
 * within the horizon stands that test: then there is no plan.
 */
export function lowerBound(problem: Problem, model: Model): number {
  const test = refuteOf(problem, model);
  if (test === undefined || test.refute(problem.horizon)) return Number.POSITIVE_INFINITY;
  let [low, high] = [test.least, problem.horizon];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (test.refute(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}
