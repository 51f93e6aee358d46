import type { Arc, Model } from './compile.ts';

/** One raise of a start, and the raise of another activity that made it; -1 for what it began with. */
interface Raise {
  readonly activity: number;
  readonly by: number;
}

/** The least start of `arc.to` when `arc.from` starts at a minute. */
export function pushed({ tracks }: Model, arc: Arc, start: number): number {
  const from = tracks[arc.from] as Model['tracks'][number];
  const to = tracks[arc.to] as Model['tracks'][number];
  const minute = (arc.fromEnd ? from.end(start) : start) + arc.weight;
  return arc.toEnd ? to.upForEnd(minute) : to.up(minute);
}

/** The greatest start of `arc.from` when `arc.to` starts at a minute. */
export function pulled({ tracks }: Model, arc: Arc, start: number): number {
  const from = tracks[arc.from] as Model['tracks'][number];
  const to = tracks[arc.to] as Model['tracks'][number];
  const minute = (arc.toEnd ? to.end(start) : start) - arc.weight;
  return arc.fromEnd ? from.downForEnd(minute) : from.down(minute);
}

function arcsBy(count: number, arcs: readonly Arc[], side: 'from' | 'to'): Arc[][] {
  const lists: Arc[][] = Array.from({ length: count }, () => []);
  for (const arc of arcs) lists[arc[side]]?.push(arc);
  return lists;
}

/** Does the latest raise come from a raise of the same activity, round a circle of waits that no calendar can break? Then it never ends. */
function circles({ tracks }: Model, raises: readonly Raise[]): boolean {
  const seen = new Set<number>();
  for (let at = raises.length - 1; at >= 0; ) {
    const { activity, by } = raises[at] as Raise;
    if (!tracks[activity]?.free) return false;
    if (seen.has(activity)) return true;
    seen.add(activity);
    at = by;
  }
  return false;
}

/**
 * The least starts that keep calendars, earliest starts, the given arcs and each activity's greatest end. Undefined where there are none: the
 * waits go round in a circle, or a window closes before the next opening.
 *
 * @param floors least starts to begin with, in minutes
 */
export function leastStarts(
  model: Model,
  arcs: readonly Arc[],
  floors: readonly number[],
): readonly number[] | undefined {
  const { tracks, latest } = model;
  const count = tracks.length;
  const after = arcsBy(count, arcs, 'from');
  const ceilings = tracks.map((track, at) => track.downForEnd(latest[at] as number));
  const starts = tracks.map((track, at) => track.up(floors[at] as number));
  if (starts.some((start, at) => start > (ceilings[at] as number))) return undefined;
  const raises: Raise[] = starts.map((_, activity) => ({ activity, by: -1 }));
  const lastRaise = starts.map((_, at) => at);
  const queue = starts.map((_, at) => at);
  const waiting = starts.map(() => true);
  for (let head = 0; head < queue.length; head += 1) {
    const from = queue[head] as number;
    waiting[from] = false;
    for (const arc of after[from] as Arc[]) {
      const start = pushed(model, arc, starts[from] as number);
      if (start <= (starts[arc.to] as number)) continue;
      if (start > (ceilings[arc.to] as number)) return undefined;
      starts[arc.to] = start;
      raises.push({ activity: arc.to, by: lastRaise[from] as number });
      lastRaise[arc.to] = raises.length - 1;
      if (raises.length % (16 * count) === 0 && circles(model, raises)) return undefined;
      if (waiting[arc.to]) continue;
      waiting[arc.to] = true;
      queue.push(arc.to);
    }
  }
  return starts;
}

/**
 * The greatest starts that keep the same, found from the ends backwards; undefined where there are none.
 *
 * @param ceilings greatest starts to begin with, in minutes
 */
export function greatestStarts(
  model: Model,
  arcs: readonly Arc[],
  ceilings: readonly number[],
): readonly number[] | undefined {
  const { tracks, earliest, latest } = model;
  const before = arcsBy(tracks.length, arcs, 'to');
  const floors = tracks.map((track, at) => track.up(earliest[at] as number));
  const starts = tracks.map((track, at) =>
    Math.min(track.down(ceilings[at] as number), track.downForEnd(latest[at] as number)),
  );
  if (starts.some((start, at) => start < (floors[at] as number))) return undefined;
  const queue = starts.map((_, at) => at);
  const waiting = starts.map(() => true);
  for (let head = 0; head < queue.length; head += 1) {
    const to = queue[head] as number;
    waiting[to] = false;
    for (const arc of before[to] as Arc[]) {
      const start = pulled(model, arc, starts[to] as number);
      if (start >= (starts[arc.from] as number)) continue;
      if (start < (floors[arc.from] as number)) return undefined;
      starts[arc.from] = start;
      if (waiting[arc.from]) continue;
      waiting[arc.from] = true;
      queue.push(arc.from);
    }
  }
  return starts;
}
