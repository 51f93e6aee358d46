import * as z from 'zod/mini';
import { excerpt, formatNumber, parseQuantity, type Read } from '../../model/quantity/index.ts';
import { readField } from '../kit/fields.ts';

/** A price as it was typed: a number, and the currency where one was named, in front or behind. */
export interface Price {
  rate: number;
  currency: string;
  /** Whether the currency stands in front of the number. */
  before: boolean;
}

const most = 1e7;
const currency = String.raw`[A-Za-z]{0,3}\p{Sc}|[A-Za-z]{1,4}\.?`;
const priced = new RegExp(
  String.raw`^(?:(?<front>${currency})\s*)?(?<number>[\d.,]+)(?:\s*(?<behind>${currency}))?$`,
  'u',
);

/** Read a price: `9.50`, `$9`, `9 EUR`, `9,50 €`. */
function readPrice(value: string | number): Read<Price> {
  const text = String(value).trim();
  const match = text.length <= 40 ? priced.exec(text)?.groups : undefined;
  const { front, number = '', behind } = (match ?? {}) as { front?: string; number?: string; behind?: string };
  const read = match && !(front && behind) ? parseQuantity(number, { dimension: 'number', bareUnit: '1' }) : undefined;
  if (!read) {
    return { ok: false, problem: `“${excerpt(text)}” is not a price`, wayOut: 'Write it as 9.50, $9.50 or 9.50 EUR.' };
  }
  if (!read.ok) return read;
  if (read.value > most) {
    return {
      ok: false,
      problem: `${excerpt(text)} is more than this takes: 0 to ${most}`,
      wayOut: 'Look at the number.',
    };
  }
  return { ok: true, value: { rate: read.value, currency: front ?? behind ?? '', before: front !== undefined } };
}

/** A sum in the currency of the price: `$348`, `348 EUR`. */
export function sumWords(sum: number, { currency: name, before }: Price, digits?: number): string {
  const number = digits === undefined ? sum.toFixed(2) : formatNumber(sum, digits);
  if (name === '') return number;
  return before ? `${name}${/\p{Sc}$/u.test(name) ? '' : ' '}${number}` : `${number} ${name}`;
}

/** A field for a price in any currency. */
export function priceField(words: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<Price, string | number> {
  return readField(z.union([z.string(), z.number()]), readPrice, {
    ...words,
    kind: 'text',
    examples: ['9.50', '$9.50', '9.50 EUR'],
  });
}
