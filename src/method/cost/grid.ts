import type { Choice } from './cheapest.ts';

/** Sizes are taken as whole numbers of this division of their unit, where they are. */
const division = 1e6;
/** Cells of all tables together, at most: beyond it the grid is too fine, and the search goes on without one. */
const mostCells = 4e6;

const commonDivisor = (one: number, other: number): number => (other === 0 ? one : commonDivisor(other, one % other));

/** A size as a whole number of divisions; undefined where it is none. */
function inDivisions(size: number): number | undefined {
  const whole = Math.round(size * division);
  return whole > 0 && Math.abs(whole - size * division) <= 1e-9 * whole && Number.isSafeInteger(whole)
    ? whole
    : undefined;
}

/** Cost and packs of the cheapest choice for each amount of the grid; an amount that none comes to costs infinitely much. */
interface Table {
  cost: Float64Array;
  packs: Float64Array;
}

/**
 * The cheapest choice of packs that covers a need, by dynamic programming over whole multiples of the greatest division that all sizes have in
 * common. Exact: cost, then packs, then what is left over.
 *
 * @returns how many of each; `none` where all together are not enough; undefined where the sizes have no division coarse enough
 */
export function cheapestOnGrid(need: number, choices: readonly Choice[]): number[] | 'none' | undefined {
  const whole = choices.map(({ size }) => inDivisions(size));
  if (whole.some((size) => size === undefined) || choices.length === 0)
    return choices.length === 0 ? 'none' : undefined;
  const step = (whole as number[]).reduce(commonDivisor, 0);
  const sizes = (whole as number[]).map((size) => size / step);
  const wanted = Math.ceil(((need * division) / step) * (1 - 1e-9));
  // A pack that covers the need alone stands alone: whatever else were bought with it could be left out.
  const single = sizes.reduce<{ at: number } | undefined>((best, size, at) => {
    if (size < wanted || (choices[at] as Choice).available === 0) return best;
    const price = (choices[at] as Choice).price;
    const before = best && (choices[best.at] as Choice).price;
    const better =
      before === undefined || price < before || (price === before && size < (sizes[best?.at ?? 0] as number));
    return better ? { at } : best;
  }, undefined);
  const small = sizes
    .map((cells, at) => ({ ...(choices[at] as Choice), at, cells }))
    .filter(({ cells }) => cells < wanted);
  const reach = small.reduce((most, { cells }) => Math.max(most, cells), 0);
  // No cheapest choice goes beyond the need by a pack or more: that pack could be left out.
  const cells = wanted + reach;
  if (cells * (small.length + 2) > mostCells) return undefined;
  let table: Table = { cost: new Float64Array(cells).fill(Number.POSITIVE_INFINITY), packs: new Float64Array(cells) };
  table.cost[0] = 0;
  const taken = small.map(({ cells: size, price, available }) => {
    const used = new Uint32Array(cells);
    table = withChoice(table, size, price, available ?? Number.POSITIVE_INFINITY, used);
    return used;
  });
  let best = -1;
  const { cost, packs } = table;
  for (let cell = wanted; cell < cells; cell += 1) {
    if (!Number.isFinite(cost[cell] as number)) continue;
    if (best < 0 || less(cost[cell] as number, packs[cell] as number, cost[best] as number, packs[best] as number))
      best = cell;
  }
  const counts = choices.map(() => 0);
  if (single) {
    const { price, at } = { price: (choices[single.at] as Choice).price, at: single.at };
    const alone =
      best < 0 ||
      less(price, 1, cost[best] as number, packs[best] as number) ||
      (price === cost[best] && packs[best] === 1 && (sizes[at] as number) < best);
    if (alone) {
      counts[at] = 1;
      return counts;
    }
  }
  if (best < 0) return 'none';
  let cell = best;
  for (const [back, used] of [...taken.entries()].reverse()) {
    const { at, cells: size } = small[back] as (typeof small)[number];
    const count = used[cell] as number;
    counts[at] = count;
    cell -= count * size;
  }
  return counts;
}

const less = (cost: number, packs: number, otherCost: number, otherPacks: number): boolean =>
  cost < otherCost || (cost === otherCost && packs < otherPacks);

/**
 * The table with one more size to choose from: for each amount the best of those that are whole multiples of the size before it, within how
 * many there are. A sliding least over each remainder, so that every cell is touched once.
 *
 * @param used filled with how many of the size each amount takes
 */
function withChoice({ cost, packs }: Table, size: number, price: number, available: number, used: Uint32Array): Table {
  const next: Table = { cost: new Float64Array(cost.length), packs: new Float64Array(cost.length) };
  for (let rest = 0; rest < Math.min(size, cost.length); rest += 1) {
    // Places of the window, the best first: each later one is better than all that it drove out.
    const queue: number[] = [];
    let head = 0;
    for (let cell = rest, turn = 0; cell < cost.length; cell += size, turn += 1) {
      const own = { cost: (cost[cell] as number) - turn * price, packs: (packs[cell] as number) - turn };
      while (queue.length > head) {
        const last = queue.at(-1) as number;
        const at = rest + last * size;
        const [lastCost, lastPacks] = [(cost[at] as number) - last * price, (packs[at] as number) - last];
        if (less(lastCost, lastPacks, own.cost, own.packs)) break;
        queue.pop();
      }
      queue.push(turn);
      while (turn - (queue[head] as number) > available) head += 1;
      const from = queue[head] as number;
      const at = rest + from * size;
      const count = turn - from;
      next.cost[cell] = (cost[at] as number) + count * price;
      next.packs[cell] = (packs[at] as number) + count;
      used[cell] = count;
    }
  }
  return next;
}
