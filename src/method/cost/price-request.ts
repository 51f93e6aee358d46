import type { FieldError } from '../../model/evidence/index.ts';
import { type Currency, isSum } from './money.ts';

/** Work of one kind of people: set-up once for the batch, then so long for each piece. */
export interface Hands {
  id: string;
  what: string;
  /** min, for the batch. */
  setUp: number;
  /** min, for each piece. */
  each: number;
  /** Money for an hour. */
  rate?: number | undefined;
}

/** What costs money whether the shop works or not: for an hour of work, or for a month with the hours worked in it. */
export type OverheadRate = { perHour: number } | { perMonth: number; hoursPerMonth: number };

/** What a market, a card or a gallery keeps: a share of the price, a fixed sum, or both. */
export interface Fee {
  id: string;
  what: string;
  /** Share of the price, 0.1 for a tenth. */
  share?: number | undefined;
  fixed?: number | undefined;
  /** Whether the fixed sum is for each piece sold or for the batch. */
  per: 'piece' | 'batch';
}

/** Any other cost: packing, a mould that is worn out. */
export interface OtherCost {
  id: string;
  what: string;
  cost: number;
  per: 'piece' | 'batch';
}

/** What something costs the batch: by what is used of it, and by what is bought for it. */
export interface UsedAndBought {
  used: number;
  bought: number;
}

/** How the price is come by: a share of the price that stays, a share of the cost put on top, or a price that is asked already. */
export type Aim = { margin: number } | { markup: number } | { price: number };

/** What a price is worked out from. Money in whole units of the currency, shares as 0.25 for a quarter. */
export interface PriceRequest {
  currency: Currency;
  /** Good pieces that are made to be sold. */
  pieces: number;
  /** For the batch, from its bill. */
  materials: UsedAndBought;
  consumables?: UsedAndBought | undefined;
  /** Whether materials count by what is used, or by all that is bought for the batch. */
  count: 'used' | 'bought';
  hands: readonly Hands[];
  overhead?: OverheadRate | undefined;
  /** Energy of the batch, kWh, and the price of one kWh. */
  energy?: { amount: number; price: number } | undefined;
  other?: readonly OtherCost[] | undefined;
  fees?: readonly Fee[] | undefined;
  aim: Aim;
  /** What a bill leaves out, each with its reason: the price is then a least price. */
  without?: readonly string[] | undefined;
}

/** Pieces of one batch, at most. */
export const mostPieces = 100_000;
/** A month has no more hours, nor a batch more minutes. */
const mostHours = 744;
const mostMinutes = 1e7;
const mostMarkup = 100;

const share = (value: number) => `${Number((100 * value).toFixed(2))} %`;

/** Everything in a request that cannot be reckoned with: the field, what was read, what is allowed, a way out. */
export function requestFaults(request: PriceRequest): FieldError[] {
  const faults: FieldError[] = [];
  const say = (field: string, message: string) => faults.push({ field, message });
  const sum = (field: string, value: number | undefined, what: string) => {
    if (value !== undefined && !isSum(value))
      say(field, `${what} is ${value}, and it must be 0 or more. Look at the sum.`);
  };
  const { pieces, aim, fees = [], overhead, energy } = request;
  if (!Number.isInteger(pieces) || pieces < 1 || pieces > mostPieces)
    say('pieces', `${pieces} pieces cannot be priced: a whole number from 1 to ${mostPieces} can. Give one.`);
  sum('materials.used', request.materials.used, 'What is used of the materials');
  sum('materials.bought', request.materials.bought, 'What is bought of the materials');
  sum('consumables.used', request.consumables?.used, 'What is used of the consumables');
  sum('consumables.bought', request.consumables?.bought, 'What is bought of the consumables');
  for (const [at, { what, setUp, each, rate }] of request.hands.entries()) {
    const field = `hands.${at}`;
    for (const [name, minutes] of [
      ['setUp', setUp],
      ['each', each],
    ] as const) {
      if (!isSum(minutes) || minutes > mostMinutes)
        say(`${field}.${name}`, `The minutes of ${what} are ${minutes}; 0 to ${mostMinutes} are taken. Look at them.`);
    }
    if (rate === undefined && (setUp > 0 || each > 0))
      say(
        `${field}.rate`,
        `${what} takes time, and there is no rate for an hour of it. Give one; 0 where it is not paid.`,
      );
    sum(`${field}.rate`, rate, `The rate of ${what}`);
  }
  if (overhead && 'perHour' in overhead) sum('overhead.perHour', overhead.perHour, 'Overhead for an hour');
  if (overhead && 'perMonth' in overhead) {
    sum('overhead.perMonth', overhead.perMonth, 'Overhead for a month');
    const hours = overhead.hoursPerMonth;
    if (!(hours > 0 && hours <= mostHours))
      say(
        'overhead.hoursPerMonth',
        `${hours} hours are worked in a month; more than 0 and at most ${mostHours} can be. Give them.`,
      );
  }
  sum('energy.amount', energy?.amount, 'Energy');
  sum('energy.price', energy?.price, 'The price of energy');
  for (const [at, { what, cost }] of (request.other ?? []).entries()) sum(`other.${at}.cost`, cost, what);
  for (const [at, fee] of fees.entries()) {
    sum(`fees.${at}.fixed`, fee.fixed, `The fixed sum of ${fee.what}`);
    if (fee.share !== undefined && !(fee.share >= 0 && fee.share < 1))
      say(
        `fees.${at}.share`,
        `${fee.what} keeps ${share(fee.share)} of the price; 0 to less than 100 % can be kept. Look at it.`,
      );
  }
  const kept = fees.reduce((all, fee) => all + (fee.share ?? 0), 0);
  if (kept >= 1 && faults.length === 0)
    say('fees', `The fees keep ${share(kept)} of the price, so that nothing is left of it. Look at their shares.`);
  if ('margin' in aim) {
    if (!(aim.margin >= 0 && aim.margin < 1))
      say(
        'aim.margin',
        `A margin of ${share(aim.margin)} was asked; 0 to less than 100 % of the price can stay. Give less.`,
      );
    else if (aim.margin + kept >= 1 && kept < 1)
      say(
        'aim.margin',
        `A margin of ${share(aim.margin)} and fees of ${share(kept)} are ${share(aim.margin + kept)} of the price, so that nothing is left to pay the cost. Ask for less than ${share(1 - kept)}.`,
      );
  } else if ('markup' in aim) {
    if (!(aim.markup >= 0 && aim.markup <= mostMarkup))
      say(
        'aim.markup',
        `A mark-up of ${share(aim.markup)} was asked; 0 to ${share(mostMarkup)} can be put on a cost. Give one.`,
      );
  } else if (!isSum(aim.price) || aim.price === 0)
    say('aim.price', `A price of ${aim.price} was asked; it must be more than 0. Give one.`);
  return faults;
}
