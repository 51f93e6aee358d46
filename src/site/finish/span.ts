import { day, hour, minute } from '../../model/quantity/seconds.ts';

/** Units that a wait is told in, and up to how many of the unit; the year for all that is longer. */
const steps: readonly (readonly [seconds: number, upTo: number, one: string, many: string])[] = [
  [minute, 90, 'minute', 'minutes'],
  [hour, 36, 'hour', 'hours'],
  [day, 13, 'day', 'days'],
  [7 * day, 12, 'week', 'weeks'],
  [30.4375 * day, 23, 'month', 'months'],
  [365.25 * day, Number.POSITIVE_INFINITY, 'year', 'years'],
];

/**
 * A span of waits as it is said in a shop: `30 to 45 minutes`, `2 to 7 days`, `about 4 weeks`.
 *
 * @param low s, from a minute
 * @param high s
 */
export function spanWords(low: number, high: number): string {
  const [seconds, , one, many] = steps.find(([unit, upTo]) => high / unit <= upTo) as (typeof steps)[number];
  const from = Math.max(1, Math.round(low / seconds));
  const to = Math.max(1, Math.round(high / seconds));
  // What does not come to one of the longer unit is told in the unit below.
  if (low / seconds < 0.75) {
    const below = steps[steps.findIndex(([unit]) => unit === seconds) - 1];
    if (below) return `${Math.round(low / below[0])} ${below[3]} to ${to} ${to === 1 ? one : many}`;
  }
  return from === to ? `about ${to} ${to === 1 ? one : many}` : `${from} to ${to} ${many}`;
}
