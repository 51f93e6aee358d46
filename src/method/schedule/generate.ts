import { compile, type Model, mirrored, type Occupation, type Store } from './compile.ts';
import type { Problem } from './problem.ts';
import { fits, lastOver, type Profile, profileOf, stepAt, stretchesOf } from './profile.ts';
import { greatestStarts, leastStarts } from './windows.ts';

/** Of an activity, a number; the lowest is placed first. */
type Rank = readonly number[];

/** A row of numbers in [0, 1) that is the same everywhere (mulberry32). */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** What a serial generation places on, made once for a model. */
interface Ground {
  readonly model: Model;
  readonly least: readonly number[];
  readonly greatest: readonly number[];
  /** By activity: who must be placed before it. */
  readonly before: readonly (readonly number[])[];
  /** How many come after each, directly or not. */
  readonly following: readonly number[];
}

/** Undefined where the waits alone leave no plan, or go round in circles that only a search can resolve. */
function groundOf(model: Model): Ground | undefined {
  const least = leastStarts(model, model.arcs, model.earliest);
  const greatest = greatestStarts(model, model.arcs, model.latest);
  if (least === undefined || greatest === undefined) return undefined;
  const count = model.last;
  const before: number[][] = Array.from({ length: count }, () => []);
  const after: number[][] = Array.from({ length: count }, () => []);
  for (const { from, to, cause } of model.arcs) {
    const forward = cause.kind === 'hold' || (cause.kind === 'lag' && cause.part === 'least');
    if (!forward || from === to || before[to]?.includes(from)) continue;
    before[to]?.push(from);
    after[from]?.push(to);
  }
  const order: number[] = [];
  const missing = before.map((list) => list.length);
  for (let at = 0; at < count; at += 1) if (missing[at] === 0) order.push(at);
  for (let head = 0; head < order.length; head += 1)
    for (const to of after[order[head] as number] as number[]) {
      missing[to] = (missing[to] as number) - 1;
      if (missing[to] === 0) order.push(to);
    }
  if (order.length < count) return undefined;
  const reach: Set<number>[] = Array.from({ length: count }, () => new Set());
  for (const at of order.reverse())
    for (const to of after[at] as number[]) {
      reach[at]?.add(to);
      for (const further of reach[to] as Set<number>) reach[at]?.add(further);
    }
  return { model, least, greatest, before, following: reach.map((set) => set.size) };
}

/** Placed starts, by which the stores fill up. */
class Board {
  readonly starts: (number | undefined)[];
  private readonly model: Model;
  private readonly profiles: (Profile | undefined)[];

  constructor(model: Model) {
    this.model = model;
    this.starts = model.tracks.map(() => undefined);
    this.profiles = model.stores.map(() => undefined);
  }

  private begin({ from }: Occupation): number {
    return this.starts[from] ?? Number.POSITIVE_INFINITY;
  }

  /** A hold whose end is not placed yet is taken to go on for ever. */
  private finish({ to }: Occupation): number {
    const start = this.starts[to];
    return start === undefined ? Number.POSITIVE_INFINITY : (this.model.tracks[to]?.end(start) as number);
  }

  private profile(at: number, store: Store): Profile {
    const known = this.profiles[at];
    if (known !== undefined) return known;
    const made = profileOf(
      stretchesOf(
        store,
        (each) => this.begin(each),
        (each) => this.finish(each),
      ),
    );
    this.profiles[at] = made;
    return made;
  }

  place(activity: number, start: number): void {
    this.starts[activity] = start;
    this.model.stores.forEach(({ occupations }, at) => {
      if (occupations.some(({ from, to }) => from === activity || to === activity)) this.profiles[at] = undefined;
    });
  }

  /** The first allowed start from a minute on at which what the activity takes is free; Infinity where that is never. */
  free(activity: number, from: number): number {
    const track = this.model.tracks[activity] as Model['tracks'][number];
    let start = track.up(from);
    for (let moved = true; moved && Number.isFinite(start); ) {
      moved = false;
      for (const [at, store] of this.model.stores.entries())
        for (const occupation of store.occupations) {
          if (occupation.from !== activity) continue;
          const end = occupation.to === activity ? track.end(start) : this.finish(occupation);
          const limit = store.capacity - occupation.units;
          if (limit < 0) return Number.POSITIVE_INFINITY;
          const profile = this.profile(at, store);
          const minute = lastOver(profile, limit, start, end, occupation.open);
          if (minute === undefined) continue;
          // Nothing can start before that step ends; a hold that is still open never does.
          start = track.up(profile.times[stepAt(profile.times, minute) + 1] ?? Number.POSITIVE_INFINITY);
          moved = true;
        }
    }
    return start;
  }
}

/** Place one after another, each as early as it can be; floors rise where a longest wait could not be kept. */
function serial(ground: Ground, rank: Rank): readonly number[] | undefined {
  const floors = [...ground.least];
  for (let tries = 0; tries < 20; tries += 1) {
    const outcome = serialOnce(ground, rank, floors);
    if (outcome === undefined) return undefined;
    if ('starts' in outcome) return fits(ground.model, outcome.starts) ? outcome.starts : undefined;
    floors[outcome.raise] = outcome.to;
    if (outcome.to > (ground.greatest[outcome.raise] as number)) return undefined;
  }
  return undefined;
}

type Outcome = { starts: readonly number[] } | { raise: number; to: number } | undefined;

function serialOnce({ model, before }: Ground, rank: Rank, floors: readonly number[]): Outcome {
  const { tracks, arcs, last, latest } = model;
  const board = new Board(model);
  const missing = before.map((list) => list.length);
  const incoming: Model['arcs'][number][][] = Array.from({ length: last + 1 }, () => []);
  const outgoing: Model['arcs'][number][][] = Array.from({ length: last + 1 }, () => []);
  for (const arc of arcs) {
    incoming[arc.to]?.push(arc);
    outgoing[arc.from]?.push(arc);
  }
  const order = Array.from({ length: last }, (_, at) => at).sort(
    (one, two) => (rank[one] as number) - (rank[two] as number) || one - two,
  );
  const followers: number[][] = Array.from({ length: last }, () => []);
  before.forEach((list, to) => {
    for (const from of list) followers[from]?.push(to);
  });
  const done = new Set<number>();
  while (done.size < last) {
    let placed = false;
    for (const activity of order) {
      if (done.has(activity) || (missing[activity] as number) > 0) continue;
      const track = tracks[activity] as Model['tracks'][number];
      let floor = floors[activity] as number;
      let ceiling = track.downForEnd(latest[activity] as number);
      let tight: Model['arcs'][number] | undefined;
      for (const arc of incoming[activity] as Model['arcs'][number][]) {
        const start = board.starts[arc.from];
        if (start === undefined) continue;
        const minute = (arc.fromEnd ? (tracks[arc.from]?.end(start) as number) : start) + arc.weight;
        floor = Math.max(floor, arc.toEnd ? track.upForEnd(minute) : track.up(minute));
      }
      for (const arc of outgoing[activity] as Model['arcs'][number][]) {
        const start = board.starts[arc.to];
        if (start === undefined) continue;
        const minute = (arc.toEnd ? (tracks[arc.to]?.end(start) as number) : start) - arc.weight;
        const bound = arc.fromEnd ? track.downForEnd(minute) : track.down(minute);
        if (bound < ceiling) [ceiling, tight] = [bound, arc];
      }
      const start = board.free(activity, floor);
      if (!Number.isFinite(start)) continue;
      if (start > ceiling) {
        if (tight === undefined) return undefined;
        // The one that would be left waiting too long has to come later.
        const other = tracks[tight.to] as Model['tracks'][number];
        const minute = (tight.fromEnd ? track.end(start) : start) + tight.weight;
        const to = tight.toEnd ? other.upForEnd(minute) : other.up(minute);
        return { raise: tight.to, to };
      }
      board.place(activity, start);
      done.add(activity);
      for (const to of followers[activity] as number[]) missing[to] = (missing[to] as number) - 1;
      placed = true;
      break;
    }
    if (!placed) return undefined;
  }
  const ends = tracks.slice(0, last).map((track, at) => track.end(board.starts[at] as number));
  return { starts: [...(board.starts.slice(0, last) as number[]), Math.max(0, ...ends)] };
}

/** Improve a plan by sliding it to its end and back to zero, as long as that makes it shorter. */
function slide(problem: Problem, ground: Ground, starts: readonly number[]): readonly number[] {
  const { model } = ground;
  let best = starts;
  for (let round = 0; round < 4; round += 1) {
    const end = best[model.last] as number;
    const turned = groundOf(compile(mirrored(problem, end)));
    const ends = best.map((start, at) => -(model.tracks[at]?.end(start) as number));
    const late = turned && serial(turned, ends);
    if (turned === undefined || late === undefined) return best;
    const rank = late.map((start, at) => -(turned.model.tracks[at]?.end(start) as number));
    const early = serial(ground, rank);
    if (early === undefined || (early[model.last] as number) >= end) return best;
    best = early;
  }
  return best;
}

/**
 * A plan by rules: activities are placed one after another by the latest start left, latest end, number of followers and least start, and by
 * several shuffled ranks, and each such plan slid forwards and back (serial generation with justification). Undefined where none is found.
 *
 * @param shuffles how many shuffled ranks to try
 * @param goal stop when a plan ends by this minute
 * @param known starts of a plan, to be slid too
 */
export function generate(
  problem: Problem,
  model: Model,
  { shuffles, goal, known }: { shuffles: number; goal: number; known?: readonly number[] | undefined },
): readonly number[] | undefined {
  const ground = groundOf(model);
  if (ground === undefined) return undefined;
  const { greatest, least, following } = ground;
  const ranks: Rank[] = [
    greatest,
    greatest.map((start, at) => model.tracks[at]?.end(start) as number),
    following.map((count) => -count),
    least,
  ];
  const next = random(1);
  const range = Math.max(1, ...least);
  for (let round = 0; round < shuffles; round += 1) ranks.push(greatest.map((start) => start + next() * range * 0.3));
  let best: readonly number[] | undefined;
  const keep = (plan: readonly number[] | undefined) => {
    const better = plan && slide(problem, ground, plan);
    if (better === undefined) return;
    if (best === undefined || (better[model.last] as number) < (best[model.last] as number)) best = better;
  };
  keep(known);
  for (const rank of ranks) {
    if (best !== undefined && (best[model.last] as number) <= goal) break;
    keep(serial(ground, rank));
  }
  return best;
}
