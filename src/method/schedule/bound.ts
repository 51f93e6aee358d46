import type { Model, Store } from './compile.ts';
import type { Span } from './problem.ts';
import { clipped, joined } from './track.ts';
import { greatestStarts, leastStarts } from './windows.ts';

/** The hours in which anybody can hold a store; undefined where somebody holds it through closed hours. */
function hoursOf({ tracks }: Model, { occupations }: Store, books: readonly (readonly Span[] | undefined)[]) {
  const spans: Span[] = [];
  for (const { from, to } of occupations) {
    const open = from === to ? books[from] : undefined;
    if (open === undefined || tracks[from] === undefined) return undefined;
    spans.push(...open);
  }
  return joined(spans.sort((one, two) => one.start - two.start));
}

const minutesOf = (spans: readonly Span[]) => spans.reduce((sum, { start, end }) => sum + end - start, 0);

/** Must more work be done within some stretch than its open minutes times the units there are? */
function overloaded(
  model: Model,
  store: Store,
  hours: readonly Span[] | undefined,
  least: readonly number[],
  greatest: readonly number[],
): boolean {
  const work = store.occupations
    .filter(({ from, to }) => from === to)
    .map(({ from, units }) => ({
      start: least[from] as number,
      end: model.tracks[from]?.end(greatest[from] as number) as number,
      load: units * (model.durations[from] as number),
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

/**
 * Minutes from zero before which no plan ends: the longest chain of waits with its calendars, or where more, the least end at which no
 * resource must do more work within a stretch than it can (both at once: windows shrink with the end that is tried).
 *
 * @param books open hours by activity
 * @param end the end of a plan that is known
 */
export function lowerBound(model: Model, books: readonly (readonly Span[] | undefined)[], end: number): number {
  const least = leastStarts(model, model.arcs, model.earliest)?.starts;
  if (least === undefined) return end;
  const hours = model.stores.map((store) => hoursOf(model, store, books));
  const refuted = (last: number) => {
    const latest = model.latest.map((minute) => Math.min(minute, last));
    const greatest = greatestStarts({ ...model, latest }, model.arcs, latest);
    if (greatest === undefined || least.some((start, at) => start > (greatest[at] as number))) return true;
    return model.stores.some((store, at) => overloaded(model, store, hours[at], least, greatest));
  };
  let [low, high] = [least[model.last] as number, end];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (refuted(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}
