import type { Outcome } from '../../model/evidence/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import { type Bill, billOf, currencyOf, type Need } from '../cost/index.ts';
import type { Shop } from '../shop/index.ts';
import { goodsFor, isWeighed, soldIn } from './goods.ts';

/** What the pieces of a case need, as a bill asks for it: from which step, and from which figure where it is one. */
export function needsOf(worked: WorkedMethod): Need[] {
  return Object.values(worked.materials).flatMap(({ name, record, spare, needs }) => {
    const { id, what } = goodsFor(worked, name, record);
    return needs.map(
      ({ amount, unit, step, from }): Need => ({
        goods: id,
        what,
        amount: { value: amount, unit },
        ...(spare > 0 ? { spare } : {}),
        ...(isWeighed(record) ? { kept: true } : {}),
        ...(step === undefined ? {} : { step }),
        ...(from === undefined ? {} : { figure: from }),
      }),
    );
  });
}

const chosenFor = (worked: WorkedMethod) =>
  Object.values(worked.materials).map(({ name, record }) => goodsFor(worked, name, record));

/** Without a shop record a bill of needs has no sum: the code that ISO 4217 has for no currency. */
export const noCurrency = { code: 'XXX', digits: 2 };

/** What to buy for a case: needs less what the shelf holds, in packs at least cost. Without a shop record nothing is on hand and nothing has a price. */
export function billOfCase(worked: WorkedMethod, shop: Shop | undefined): Outcome<Bill> {
  if (!shop) return billOf(needsOf(worked), [], noCurrency);
  const currency = currencyOf(shop.currency);
  return currency.ok ? billOf(needsOf(worked), soldIn(shop, chosenFor(worked)), currency.value) : currency;
}
