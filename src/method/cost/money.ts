import { Decimal } from 'decimal.js';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { excerpt, nearest } from '../../model/quantity/index.ts';

/** Decimal numbers with digits enough for any bill; money is never reckoned in binary fractions. */
const Exact = Decimal.clone({ precision: 50, rounding: Decimal.ROUND_HALF_UP });

/** The same for every currency, and said on every bill. */
export const roundingRule =
  'Each line is rounded to the smallest coin, half a coin upwards; a total is the sum of its rounded lines. Parts of a sum are rounded by largest remainder, so that they add up to it.';

/** A currency: its ISO 4217 code, and the digits behind the point that its coins have. */
export interface Currency {
  code: string;
  /** 2 for most, 0 for some, 3 for a few. */
  digits: number;
}

/**
 * The currency of a code.
 *
 * @param code ISO 4217, such as USD
 */
export function currencyOf(code: string): Outcome<Currency> {
  const known = Intl.supportedValuesOf('currency');
  if (!known.includes(code)) {
    const near = nearest(code, known);
    return refuse(
      'currency',
      `“${excerpt(code)}” is not a currency code of ISO 4217`,
      near ? `Did you mean ${near}?` : 'Write three capitals, such as USD, EUR or NOK.',
    );
  }
  const format = new Intl.NumberFormat('en', { style: 'currency', currency: code });
  return answer({ code, digits: format.resolvedOptions().maximumFractionDigits ?? 2 });
}

/** Beyond this no sum of a shop goes; below it every sum to the coin is exact. */
export const mostMoney = 1e12;

/** A number as an exact decimal: 0.1 is a tenth. */
export const exact = (value: number | Decimal): Decimal => new Exact(value);

/** Whether a number can be money, or a share of it: finite, not below nothing, not beyond what a shop reckons with. */
export const isSum = (value: number): boolean => Number.isFinite(value) && value >= 0 && value <= mostMoney;

/** A sum to the smallest coin, half a coin upwards. */
export function toCoin(value: number | Decimal, { digits }: Pick<Currency, 'digits'>): number {
  return exact(value).toDecimalPlaces(digits, Decimal.ROUND_HALF_UP).toNumber();
}

/** Digits behind the coin beyond which there is only the noise of shares that were reckoned in binary fractions. */
const noise = 8;

/** A sum to the next coin above, for a price that must not fall short. */
export function upToCoin(value: number | Decimal, { digits }: Pick<Currency, 'digits'>): number {
  return exact(value)
    .toDecimalPlaces(digits + noise, Decimal.ROUND_HALF_UP)
    .toDecimalPlaces(digits, Decimal.ROUND_CEIL)
    .toNumber();
}

/** The sum of amounts that are rounded already. */
export function total(sums: readonly number[]): number {
  return sums.reduce((all, each) => all.plus(each), exact(0)).toNumber();
}

/**
 * Part a sum by weights so that the parts, each a whole number of coins, add up to it: largest remainder, the earlier first where remainders
 * are equal.
 *
 * @param sum whole coins
 * @param weights not below nothing; where all are nothing, the parts are as equal as coins allow
 */
export function parted(sum: number, weights: readonly number[], currency: Pick<Currency, 'digits'>): number[] {
  if (weights.length === 0) return [];
  const scale = exact(10).pow(currency.digits);
  const coins = exact(sum).times(scale).round();
  const all = weights.reduce((sumOf, weight) => sumOf.plus(weight), exact(0));
  const fair = weights.map((weight) => (all.isZero() ? coins.div(weights.length) : coins.times(weight).div(all)));
  const whole = fair.map((part) => part.floor());
  const missing = whole.reduce((rest, part) => rest.minus(part), coins).toNumber();
  const order = fair
    .map((part, at) => ({ at, rest: part.minus(part.floor()) }))
    .sort((one, other) => other.rest.cmp(one.rest) || one.at - other.at);
  const raised = new Set(order.slice(0, missing).map(({ at }) => at));
  return whole.map((part, at) =>
    part
      .plus(raised.has(at) ? 1 : 0)
      .div(scale)
      .toNumber(),
  );
}
