import type { Currency } from './money.ts';

/** Making one takes far longer than using it. */
const formats = new Map<string, Intl.NumberFormat>();

/** A sum as it is written where the reader lives: `$48.00`, `48,00 €`. */
export function moneyWords(sum: number, { code }: Pick<Currency, 'code'>, locale = 'en'): string {
  const key = `${locale} ${code}`;
  const format = formats.get(key) ?? new Intl.NumberFormat(locale, { style: 'currency', currency: code });
  formats.set(key, format);
  return format.format(sum);
}
