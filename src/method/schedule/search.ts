import { Clauses, type Lesson, learn } from './clauses.ts';
import type { Arc, Model } from './compile.ts';
import { Heap } from './heap.ts';
import { firstClash, propagateStore } from './timetable.ts';
import { Trail } from './trail.ts';
import { greatestStarts, leastStarts } from './windows.ts';

/** How a search ended: with the end proved, with 'no plan' proved, or at its limit. */
export type Ending = 'done' | 'none' | 'limit';

/** What a search found. */
export interface Found {
  readonly ending: Ending;
  /** Start of each activity and of the end of all, in the best plan found. */
  readonly starts: readonly number[] | undefined;
  /** Decisions and contradictions so far. */
  readonly nodes: number;
}

/** Contradictions before the n-th restart, in the order of Luby, Sinclair and Zuckerman: 1 1 2 1 1 2 4 … */
function luby(at: number): number {
  let [size, order] = [1, 0];
  while (size < at + 1) {
    size = 2 * size + 1;
    order += 1;
  }
  let place = at;
  while (size - 1 !== place) {
    size = (size - 1) >> 1;
    order -= 1;
    place %= size;
  }
  return 2 ** order;
}

/**
 * Exact search for a shortest plan: windows narrowed by waits, calendars and by what must run at each minute; where that leaves a clash, a
 * decision; where it leads to a contradiction, a clause learned from it, so that the same mistake is made once (lazy clause generation:
 * Schutt, Feydy, Stuckey and Wallace, Explaining the cumulative propagator, Constraints 16, 2011).
 */
export class Search {
  private readonly model: Model;
  private readonly trail: Trail;
  private readonly clauses: Clauses;
  private readonly forth: Arc[][];
  private readonly back: Arc[][];
  private readonly storesOf: number[][];
  private readonly dirty: boolean[];
  private head = 0;
  private possible: boolean;
  private best: readonly number[] | undefined;
  /** Statements that took part in contradictions, as 'starts at or after', by their number. */
  private readonly numbers = new Map<number, number>();
  private readonly known: { activity: number; value: number }[] = [];
  private readonly weights: number[] = [];
  private readonly heap = new Heap(this.weights);
  private readonly parked: number[][];
  private step = 1;
  nodes = 0;

  constructor(model: Model) {
    this.model = model;
    const count = model.tracks.length;
    const least = leastStarts(model, model.arcs, model.earliest);
    const greatest = greatestStarts(model, model.arcs, model.latest);
    this.possible =
      least !== undefined && greatest !== undefined && least.every((start, at) => start <= (greatest[at] as number));
    // Nobody need look at every minute for room that there never is.
    this.possible &&= !model.stores.some(({ capacity, occupations }) =>
      occupations.some(({ from, to, units }) => {
        const start = least?.[from] as number;
        return units > capacity && from === to && (model.tracks[from]?.end(start) as number) > start;
      }),
    );
    this.trail = new Trail(model, least ?? [], greatest ?? []);
    this.clauses = new Clauses(this.trail);
    this.forth = Array.from({ length: count }, () => []);
    this.back = Array.from({ length: count }, () => []);
    for (const arc of model.arcs) {
      this.forth[arc.from]?.push(arc);
      this.back[arc.to]?.push(arc);
    }
    this.storesOf = Array.from({ length: count }, () => []);
    model.stores.forEach(({ occupations }, at) => {
      for (const { from, to } of occupations)
        for (const activity of new Set([from, to]))
          if (!this.storesOf[activity]?.includes(at)) this.storesOf[activity]?.push(at);
    });
    this.dirty = model.stores.map(() => true);
    this.parked = Array.from({ length: count }, () => []);
  }

  /** A plan from elsewhere, kept where it is shorter than the best so far. */
  offer(starts: readonly number[] | undefined): void {
    const { last } = this.model;
    if (starts === undefined || (this.best !== undefined && (this.best[last] as number) <= (starts[last] as number)))
      return;
    this.backTo(0);
    this.best = starts;
    this.beat(starts[last] as number);
  }

  /** From now on only plans that end before a minute count. */
  private beat(end: number): void {
    this.possible &&= this.trail.imply(2 * this.model.last + 1, end - 1, []);
  }

  private propagate(): boolean {
    const { trail } = this;
    for (;;) {
      while (this.head < trail.length) {
        const key = trail.keyAt(this.head++);
        const activity = key >> 1;
        for (const store of this.storesOf[activity] as number[]) this.dirty[store] = true;
        if (!this.clauses.propagate(key)) return false;
        for (const arc of (key & 1 ? this.back[activity] : this.forth[activity]) as Arc[])
          if (!trail.along(arc, key)) return false;
      }
      const store = this.dirty.indexOf(true);
      if (store < 0) return true;
      this.dirty[store] = false;
      if (!propagateStore(trail, this.model.stores[store] as Model['stores'][number])) {
        this.dirty[store] = true;
        return false;
      }
      // What it narrowed may let it narrow more.
      if (this.head < trail.length) this.dirty[store] = true;
    }
  }

  private backTo(level: number): void {
    this.trail.back(level, (key) => {
      const activity = key >> 1;
      const list = this.parked[activity] as number[];
      for (const number of list) this.heap.add(number);
      list.length = 0;
    });
    this.head = Math.min(this.head, this.trail.length);
    this.dirty.fill(true);
  }

  private touch(key: number, value: number): void {
    const activity = key >> 1;
    const at = key & 1 ? this.trail.denied(key, value) : value;
    if (!Number.isFinite(at)) return;
    const name = activity * 2 ** 32 + at;
    let number = this.numbers.get(name);
    if (number === undefined) {
      number = this.known.length;
      this.numbers.set(name, number);
      this.known.push({ activity, value: at });
      this.weights.push(0);
      this.heap.add(number);
    }
    this.weights[number] = (this.weights[number] as number) + this.step;
    this.heap.raised(number);
  }

  /** The statement that took most part in late contradictions and is open; decided as in the best plan known. */
  private decideByWeight(): boolean {
    for (;;) {
      const number = this.heap.take();
      if (number === undefined) return false;
      const { activity, value } = this.known[number] as { activity: number; value: number };
      (this.parked[activity] as number[]).push(number);
      const [low, high] = [this.trail.low(activity), this.trail.high(activity)];
      if (low >= value || high < value) continue;
      if (this.best !== undefined && (this.best[activity] as number) >= value) this.trail.decide(2 * activity, value);
      else this.trail.decide(2 * activity + 1, this.trail.denied(2 * activity, value));
      return true;
    }
  }

  /** Of those who clash first, let the one start that has least time left. */
  private decideByClash(among: readonly { from: number; to: number }[]): void {
    const { trail } = this;
    let chosen = -1;
    let rank = Number.POSITIVE_INFINITY;
    for (const { from, to } of among) {
      const open = trail.low(from) < trail.high(from) ? from : to;
      if (trail.low(open) >= trail.high(open)) continue;
      const own = this.best === undefined ? trail.high(open) : (this.best[open] as number);
      if (own < rank) [chosen, rank] = [open, own];
    }
    trail.decide(2 * chosen + 1, trail.low(chosen));
  }

  /** Learn from the contradiction and go back; false where there is no plan (better than the best known). */
  private repent(): boolean {
    const lesson: Lesson | undefined = learn(
      this.trail,
      (key, value) => this.touch(key, value),
      (clause) => this.clauses.used(clause),
    );
    if (lesson === undefined) return false;
    this.step *= 1.05;
    if (this.step > 1e100) {
      for (let at = 0; at < this.weights.length; at += 1) this.weights[at] = (this.weights[at] as number) * 1e-100;
      this.step *= 1e-100;
    }
    this.clauses.age();
    const { literals, level } = lesson;
    this.backTo(level);
    const reason = literals.length > 2 ? this.clauses.add(literals) : [];
    return this.trail.imply(literals[0] as number, literals[1] as number, reason);
  }

  /**
   * Search on.
   *
   * @param nodes how many decisions and contradictions in all, counted from the beginning of this search
   * @param stop `first`: stop at the first plan; `goal`: stop at a plan that ends by this minute, before which none can end
   */
  run(nodes: number, stop: { first?: boolean; goal?: number } = {}): Found {
    const { trail, model } = this;
    const found = (ending: Ending): Found => ({ ending, starts: this.best, nodes: this.nodes });
    const { first = false, goal = Number.NEGATIVE_INFINITY } = stop;
    if (!this.possible) return found(this.best === undefined ? 'none' : 'done');
    if (this.best !== undefined && (this.best[model.last] as number) <= goal) return found('done');
    this.backTo(0);
    for (let round = 0; ; round += 1) {
      const patience = 50 * luby(round);
      const byWeight = round % 2 === 1;
      let met = 0;
      for (;;) {
        if (!this.propagate()) {
          this.nodes += 1;
          met += 1;
          if (!this.repent()) {
            this.possible = false;
            return found(this.best === undefined ? 'none' : 'done');
          }
          continue;
        }
        if (this.nodes >= nodes) return found('limit');
        if (met >= patience) break;
        const clash = firstClash(trail, model.stores);
        if (clash === undefined) {
          this.best = model.tracks.map((_, at) => trail.low(at));
          if (first || (this.best[model.last] as number) <= goal) return found('done');
          this.backTo(0);
          this.beat(this.best[model.last] as number);
          if (!this.possible) return found('done');
          continue;
        }
        this.nodes += 1;
        if (!byWeight || !this.decideByWeight()) this.decideByClash(clash.among);
      }
      this.backTo(0);
      this.clauses.tidy();
    }
  }
}
