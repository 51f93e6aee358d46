import type { Activity, Span } from './problem.ts';

/**
 * The starts that an activity's calendar allows, and the end that follows from each. Every function rises with its argument, which is what
 * lets bounds travel along waits; an answer of ±Infinity says that there is no such start.
 */
export interface Track {
  /** Least start that is allowed, at or after a minute. */
  up(minute: number): number;
  /** Greatest start that is allowed, at or before a minute. */
  down(minute: number): number;
  /** End that follows from an allowed start. */
  end(start: number): number;
  /** Least allowed start whose end is at or after a minute. */
  upForEnd(minute: number): number;
  /** Greatest allowed start whose end is at or before a minute. */
  downForEnd(minute: number): number;
  /** The stretches worked on between an allowed start and its end, cut at closing times. */
  pieces(start: number): Span[];
  /** Does it run through whatever is closed, so that a start as much later ends as much later? */
  readonly free: boolean;
  /** The open hours in which it counts as running between start and end; undefined where it runs through. */
  readonly open: readonly Span[] | undefined;
}

/** Openings that touch are one. */
export function joined(open: readonly Span[]): Span[] {
  const spans: { start: number; end: number }[] = [];
  for (const { start, end } of open) {
    const last = spans.at(-1);
    if (last !== undefined && last.end >= start) last.end = Math.max(last.end, end);
    else spans.push({ start, end });
  }
  return spans;
}

/** Index of the last span that starts at or before a minute, or -1. */
export function spanAt(spans: readonly Span[], minute: number): number {
  let [low, high] = [0, spans.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((spans[middle] as Span).start <= minute) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** It runs through whatever is closed. */
function through(duration: number): Track {
  return {
    up: (minute) => minute,
    down: (minute) => minute,
    end: (start) => start + duration,
    upForEnd: (minute) => minute - duration,
    downForEnd: (minute) => minute - duration,
    pieces: (start) => [{ start, end: start + duration }],
    free: true,
    open: undefined,
  };
}

/** It must fit within one opening: starts lie in windows, each an opening shortened by the duration. */
function whole(duration: number, open: readonly Span[]): Track {
  const starts = open
    .filter(({ start, end }) => end - start >= duration)
    .map(({ start, end }) => ({ start, end: end - duration }));
  const up = (minute: number) => {
    const at = spanAt(starts, minute);
    const here = starts[at];
    if (here !== undefined && minute <= here.end) return minute;
    return starts[at + 1]?.start ?? Number.POSITIVE_INFINITY;
  };
  const down = (minute: number) => {
    const here = starts[spanAt(starts, minute)];
    return here === undefined ? Number.NEGATIVE_INFINITY : Math.min(minute, here.end);
  };
  return {
    up,
    down,
    end: (start) => start + duration,
    upForEnd: (minute) => up(minute - duration),
    downForEnd: (minute) => down(minute - duration),
    pieces: (start) => [{ start, end: start + duration }],
    free: false,
    open: undefined,
  };
}

/** It stops at closing time and goes on at the next opening: a start is a place in the row of all open minutes. */
function split(duration: number, open: readonly Span[]): Track {
  const before: number[] = [0];
  for (const { start, end } of open) before.push((before.at(-1) as number) + end - start);
  const all = before.at(-1) as number;
  /** Open minutes before a minute. */
  const opened = (minute: number) => {
    const at = spanAt(open, minute);
    const here = open[at];
    return here === undefined ? 0 : (before[at] as number) + Math.min(minute, here.end) - here.start;
  };
  /** Index of the opening in which the open minute with this place lies. */
  const holding = (place: number) => {
    let [low, high] = [0, open.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((before[middle] as number) <= place) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  };
  const minuteAt = (place: number) => {
    const at = holding(place);
    return (open[at] as Span).start + place - (before[at] as number);
  };
  const last = all - duration;
  const from = (place: number) => (Math.max(0, place) > last ? Number.POSITIVE_INFINITY : minuteAt(Math.max(0, place)));
  const upTo = (place: number) => (place < 0 || last < 0 ? Number.NEGATIVE_INFINITY : minuteAt(Math.min(place, last)));
  const end = (start: number) => minuteAt(opened(start) + duration - 1) + 1;
  return {
    up: (minute) => from(opened(minute)),
    down: (minute) => upTo(opened(minute + 1) - 1),
    end,
    upForEnd: (minute) => from(opened(minute - 1) - duration + 1),
    downForEnd: (minute) => upTo(opened(minute) - duration),
    pieces: (start) => clipped(open, start, end(start)),
    free: false,
    open,
  };
}

/** What of the open hours lies between two minutes. */
export function clipped(open: readonly Span[], from: number, to: number): Span[] {
  const pieces: Span[] = [];
  for (let at = Math.max(0, spanAt(open, from)); at < open.length; at += 1) {
    const span = open[at] as Span;
    if (span.start >= to) break;
    const piece = { start: Math.max(span.start, from), end: Math.min(span.end, to) };
    if (piece.start < piece.end) pieces.push(piece);
  }
  return pieces;
}

/**
 * The track of an activity over the joined open hours of its calendar, if it has one.
 *
 * @param activity what is done
 * @param open its calendar's hours, joined where they touch; undefined without a calendar
 */
export function trackOf(activity: Activity, open: readonly Span[] | undefined): Track {
  const { duration, splittable } = activity;
  if (open === undefined) return through(duration);
  return splittable && duration > 0 ? split(duration, open) : whole(duration, open);
}
