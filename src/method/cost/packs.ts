import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { unitByCode } from '../../model/quantity/index.ts';
import { type Amount, amountWords, inUnit, tidy } from './amounts.ts';
import { type Choice, cheapestPacks, covers, type Found } from './cheapest.ts';
import { type Currency, exact, isSum, toCoin } from './money.ts';

/** A pack as it is sold. */
export interface Pack {
  size: Amount;
  /** In whole units of the currency; left out where the shop has no price for it. */
  price?: number | undefined;
  /** How many can be had; as many as are wanted where it is left out. */
  available?: number | undefined;
}

/** How a material is sold and what of it is on the shelf. */
export interface Goods {
  id: string;
  /** As it stands on a bill. */
  what: string;
  packs: readonly Pack[];
  onHand?: Amount | undefined;
  /** g/mL, where it is needed by weight and sold by volume or the other way. */
  density?: number | undefined;
}

/** Packs of one size that are bought. */
export interface BoughtPack {
  size: Amount;
  count: number;
  /** Of one pack. */
  price: number;
}

/** What to buy. All amounts in the unit of the need. */
export interface Purchase {
  unit: string;
  /** What is needed, with its spare. */
  need: number;
  onHand: number;
  /** What the shelf does not cover. */
  buy: number;
  /** Largest first; empty where nothing is bought or nothing can be priced. */
  packs: readonly BoughtPack[];
  /** Paid for the packs; null where it is not known, and `missing` says why. */
  cost: number | null;
  /** Value of all that is used, the shelf's share included, at the price for an amount of the packs bought, or of the cheapest where none is. */
  used: number | null;
  /** On the shelf afterwards; null where nothing could be bought. */
  left: number | null;
  /** True where sizes that have no common division were too many to try all: the cheapest that was found is given. */
  notProved?: true;
  /** Why there is no cost, in words for the bill: `no price in the shop record`. */
  missing?: string;
}

/** Sizes of one material that are looked at, and packs of one purchase, at most. */
export const mostSizes = 24;
export const mostPacks = 10_000;
/** Decimals of a price, at most: a price for a gram may be finer than a coin. */
const mostDecimals = 4;
/** A price of a pack, at most. */
const mostPrice = 1e7;

/** What a pack holds, at least, in the unit that it is sold in. */
const leastSize = 1e-9;

/** What a bill says of goods without a price. */
export const noPrice = 'no price in the shop record';

/**
 * What to buy for a need at least cost; of equal cost fewer packs, then less left over. The choice is exact.
 *
 * @param need more than 0 or nothing, spare not yet in it
 * @param spare share of the need that is bought beyond it, 0.1 for a tenth
 * @returns the purchase, with `missing` in place of a cost where there is no price or not enough to be had; an error where amounts cannot be
 *   compared or are no numbers
 */
export function bestPacks(need: Amount, goods: Goods, currency: Currency, spare = 0): Outcome<Purchase> {
  const wrong = faultOf(need, goods, spare);
  if (wrong) return wrong;
  const { unit } = need;
  const counted = unitByCode(unit)?.dimension === 'count';
  const withSpare = tidy(need.value * (1 + spare));
  const wanted = counted ? Math.ceil(withSpare - 1e-9) : withSpare;
  const shelf = goods.onHand ? inUnit(goods.onHand, unit, goods.what, goods.density) : answer(0);
  if (!shelf.ok) return shelf;
  const onHand = shelf.value;
  const buy = covers(onHand, wanted) ? 0 : tidy(wanted - onHand);

  const priced: { pack: Pack; size: number; price: number }[] = [];
  for (const pack of goods.packs) {
    const size = inUnit(pack.size, unit, goods.what, goods.density);
    if (!size.ok) return size;
    if (pack.price !== undefined) priced.push({ pack, size: size.value, price: pack.price });
  }
  const base = { unit, need: wanted, onHand, buy };
  const without = (missing: string): Outcome<Purchase> =>
    answer({ ...base, packs: [], cost: null, used: null, left: null, missing });
  if (priced.length === 0) {
    // What the shelf covers costs nothing now, and what it is worth is not known.
    return buy === 0
      ? answer({ ...base, packs: [], cost: 0, used: null, left: tidy(onHand - wanted), missing: noPrice })
      : without(noPrice);
  }
  const worth = ({ price, size }: { price: number; size: number }) => exact(price).div(size);
  if (buy === 0) {
    const cheapest = priced.map(worth).reduce((one, other) => (other.lt(one) ? other : one));
    const used = toCoin(cheapest.times(wanted), currency);
    return answer({ ...base, packs: [], cost: 0, used, left: tidy(onHand - wanted) });
  }
  const smallest = Math.min(...priced.map(({ size }) => size));
  if (buy / smallest > mostPacks) {
    return refuse(
      'amount',
      `${amountWords({ value: buy, unit })} of ${goods.what} would be more than ${mostPacks} packs of the smallest size, ${amountWords({ value: smallest, unit })}`,
      'Look whether the units are right, or sell it in larger packs.',
    );
  }
  const found = cheapestIn((priced[0] as { pack: Pack }).pack.size.unit, { value: buy, unit }, goods, priced);
  if (!found.ok) return found;
  if (!found.value) {
    const all = priced.reduce((sum, { size, pack }) => sum + size * (pack.available ?? 0), 0);
    return without(
      `only ${amountWords({ value: tidy(all), unit })} can be had of the ${amountWords({ value: buy, unit })} to buy`,
    );
  }
  const { counts, proved } = found.value;
  const bought = priced
    .map(({ pack, size, price }, at) => ({ size: pack.size, holds: size, count: counts[at] ?? 0, price }))
    .filter(({ count }) => count > 0)
    .sort((one, other) => other.holds - one.holds);
  const amount = bought.reduce((sum, { holds, count }) => sum + holds * count, 0);
  const paid = bought.reduce((sum, { price, count }) => sum.plus(exact(price).times(count)), exact(0));
  return answer({
    ...base,
    packs: bought.map(({ size, count, price }) => ({ size, count, price })),
    cost: toCoin(paid, currency),
    used: toCoin(paid.times(wanted).div(amount), currency),
    // The noise of units may leave less than nothing.
    left: Math.max(0, tidy(onHand + amount - wanted)),
    ...(proved ? {} : { notProved: true as const }),
  });
}

/** The choice of packs in a unit that packs are sold in, where their sizes are round numbers. */
function cheapestIn(
  unit: string,
  buy: Amount,
  goods: Goods,
  priced: readonly { pack: Pack; price: number }[],
): Outcome<Found | undefined> {
  const need = inUnit(buy, unit, goods.what, goods.density);
  if (!need.ok) return need;
  const choices: Choice[] = [];
  for (const { pack, price } of priced) {
    const size = inUnit(pack.size, unit, goods.what, goods.density);
    if (!size.ok) return size;
    const { available } = pack;
    const whole = exact(price)
      .times(10 ** mostDecimals)
      .round()
      .toNumber();
    choices.push({ size: size.value, price: whole, ...(available === undefined ? {} : { available }) });
  }
  return answer(cheapestPacks(need.value, choices));
}

function faultOf(need: Amount, goods: Goods, spare: number): ReturnType<typeof refuse> | undefined {
  const { what } = goods;
  if (!isSum(need.value)) {
    return refuse(
      'amount',
      `The need of ${what} is ${need.value}, and it must be a number of 0 or more`,
      'Look at the figure that it comes from.',
    );
  }
  if (!isSum(spare) || spare > 10)
    return refuse(
      'spare',
      `The spare of ${what} is ${spare}, and it must be a share from 0 to 10`,
      'Write a tenth as 0.1.',
    );
  if (!unitByCode(need.unit))
    return refuse(
      'unit',
      `“${need.unit}” of ${what} is not a unit that is known here`,
      'Give a UCUM code such as L, kg, [bf_i] or {count}.',
    );
  if (goods.onHand && !isSum(goods.onHand.value))
    return refuse('onHand', `What is on the shelf of ${what} is ${goods.onHand.value}`, 'Give 0 or more.');
  if (goods.packs.length > mostSizes)
    return refuse(
      'packs',
      `${what} has ${goods.packs.length} sizes of pack, more than ${mostSizes}`,
      'Leave out those that are never bought.',
    );
  for (const [at, { size, price, available }] of goods.packs.entries()) {
    const field = `packs.${at}`;
    if (!isSum(size.value) || size.value < leastSize)
      return refuse(
        `${field}.size`,
        `A pack of ${what} holds ${size.value}`,
        'Give more, in a smaller unit where it is little.',
      );
    if (available !== undefined && !(Number.isInteger(available) && available >= 0))
      return refuse(
        `${field}.available`,
        `${available} packs of ${what} can be had`,
        'Give a whole number, or leave it out.',
      );
    if (price === undefined) continue;
    if (!isSum(price) || price > mostPrice)
      return refuse(
        `${field}.price`,
        `A pack of ${what} costs ${price}; what is taken is 0 to ${mostPrice}`,
        'Look at the price.',
      );
    if (Number(price.toFixed(mostDecimals)) !== price)
      return refuse(
        `${field}.price`,
        `The price ${price} of ${what} has more than ${mostDecimals} decimals`,
        'Round it.',
      );
  }
  return undefined;
}
