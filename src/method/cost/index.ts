export type { Amount } from './amounts.ts';
export {
  type Addition,
  addingPays,
  type BatchRequest,
  type BatchSize,
  type BatchSizes,
  type BatchStep,
  batchSizes,
  type Capacity,
  type Payback,
} from './batch.ts';
export { type Bill, type BillLine, billOf, type Need } from './bill.ts';
export { type Currency, currencyOf, parted, roundingRule, toCoin, total, upToCoin } from './money.ts';
export { moneyWords } from './money-words.ts';
export { type BoughtPack, bestPacks, type Goods, noPrice, type Pack, type Purchase } from './packs.ts';
export { type CostPart, type FeePart, type Pricing, priceOf, taxWords } from './price.ts';
export type { Aim, Fee, Hands, OtherCost, OverheadRate, PriceRequest, UsedAndBought } from './price-request.ts';
export { type Bar, type PriceInput, priceInputs, type Tornado, tornadoOf, usualReach } from './tornado.ts';
