import { canonicalUnit, convert, type Dimension, parseQuantity } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { remembering } from '../../model/quantity/remember.ts';
import { cutAtReferences, maskText, referenceOf } from '../text-marks.ts';

/** A quantity that somebody wrote out in a text. */
export interface WrittenQuantity {
  /** As it stands there. */
  text: string;
  dimension: Dimension;
  /** In the canonical unit of its dimension, with the half of its last written digit. */
  value: number;
  give: number;
}

/** A sentence with what it refers to and what it writes out. */
export interface Sentence {
  pointers: readonly string[];
  written: readonly WrittenQuantity[];
}

/** A number with a unit behind it: `0.5 mm`, `1/4 in`, `20 °C`, `8 %`, `40 min`. Of words for units only those that nothing else means. */
const quantity =
  /(?<![\d./,P])(\d+(?:[.,]\d+)?(?:\s+\d+\/\d+)?|\d+\/\d+)\s?(mm|cm|in\b|inch(?:es)?|ft\b|°C|°F|%|min(?:utes?)?\b|h(?:ours?)?\b|d(?:ays?)?\b|kg\b|g\b|ml\b|l\b)(?![\p{L}²³/])/gu;

/** Most that a written inch or foot leaves open, in its own unit: nobody who writes 8 in takes 8 1/2. */
const mostGive: Readonly<Record<string, number>> = { '[in_i]': 1 / 16, '[ft_i]': 1 / 24 };

/** What a written number leaves open, in its own unit: half of its last digit; with a fraction half of a 32nd. */
function giveOf(number: string, unit: string): number {
  if (number.includes('/')) return 1 / 64;
  const decimals = /[.,](\d+)$/.exec(number)?.[1]?.length ?? 0;
  return Math.min(0.5 * 10 ** -decimals, mostGive[unit] ?? Number.POSITIVE_INFINITY);
}

function readWritten([text, number = '', unit = '']: RegExpMatchArray): WrittenQuantity[] {
  const read = readAnyQuantity(`${number} ${unit}`);
  if (!read.ok) return [];
  const { dimension, value } = read.value[0];
  const canonical = canonicalUnit[dimension];
  const typed = parseQuantity(`${number} ${unit}`, { dimension, bareUnit: canonical });
  if (!typed.ok) return [];
  const one = convert(1, typed.unit, canonical) - convert(0, typed.unit, canonical);
  return [{ text, dimension, value, give: giveOf(number, typed.unit) * one }];
}

/** Whether it says what stands before it again in other units: `3 mm (1/8 in)`. Behind a reference it is somebody's own word for it. */
function isOtherUnits(sentence: string, { index = 0, 0: text }: RegExpMatchArray): boolean {
  const before = /(.?)\s*\($/u.exec(sentence.slice(0, index));
  if (!before || sentence.charAt(index + text.length) !== ')') return false;
  return referenceOf(before[1] ?? '') === undefined;
}

/** The sentences of a text of a step. A point between digits ends none. Two rules ask for them, one after the other. */
export const sentencesOf: (source: string) => readonly Sentence[] = remembering(300, takeApart);

function takeApart(source: string): Sentence[] {
  const { masked, pointers } = maskText(source);
  return masked.split(/(?<=[.!?:;])\s+|\n+/).map((sentence) => ({
    pointers: cutAtReferences(sentence).flatMap((piece) => {
      const number = referenceOf(piece);
      return number === undefined ? [] : (pointers[number]?.pointer ?? []);
    }),
    written: [...sentence.matchAll(quantity)].filter((match) => !isOtherUnits(sentence, match)).flatMap(readWritten),
  }));
}
