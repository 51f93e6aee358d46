import type { FieldError, Outcome } from '../../model/evidence/index.ts';
import { amount, formatNumber } from '../../model/quantity/index.ts';
import { type Currency, exact, isSum, toCoin, total } from './money.ts';
import { moneyWords } from './money-words.ts';
import { mostPieces } from './price-request.ts';

/** Hands-on time of a step. */
export interface BatchStep {
  id: string;
  what: string;
  /** min, each time that it is set up. */
  setUp: number;
  /** min, for each piece. */
  each: number;
  /** Pieces that one set-up serves, such as a clamping; the whole batch where it is left out. */
  serves?: number | undefined;
}

/** What holds only so many pieces at a time for as long as a batch takes: moulds, clamps, shelf. */
export interface Capacity {
  id: string;
  what: string;
  /** Pieces at a time. */
  pieces: number;
}

/** What batches are compared by. Money in whole units of the currency. */
export interface BatchRequest {
  currency: Currency;
  steps: readonly BatchStep[];
  /** Money for an hour of hands-on time, overhead included where the shop counts it by the hour. */
  rate: number;
  /** Consumables: of a batch whatever its size, such as a cup and gloves; and of a piece. */
  consumables?: { perBatch: number; perPiece: number } | undefined;
  capacities?: readonly Capacity[] | undefined;
  /** Largest batch to look at. */
  most: number;
}

/** A batch of a size. */
export interface BatchSize {
  pieces: number;
  /** min, hands on, and of a piece. */
  minutes: number;
  minutesEach: number;
  /** Hours and consumables, to the coin, and of a piece. */
  cost: number;
  costEach: number;
}

/** What batches of each size cost, hands on. */
export interface BatchSizes {
  sizes: readonly BatchSize[];
  /** Least cost of a piece; of equals the smallest batch. */
  cheapest: BatchSize;
  /** Least hands-on time of a piece; of equals the smallest batch. */
  quickest: BatchSize;
  /** The capacity that ends the list, where one does. */
  cappedBy?: Capacity;
  words: string;
}

/** Sizes of batch that are looked at, at most. */
export const mostSizes = 1000;

/** min, hands on, of a batch of so many pieces. */
function minutesOf(steps: readonly BatchStep[], pieces: number): number {
  return steps.reduce(
    (all, { setUp, each, serves }) =>
      all + setUp * (serves === undefined ? 1 : Math.ceil(pieces / serves)) + each * pieces,
    0,
  );
}

function costOf({ steps, rate, consumables, currency }: BatchRequest, pieces: number): number {
  const hours = exact(minutesOf(steps, pieces)).div(60);
  const { perBatch = 0, perPiece = 0 } = consumables ?? {};
  return total([toCoin(hours.times(rate), currency), toCoin(exact(perPiece).times(pieces).plus(perBatch), currency)]);
}

/**
 * Hands-on time and cost of batches of every size up to what the moulds and clamps hold, and which size is cheapest for a piece.
 *
 * Waiting is not counted: a cure costs nobody's hands.
 *
 * @returns an error where a number is none, a capacity holds nothing, or more sizes are asked for than are looked at
 */
export function batchSizes(request: BatchRequest): Outcome<BatchSizes> {
  const errors = batchFaults(request);
  if (errors.length > 0) return { ok: false, errors };
  const { capacities = [], most, currency } = request;
  const least = capacities.reduce<Capacity | undefined>(
    (one, other) => (one === undefined || other.pieces < one.pieces ? other : one),
    undefined,
  );
  const cappedBy = least && least.pieces < most ? least : undefined;
  const sizes = Array.from({ length: cappedBy?.pieces ?? most }, (_, at): BatchSize => {
    const pieces = at + 1;
    const [minutes, cost] = [minutesOf(request.steps, pieces), costOf(request, pieces)];
    return { pieces, minutes, minutesEach: minutes / pieces, cost, costEach: exact(cost).div(pieces).toNumber() };
  });
  const [first] = sizes as [BatchSize];
  const best = (of: 'costEach' | 'minutesEach') =>
    sizes.reduce((one, other) => (other[of] < one[of] - 1e-9 ? other : one), first);
  const [cheapest, quickest] = [best('costEach'), best('minutesEach')];
  const sum = moneyWords(toCoin(cheapest.costEach, currency), currency);
  const hours = (minutes: number) => amount(minutes * 60, 's', 3);
  const words = `A batch of ${cheapest.pieces} is cheapest: ${hours(cheapest.minutesEach)} of hands-on time and ${sum} a piece, against ${hours(first.minutesEach)} and ${moneyWords(toCoin(first.costEach, currency), currency)} for one alone${
    cappedBy ? `. ${cappedBy.what} hold no more than ${cappedBy.pieces} at a time` : ''
  }.`;
  return { ok: true, value: { sizes, cheapest, quickest, ...(cappedBy ? { cappedBy } : {}), words } };
}

/** One more mould, or so many more clamps. */
export interface Addition {
  what: string;
  price: number;
  /** Id of the capacity that it adds to, and by how many pieces. */
  capacity: string;
  pieces: number;
}

/** Whether an addition pays. */
export interface Payback {
  /** Batches for the pieces wanted, before and after. */
  batches: { before: number; after: number };
  /** Hands-on minutes saved on the pieces wanted. */
  savedMinutes: number;
  /** Days saved on them, where the days of a batch were given. */
  savedDays: number;
  /** What both are worth, with the consumables saved, to the coin. */
  saved: number;
  /** How often the pieces wanted must be made before it is paid for; null where it never is. */
  paysAfter: number | null;
  words: string;
}

/**
 * When one more mould or clamp pays: what it saves on the pieces wanted, made in full batches and a last one of the rest, against its price.
 *
 * @param wanted pieces to make
 * @param days of a batch from first to last, and what a day sooner is worth; left out where only hands count
 */
export function addingPays(
  request: BatchRequest,
  addition: Addition,
  wanted: number,
  days?: { ofBatch: number; worth: number },
): Outcome<Payback> {
  const errors = [...batchFaults(request), ...additionFaults(request, addition, wanted, days)];
  if (errors.length > 0) return { ok: false, errors };
  const { capacities = [], currency, rate, most } = request;
  const holds = (more: number) =>
    capacities.reduce(
      (least, { id, pieces }) => Math.min(least, id === addition.capacity ? pieces + more : pieces),
      Math.max(most, wanted),
    );
  const [before, after] = [inBatches(request, wanted, holds(0)), inBatches(request, wanted, holds(addition.pieces))];
  const savedMinutes = before.minutes - after.minutes;
  const savedDays = (before.batches - after.batches) * (days?.ofBatch ?? 0);
  const saved = toCoin(
    exact(before.cost)
      .minus(after.cost)
      .plus(exact(savedDays).times(days?.worth ?? 0)),
    currency,
  );
  const paysAfter = saved > 0 ? Math.max(1, exact(addition.price).div(saved).ceil().toNumber()) : null;
  const batches = { before: before.batches, after: after.batches };
  const price = moneyWords(addition.price, currency);
  const time = `${formatNumber(savedMinutes)} min of hands-on time${days ? ` and ${formatNumber(savedDays)} days` : ''}`;
  const words =
    paysAfter === null
      ? `${addition.what} at ${price} never pays: ${wanted} pieces take ${batches.after === batches.before ? `${batches.after} ${batches.after === 1 ? 'batch' : 'batches'} with it as without` : 'no less money with it'}.`
      : `${addition.what} at ${price} saves ${time} on ${wanted} pieces (${batches.before} batches become ${batches.after}), worth ${moneyWords(saved, currency)}${rate === 0 ? ' although hands are not paid' : ''}: it is paid for after ${paysAfter === 1 ? 'the first time' : `${paysAfter} times`}.`;
  return { ok: true, value: { batches, savedMinutes, savedDays, saved, paysAfter, words } };
}

/** So many pieces in full batches and a last one of the rest. */
function inBatches(
  request: BatchRequest,
  wanted: number,
  size: number,
): { batches: number; minutes: number; cost: number } {
  const full = Math.floor(wanted / size);
  const rest = wanted - full * size;
  const of = (pieces: number) => ({ minutes: minutesOf(request.steps, pieces), cost: costOf(request, pieces) });
  const [whole, last] = [of(size), rest > 0 ? of(rest) : { minutes: 0, cost: 0 }];
  return {
    batches: full + (rest > 0 ? 1 : 0),
    minutes: full * whole.minutes + last.minutes,
    cost: exact(whole.cost).times(full).plus(last.cost).toNumber(),
  };
}

const mostMinutes = 1e6;
const isCount = (value: number, most: number) => Number.isInteger(value) && value >= 1 && value <= most;

function batchFaults({ steps, rate, consumables, capacities = [], most }: BatchRequest): FieldError[] {
  const faults: FieldError[] = [];
  const say = (field: string, message: string) => faults.push({ field, message });
  if (!isCount(most, mostSizes))
    say('most', `Batches up to ${most} were asked for; 1 to ${mostSizes} are looked at. Give a whole number of these.`);
  if (!isSum(rate)) say('rate', `The rate is ${rate}, and it must be 0 or more for an hour. Give one.`);
  for (const [at, { what, setUp, each, serves }] of steps.entries()) {
    for (const [name, minutes] of [
      ['setUp', setUp],
      ['each', each],
    ] as const)
      if (!isSum(minutes) || minutes > mostMinutes)
        say(
          `steps.${at}.${name}`,
          `The minutes of ${what} are ${minutes}; 0 to ${mostMinutes} are taken. Look at them.`,
        );
    if (serves !== undefined && !isCount(serves, mostPieces))
      say(
        `steps.${at}.serves`,
        `One set-up of ${what} serves ${serves} pieces; it must serve a whole number, at least 1. Give one.`,
      );
  }
  for (const name of ['perBatch', 'perPiece'] as const) {
    const sum = consumables?.[name] ?? 0;
    if (!isSum(sum) || sum > 1e7)
      say(`consumables.${name}`, `Consumables cost ${sum}; 0 to 10000000 is taken. Look at the sum.`);
  }
  for (const [at, { what, pieces }] of capacities.entries())
    if (!isCount(pieces, mostPieces))
      say(`capacities.${at}`, `${what} hold ${pieces} pieces; they must hold a whole number, at least 1. Give one.`);
  if (rate > 1e7) say('rate', `The rate is ${rate} for an hour, more than this takes. Look at it.`);
  return faults;
}

function additionFaults(
  { capacities = [] }: BatchRequest,
  { what, price, capacity, pieces }: Addition,
  wanted: number,
  days?: { ofBatch: number; worth: number },
): FieldError[] {
  const faults: FieldError[] = [];
  if (!isSum(price) || price > 1e7)
    faults.push({ field: 'price', message: `${what} costs ${price}; 0 to 10000000 is taken. Look at the price.` });
  if (!capacities.some(({ id }) => id === capacity)) {
    const known = capacities.map(({ id }) => id).join(', ');
    faults.push({
      field: 'capacity',
      message: `“${capacity}” holds no pieces here; ${known === '' ? 'nothing that limits a batch was given' : `what does is ${known}`}. Name what it adds to.`,
    });
  }
  if (!isCount(pieces, mostPieces))
    faults.push({
      field: 'pieces',
      message: `${what} adds ${pieces} pieces; it must add a whole number, at least 1. Give one.`,
    });
  if (!isCount(wanted, mostPieces))
    faults.push({
      field: 'wanted',
      message: `${wanted} pieces are wanted; a whole number from 1 to ${mostPieces} can be. Give one.`,
    });
  if (days && !(isSum(days.ofBatch) && days.ofBatch <= 3660 && isSum(days.worth) && days.worth <= 1e7))
    faults.push({
      field: 'days',
      message: `A batch of ${days.ofBatch} days at ${days.worth} a day cannot be reckoned with. Give days up to 3660 and a sum of 0 or more.`,
    });
  return faults;
}
