import type { Problem } from '../../../src/method/schedule/index.ts';

/** One way to place one activity: its start, its end, and each minute that it is worked on. */
interface Way {
  readonly start: number;
  readonly end: number;
  readonly minutes: readonly number[];
}

/** Every way to place an activity, found by walking the minutes of the plan one by one. */
function waysOf(problem: Problem, at: number): Way[] {
  const activity = problem.activities[at];
  if (activity === undefined) return [];
  const { id, duration, calendar, splittable } = activity;
  const hours = problem.calendars.find((each) => each.id === calendar)?.open;
  const isOpen = (minute: number) =>
    hours === undefined || hours.some((span) => span.start <= minute && minute < span.end);
  const ways: Way[] = [];
  for (let start = Math.max(0, problem.earliest?.[id] ?? 0); start <= problem.horizon; start += 1) {
    if (duration === 0) {
      if (hours === undefined || isOpen(start) || isOpen(start - 1)) ways.push({ start, end: start, minutes: [] });
      continue;
    }
    if (!isOpen(start)) continue;
    const minutes: number[] = [];
    for (let minute = start; minutes.length < duration && minute < problem.horizon; minute += 1) {
      if (isOpen(minute)) minutes.push(minute);
      else if (!splittable) break;
    }
    if (minutes.length === duration) ways.push({ start, end: (minutes.at(-1) as number) + 1, minutes });
  }
  return ways.filter(({ end }) => end <= Math.min(problem.horizon, problem.latest?.[id] ?? problem.horizon));
}

/**
 * The least last end of all plans, or with `late` the greatest first start of all plans; undefined where there is none. Tries every start of
 * every activity.
 */
export function everyPlan(problem: Problem, late = false): number | undefined {
  const count = problem.activities.length;
  const ids = problem.activities.map(({ id }) => id);
  const ways = problem.activities.map((_, at) => waysOf(problem, at));
  const chosen: Way[] = [];
  let best: number | undefined;

  const agrees = (at: number): boolean => {
    for (const { from, to, kind, least, most } of problem.lags) {
      const [one, two] = [ids.indexOf(from), ids.indexOf(to)];
      if (Math.max(one, two) !== at) continue;
      const [first, second] = [chosen[one] as Way, chosen[two] as Way];
      const wait =
        (kind.endsWith('start') ? second.start : second.end) - (kind.startsWith('end') ? first.end : first.start);
      if (wait < (least ?? 0) || (most !== undefined && wait > most)) return false;
    }
    for (const { from, to } of problem.holds) {
      const [one, two] = [ids.indexOf(from), ids.indexOf(to)];
      if (Math.max(one, two) === at && (chosen[two] as Way).end < (chosen[one] as Way).start) return false;
    }
    for (const [name, capacity] of Object.entries(problem.resources)) {
      const used = new Array<number>(problem.horizon + 1).fill(0);
      const take = (minute: number, units: number) => {
        used[minute] = (used[minute] as number) + units;
      };
      for (let each = 0; each <= at; each += 1)
        for (const minute of chosen[each]?.minutes ?? []) take(minute, problem.activities[each]?.uses[name] ?? 0);
      for (const hold of problem.holds) {
        const [one, two] = [ids.indexOf(hold.from), ids.indexOf(hold.to)];
        if (hold.resource !== name || Math.max(one, two) > at) continue;
        for (let minute = (chosen[one] as Way).start; minute < (chosen[two] as Way).end; minute += 1)
          take(minute, hold.units);
      }
      if (used.some((units) => units > capacity)) return false;
    }
    return true;
  };

  const walk = (at: number): void => {
    if (at === count) {
      const value = late ? Math.min(...chosen.map(({ start }) => start)) : Math.max(0, ...chosen.map(({ end }) => end));
      if (best === undefined || (late ? value > best : value < best)) best = value;
      return;
    }
    for (const way of ways[at] as Way[]) {
      if (best !== undefined && (late ? way.start <= best : way.end >= best)) continue;
      chosen[at] = way;
      chosen.length = at + 1;
      if (agrees(at)) walk(at + 1);
    }
    chosen.length = at;
  };
  walk(0);
  return best;
}
