import { refuted } from './bound.ts';
import { compile } from './compile.ts';
import type { Lag, Problem } from './problem.ts';
import { Search } from './search.ts';
import { joined } from './track.ts';

/** A change that makes room. `by` is minutes, of `capacity` units; the smallest of its kind. */
export type Change = { readonly by: number } & (
  | { readonly kind: 'most'; readonly lag: number }
  | { readonly kind: 'least'; readonly lag: number }
  /** One opening closes later: the one that opens at minute `opens`. */
  | { readonly kind: 'opening'; readonly calendar: string; readonly opens: number }
  /** Every opening closes later, but for what the next one already covers. */
  | { readonly kind: 'hours'; readonly calendar: string }
  | { readonly kind: 'horizon' }
  | { readonly kind: 'capacity'; readonly resource: string }
  | { readonly kind: 'earliest'; readonly activity: string }
  | { readonly kind: 'latest'; readonly activity: string }
);

/** The problem with a change made: limits loosened by its amount. Lags are named by their place in the problem. */
export function applyChange(problem: Problem, change: Change): Problem {
  const { by } = change;
  const lagged = (make: (lag: Lag) => Lag, place: number): Problem => ({
    ...problem,
    lags: problem.lags.map((lag, at) => (at === place ? make(lag) : lag)),
  });
  switch (change.kind) {
    case 'most':
      return lagged((lag) => ({ ...lag, most: (lag.most as number) + by }), change.lag);
    case 'least':
      return lagged((lag) => ({ ...lag, least: (lag.least ?? 0) - by }), change.lag);
    case 'opening':
    case 'hours':
      return {
        ...problem,
        calendars: problem.calendars.map((calendar) =>
          calendar.id === change.calendar
            ? {
                ...calendar,
                open: joined(
                  joined(calendar.open).map((span) =>
                    change.kind === 'hours' || span.start === change.opens
                      ? { start: span.start, end: span.end + by }
                      : span,
                  ),
                ),
              }
            : calendar,
        ),
      };
    case 'horizon':
      return { ...problem, horizon: problem.horizon + by };
    case 'capacity':
      return {
        ...problem,
        resources: { ...problem.resources, [change.resource]: (problem.resources[change.resource] as number) + by },
      };
    case 'earliest':
    case 'latest': {
      const table = problem[change.kind] ?? {};
      const minute = (table[change.activity] as number) + (change.kind === 'latest' ? by : -by);
      return { ...problem, [change.kind]: { ...table, [change.activity]: minute } };
    }
  }
}

/** What the searches for an explanation may take, each and in all: decisions and contradictions. */
export interface Purse {
  readonly each: number;
  left: number;
}

/** Is there a plan? Undefined where the search ends at its limit. */
export function feasible(problem: Problem, purse: Purse): boolean | undefined {
  const model = compile(problem);
  if (refuted(problem, model)) return false;
  const { ending, nodes } = new Search(model).run(Math.min(purse.each, purse.left), { first: true });
  purse.left = Math.max(0, purse.left - nodes);
  return ending === 'limit' ? undefined : ending === 'done';
}

/** Minutes that no plan needs more of: all work, waits and windows one after another, after everything is open that ever is. */
export function wide(problem: Problem): number {
  const opened = problem.calendars.flatMap(({ open }) => open.map(({ end }) => end));
  const finite = (minutes: number | undefined) =>
    minutes === undefined || !Number.isFinite(minutes) ? 0 : Math.abs(minutes);
  return (
    Math.max(problem.horizon, ...opened, ...Object.values(problem.earliest ?? {})) +
    problem.activities.reduce((sum, { duration }) => sum + duration, 0) +
    problem.lags.reduce((sum, { least, most }) => sum + finite(least) + finite(most), 0)
  );
}

/** A smallest change, if there is one, and whether the search was able to refute every smaller one. */
export interface Found {
  readonly change: Change | undefined;
  readonly smallest: boolean;
}

/**
 * The smallest amount of one kind of change with which there is a plan, by halving.
 *
 * @param make the change of an amount
 * @param greatest the amount beyond which more does not help
 */
export function smallest(problem: Problem, make: (by: number) => Change, greatest: number, purse: Purse): Found {
  const room = greatest < 1 ? false : feasible(applyChange(problem, make(greatest)), purse);
  if (room !== true) return { change: undefined, smallest: room === false };
  let [low, high] = [0, greatest];
  let certain = true;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const enough = feasible(applyChange(problem, make(middle)), purse);
    if (enough === true) high = middle;
    else {
      low = middle;
      certain &&= enough === false;
    }
  }
  return { change: make(high), smallest: certain };
}
