import type { Model, Occupation, Store } from './compile.ts';
import type { Span } from './problem.ts';
import { spanAt } from './track.ts';

/** Units in use over time: from `times[i]` until `times[i + 1]` there are `units[i]` in use. */
export interface Profile {
  readonly times: readonly number[];
  readonly units: readonly number[];
  readonly most: number;
}

/** Add up stretches; each counts its units from its start until its end. */
export function profileOf(stretches: readonly { span: Span; units: number }[]): Profile {
  const events: { time: number; change: number }[] = [];
  for (const { span, units } of stretches) {
    events.push({ time: span.start, change: units }, { time: span.end, change: -units });
  }
  events.sort((one, two) => one.time - two.time);
  const times: number[] = [];
  const levels: number[] = [];
  let [level, most] = [0, 0];
  for (let at = 0; at < events.length; ) {
    const { time } = events[at] as { time: number };
    while (at < events.length && events[at]?.time === time) level += (events[at++] as { change: number }).change;
    if (levels.at(-1) === level) continue;
    times.push(time);
    levels.push(level);
    most = Math.max(most, level);
  }
  return { times, units: levels, most };
}

/** Place of the last step at or before a minute, or -1. */
export function stepAt(times: readonly number[], minute: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times[middle] as number) <= minute) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The last minute in [from, to) at which more than `limit` units are in use, within the open hours if given; undefined if none. */
export function lastOver(
  { times, units }: Profile,
  limit: number,
  from: number,
  to: number,
  open: readonly Span[] | undefined,
): number | undefined {
  for (let at = stepAt(times, to - 1); at >= 0; at -= 1) {
    const until = Math.min(to, times[at + 1] ?? Number.POSITIVE_INFINITY);
    if (until <= from) return undefined;
    if ((units[at] as number) <= limit) continue;
    const since = Math.max(from, times[at] as number);
    if (open === undefined) return until - 1;
    const span = open[spanAt(open, until - 1)];
    const minute = span === undefined ? Number.NEGATIVE_INFINITY : Math.min(span.end, until) - 1;
    if (minute >= since) return minute;
  }
  return undefined;
}

/** The first such minute. */
export function firstOver(
  { times, units }: Profile,
  limit: number,
  from: number,
  to: number,
  open: readonly Span[] | undefined,
): number | undefined {
  for (let at = Math.max(0, stepAt(times, from)); at < times.length; at += 1) {
    const since = Math.max(from, times[at] as number);
    if (since >= to) return undefined;
    if ((units[at] as number) <= limit) continue;
    const until = Math.min(to, times[at + 1] ?? Number.POSITIVE_INFINITY);
    if (open === undefined) {
      if (since < until) return since;
      continue;
    }
    const here = spanAt(open, since);
    const span = open[here];
    const minute = span !== undefined && since < span.end ? since : (open[here + 1]?.start ?? Number.POSITIVE_INFINITY);
    if (minute < until) return minute;
  }
  return undefined;
}

/** The stretches in which occupations hold a store when each begins and ends as told. */
export function stretchesOf(
  store: Store,
  begin: (occupation: Occupation) => number,
  finish: (occupation: Occupation) => number,
): { span: Span; units: number }[] {
  const stretches: { span: Span; units: number }[] = [];
  for (const occupation of store.occupations) {
    const [start, end] = [begin(occupation), finish(occupation)];
    if (start >= end) continue;
    const { open, units } = occupation;
    if (open === undefined) {
      stretches.push({ span: { start, end }, units });
      continue;
    }
    for (let at = Math.max(0, spanAt(open, start)); at < open.length; at += 1) {
      const span = open[at] as Span;
      if (span.start >= end) break;
      const piece = { start: Math.max(span.start, start), end: Math.min(span.end, end) };
      if (piece.start < piece.end) stretches.push({ span: piece, units });
    }
  }
  return stretches;
}

/** Does an occupation that begins and ends as told hold its units at a minute? */
export function coversAt({ open }: Occupation, start: number, end: number, minute: number): boolean {
  if (minute < start || minute >= end) return false;
  if (open === undefined) return true;
  const span = open[spanAt(open, minute)];
  return span !== undefined && minute < span.end;
}

/** Does every store suffice when each activity starts as told? */
export function fits({ stores, tracks }: Model, starts: readonly number[]): boolean {
  const begin = ({ from }: Occupation) => starts[from] as number;
  const finish = ({ to }: Occupation) => tracks[to]?.end(starts[to] as number) as number;
  return stores.every((store) => profileOf(stretchesOf(store, begin, finish)).most <= store.capacity);
}
