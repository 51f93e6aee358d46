import type { Clause, Trail } from './trail.ts';

/** What was learned from a contradiction: a clause whose first statement follows once decisions above `level` are forgotten. */
export interface Lesson {
  readonly literals: number[];
  readonly level: number;
}

/** Clauses with two watched statements each: a clause is looked at only when one of these two has become false. */
export class Clauses {
  private readonly trail: Trail;
  /** By key of the statement watched. */
  private readonly watching: Clause[][];
  private learned: Clause[] = [];
  private step = 1;
  private limit: number;

  constructor(trail: Trail) {
    this.trail = trail;
    this.watching = Array.from(trail.bound, () => []);
    this.limit = 2000;
  }

  /** Keep a clause of two statements or more. */
  add(literals: number[]): Clause {
    const clause: Clause = { literals, activity: this.step };
    this.watching[literals[0] as number]?.push(clause);
    this.watching[literals[2] as number]?.push(clause);
    this.learned.push(clause);
    return clause;
  }

  /** A clause took part in a contradiction. */
  used(clause: Clause): void {
    clause.activity += this.step;
  }

  /** Look at the clauses that a narrowing of `key` may have made false; false where one contradicts. */
  propagate(key: number): boolean {
    const { trail } = this;
    const falsified = key ^ 1;
    const list = this.watching[falsified] as Clause[];
    let kept = 0;
    for (let at = 0; at < list.length; at += 1) {
      const clause = list[at] as Clause;
      const { literals } = clause;
      // The statement that may be false goes second.
      if (literals[0] === falsified && trail.fails(falsified, literals[1] as number)) swap(literals, 0, 2);
      if (literals[2] !== falsified || !trail.fails(falsified, literals[3] as number)) {
        list[kept++] = clause;
        continue;
      }
      if (trail.holds(literals[0] as number, literals[1] as number)) {
        list[kept++] = clause;
        continue;
      }
      let other = 4;
      while (other < literals.length && trail.fails(literals[other] as number, literals[other + 1] as number))
        other += 2;
      if (other < literals.length) {
        swap(literals, 2, other);
        const watched = literals[2] as number;
        if (watched === falsified) list[kept++] = clause;
        else this.watching[watched]?.push(clause);
        continue;
      }
      list[kept++] = clause;
      if (!trail.imply(literals[0] as number, literals[1] as number, clause)) {
        for (at += 1; at < list.length; at += 1) list[kept++] = list[at] as Clause;
        list.length = kept;
        return false;
      }
    }
    list.length = kept;
    return true;
  }

  /** Age all clauses; when there are too many, forget the half that took part least. Only where no decision stands. */
  tidy(): void {
    if (this.learned.length < this.limit) return;
    const order = [...this.learned].sort((one, two) => two.activity - one.activity);
    const kept = new Set(order.slice(0, this.limit / 2));
    for (const clause of order) if (clause.literals.length <= 4) kept.add(clause);
    this.learned = this.learned.filter((clause) => kept.has(clause));
    for (const list of this.watching) {
      const left = list.filter((clause) => kept.has(clause));
      list.length = 0;
      for (const clause of left) list.push(clause);
    }
    this.limit += 200;
  }

  age(): void {
    this.step *= 1.001;
    if (this.step < 1e100) return;
    for (const clause of this.learned) clause.activity *= 1e-100;
    this.step *= 1e-100;
  }
}

function swap(literals: number[], one: number, two: number): void {
  for (const shift of [0, 1]) {
    const kept = literals[one + shift] as number;
    literals[one + shift] = literals[two + shift] as number;
    literals[two + shift] = kept;
  }
}

/**
 * What follows from the contradiction that the trail holds: go back through the reasons of the latest decision's consequences until one
 * statement alone stands for them (the first unique implication point), and deny it together with the earlier ones. Undefined where the
 * contradiction needs no decision: then there is no plan.
 *
 * @param touched told every statement that took part
 */
export function learn(
  trail: Trail,
  touched: (key: number, value: number) => void,
  used: (clause: Clause) => void,
): Lesson | undefined {
  const needs = new Map<number, { value: number; place: number }>();
  let atTop = 0;
  let bottom = 0;
  const add = (key: number, value: number): void => {
    const place = trail.placeOf(key, value);
    if (place < bottom) return;
    const known = needs.get(key);
    if (known !== undefined) {
      if (key & 1 ? known.value <= value : known.value >= value) return;
      if (known.place >= top) atTop -= 1;
    }
    if (place >= top) atTop += 1;
    needs.set(key, { value, place });
    touched(key, value);
  };
  const level = highestLevel(trail);
  if (level === 0) return undefined;
  const top = trail.startOf(level);
  bottom = trail.startOf(1);
  for (let at = 0; at < trail.conflict.length; at += 2)
    add(trail.conflict[at] as number, trail.conflict[at + 1] as number);
  let asserting: { key: number; value: number } | undefined;
  for (let place = trail.length - 1; place >= top; place -= 1) {
    const key = trail.keyAt(place);
    const need = needs.get(key);
    if (need === undefined || need.place !== place) continue;
    if (atTop === 1) {
      asserting = { key, value: need.value };
      break;
    }
    needs.delete(key);
    atTop -= 1;
    const reason = trail.reasonAt(place);
    if (reason !== undefined && 'literals' in reason) used(reason);
    const why = trail.whyAt(place, key, need.value) as readonly number[];
    for (let at = 0; at < why.length; at += 2) add(why[at] as number, why[at + 1] as number);
  }
  if (asserting === undefined) return undefined;
  needs.delete(asserting.key);
  drop(trail, needs, asserting, bottom);
  const literals = [asserting.key ^ 1, trail.denied(asserting.key, asserting.value)];
  let [back, deepest] = [0, -1];
  for (const [key, { value, place }] of needs) {
    literals.push(key ^ 1, trail.denied(key, value));
    if (place > deepest) {
      deepest = place;
      back = literals.length - 2;
    }
  }
  if (needs.size > 0) swap(literals, 2, back);
  return { literals, level: deepest < 0 ? 0 : trail.levelOf(deepest) };
}

/** Drop the statements that follow from the others. */
function drop(
  trail: Trail,
  needs: Map<number, { value: number; place: number }>,
  asserting: { key: number; value: number },
  bottom: number,
): void {
  const covered = (key: number, value: number): boolean => {
    if (trail.placeOf(key, value) < bottom) return true;
    const need = key === asserting.key ? asserting : needs.get(key);
    return need !== undefined && (key & 1 ? need.value <= value : need.value >= value);
  };
  for (const [key, { value, place }] of [...needs]) {
    const why = trail.whyAt(place, key, value);
    if (why === undefined) continue;
    needs.delete(key);
    let all = true;
    for (let at = 0; all && at < why.length; at += 2) all = covered(why[at] as number, why[at + 1] as number);
    if (!all) needs.set(key, { value, place });
  }
}

/** The level of the latest decision that the contradiction needs. */
function highestLevel(trail: Trail): number {
  let level = 0;
  for (let at = 0; at < trail.conflict.length; at += 2) {
    const place = trail.placeOf(trail.conflict[at] as number, trail.conflict[at + 1] as number);
    if (place >= 0) level = Math.max(level, trail.levelOf(place));
  }
  return level;
}
