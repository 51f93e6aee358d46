import type { FieldError, Outcome } from '../../model/evidence/index.ts';
import { type Amount, inUnit, tidy } from './amounts.ts';
import { type Currency, roundingRule, total } from './money.ts';
import { type BoughtPack, bestPacks, type Goods, noPrice } from './packs.ts';

/** A need of a material, for all pieces. */
export interface Need {
  /** Id of the goods; how they are sold is looked up by it. */
  goods: string;
  /** As it stands on the bill, where the goods are not known by their own words. */
  what: string;
  amount: Amount;
  /** Share bought beyond it, 0.1 for a tenth. */
  spare?: number | undefined;
  /** True where every reader gets it in its metric unit: resin and colour are weighed in grams, whatever boards are measured in. */
  kept?: boolean | undefined;
  /** The step that uses it, and the figure that says how much. */
  step?: string | undefined;
  figure?: string | undefined;
}

/** A line of a bill: one material, whatever number of steps use it. Amounts in `unit`, money in whole units of the currency. */
export interface BillLine {
  id: string;
  what: string;
  /** What is needed, with its spare. */
  need: number;
  unit: string;
  /** True where every reader gets it in its metric unit; see `Need`. */
  kept?: true;
  onHand: number;
  buy: number;
  packs: readonly BoughtPack[];
  /** Paid now; null where it is not known. */
  cost: number | null;
  /** Value of what is used, the shelf's share included; null where it is not known. */
  used: number | null;
  /** On the shelf afterwards; null where nothing could be bought. */
  left: number | null;
  /** True where cheaper packs may have been missed; see `Purchase`. */
  notProved?: true;
  from: readonly { step?: string; figure?: string; amount: number }[];
  /** Why there is no cost, in words: `no price in the shop record`. */
  missing?: string;
}

/** What to buy for a batch, and what it comes to. */
export interface Bill {
  currency: string;
  lines: readonly BillLine[];
  /** Sum of the costs that are known: what is paid now. */
  bought: number;
  /** Sum of the values of what is used, where they are known. */
  used: number;
  /** Materials that a total leaves out, each with the reason: `Pigment: no price in the shop record`. */
  without: { bought: readonly string[]; used: readonly string[] };
  /** How sums are rounded. */
  rounding: string;
}

/**
 * The bill of a batch: one line a material, in the order of the needs, each bought at least cost. Needs of one material are added up before
 * packs are chosen.
 *
 * @param needs over all pieces
 * @param goods how the shop is sold its materials; a need whose goods are not among them has no price
 * @returns the bill, or one error a material whose amounts cannot be compared; its field is the id of the goods
 */
export function billOf(needs: readonly Need[], goods: readonly Goods[], currency: Currency): Outcome<Bill> {
  const known = new Map(goods.map((each) => [each.id, each]));
  const together = new Map<string, Need[]>();
  for (const need of needs) together.set(need.goods, [...(together.get(need.goods) ?? []), need]);
  const errors: FieldError[] = [];
  const lines: BillLine[] = [];
  for (const [id, of] of together) {
    const line = lineOf(id, of, known.get(id), currency);
    if (line.ok) lines.push(line.value);
    else errors.push(...line.errors.map(({ field, message }) => ({ field: `${id}.${field}`, message })));
  }
  if (errors.length > 0) return { ok: false, errors };
  const left = (of: 'cost' | 'used') =>
    lines.filter((line) => line[of] === null).map(({ what, missing = noPrice }) => `${what}: ${missing}`);
  return {
    ok: true,
    value: {
      currency: currency.code,
      lines,
      bought: total(lines.map(({ cost }) => cost ?? 0)),
      used: total(lines.map(({ used }) => used ?? 0)),
      without: { bought: left('cost'), used: left('used') },
      rounding: roundingRule,
    },
  };
}

function lineOf(id: string, needs: readonly Need[], sold: Goods | undefined, currency: Currency): Outcome<BillLine> {
  const [first] = needs;
  // Goods that nobody knows bear the words of all who need them: resin and hardener of one kit are both on its line.
  const what = sold?.what ?? ([...new Set(needs.map((need) => need.what))].join(' + ') || id);
  const unit = first?.amount.unit ?? '{count}';
  const goods: Goods = sold ?? { id, what, packs: [] };
  let plain = 0;
  let withSpare = 0;
  const from: { step?: string; figure?: string; amount: number }[] = [];
  for (const { amount, spare = 0, step, figure } of needs) {
    const value = inUnit(amount, unit, what, goods.density);
    if (!value.ok) return value;
    // Of each by itself: what is no number must not hide in a sum.
    const checked = bestPacks(
      { value: value.value, unit },
      { ...goods, packs: [], onHand: undefined },
      currency,
      spare,
    );
    if (!checked.ok) return checked;
    plain += value.value;
    withSpare += value.value * (1 + spare);
    from.push({
      ...(step === undefined ? {} : { step }),
      ...(figure === undefined ? {} : { figure }),
      amount: value.value,
    });
  }
  // Spares are added before things are rounded to whole ones, so that twice half a disc is one.
  const spare = plain > 0 ? Math.max(0, withSpare / plain - 1) : 0;
  const purchase = bestPacks({ value: tidy(plain), unit }, goods, currency, spare);
  if (!purchase.ok) return purchase;
  const { missing, ...bought } = purchase.value;
  const reason = sold || missing === undefined ? missing : `${noPrice}, which does not have it`;
  return {
    ok: true,
    value: {
      id,
      what,
      ...bought,
      ...(needs.some(({ kept }) => kept) ? { kept: true as const } : {}),
      from,
      ...(reason === undefined ? {} : { missing: reason }),
    },
  };
}
