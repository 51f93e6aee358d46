import type { Arc, Model } from './compile.ts';
import { pulled, pushed } from './windows.ts';

/**
 * At least one of its statements holds; `literals` are key and value by turns, the first two are watched. A statement speaks of one start:
 * with the even key 2i it says 'i starts at or after the value', with the odd key 2i + 1 'i starts at or before it'. Only starts that i's
 * calendar allows are written.
 */
export interface Clause {
  readonly literals: number[];
  activity: number;
}

/** Why a bound was moved: nothing (a decision), a wait, a clause, or true statements (key and value by turns). */
export type Reason = undefined | Arc | Clause | readonly number[];

/**
 * The windows of all starts, with the history of every narrowing: what it was, why, and when. From it follow which narrowings made a
 * contradiction, and what can be learned from that.
 */
export class Trail {
  readonly model: Model;
  /** Bound by key: least start at 2i, greatest at 2i + 1. */
  readonly bound: Float64Array;
  /** Place in the history of the latest narrowing by key; -1 for what was so at the beginning. */
  private readonly latestOf: Int32Array;
  private readonly keys: number[] = [];
  private readonly values: number[] = [];
  private readonly olds: number[] = [];
  private readonly earlier: number[] = [];
  private readonly reasons: Reason[] = [];
  /** Length of the history when each decision was taken. */
  private readonly decisions: number[] = [];
  /** True statements that cannot all hold, key and value by turns; set when something contradicts. */
  conflict: number[] = [];

  constructor(model: Model, least: readonly number[], greatest: readonly number[]) {
    this.model = model;
    this.bound = new Float64Array(2 * least.length);
    this.latestOf = new Int32Array(2 * least.length).fill(-1);
    for (let at = 0; at < least.length; at += 1) {
      this.bound[2 * at] = least[at] as number;
      this.bound[2 * at + 1] = greatest[at] as number;
    }
  }

  get length(): number {
    return this.keys.length;
  }

  get level(): number {
    return this.decisions.length;
  }

  keyAt(place: number): number {
    return this.keys[place] as number;
  }

  low(activity: number): number {
    return this.bound[2 * activity] as number;
  }

  high(activity: number): number {
    return this.bound[2 * activity + 1] as number;
  }

  /** Does the statement hold in every start that is left? */
  holds(key: number, value: number): boolean {
    const bound = this.bound[key] as number;
    return key & 1 ? bound <= value : bound >= value;
  }

  /** Does it hold in none? */
  fails(key: number, value: number): boolean {
    const other = this.bound[key ^ 1] as number;
    return key & 1 ? other > value : other < value;
  }

  /** The value of the statement that denies this one, whose key is `key ^ 1`. */
  denied(key: number, value: number): number {
    const track = this.model.tracks[key >> 1] as Model['tracks'][number];
    return key & 1 ? track.up(value + 1) : track.down(value - 1);
  }

  decide(key: number, value: number): void {
    this.decisions.push(this.keys.length);
    this.push(key, value, undefined);
  }

  private push(key: number, value: number, reason: Reason): void {
    this.keys.push(key);
    this.values.push(value);
    this.olds.push(this.bound[key] as number);
    this.earlier.push(this.latestOf[key] as number);
    this.reasons.push(reason);
    this.latestOf[key] = this.keys.length - 1;
    this.bound[key] = value;
  }

  /**
   * Make a statement hold, for a reason that holds now. False where it contradicts the window; then `conflict` says why.
   */
  imply(key: number, value: number, reason: Reason): boolean {
    if (this.holds(key, value)) return true;
    if (this.fails(key, value)) {
      this.conflict = [...this.antecedents(reason, key, value), key ^ 1, this.denied(key, value)];
      return false;
    }
    this.push(key, value, reason);
    return true;
  }

  /** Forget every decision above a level; tells each key that was widened. */
  back(level: number, widened: (key: number) => void): void {
    if (level >= this.decisions.length) return;
    const length = this.decisions[level] as number;
    for (let place = this.keys.length - 1; place >= length; place -= 1) {
      const key = this.keys[place] as number;
      this.bound[key] = this.olds[place] as number;
      this.latestOf[key] = this.earlier[place] as number;
      widened(key);
    }
    for (const list of [this.keys, this.values, this.olds, this.earlier, this.reasons]) list.length = length;
    this.decisions.length = level;
  }

  /** The true statements from which one follows by its reason; of a wait, the weakest that suffices. */
  private antecedents(reason: Reason, key: number, value: number): readonly number[] {
    if (reason === undefined) return [];
    if ('weight' in reason) return [this.sourceKey(reason, key), this.sourceValue(reason, key, value)];
    if (!('literals' in reason)) return reason;
    const found: number[] = [];
    const { literals } = reason;
    for (let at = 0; at < literals.length; at += 2) {
      const other = literals[at] as number;
      // Its own statement in the clause is the one that is not false; of two on one key the weaker includes the stronger.
      if (other === key) continue;
      found.push(other ^ 1, this.denied(other, literals[at + 1] as number));
    }
    return found;
  }

  private sourceKey(arc: Arc, key: number): number {
    return key & 1 ? 2 * arc.to + 1 : 2 * arc.from;
  }

  /** The weakest bound of the arc's other activity that still gives the bound `value` of `key`. */
  private sourceValue(arc: Arc, key: number, value: number): number {
    const { tracks } = this.model;
    const from = tracks[arc.from] as Model['tracks'][number];
    const to = tracks[arc.to] as Model['tracks'][number];
    if (key & 1) {
      // from ≤ value, since even the next start of `from` would be too late for `to`.
      const next = from.up(value + 1);
      const minute = (arc.fromEnd ? from.end(next) : next) + arc.weight - 1;
      const bound = Number.isFinite(next) ? (arc.toEnd ? to.downForEnd(minute) : to.down(minute)) : this.high(arc.to);
      return Math.max(bound, this.high(arc.to));
    }
    const previous = to.down(value - 1);
    const minute = (arc.toEnd ? to.end(previous) : previous) + 1 - arc.weight;
    const bound = Number.isFinite(previous)
      ? arc.fromEnd
        ? from.upForEnd(minute)
        : from.up(minute)
      : this.low(arc.from);
    return Math.min(bound, this.low(arc.from));
  }

  /** Place in the history at which a true statement became true; -1 where it was so at the beginning. */
  placeOf(key: number, value: number): number {
    let place = this.latestOf[key] as number;
    while (place >= 0) {
      const old = this.olds[place] as number;
      if (key & 1 ? old > value : old < value) return place;
      place = this.earlier[place] as number;
    }
    return -1;
  }

  /** The number of decisions taken before a place of the history. */
  levelOf(place: number): number {
    let [low, high] = [0, this.decisions.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.decisions[middle] as number) <= place) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Length of the history when the decision of a level, counted from 1, was taken. */
  startOf(level: number): number {
    return this.decisions[level - 1] as number;
  }

  reasonAt(place: number): Reason {
    return this.reasons[place];
  }

  /** Statements from which the statement of a key at a place follows; undefined where it was decided. */
  whyAt(place: number, key: number, value: number): readonly number[] | undefined {
    const reason = this.reasons[place];
    return reason === undefined ? undefined : this.antecedents(reason, key, value);
  }

  /** Move a bound along a wait in the direction in which `key` narrowed; false where it contradicts. */
  along(arc: Arc, key: number): boolean {
    if (key & 1) return this.imply(2 * arc.from + 1, pulled(this.model, arc, this.high(arc.to)), arc);
    return this.imply(2 * arc.to, pushed(this.model, arc, this.low(arc.from)), arc);
  }
}
