import type { PlanClock } from '../schedule/calendar.ts';
import type { Sitting } from './activities.ts';

/** Work that was done, or that is going on: it stays in the plan where it was. */
export interface DoneWork {
  step: string;
  /** First and last piece, from 1. */
  pieces: readonly [number, number];
  /** Instants (RFC 3339). */
  from: string;
  /** Left out while it is going on. */
  to?: string;
}

/** The same in minutes of a plan. */
export interface PinnedWork {
  step: string;
  pieces: readonly [number, number];
  start: number;
  /** Undefined while it is going on. */
  end?: number;
}

/** Whole minutes from the plan's zero of an instant. */
export const minuteOf = (
  { zero }: Pick<PlanClock, 'zero'>,
  instant: string,
  round: (value: number) => number,
): number => round((Date.parse(instant) - Date.parse(zero)) / 60_000);

/** Work in minutes of a plan: a start is rounded down and an end up, so that no wait is shorter than it was. */
export function pinnedWork(clock: Pick<PlanClock, 'zero'>, { step, pieces, from, to }: DoneWork): PinnedWork {
  const start = minuteOf(clock, from, Math.floor);
  return { step, pieces, start, ...(to === undefined ? {} : { end: Math.max(start, minuteOf(clock, to, Math.ceil)) }) };
}

/** Stretches of pieces, of all that there are, that none of some works is about. */
export function restOf(pieces: number, works: readonly Pick<PinnedWork, 'pieces'>[]): (readonly [number, number])[] {
  const rest: [number, number][] = [];
  for (let piece = 1; piece <= pieces; piece += 1) {
    if (works.some(({ pieces: [first, last] }) => first <= piece && piece <= last)) continue;
    const open = rest.at(-1);
    if (open && open[1] === piece - 1) open[1] = piece;
    else rest.push([piece, piece]);
  }
  return rest;
}

/**
 * A sitting at its actual times. Its setting up and its time for a piece are shares of them as the method divides its own: when its first piece was
 * done and when its last was begun are known no better. The pieces are taken to have come one by one, and both are rounded down: towards the longer
 * wait and the sooner end of a window.
 *
 * @param planned minutes that the method gives the setting up and one piece
 * @param now minute of the plan that it is; work that is going on ends by the method's time, or now
 */
export function pinnedSitting(
  { step, pieces, start, end }: PinnedWork,
  planned: { setUp: number; each: number },
  now: number,
): Omit<Sitting, 'id'> & { pinned: { start: number; end: number; going: boolean } } {
  const whole = planned.setUp + planned.each * (pieces[1] - pieces[0] + 1);
  const until = end ?? Math.max(now, start + whole);
  const share = whole > 0 ? (until - start) / whole : 0;
  const each = Math.floor(planned.each * share + 1e-9);
  const firstDone = whole > 0 ? Math.floor((planned.setUp + planned.each) * share + 1e-9) : until - start;
  return {
    step,
    pieces,
    setUp: firstDone - each,
    each,
    lanes: 1,
    pinned: { start, end: until, going: end === undefined },
  };
}
