import { amount } from '../../model/quantity/index.ts';
import { minute } from '../../model/quantity/seconds.ts';
import { shopToolOf } from '../case/shop.ts';
import type { WorkedMethod } from '../case/types.ts';
import { addingPays, currencyOf, moneyWords } from '../cost/index.ts';
import { batchSteps, type CaseCost } from './price.ts';
import { keptShort } from './rounds.ts';

/** What more of a tool costs and saves each time that the pieces of a case are made. */
export interface PaidBack {
  /** For all that are added, in the currency of the shop. */
  price?: number;
  /** Hands-on minutes saved, and what they are worth. */
  savedMinutes: number;
  saved?: number;
  /** How often the pieces are made before it is paid for; null where it never is; left out where that is not known. */
  paysAfter?: number | null;
  /** Sentences for a reader. */
  words: string;
}

/** How many more of a tool take one piece more at a time. */
export function neededForOneMore(worked: WorkedMethod, tool: string): number {
  const count = worked.tools[tool]?.count ?? 1;
  const each = Math.max(
    1,
    ...worked.steps.flatMap(({ record }) =>
      (record.holds ?? []).flatMap((hold) => (hold.tool === tool ? [hold.each ?? 1] : [])),
    ),
  );
  return (Math.floor(count / each) + 1) * each - count;
}

/** What an hour of hands costs, overhead included where the shop counts it. */
function hourly({ request }: CaseCost): number {
  const { hands, overhead } = request;
  const each = hands[0]?.rate ?? 0;
  if (overhead === undefined) return each;
  return each + ('perHour' in overhead ? overhead.perHour : overhead.perMonth / overhead.hoursPerMonth);
}

/**
 * Whether more of a tool have paid for themselves, by the hands-on time that they save.
 *
 * Only what is kept from step to step, a mould or clamps, saves set-ups; one more machine saves waiting, which costs nobody’s hands.
 *
 * @param more how many are added
 * @param cost of the case, where the shop record has what it takes
 * @returns undefined where there is no shop record
 */
export function paidBack(
  worked: WorkedMethod,
  tool: string,
  more: number,
  cost: CaseCost | undefined,
): PaidBack | undefined {
  const { shop, pieces } = worked;
  const record = worked.tools[tool]?.record;
  if (!shop || !record) return undefined;
  const held = keptShort(worked).filter((each) => each.tool === tool);
  const room = Math.min(...held.map((each) => each.pieces));
  const steps = batchSteps(worked)
    .filter(({ id }) => held.some((each) => each.steps.has(id)))
    .map(({ serves: _, ...step }) => step);
  const own = shopToolOf(shop, record);
  const currency = currencyOf(shop.currency);
  const known = currency.ok ? currency.value : { code: shop.currency };
  const price = own?.price === undefined ? undefined : own.price * more;
  const found =
    held.length > 0 && currency.ok
      ? addingPays(
          {
            currency: currency.value,
            steps,
            rate: cost ? hourly(cost) : 0,
            capacities: [{ id: tool, what: record.what, pieces: room }],
            most: pieces,
          },
          { what: record.what, price: price ?? 0, capacity: tool, pieces: 1 },
          pieces,
        )
      : undefined;
  const { savedMinutes = 0, saved = 0 } = found?.ok ? found.value : {};
  const costs = price === undefined ? '' : ` at ${moneyWords(price, known)}${more > 1 ? ' for all of them' : ''}`;
  const missing =
    own === undefined
      ? 'The shop record does not hold it, so that nothing says what it costs.'
      : price === undefined
        ? `What it costs is not known: give “${own.id}” a price, under ${own.list} of the shop record.`
        : undefined;
  const time = amount(savedMinutes * minute, 's', 3);
  if (savedMinutes === 0)
    return {
      ...(price === undefined ? {} : { price, paysAfter: null }),
      savedMinutes,
      words: `It saves waiting and no hands-on work, so that${costs} it never pays for itself by the hours.${price === undefined && missing ? ` ${missing}` : ''}`,
    };
  const saves = `It saves ${time} of hands-on work each time that ${pieces} pieces are made`;
  if (missing !== undefined) return { savedMinutes, words: `${saves}. ${missing}` };
  if (!cost)
    return {
      savedMinutes,
      words: `${saves}. What an hour is worth is not known: give people of the shop record a rate.`,
    };
  const paysAfter = found?.ok ? found.value.paysAfter : null;
  const times = paysAfter === 1 ? 'once' : `${paysAfter} times`;
  return {
    price: price as number,
    savedMinutes,
    saved,
    paysAfter,
    words:
      paysAfter === null
        ? `${saves}, which is worth nothing at these rates:${costs} it never pays for itself.`
        : `${saves}, worth ${moneyWords(saved, known)}:${costs} it has paid for itself when they have been made ${times}.`,
  };
}
