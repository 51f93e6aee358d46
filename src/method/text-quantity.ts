import {
  amount,
  canonicalUnit,
  convert,
  type Dimension,
  type FieldProblem,
  parseQuantity,
} from '../model/quantity/index.ts';
import { readAnyQuantity } from '../model/quantity/read-any.ts';

/** A quantity that somebody wrote out in a text, in braces or without. */
export interface WrittenQuantity {
  /** As it stands there. */
  readonly text: string;
  readonly dimension: Dimension;
  /** In the canonical unit of its dimension, with the half of its last written digit. */
  readonly value: number;
  readonly give: number;
  /** For a sentence: whoever shows it writes it in the reader's units (`inReaderUnits`). */
  readonly marked: string;
}

export type WrittenReading =
  | { readonly ok: true; readonly value: WrittenQuantity }
  | ({ readonly ok: false } & FieldProblem);

/** Most that a written inch or foot leaves open, in its own unit: nobody who writes 8 in takes 8 1/2. */
const mostGive: Readonly<Record<string, number>> = { '[in_i]': 1 / 16, '[ft_i]': 1 / 24 };

/** Units in which a round number is said of about so much, `20 cm`; who writes 200 mm has measured. */
const roundUnits = ['cm', 'm'];

const fraction = /\d\s*[/⁄]\s*\d|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/;

/** The last number of a quantity as typed: of `1 h 30 min` it is 30. */
const lastNumber = (text: string): string => /(\d[\d.,]*)[^\d]*$/.exec(text)?.[1]?.replace(/[.,]+$/, '') ?? '';

const decimalsOf = (number: string): number => /[.,](\d+)$/.exec(number)?.[1]?.length ?? 0;

/** What a written number leaves open, in its own unit: half of its last digit; with a fraction half of a 32nd. */
function giveOf(text: string, unit: string): number {
  if (fraction.test(text)) return 1 / 64;
  return Math.min(0.5 * 10 ** -decimalsOf(lastNumber(text)), mostGive[unit] ?? Number.POSITIVE_INFINITY);
}

/** Significant digits that a value deserves whose last written digit counts `step`, both in one unit; never fewer than two. */
function digitsOf(value: number, step: number): number {
  if (value === 0) return 2;
  // A step of half a digit's place counts as the whole place: an eighth of an inch is 3.2 mm, ten inches and an eighth 257 mm.
  const places = Math.floor(Math.log10(Math.abs(value))) - Math.floor(Math.log10(2 * step)) + 1;
  return Math.min(9, Math.max(2, places));
}

/** Significant digits of a number as typed: of 20 °C two, of 0.5 one. */
const typedDigits = (number: string): number =>
  Math.max(1, number.replace(/[.,]/g, '').replace(/^0+(?=\d)/, '').length);

function markedOf(text: string, dimension: Dimension, value: number, typedUnit: string, step: number): string {
  const unit = canonicalUnit[dimension];
  // The zero of a temperature means nothing, so its digits are counted in the unit that it was typed in.
  if (dimension === 'temperature')
    return amount(Number(convert(value, unit, typedUnit).toPrecision(12)), typedUnit, typedDigits(lastNumber(text)));
  // Both systems have the same clock; a quarter of an hour must stay one.
  if (dimension === 'time') return amount(value, unit, Math.max(3, digitsOf(value, step)));
  const zeros = roundUnits.includes(typedUnit) ? (/^\d+?(0+)$/.exec(lastNumber(text))?.[1]?.length ?? 0) : 0;
  const digits = digitsOf(value, step * 10 ** zeros);
  return amount(value, unit, zeros > 0 ? Math.max(1, typedDigits(lastNumber(text)) - zeros) : digits);
}

/**
 * Read a quantity as it stands in a text, number and unit: `20 cm`, `1/8 in`, `35 °C`.
 *
 * @param text short; what is longer than the reader of quantities takes is refused by it
 */
export function readWritten(text: string): WrittenReading {
  const read = readAnyQuantity(text);
  if (!read.ok) return read;
  const { dimension, value } = read.value[0];
  if (dimension === 'number')
    return {
      ok: false,
      problem: `“${text.trim()}” has no unit`,
      wayOut: 'Write its unit behind it, such as 20 mm; a number of things needs no braces.',
    };
  const unit = canonicalUnit[dimension];
  const typed = parseQuantity(text, { dimension, bareUnit: unit });
  if (!typed.ok) return typed;
  if (typed.noScale)
    return { ok: false, problem: `“${text.trim()}” says neither °C nor °F`, wayOut: 'Write which: 20 °C or 68 °F.' };
  const give = giveOf(text, typed.unit) * (convert(1, typed.unit, unit) - convert(0, typed.unit, unit));
  return {
    ok: true,
    value: {
      text: text.trim(),
      dimension,
      value,
      give,
      marked: markedOf(text, dimension, value, typed.unit, 2 * give),
    },
  };
}
