import type { Decimal } from 'decimal.js';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { type Currency, exact, isSum, parted, toCoin, total, upToCoin } from './money.ts';
import { moneyWords } from './money-words.ts';
import { type Fee, type PriceRequest, requestFaults } from './price-request.ts';

/** One part of the cost, of the whole batch and of a piece. */
export interface CostPart {
  id: string;
  what: string;
  batch: number;
  /** Parts of a piece add up to its cost. */
  piece: number;
}

/** What a fee takes of one piece at the price; a fixed sum for the batch counts by its share. */
export interface FeePart {
  id: string;
  what: string;
  piece: number;
}

/** What pieces cost, and the price. Money in whole units of the currency, to the coin. */
export interface Pricing {
  currency: Currency;
  pieces: number;
  /** Which of them counts for materials and consumables. */
  count: 'used' | 'bought';
  parts: readonly CostPart[];
  /** Sum of the parts. */
  batchCost: number;
  pieceCost: number;
  /** Hands-on hours of the batch, all people together. */
  hours: number;
  /** Of a piece. It is rounded up to the coin where it was worked out. */
  price: number;
  fees: readonly FeePart[];
  /** Of the batch, after every cost and fee, when every piece is sold; below 0 where it loses. */
  stays: number;
  /** `stays` as a share of what the pieces are sold for. */
  margin: number;
  /** `stays` as a share of the cost. */
  markup: number;
  /** The same with materials counted the other way. */
  otherWay: { count: 'used' | 'bought'; pieceCost: number; price: number };
  /** Price of a piece at which nothing stays, if all are sold. */
  breakEvenPrice: number;
  /** Pieces to sell at the price before the whole batch is paid for; null where no number of them does it. */
  breakEvenPieces: number | null;
  /** What is not in it, each with its reason: the price is then a least price. */
  without: readonly string[];
  /** How the price came about, whole sentences for the reader. */
  words: readonly string[];
}

/** Said beside every price. */
export const taxWords =
  'Taxes on sales and income are not in it: they follow local rules. Add what is due where you sell.';

const percentWords = (share: number) => `${Number((100 * share).toFixed(1))} %`;

/**
 * Cost and price of a piece, fees taken into account, so that the margin is what stays after them.
 *
 * By margin m, with fees that keep a share f of the price and a fixed sum F of each piece, a piece that costs c is priced (c + F)/(1 − m − f); by
 * mark-up u, (c(1 + u) + F)/(1 − f). Both are rounded up to the coin.
 *
 * @returns the pricing, or one error a field: a margin that fees leave no room for, a rate that is missing, a number that is none
 */
export function priceOf(request: PriceRequest): Outcome<Pricing> {
  const faults = requestFaults(request);
  if (faults.length > 0) return { ok: false, errors: faults };
  const { currency, pieces, count, aim, fees = [], without = [] } = request;
  const batch = batchParts(request, count);
  const batchCost = total(batch.map(({ cost }) => cost));
  if (!isSum(batchCost)) return tooMuch();
  if (batchCost === 0)
    return refuse('materials', 'No cost is known, and no price follows from nothing', 'Give what the pieces cost.');
  const price = priceAt(exact(batchCost), request);
  if (!isSum(price)) return tooMuch();
  if (price === 0)
    return refuse(
      'aim.price',
      'The price asked is less than the smallest coin',
      `Give one that can be paid in ${currency.code}.`,
    );
  const pieceCost = toCoin(exact(batchCost).div(pieces), currency);
  const pieceParts = parted(
    pieceCost,
    batch.map(({ cost }) => cost),
    currency,
  );
  const { ofSale, ofBatch } = feesAt(price, fees, currency);
  const stays = exact(price).minus(ofSale).times(pieces).minus(ofBatch).minus(batchCost).toNumber();
  const keeps = exact(price).minus(ofSale);
  const soldBeforePaid = keeps.gt(0) ? exact(batchCost).plus(ofBatch).div(keeps).ceil().toNumber() : null;
  const other = count === 'used' ? 'bought' : 'used';
  const otherCost = total(batchParts(request, other).map(({ cost }) => cost));
  const otherPrice = priceAt(exact(otherCost), request);
  if (!isSum(otherPrice)) return tooMuch();
  const pricing: Omit<Pricing, 'words'> = {
    currency,
    pieces,
    count,
    parts: batch.map(({ id, what, cost }, at) => ({ id, what, batch: cost, piece: pieceParts[at] ?? 0 })),
    batchCost,
    pieceCost,
    hours: hoursOf(request).toNumber(),
    price,
    fees: fees.map((fee) => ({
      id: fee.id,
      what: fee.what,
      piece: toCoin(
        feesAt(price, [fee], currency).ofSale.plus(feesAt(price, [fee], currency).ofBatch.div(pieces)),
        currency,
      ),
    })),
    stays,
    margin: exact(stays).div(exact(price).times(pieces)).toNumber(),
    markup: exact(stays).div(batchCost).toNumber(),
    otherWay: { count: other, pieceCost: toCoin(exact(otherCost).div(pieces), currency), price: otherPrice },
    breakEvenPrice: upToCoin(rawPrice(exact(batchCost), { ...request, aim: { markup: 0 } }), currency),
    breakEvenPieces: soldBeforePaid,
    without,
  };
  return answer({ ...pricing, words: wordsOf(pricing, aim) });
}

function tooMuch(): ReturnType<typeof refuse> {
  return refuse(
    'materials',
    'The sums are larger than any shop reckons with',
    'Look at the prices, the rates and the margin.',
  );
}

const hoursOf = ({ hands, pieces }: PriceRequest): Decimal =>
  hands.reduce((all, { setUp, each }) => all.plus(exact(each).times(pieces).plus(setUp).div(60)), exact(0));

/** Every part of the cost of the batch, to the coin. */
function batchParts(request: PriceRequest, count: 'used' | 'bought'): { id: string; what: string; cost: number }[] {
  const { currency, pieces, materials, consumables, hands, overhead, energy, other = [] } = request;
  const counted = count === 'used' ? 'by what is used' : 'by what is bought';
  const part = (id: string, what: string, cost: number | Decimal) => ({ id, what, cost: toCoin(cost, currency) });
  const hours = hoursOf(request);
  const rate =
    overhead === undefined
      ? undefined
      : 'perHour' in overhead
        ? exact(overhead.perHour)
        : exact(overhead.perMonth).div(overhead.hoursPerMonth);
  return [
    part('materials', `Materials, ${counted}`, materials[count]),
    ...(consumables ? [part('consumables', `Consumables, ${counted}`, consumables[count])] : []),
    ...hands.map(({ id, what, setUp, each, rate: paid = 0 }) =>
      part(`hands-${id}`, what, exact(each).times(pieces).plus(setUp).div(60).times(paid)),
    ),
    ...(rate ? [part('overhead', 'Overhead, by hands-on hours', rate.times(hours))] : []),
    ...(energy ? [part('energy', 'Energy', exact(energy.amount).times(energy.price))] : []),
    ...other.map(({ id, what, cost, per }) =>
      part(`other-${id}`, what, per === 'piece' ? exact(cost).times(pieces) : cost),
    ),
  ];
}

/** What fees keep at a price: of each sale, each fee to the coin, and of the batch. */
function feesAt(price: number, fees: readonly Fee[], currency: Currency): { ofSale: Decimal; ofBatch: Decimal } {
  let [ofSale, ofBatch] = [exact(0), exact(0)];
  for (const { share = 0, fixed = 0, per } of fees) {
    ofSale = ofSale.plus(toCoin(exact(price).times(share), currency)).plus(per === 'piece' ? fixed : 0);
    ofBatch = ofBatch.plus(per === 'batch' ? fixed : 0);
  }
  return { ofSale, ofBatch };
}

/** The price before it is rounded. */
function rawPrice(batchCost: Decimal, { pieces, fees = [], aim }: PriceRequest): Decimal {
  const share = fees.reduce((all, fee) => all.plus(fee.share ?? 0), exact(0));
  const fixed = fees.reduce(
    (all, { fixed: sum = 0, per }) => all.plus(per === 'piece' ? sum : exact(sum).div(pieces)),
    exact(0),
  );
  const cost = batchCost.div(pieces);
  if ('price' in aim) return exact(aim.price);
  if ('margin' in aim) return cost.plus(fixed).div(exact(1).minus(aim.margin).minus(share));
  return cost.times(exact(1).plus(aim.markup)).plus(fixed).div(exact(1).minus(share));
}

/** The price to the coin: up where it is worked out, as it is where it is asked. */
function priceAt(batchCost: Decimal, request: PriceRequest): number {
  const raw = rawPrice(batchCost, request);
  return 'price' in request.aim ? toCoin(raw, request.currency) : upToCoin(raw, request.currency);
}

function wordsOf(pricing: Omit<Pricing, 'words'>, aim: PriceRequest['aim']): string[] {
  const {
    currency,
    price,
    pieceCost,
    margin,
    markup,
    pieces,
    breakEvenPieces,
    breakEvenPrice,
    otherWay,
    without,
    stays,
  } = pricing;
  const sum = (of: number) => moneyWords(of, currency);
  const how =
    'margin' in aim
      ? `A margin of ${percentWords(aim.margin)} of the price is asked: so much stays after every cost and fee. On the cost it is a mark-up of ${percentWords(markup)}.`
      : 'markup' in aim
        ? `A mark-up of ${percentWords(aim.markup)} is asked: it is put on the cost, and the fees on top. Of the price it is a margin of ${percentWords(margin)}.`
        : stays < 0
          ? `At the price asked, ${sum(price)}, every piece costs more than it brings.`
          : `At the price asked, ${percentWords(margin)} of it stays after every cost and fee.`;
  const least = without.length > 0 ? [`At least: it is without ${without.join('; ')}.`] : [];
  const paid =
    breakEvenPieces === null
      ? 'No number of pieces pays for the batch at this price: the fees take all of it.'
      : breakEvenPieces > pieces
        ? `${breakEvenPieces} pieces would have to be sold to pay for the batch, more than the ${pieces} that are made.`
        : `The batch is paid for when ${breakEvenPieces} of ${pieces} pieces are sold; at less than ${sum(breakEvenPrice)} a piece not even all of them pay for it.`;
  const other =
    otherWay.count === 'bought'
      ? `Materials count by what is used; with all that is bought for this batch a piece costs ${sum(otherWay.pieceCost)}.`
      : `Materials count by all that is bought for this batch; by what is used a piece costs ${sum(otherWay.pieceCost)}.`;
  // What stays is what the other two leave, so that the three add up to the coin.
  const fees = toCoin(total(pricing.fees.map(({ piece }) => piece)), currency);
  const left = toCoin(exact(price).minus(pieceCost).minus(fees), currency);
  const shares = left < 0 ? [] : [`Of that, fees take ${sum(fees)} and ${sum(left)} stays.`];
  return [
    `A piece costs ${sum(pieceCost)} and sells for ${sum(price)}.`,
    ...least,
    ...shares,
    how,
    paid,
    other,
    taxWords,
  ];
}
