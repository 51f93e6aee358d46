import type { Kind, Plate, Problem } from './yield-plate.ts';
import { type Effort, type Way, waysOf } from './yield-sections.ts';
import { onePlate } from './yield-single.ts';

/** A plan for the whole rack: the way each plate is cut, by its place on the rack. */
export interface RackPlan {
  ways: ReadonlyMap<number, Way>;
  /** Blanks of each kind, never above what is wanted. */
  counts: readonly number[];
  /** Whether every other plan was ruled out: none gives more blank area, or the same from less board. */
  proved: boolean;
}

/** Looks at a way in one search over a plate, and states in one over the rack: together about a third of a second. */
const looks = 600_000;
const mostStates = 40_000;
const mostSteps = 6_000_000;
/** More pieces in a row than this are planned board by board. */
const mostInRow = 60;
/** More kinds than this have too many ways to list. */
const mostKinds = 12;

const areaOf = (counts: readonly number[], kinds: readonly Kind[]) =>
  counts.reduce((sum, count, at) => sum + count * (kinds[at] as Kind).area, 0);

/** Whether ways can be listed at all: few kinds, and no plate that holds very many pieces in a row. */
function listable({ kinds, plates, kerf }: Problem): boolean {
  const least = (side: 'long' | 'wide') => Math.min(...kinds.map((kind) => kind[side])) + kerf;
  const rows = plates.every(
    ({ usable }) =>
      (usable.to - usable.from) / least('long') <= mostInRow && (usable.high - usable.low) / least('wide') <= mostInRow,
  );
  return kinds.length <= mostKinds && rows;
}

interface State {
  counts: readonly number[];
  /** Area of the boards cut into, and the longest piece left over. */
  stock: number;
  offcut: number;
  /** The plate and way that led here. */
  plate?: number;
  way?: Way;
  before?: State;
}

const better = (a: State, b: State) => a.stock < b.stock || (a.stock === b.stock && a.offcut > b.offcut);

/**
 * The best plan over all plates, each cut in one of its fullest ways: board after board, keeping for every reachable set of blanks
 * the one that cuts into the least board.
 */
function overAll(problem: Problem): RackPlan | undefined {
  const { plates, kinds } = problem;
  const effort: Effort = { left: looks, most: looks, breadth: 400, cut: false };
  const bySignature = new Map<string, Way[]>();
  const ways = plates.map((plate) => {
    const known = bySignature.get(plate.signature) ?? waysOf(problem, plate, effort);
    bySignature.set(plate.signature, known);
    return known;
  });
  let states = new Map<string, State>();
  const start: State = { counts: kinds.map(() => 0), stock: 0, offcut: 0 };
  states.set(start.counts.join(), start);
  let proved = !effort.cut;
  let taken = 0;
  for (const [plate, { area }] of plates.entries()) {
    const next = new Map(states);
    for (const state of states.values()) {
      for (const way of ways[plate] as Way[]) {
        if (!way.first) continue;
        taken += 1;
        const counts = kinds.map(({ count }, at) =>
          Math.min(count, (state.counts[at] as number) + (way.counts[at] as number)),
        );
        const reached: State = {
          counts,
          stock: state.stock + area,
          offcut: Math.max(state.offcut, way.offcut),
          plate,
          way,
          before: state,
        };
        const key = counts.join();
        if (key === state.counts.join()) continue;
        const known = next.get(key);
        if (!known || better(reached, known)) next.set(key, reached);
      }
    }
    if (taken > mostSteps) return undefined;
    states = next;
    if (states.size > mostStates) {
      proved = false;
      const sorted = [...states].sort(([, a], [, b]) => areaOf(b.counts, kinds) - areaOf(a.counts, kinds));
      states = new Map(sorted.slice(0, mostStates / 8));
    }
  }
  let best = start;
  for (const state of states.values()) {
    const more = areaOf(state.counts, kinds) - areaOf(best.counts, kinds);
    if (more > 0 || (more === 0 && better(state, best))) best = state;
  }
  const chosen = new Map<number, Way>();
  for (let at: State | undefined = best; at; at = at.before)
    if (at.way && at.plate !== undefined) chosen.set(at.plate, at.way);
  return { ways: chosen, counts: best.counts, proved };
}

const countsLeft = (kinds: readonly Kind[], counts: readonly number[]) =>
  kinds.map((kind, at) => ({ ...kind, count: kind.count - (counts[at] as number) }));

/** A plan made board by board: each time the board of which the greatest share becomes blanks that are still wanted. */
function boardByBoard(problem: Problem): RackPlan {
  const { plates, kinds } = problem;
  const ways = new Map<number, Way>();
  let counts: readonly number[] = kinds.map(() => 0);
  // What a board gives can only grow less as blanks are found a place: a board is looked at again when its turn comes.
  const queue = plates.map((plate, at) => ({
    at,
    share: Number.POSITIVE_INFINITY,
    way: undefined as Way | undefined,
    plate,
  }));
  while (queue.length > 0 && counts.some((count, at) => count < (kinds[at] as Kind).count)) {
    queue.sort((a, b) => b.share - a.share || a.plate.area - b.plate.area || a.at - b.at);
    const head = queue[0] as (typeof queue)[number];
    const way = onePlate({ ...problem, kinds: countsLeft(kinds, counts) }, head.plate);
    const share = way.area / head.plate.area;
    const same = head.way !== undefined && way.area === head.way.area;
    head.way = way;
    head.share = share;
    if (share <= 0) {
      queue.shift();
      continue;
    }
    const second = queue[1]?.share ?? 0;
    if (!same && share < second) continue;
    queue.shift();
    ways.set(head.at, way);
    counts = counts.map((count, at) => count + (way.counts[at] as number));
  }
  return { ways: ontoSmaller(problem, ways), counts, proved: false };
}

/** Move what a board gives to the smallest unused board that gives the same. */
function ontoSmaller(problem: Problem, ways: Map<number, Way>): Map<number, Way> {
  const area = (at: number) => (problem.plates[at] as Plate).area;
  const unused = [...problem.plates.keys()].filter((at) => !ways.has(at)).sort((a, b) => area(a) - area(b));
  const result = new Map(ways);
  for (const at of [...ways.keys()].sort((a, b) => area(b) - area(a))) {
    const way = ways.get(at) as Way;
    const kinds = problem.kinds.map((kind, index) => ({ ...kind, count: way.counts[index] as number }));
    for (const [index, other] of unused.entries()) {
      if (area(other) >= area(at)) break;
      const moved = onePlate({ ...problem, kinds }, problem.plates[other] as Plate);
      if (moved.area < way.area) continue;
      result.delete(at);
      result.set(other, moved);
      unused.splice(index, 1);
      break;
    }
  }
  return result;
}

/** Plan the rack: over all plans where that can be done, otherwise board by board; the same on every machine. */
export function planRack(problem: Problem): RackPlan {
  const greedy = boardByBoard(problem);
  const all = listable(problem) ? overAll(problem) : undefined;
  if (!all) return greedy;
  const stock = (plan: RackPlan) =>
    [...plan.ways.keys()].reduce((sum, at) => sum + (problem.plates[at] as Plate).area, 0);
  const more = areaOf(all.counts, problem.kinds) - areaOf(greedy.counts, problem.kinds);
  return more > 0 || (more === 0 && (all.proved || stock(all) <= stock(greedy))) ? all : greedy;
}

/** Clear face of a plate within its trimmed edges: no plan gives more blank area of it. */
function clearArea({ usable, faults }: Plate): number {
  if (usable.to <= usable.from || usable.high <= usable.low) return 0;
  // Strips between all edges of faults: exact for rectangles that overlap.
  const cuts = [...new Set([usable.from, usable.to, ...faults.flatMap(({ from, to }) => [from, to])])]
    .filter((at) => at >= usable.from && at <= usable.to)
    .sort((a, b) => a - b);
  let clear = 0;
  for (const [index, from] of cuts.slice(0, -1).entries()) {
    const to = cuts[index + 1] as number;
    const across = faults
      .filter((fault) => fault.from < to && fault.to > from)
      .map(({ low, high }) => [Math.max(low, usable.low), Math.min(high, usable.high)] as const)
      .sort((a, b) => a[0] - b[0]);
    let free = usable.high - usable.low;
    let at = usable.low;
    for (const [low, high] of across) {
      free -= Math.max(0, high - Math.max(low, at));
      at = Math.max(at, high);
    }
    clear += (to - from) * free;
  }
  return clear;
}

/** Bounds that hold for any plan: most blank area, and least area of board that gives so much. */
export function bounds({ plates, kinds }: Problem, blankArea: number): { mostArea: number; leastStock: number } {
  const holds = plates.map((plate) => ({ clear: clearArea(plate), area: plate.area }));
  const wanted = kinds.reduce((sum, { area, count }) => sum + area * count, 0);
  const fits = kinds
    .filter(({ long, wide }) =>
      plates.some(({ usable }) => usable.to - usable.from >= long && usable.high - usable.low >= wide),
    )
    .reduce((sum, { area, count }) => sum + area * count, 0);
  const mostArea = Math.min(
    wanted,
    fits,
    holds.reduce((sum, { clear }) => sum + clear, 0),
  );
  let left = blankArea;
  let leastStock = 0;
  for (const { clear, area } of holds
    .filter(({ clear }) => clear > 0)
    .sort((a, b) => a.area / a.clear - b.area / b.clear)) {
    if (left <= 0) break;
    const share = Math.min(1, left / clear);
    leastStock += share * area;
    left -= share * clear;
  }
  return { mostArea, leastStock };
}
