import { type Dimension, type ReaderUnits, unitByCode } from './units.ts';
import { formatQuantity, lengthAsWritten, roundedOneWay } from './write.ts';

/*
 * Quantities within a sentence. A calculator writes a sentence once, for every reader; the quantity in it is marked, and
 * whatever shows the sentence writes it in the units of whoever reads it.
 */

/** Brackets that no sentence of ours and no reader's keyboard has otherwise. */
const marked =
  /⟦(?<value>-?[\d.]+(?:e[+-]?\d+)?) (?<unit>\S+) (?<digits>\d{1,2})(?:(?<how>[!↓↑])|~(?<other>[\d.]+(?:e[+-]?\d+)?)|÷(?<count>\d+)(?:≤(?<most>[\d.]+(?:e[+-]?\d+)?))?|=(?<parts>[\d.&e-]+))?⟧/g;

/**
 * A quantity to stand in a sentence: a mark that `inReaderUnits` turns into, for example, `20 mm` or `25/32 in`.
 *
 * @param value in `unit`, finite
 * @param unit UCUM code
 * @param digits significant digits that it deserves, 3 unless told
 * @param kept true where every reader gets this very unit, as with grams on a scale that is marked in grams
 */
export function amount(value: number, unit: string, digits = 3, kept = false): string {
  return `⟦${value} ${unit} ${digits}${kept ? '!' : ''}⟧`;
}

/** Two texts for one place of a sentence: which of them stands there is the reader's system. */
const markedTexts = /⟦([^⟦⟧¦]*)¦([^⟦⟧¦]*)⟧/g;

/** A text to stand in a sentence that each reader gets as they would type it: an example for a field, as `300 mm` or `12 in`. */
export function asTyped({ metric, inch }: { metric: string; inch: string }): string {
  return metric === inch ? metric : `⟦${metric}¦${inch}⟧`;
}

/** A length that must not be passed, such as the depth of a layer: rounded down, never up, in whichever unit it is read. */
export function atMost(value: number, unit: 'mm', digits = 2): string {
  return `⟦${value} ${unit} ${digits}↓⟧`;
}

/** A length that must be reached, such as the least that a field takes: rounded up, never down, in whichever unit it is read. */
export function atLeast(value: number, unit: 'mm', digits = 2): string {
  return `⟦${value} ${unit} ${digits}↑⟧`;
}

/** Lengths nearer to each other than this share of them may be one fraction of an inch. */
const nearLengths = 0.1;

/** Whether two lengths, mm, lie so near that a reader of inches may see one number for both: 3 mm and 1/8 in. */
export const lookAlike = (one: number, other: number): boolean => Math.abs(one / other - 1) < nearLengths;

/**
 * A way to write two lengths of one sentence that must not look alike: so finely that they differ, in the reader's own unit.
 *
 * @param one mm
 * @param other mm
 */
export const toldApart = (one: number, other: number) => {
  const digits = lookAlike(one, other) ? 3 : 2;
  return (mm: number): string =>
    one === other ? amount(mm, 'mm', digits) : `⟦${mm} mm ${digits}~${mm === one ? other : one}⟧`;
};

/**
 * The depth of each of some equal layers that fill a depth, as one number: `19/32 in` where so many of them make the depth as it is written,
 * `about 19/32 in` where they do not, and `a little under 3/4 in` where the nearest that a rule shows would be more than is allowed.
 *
 * @param depth of all together, mm
 * @param count of layers
 * @param most that one layer may have, mm, where that is known
 */
export const ofEach = (depth: number, count: number, most?: number): string =>
  `⟦${depth} mm 3÷${count}${most === undefined || !Number.isFinite(most) ? '' : `≤${most}`}⟧`;

/**
 * The sum of some lengths that are told beside it: said to be about so much where the parts, as they are written, do not make it.
 *
 * @param parts mm
 */
export const sumOf = (parts: readonly number[]): string => {
  const sum = parts.reduce((total, part) => total + part, 0);
  return parts.length < 2 ? amount(sum, 'mm', 2) : `⟦${sum} mm 2=${parts.join('&')}⟧`;
};

/** Whether a text still holds a marked quantity: nothing that a reader sees may. */
export function holdsAmount(text: string): boolean {
  return text.includes('⟦') && (text.search(marked) >= 0 || text.search(markedTexts) >= 0);
}

/** Least that a sentence names, in the canonical unit of the dimension: nobody in a shop measures less. */
const leastNamed: Readonly<Partial<Record<Dimension, number>>> = {
  length: 0.01,
  percent: 0.05,
  mass: 0.01,
  volume: 0.01,
  time: 1,
};

/** A quantity as a sentence has it: what stands beside it as a figure reads the same. */
function spoken(value: number, code: string, digits: number, reader: ReaderUnits, kept: boolean): string {
  const unit = unitByCode(code);
  const size = Math.abs(value * (unit?.factor ?? 1));
  const least = leastNamed[unit?.dimension ?? 'number'] ?? 0;
  const write = (of: number, digitsOf: number) => formatQuantity(of, code, reader, { digits: digitsOf, kept });
  // Fractions of an inch have a least of their own.
  const inFractions = unit?.dimension === 'length' && !kept && reader.system === 'inch' && reader.inches !== 'decimal';
  return unit && !inFractions && size > 0 && size < least
    ? `under ${write(least / unit.factor, 1)}`
    : write(value, digits);
}

/** One of two lengths, mm, in the coarsest way in which they differ: the reader's own, 64ths, thousandths. */
function apartFrom(mm: number, other: number, digits: number, reader: ReaderUnits): string {
  const decimal: ReaderUnits = { ...reader, inches: 'decimal' };
  const ways: readonly (readonly [ReaderUnits, digits: number])[] = [
    [reader, digits],
    ...(reader.inches === 'decimal' ? [] : [[{ ...reader, inches: 'sixty-fourths' }, 3] as const]),
    ...[3, 4, 5, 6].map((more) => [decimal, more] as const),
  ];
  const write = (length: number, way: (typeof ways)[number]) =>
    formatQuantity(length, 'mm', way[0], { digits: way[1] });
  const apart = ways.find((way) => write(mm, way) !== write(other, way));
  return write(mm, apart ?? [reader, digits]);
}

/** One of some equal layers, mm, in the words of `ofEach`. */
function layerSpoken(depth: number, count: number, most: number, digits: number, reader: ReaderUnits): string {
  const [each, whole] = [depth / count, depth].map((mm) => lengthAsWritten(mm, 'mm', reader, digits)) as [
    number,
    number,
  ];
  const written = formatQuantity(depth / count, 'mm', reader, { digits });
  if (each > most * (1 + 1e-9)) return `a little under ${written}`;
  return Math.abs(count * each - whole) < 1e-6 * depth ? written : `about ${written}`;
}

/** A sum of lengths, mm, in the words of `sumOf`. */
function sumSpoken(sum: number, parts: readonly number[], digits: number, reader: ReaderUnits): string {
  const shown = (mm: number) => lengthAsWritten(mm, 'mm', reader, digits);
  const added = parts.reduce((total, part) => total + shown(part), 0);
  const written = formatQuantity(sum, 'mm', reader, { digits });
  return Math.abs(added - shown(sum)) < 1e-6 * sum ? written : `about ${written}`;
}

/** What follows a quantity where its `in` would be read twice: `13/16 in in one go`. */
const wordIn = /^\s+in\b/;

/** A length in inches with its unit as a word, `13/16 inch`, `2 inches`: what to write before the word 'in'. */
function inchesAsWord(written: string): string {
  const [, number] = /^(?:under |about |a little under )?(.*) in$/.exec(written) ?? [];
  if (number === undefined) return written;
  return written.replace(/ in$/, /^(1|\d+\/\d+)$/.test(number) ? ' inch' : ' inches');
}

/** A sentence with its marked quantities written in the reader's units; text without a mark stays as it is. */
export function inReaderUnits(text: string, reader: ReaderUnits): string {
  if (!text.includes('⟦')) return text;
  return text
    .replace(markedTexts, (_, metric: string, inch: string) => (reader.system === 'inch' ? inch : metric))
    .replace(marked, (mark: string, ...rest: unknown[]) => {
      const [at, all, groups] = rest.slice(-3) as [number, string, MarkGroups];
      const written = markWritten(groups, reader);
      return wordIn.test(all.slice(at + mark.length, at + mark.length + 8)) ? inchesAsWord(written) : written;
    });
}

/** What a mark says: a quantity, and how it is to be written where that is not as usual. */
type MarkGroups = Readonly<Record<'value' | 'unit' | 'digits', string>> &
  Readonly<Partial<Record<'how' | 'other' | 'count' | 'most' | 'parts', string>>>;

function markWritten({ how, other, count, most, parts, unit, ...texts }: MarkGroups, reader: ReaderUnits): string {
  const [value, digits] = [Number(texts.value), Number(texts.digits)];
  if (other !== undefined) return apartFrom(value, Number(other), digits, reader);
  if (count !== undefined)
    return layerSpoken(
      value,
      Number(count),
      most === undefined ? Number.POSITIVE_INFINITY : Number(most),
      digits,
      reader,
    );
  if (parts !== undefined) return sumSpoken(value, parts.split('&').map(Number), digits, reader);
  if (how === '↓') return formatQuantity(value, unit, reader, { digits, limit: true });
  if (how !== '↑') return spoken(value, unit, digits, reader, how === '!');
  const finest = reader.inches === 'decimal' ? reader : { ...reader, inches: 'sixty-fourths' as const };
  return spoken(roundedOneWay('↑', value, unit, reader, digits), unit, digits + 2, finest, false);
}

/** Every text within a value of plain objects and lists, in the reader's units; the value itself where there is nothing to write. */
export function wordsInReaderUnits<T>(value: T, reader: ReaderUnits): T {
  if (typeof value === 'string') return inReaderUnits(value, reader) as T;
  if (Array.isArray(value)) {
    const items = value.map((item) => wordsInReaderUnits(item, reader));
    return (items.every((item, index) => item === value[index]) ? value : items) as T;
  }
  if (value !== null && typeof value === 'object') {
    const entries = Object.entries(value).map(([key, item]) => [key, wordsInReaderUnits(item, reader)] as const);
    const same = entries.every(([key, item]) => item === (value as Record<string, unknown>)[key]);
    return same ? value : (Object.fromEntries(entries) as T);
  }
  return value;
}
