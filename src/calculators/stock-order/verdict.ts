import type { Verdict } from '../../model/evidence/index.ts';
import { amount, formatNumber, formatQuantity } from '../../model/quantity/index.ts';
import { foot, inch, pushBlockWidth as narrow, type OrderPlan, type Surfacing } from '../../model/stock/index.ts';
import { type Price, sumWords } from './price.ts';

/** Whether a length is one that a yard writes in whole quarter inches. */
const isTrade = (mm: number) => Math.abs(mm / (inch / 4) - Math.round(mm / (inch / 4))) < 1e-6;

/** A length in feet and inches, as a yard says it. */
function feetWords(mm: number): string {
  const feet = Math.floor(mm / foot + 1e-9);
  const rest = mm - feet * foot;
  const inches = formatQuantity(rest, 'mm', { system: 'inch', inches: 'sixteenths' }, { digits: 6 });
  return [feet > 0 ? `${feet} ft` : '', rest > 1e-6 || feet === 0 ? inches : ''].filter(Boolean).join(' ');
}

/** A board in the words of the yard, `8 ft × 6 1/4 in`; one that is cut to millimetres in the reader's units. */
export function boardWords({ length, width }: { length: number; width: number }): string {
  if (!isTrade(length) || !isTrade(width)) return `${amount(length, 'mm', 5)} × ${amount(width, 'mm', 5)}`;
  return `${feetWords(length)} × ${formatQuantity(width, 'mm', { system: 'inch', inches: 'sixteenths' }, { digits: 6 })}`;
}

/** Whether an order is one in millimetres: a finished size is a whole half of one, and no 64th of an inch. */
export const isInMillimetres = (sizes: readonly number[]): boolean =>
  sizes.some((mm) => {
    const off = (step: number) => Math.abs(mm / step - Math.round(mm / step));
    return off(0.5) < 1e-6 && off(inch / 64) > 1e-6;
  });

/**
 * What to buy, as one says it at the counter.
 *
 * @param metric whether the yard is to be told millimetres and cubic metres as well, whatever the reader's own units are
 */
export function verdictOf(plan: OrderPlan, surfacing: Surfacing, price: Price | undefined, metric: boolean): Verdict {
  const count = `${plan.boards} ${plan.boards === 1 ? 'board' : 'boards'}`;
  const money = price?.currency === '' ? ' in the currency of the price' : '';
  const cost = plan.cost && price ? `, about ${sumWords(plan.cost.sum, price, 3)}${money}` : '';
  const kind = surfacing === 's2s' ? ', planed on two faces' : '';
  const { length, width } = plan.board;
  const size =
    metric && isTrade(length) && isTrade(width)
      ? ` (${amount(length, 'mm', 4, true)} × ${amount(width, 'mm', 3, true)})`
      : '';
  const volume = metric ? ` (${amount(plan.volume / 1e6, 'm3', 2, true)})` : '';
  const order = `Buy ${count}, ${boardWords(plan.board)}${size}, ${plan.nominal.name}${kind}: ${formatNumber(plan.boardFeet, 3)} board feet${volume}${cost}.`;
  const minded = [
    plan.thinIfShort ? `Measure the thickness first: ${plan.nominal.name} leaves nothing over.` : '',
    plan.rough.width < narrow ? 'Rip the narrow parts with a push block.' : '',
  ].filter(Boolean);
  return { level: minded.length > 0 ? 'care' : 'good', text: [order, ...minded].join(' ') };
}
