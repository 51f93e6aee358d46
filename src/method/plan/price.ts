import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import {
  type Bar,
  type BatchSizes,
  type BatchStep,
  type Bill,
  batchSizes,
  type Currency,
  currencyOf,
  type PriceRequest,
  type Pricing,
  priceOf,
  tornadoOf,
  total,
} from '../cost/index.ts';
import { type Shop, shopAim, shopConsumables, shopFees, shopOverhead } from '../shop/index.ts';
import { energyOf } from './energy.ts';
import { roundsOf, setUpsOf } from './rounds.ts';

/** What a piece costs and sells for, and how many are made at a time at least hands-on cost. What changes the price most, `changesOf` tells of it. */
export interface CaseCost {
  request: PriceRequest;
  pricing: Pricing;
  batches: BatchSizes;
}

/** Hourly rate of the shop: the mean over its people, each counted as often as they are; undefined where nobody has one. */
function rateOf({ people }: Shop): number | undefined {
  const rated = people.flatMap(({ count, rate }) => (rate === undefined ? [] : [{ count, rate }]));
  const heads = rated.reduce((sum, { count }) => sum + count, 0);
  return heads === 0 ? undefined : rated.reduce((sum, { count, rate }) => sum + count * rate, 0) / heads;
}

/** The lines of a bill, parted into materials and consumables. */
function parts(bill: Bill, consumables: ReadonlySet<string>) {
  const sums = (lines: Bill['lines']) => ({
    used: total(lines.flatMap(({ used }) => used ?? [])),
    bought: total(lines.flatMap(({ cost }) => cost ?? [])),
  });
  return {
    materials: sums(bill.lines.filter(({ id }) => !consumables.has(id))),
    consumables: sums(bill.lines.filter(({ id }) => consumables.has(id))),
  };
}

function requestOf(
  worked: WorkedMethod,
  bill: Bill,
  shop: Shop,
  currency: Currency,
  rate: number,
): Outcome<PriceRequest> {
  const aim = shopAim(shop);
  if (!aim)
    return refuse('margin', 'The shop record names neither a margin nor a mark-up', 'Add one, such as margin: 30 %.');
  const overhead = shopOverhead(shop);
  const kilowattHours = energyOf(worked, shop);
  const rounds = roundsOf(worked);
  return answer({
    currency,
    pieces: worked.pieces,
    ...parts(bill, new Set(shopConsumables(shop))),
    count: 'used',
    hands: worked.steps.map(({ id, record, people, hands }) => ({
      id,
      what: record.title,
      setUp: people * hands.setUp * setUpsOf(rounds, id, worked.pieces),
      each: people * hands.each,
      rate,
    })),
    ...(overhead ? { overhead } : {}),
    ...(shop.energy ? { energy: { amount: kilowattHours, price: shop.energy.price } } : {}),
    fees: shopFees(shop),
    aim,
    without: bill.without.used,
  });
}

/** Hands-on time of each step, set up once for as many pieces as go through it together. */
export function batchSteps(worked: WorkedMethod): BatchStep[] {
  const rounds = roundsOf(worked);
  return worked.steps.map(({ id, record, people, hands }) => {
    const serves = rounds.get(id);
    return {
      id,
      what: record.title,
      setUp: people * hands.setUp,
      each: people * hands.each,
      ...(serves === undefined ? {} : { serves }),
    };
  });
}

/**
 * What a piece of a case costs and what it must sell for, by the shop's own prices, rates and aims.
 *
 * @returns an error that names what the shop record lacks
 */
export function costOfCase(worked: WorkedMethod, bill: Bill): Outcome<CaseCost> {
  const { shop } = worked;
  if (!shop) return refuse('shop', 'Without a shop record nothing has a price', 'Name one with --shop shop.yaml.');
  const rate = rateOf(shop);
  if (rate === undefined)
    return refuse(
      'people',
      'Nobody in the shop record has a rate for an hour',
      'Give one; 0 where the work is not paid.',
    );
  const currency = currencyOf(shop.currency);
  if (!currency.ok) return currency;
  const request = requestOf(worked, bill, shop, currency.value, rate);
  if (!request.ok) return request;
  const pricing = priceOf(request.value);
  if (!pricing.ok) return pricing;
  const { consumables } = request.value;
  const { most } = worked.record.makes.pieces;
  const batches = batchSizes({
    currency: currency.value,
    steps: batchSteps(worked),
    rate,
    ...(consumables ? { consumables: { perBatch: 0, perPiece: consumables.used / worked.pieces } } : {}),
    most,
  });
  if (!batches.ok) return batches;
  return answer({ request: request.value, pricing: pricing.value, batches: batches.value });
}

/**
 * What changes the price of a case most, the widest first. It prices the case some sixty times: a page that follows somebody who types does without.
 */
export function changesOf({ request }: CaseCost): readonly Bar[] {
  const tornado = tornadoOf(request);
  // A case that has a price, by a margin or a mark-up as a shop record names it, has this too.
  return tornado.ok ? tornado.value.bars : [];
}
