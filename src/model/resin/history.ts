/** The temperature that a resin cures at, from mixing on. */
export interface History {
  /** °C at a time in s from mixing. At a jump, the temperature after it. */
  at(time: number): number;
  /** The next time after this one at which the temperature jumps or bends, s; infinite where it never does again. */
  nextCorner(time: number): number;
  /** s after which it repeats itself; absent where it does not. */
  period?: number;
  /** True where it changes between corners, false where it keeps still. */
  slopes: boolean;
  /** Lowest and highest temperature of all, °C. */
  lowest: number;
  highest: number;
}

const day = 86_400;
const hour = 3600;

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

/**
 * Temperatures as logged, straight from one reading to the next; before the first and after the last they stay as they are.
 *
 * @param points at least one, times growing
 */
export function logged(points: readonly LogPoint[]): History {
  const all = points.map(({ celsius }) => celsius);
  const last = all[all.length - 1] as number;
  /** Index of the first reading after a time. */
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
      if (!end) return last;
      if (!start) return end.celsius;
      return start.celsius + ((end.celsius - start.celsius) * (time - start.time)) / (end.time - start.time);
    },
    nextCorner: (time) => points[after(time)]?.time ?? Number.POSITIVE_INFINITY,
    slopes: true,
    lowest: Math.min(...all),
    highest: Math.max(...all),
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
  if (history.period !== undefined) {
    let whole = 0;
    for (let at = 0; at < history.period; ) {
      const { end, celsius } = stretch(history, at);
      const until = Math.min(end, history.period);
      whole += (until - at) * factor(celsius);
      at = until;
    }
    const periods = Math.floor(age / whole);
    time = periods * history.period;
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
