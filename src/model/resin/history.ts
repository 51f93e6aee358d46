import { day, hour } from '../quantity/seconds.ts';
/** The temperature that a resin cures at, from mixing on. */
export interface History {
  /** °C at a time in s from mixing. At a jump, the temperature after it. */
  at(time: number): number;
  /** The next time after this one at which the temperature jumps or bends, s; infinite where it never does again. */
  nextCorner(time: number): number;
  /** s after which it repeats itself, and from when on, s from mixing; absent where it does not. */
  period?: number;
  repeatsFrom?: number;
  /** True where it changes between corners, false where it keeps still. */
  slopes: boolean;
  /** Lowest and highest temperature of all, °C. */
  lowest: number;
  highest: number;
}

/** One temperature throughout, °C. */
export function steady(celsius: number): History {
  return {
    at: () => celsius,
    nextCorner: () => Number.POSITIVE_INFINITY,
    slopes: false,
    lowest: celsius,
    highest: celsius,
  };
}

/** One temperature until a time, s from mixing, and another from then on, °C. */
export function changedAfter(time: number, first: number, later: number): History {
  return {
    at: (when) => (when < time ? first : later),
    nextCorner: (when) => (when < time ? time : Number.POSITIVE_INFINITY),
    slopes: false,
    lowest: Math.min(first, later),
    highest: Math.max(first, later),
  };
}

/**
 * Two temperatures that change over at once, every day alike.
 *
 * @param warm and cool temperatures, °C
 * @param warmHours hours of the warm one a day, above 0 and below 24
 * @param left hours of it that are left at mixing, up to `warmHours`
 */
export function dayAndNight(
  { warm, cool }: { warm: number; cool: number },
  warmHours: number,
  left = warmHours,
): History {
  // Whole seconds, so that corners are met exactly and no rounding leaves a time just short of one.
  const length = Math.round(warmHours * hour);
  const begun = Math.round((warmHours - left) * hour);
  /** The last beginning of a warm spell, s from mixing; at most 0 for the first. */
  const beginning = (time: number) => Math.floor((time + begun) / day) * day - begun;
  return {
    at: (time) => (time - beginning(time) < length ? warm : cool),
    nextCorner: (time) => {
      const start = beginning(time);
      return start + length > time ? start + length : start + day;
    },
    period: day,
    slopes: false,
    lowest: Math.min(warm, cool),
    highest: Math.max(warm, cool),
  };
}

/** A reading of a log: s from mixing, °C. */
export interface LogPoint {
  time: number;
  celsius: number;
}

/** How a log that has ended is taken to go on: its last day again and again, or its coldest reading where it covers no whole day. */
export type LogGoesOn = { as: 'last-day' } | { as: 'coldest'; celsius: number };

/** A log that covers a day shows what its nights do; a shorter one may have seen the warm hours alone. */
export function logGoesOn(points: readonly LogPoint[]): LogGoesOn {
  const span = (points.at(-1)?.time ?? 0) - (points[0]?.time ?? 0);
  return span >= day
    ? { as: 'last-day' }
    : { as: 'coldest', celsius: Math.min(...points.map(({ celsius }) => celsius)) };
}

/** Most points of a repeated day: readings closer than half an hour add nothing to a wait of days. */
const mostADay = 48;

/** Temperatures from one point straight to the next; before the first and after the last as these are. */
function straight(points: readonly LogPoint[]): Pick<History, 'at' | 'nextCorner'> {
  const last = points[points.length - 1] as LogPoint;
  /** Index of the first point after a time. */
  const after = (time: number) => {
    let [low, high] = [0, points.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((points[middle] as LogPoint).time > time) high = middle;
      else low = middle + 1;
    }
    return low;
  };
  return {
    at: (time) => {
      const index = after(time);
      const end = points[index];
      const start = points[index - 1];
      if (!end) return last.celsius;
      if (!start) return end.celsius;
      return start.celsius + ((end.celsius - start.celsius) * (time - start.time)) / (end.time - start.time);
    },
    nextCorner: (time) => points[after(time)]?.time ?? Number.POSITIVE_INFINITY,
  };
}

/**
 * Temperatures as logged, straight from one reading to the next; before the first it is as that says. Afterwards the last day of the log
 * goes on, or where it covers no whole day its coldest reading: a reading of a warm moment must not stand for all the nights to come.
 *
 * @param given at least one, times growing
 */
export function logged(given: readonly LogPoint[]): History {
  // Whole seconds, as for day and night.
  const points = given
    .map(({ time, celsius }) => ({ time: Math.round(time), celsius }))
    .filter(({ time }, at, all) => at === 0 || time > (all[at - 1] as LogPoint).time);
  const all = points.map(({ celsius }) => celsius);
  const read = straight(points);
  const end = (points[points.length - 1] as LogPoint).time;
  const common = { slopes: true, lowest: Math.min(...all), highest: Math.max(...all) };
  const goesOn = logGoesOn(points);
  if (goesOn.as === 'coldest') {
    return {
      ...common,
      at: (time) => (time >= end ? goesOn.celsius : read.at(time)),
      nextCorner: (time) => (time < end ? read.nextCorner(time) : Number.POSITIVE_INFINITY),
    };
  }
  const from = end - day;
  const within = points.filter(({ time }) => time > from && time < end);
  const dayPoints = (
    within.length <= mostADay
      ? [{ time: from, celsius: read.at(from) }, ...within, { time: end, celsius: read.at(end) }]
      : Array.from({ length: mostADay + 1 }, (_, at): LogPoint => {
          const time = from + (at * day) / mostADay;
          return { time, celsius: read.at(time) };
        })
  ).map(({ time, celsius }): LogPoint => ({ time: time - from, celsius }));
  const repeated = straight(dayPoints);
  const daysSince = (time: number) => Math.floor((time - end) / day);
  const inDay = (time: number) => time - end - daysSince(time) * day;
  return {
    ...common,
    period: day,
    repeatsFrom: end,
    at: (time) => (time < end ? read.at(time) : repeated.at(inDay(time))),
    nextCorner: (time) => {
      if (time < end) return read.nextCorner(time);
      const begun = end + daysSince(time) * day;
      return begun + Math.min(day, repeated.nextCorner(inDay(time)));
    },
  };
}

/** Where the temperature slopes, it is taken as even over pieces of this length, s. */
const piece = hour / 2;
/** A wait beyond this is none that anybody plans, s. */
const longestWait = 3 * 365 * day;

/** The end of the next stretch over which one temperature may stand for all, and that temperature. */
function stretch(history: History, from: number): { end: number; celsius: number } {
  const corner = history.nextCorner(from);
  if (corner === Number.POSITIVE_INFINITY) return { end: corner, celsius: history.at(from) };
  const end = history.slopes ? Math.min(corner, from + piece) : corner;
  return { end, celsius: history.at((from + end) / 2) };
}

/**
 * When a resin has aged as much as in a time at a temperature of reference: the sum over the history of each stretch times how
 * many times faster the resin ages in it.
 *
 * @param age wait at the temperature of reference, s
 * @param factor how many times faster it ages at a temperature, above 0
 * @returns s from mixing, or null where that lies more than three years off
 */
export function timeOfAge(history: History, age: number, factor: (celsius: number) => number): number | null {
  let [time, left] = [0, age];
  const { period, repeatsFrom = 0 } = history;
  while (time < repeatsFrom) {
    const { end, celsius } = stretch(history, time);
    const until = Math.min(end, repeatsFrom);
    const aged = (until - time) * factor(celsius);
    if (aged >= left) return time + left / factor(celsius);
    left -= aged;
    time = until;
  }
  if (period !== undefined) {
    let whole = 0;
    for (let at = repeatsFrom; at < repeatsFrom + period; ) {
      const { end, celsius } = stretch(history, at);
      const until = Math.min(end, repeatsFrom + period);
      whole += (until - at) * factor(celsius);
      at = until;
    }
    const periods = Math.floor(left / whole);
    time += periods * period;
    left -= periods * whole;
  }
  while (time < longestWait) {
    const { end, celsius } = stretch(history, time);
    const ages = factor(celsius);
    const done = time + left / ages;
    if (done <= end) return done <= longestWait ? done : null;
    left -= (end - time) * ages;
    time = end;
  }
  return null;
}
