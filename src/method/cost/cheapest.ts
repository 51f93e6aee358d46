import { cheapestOnGrid } from './grid.ts';

/** A size to choose: how much it holds and what it costs, in whole numbers of a small coin. */
export interface Choice {
  size: number;
  /** Whole coins. */
  price: number;
  /** How many there are; none where as many as are wanted. */
  available?: number;
}

/** How many of each choice, in their order. */
interface State {
  amount: number;
  cost: number;
  packs: number;
  counts: readonly number[];
}

/** An amount covers a need up to the noise of units. */
export const covers = (amount: number, need: number): boolean => amount >= need * (1 - 1e-9);

/** Two amounts that differ by no more than the noise of units. */
const same = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));

/** Less cost, then fewer packs, then less left over: below zero where the first is better. */
export function compareStates(one: Omit<State, 'counts'>, other: Omit<State, 'counts'>): number {
  if (one.cost !== other.cost) return one.cost - other.cost;
  if (one.packs !== other.packs) return one.packs - other.packs;
  return same(one.amount, other.amount) ? 0 : one.amount - other.amount;
}

/** The most of a choice that can help: enough of it alone, or all there are. */
function mostOf({ size, available = Number.POSITIVE_INFINITY }: Choice, need: number): number {
  return Math.min(available, Math.max(0, Math.ceil((need * (1 - 1e-9)) / size)));
}

/** Beginnings that are made, at most, before the search without a grid stops. */
const mostBeginnings = 100_000;

/** A choice of packs: how many of each, and whether no other can be better. */
export interface Found {
  counts: number[];
  proved: boolean;
}

/**
 * The cheapest choice of packs that covers a need; of equal cost the one of fewer packs, then the one that leaves less over.
 *
 * Exact over the grid that the sizes have in common. Sizes without one, such as gallons beside litres, are searched by branch and bound, which
 * is exact too unless it would take too long: then the best that was found is given, and not called proved.
 *
 * @param need more than 0, in the unit of the sizes
 * @param choices sizes above 0, prices in whole coins
 * @returns undefined where all that can be had is not enough
 */
export function cheapestPacks(need: number, choices: readonly Choice[]): Found | undefined {
  const onGrid = cheapestOnGrid(need, choices);
  if (onGrid === undefined) return cheapestBySearch(need, choices);
  return onGrid === 'none' ? undefined : { counts: onGrid, proved: true };
}

/**
 * The same by branch and bound. Sizes are tried in the order of their price for an amount; of the beginnings that have been made so far, those
 * are dropped that another one beats whatever follows, and those that cannot come to less than the best whole choice even if what is missing
 * were bought in fractions at the best price that is left.
 */
export function cheapestBySearch(need: number, choices: readonly Choice[]): Found | undefined {
  const order = choices
    .map((choice, at) => ({ ...choice, at }))
    .filter((choice) => mostOf(choice, need) > 0)
    // Cheapest for an amount first; the larger first of equals, which makes for fewer packs.
    .sort((one, other) => one.price * other.size - other.price * one.size || other.size - one.size);
  const reach = order.map((_, from) =>
    order.slice(from).reduce((all, choice) => all + choice.size * mostOf(choice, need), 0),
  );
  if (order.length === 0 || !covers(reach[0] ?? 0, need)) return undefined;
  const largest = order.map((_, from) => Math.max(...order.slice(from).map(({ size }) => size)));
  let best = inOrder(need, order);
  let open: State[] = [{ amount: 0, cost: 0, packs: 0, counts: [] }];
  let beginnings = 0;
  for (const [at, choice] of order.entries()) {
    const next = order[at + 1];
    const made: State[] = [];
    for (const state of open) {
      const most = mostOf(choice, need - state.amount);
      for (let count = most; count >= 0 && beginnings < mostBeginnings; count -= 1) {
        beginnings += 1;
        const grown: State = {
          amount: state.amount + count * choice.size,
          cost: state.cost + count * choice.price,
          packs: state.packs + count,
          counts: [...state.counts, count],
        };
        if (covers(grown.amount, need)) {
          if (!best || compareStates(grown, best) < 0) best = grown;
          continue;
        }
        if (!next || !covers(grown.amount + (reach[at + 1] ?? 0), need)) break;
        const missing = need * (1 - 1e-9) - grown.amount;
        // Costs are whole, the bound is a binary fraction: its noise is far under a thousandth of a coin.
        const leastCost = grown.cost + Math.ceil(missing * (next.price / next.size) - 1e-3);
        if (best && leastCost > best.cost) break;
        const leastPacks = grown.packs + Math.ceil(missing / (largest[at + 1] ?? next.size) - 1e-9);
        if (best && leastCost === best.cost && leastPacks > best.packs) continue;
        made.push(grown);
      }
    }
    open = undominated(made);
  }
  if (!best) return undefined;
  const counts = choices.map(() => 0);
  for (const [at, { at: place }] of order.entries()) counts[place] = best.counts[at] ?? 0;
  return { counts, proved: beginnings < mostBeginnings };
}

/** A first whole choice: as many of each as help, in order. It is good where one size serves for all. */
function inOrder(need: number, order: readonly Choice[]): State | undefined {
  let best: State | undefined;
  for (const [from] of order.entries()) {
    const state = { amount: 0, cost: 0, packs: 0, counts: order.map(() => 0) };
    for (const [at, choice] of order.entries()) {
      if (at < from || covers(state.amount, need)) continue;
      const count = mostOf(choice, need - state.amount);
      state.amount += count * choice.size;
      state.cost += count * choice.price;
      state.packs += count;
      state.counts[at] = count;
    }
    if (covers(state.amount, need) && (!best || compareStates(state, best) < 0)) best = state;
  }
  return best;
}

/**
 * Beginnings that no other beats. One beats another whatever follows where it holds as much or more and is cheaper, or as cheap with fewer packs;
 * where cost and packs are equal the amounts must be too, since less left over decides then.
 */
function undominated(states: readonly State[]): State[] {
  const sorted = [...states].sort((one, other) => other.amount - one.amount || compareStates(one, other));
  const kept: State[] = [];
  let cheapest: State | undefined;
  for (const state of sorted) {
    const beaten =
      cheapest !== undefined &&
      (cheapest.cost < state.cost || (cheapest.cost === state.cost && cheapest.packs < state.packs));
    const twin = kept.at(-1);
    if (beaten || (twin && same(twin.amount, state.amount) && compareStates(twin, state) === 0)) continue;
    kept.push(state);
    if (!cheapest || compareStates({ ...state, amount: 0 }, { ...cheapest, amount: 0 }) < 0) cheapest = state;
  }
  return kept;
}
