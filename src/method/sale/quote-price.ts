import { type Currency, currencyOf, moneyWords } from '../cost/index.ts';
import { exact, toCoin } from '../cost/money.ts';
import type { MethodPage } from '../page/types.ts';
import type { QuoteTyped } from './typed.ts';

/** Sums of a quote, in the currency; there is no price where the shop record has none and nobody gave one. */
export type QuotePrice =
  | {
      ok: true;
      currency: Currency;
      each: number;
      pieces: number;
      before: number;
      /** Taken off; 0 where nothing is. */
      off: number;
      total: number;
      /** True where the seller set it by hand. */
      own: boolean;
    }
  | { ok: false; why: readonly string[] };

/** What the pieces are offered for. */
export function quotePrice(page: MethodPage, { price, currency: code, discount }: QuoteTyped): QuotePrice {
  const { cost, costless, makes, currency: ofShop } = page;
  const worked = cost?.pricing.price;
  const known = code ?? ofShop ?? cost?.request.currency.code;
  const each = price ?? worked;
  if (each === undefined) return { ok: false, why: costless.length > 0 ? costless : ['No price was worked out.'] };
  if (known === undefined)
    return { ok: false, why: ['The currency is missing: name one beside the price, or keep a shop record.'] };
  const currency = currencyOf(known);
  if (!currency.ok) return { ok: false, why: currency.errors.map(({ message }) => message) };
  if (price === undefined && cost && cost.request.currency.code !== currency.value.code)
    return {
      ok: false,
      why: [
        `The price is worked out in ${cost.request.currency.code}, and the quote is in ${currency.value.code}. Give a price in ${currency.value.code}, or leave the currency to the shop record.`,
      ],
    };
  const rounded = toCoin(each, currency.value);
  const before = toCoin(exact(rounded).times(makes.pieces), currency.value);
  const off = toCoin(exact(before).times(discount), currency.value);
  return {
    ok: true,
    currency: currency.value,
    each: rounded,
    pieces: makes.pieces,
    before,
    off,
    total: toCoin(exact(before).minus(off), currency.value),
    own: price !== undefined,
  };
}

/** What the seller should know of the price and the customer need not: sentences for the screen. */
export function priceNotes({ cost, costless, makes }: MethodPage, price: QuotePrice): string[] {
  if (!price.ok) return price.why.map((why) => `No price: ${why}`);
  if (!cost) return price.own ? costless.map((why) => `The price is yours alone: ${why}`) : [];
  const { pricing, request } = cost;
  if (request.currency.code !== price.currency.code)
    return ['The price is yours alone: the plan reckons in another currency.'];
  const money = (sum: number) => moneyWords(sum, price.currency);
  const got = price.total / makes.pieces;
  return [
    `By the plan a piece costs ${money(pricing.pieceCost)} and sells for ${money(pricing.price)}.`,
    ...(price.own ? [`You offer it for ${money(price.each)}.`] : []),
    ...(price.off > 0 ? [`After the discount a piece brings ${money(toCoin(got, price.currency))}.`] : []),
    ...(got < pricing.pieceCost ? ['That is less than it costs: every piece is sold at a loss.'] : []),
    ...(got >= pricing.pieceCost && got < pricing.breakEvenPrice
      ? [`With the fees nothing stays below ${money(pricing.breakEvenPrice)}.`]
      : []),
    ...(pricing.without.length > 0
      ? [`Not in the cost: ${pricing.without.join('; ')}. The price is a least price.`]
      : []),
  ];
}
