import * as z from 'zod/mini';
import { readField } from '../../calculators/kit/fields.ts';
import {
  amount,
  canonicalUnit,
  type Dimension,
  excerpt,
  parseGoods,
  parseQuantity,
  withUnit,
} from '../../model/quantity/index.ts';
import type { Amount } from '../cost/index.ts';

/** Words about a field: they go into the published schema. */
export interface Words {
  label: string;
  help?: string;
  examples: readonly string[];
}

/** What a shop's own name for a thing may look like. */
export const ownId = z
  .string()
  .check(
    z.regex(
      /^[a-z0-9]+(-[a-z0-9]+)*$/,
      'An id is in lower case with hyphens, such as small-planer. Write it so; the name may stand in “name”.',
    ),
    z.describe('The shop’s own short name for it, lower case with hyphens: methods and bills call it so.'),
  );

/** A line of text of the shop's own. */
export const ownName = z
  .string()
  .check(z.minLength(1), z.maxLength(120), z.describe('What people call it; its id where left out.'));

/** A text, where a bare number would not say what it measures. */
const textWithUnit = (example: string) =>
  z.string({ error: `A number without a unit can mean anything. Write it with its unit, such as ${example}.` });

/**
 * A quantity as a text with its unit, `12 in` or `305 mm`, read in the canonical unit of its dimension. A number without a unit is
 * refused: the record is read by people of both systems.
 */
export function quantityText(
  meta: Words & { dimension: Dimension; minimum: number; maximum: number },
): z.ZodMiniType<number, string> {
  const { dimension, minimum, maximum, examples, label, help } = meta;
  const unit = canonicalUnit[dimension];
  const range = `${amount(minimum, unit, 6)} to ${amount(maximum, unit, 6)}`;
  return readField(
    textWithUnit(examples[0] ?? ''),
    (text) => {
      const read = parseQuantity(text, { dimension, bareUnit: unit });
      if (!read.ok) return read;
      if (withUnit(text, unit) !== text) {
        return {
          ok: false,
          problem: `“${excerpt(text)}” has no unit`,
          wayOut: `Write it behind the number, such as ${examples.join(' or ')}.`,
        };
      }
      if (read.value < minimum || read.value > maximum) {
        return {
          ok: false,
          problem: `“${excerpt(text)}” is ${read.value < minimum ? 'less' : 'more'} than this takes: ${range}`,
          wayOut: 'Look whether the unit is right.',
        };
      }
      return { ok: true, value: read.value };
    },
    { kind: 'text', label, ...(help ? { help } : {}), examples },
  );
}

const textOrNumber = z.union([z.string(), z.number()]);

/** An amount of goods: `5 L`, `1 kg`, `12 bd ft`, or a whole number of things. */
export function amountText(
  words: Words,
  least: 'positive' | 'zero' = 'positive',
): z.ZodMiniType<Amount, string | number> {
  return readField(
    textOrNumber,
    (given) => {
      const text = String(given);
      const read = parseGoods(text);
      if (!read.ok) return read;
      if (least === 'positive' ? read.value <= 0 : read.value < 0) {
        return {
          ok: false,
          problem: `“${excerpt(text)}” is ${read.value < 0 ? 'less than nothing' : 'nothing'}`,
          wayOut: `Give an amount, such as ${words.examples.join(' or ')}.`,
        };
      }
      return { ok: true, value: { value: read.value, unit: read.unit } };
    },
    { kind: 'text', ...words },
  );
}

/** The greatest sum that a record takes, in whole units of its currency. */
const mostMoney = 1e7;

/**
 * A sum of money in the currency of the shop, as a number or a text without the currency: `48.00`.
 *
 * How many decimals the currency has is looked at when the whole record is known.
 */
export function moneyField(words: Words): z.ZodMiniType<number, string | number> {
  return readField(
    textOrNumber,
    (given) => {
      const text = String(given).trim();
      const read = /^\d[\d.,]*$/.test(text)
        ? parseQuantity(text, { dimension: 'number', bareUnit: '1' })
        : ({
            ok: false,
            problem: `“${excerpt(text)}” is not a sum of money`,
            wayOut: `Write the number alone, such as ${words.examples[0]}; the currency of the shop is stated once, in “currency”.`,
          } as const);
      if (!read.ok) return read;
      if (read.value > mostMoney)
        return {
          ok: false,
          problem: `${excerpt(text)} is more than this takes: 0 to ${mostMoney}`,
          wayOut: 'Look at the number.',
        };
      return { ok: true, value: read.value };
    },
    { kind: 'text', ...words },
  );
}

/** What one more of a thing costs, where the shop knows it. */
export const priceOfOne = z.exactOptional(
  moneyField({
    label: 'Price of one more',
    help: 'In the currency of the shop; a plan then says whether one more pays for itself.',
    examples: ['18.00'],
  }),
);

/** A share in percent, written `35 %`. */
export function shareText(words: Words, maximum: number): z.ZodMiniType<number, string> {
  return quantityText({ ...words, dimension: 'percent', minimum: 0, maximum });
}

/** How many there are: a whole number. */
export function countOf(label: string, most: number): z.ZodMiniType<number> {
  return z
    .int()
    .check(
      z.minimum(0, 'There cannot be fewer than none. Give a whole number.'),
      z.maximum(most, `At most ${most} are taken here. Give fewer.`),
      z.describe(label),
    );
}
