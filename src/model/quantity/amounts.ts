import { convert, type Dimension, type ReaderUnits, unitByCode } from './units.ts';
import { formatQuantity } from './write.ts';

/*
 * Quantities within a sentence. A calculator writes a sentence once, for every reader; the quantity in it is marked, and
 * whatever shows the sentence writes it in the units of whoever reads it.
 */

/** Brackets that no sentence of ours and no reader's keyboard has otherwise. */
const marked = /⟦(-?[\d.]+(?:e[+-]?\d+)?) (\S+) (\d{1,2})([!↓↑]?)⟧/g;

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
 * A way to write two lengths of one sentence that must not look alike: in millimetres for every reader where they lie near, else in the
 * reader's own unit.
 *
 * @param one mm
 * @param other mm
 */
export const toldApart =
  (one: number, other: number) =>
  (mm: number): string =>
    lookAlike(one, other) ? amount(mm, 'mm', 3, true) : amount(mm, 'mm', 2);

/** Share of a length that rounding one way to the reader's own fraction may take; where it takes more, it goes to whole 64ths. */
const lostAtMost = 0.05;

/** Steps of the fractions that readers choose, in inches. */
const fractions = { sixteenths: 1 / 16, 'thirty-seconds': 1 / 32, 'sixty-fourths': 1 / 64 } as const;

/** mm, rounded one way to what the reader's rule shows: so many digits, or the fraction of an inch that the reader chose. */
function roundedTo(way: '↓' | '↑', mm: number, digits: number, reader: ReaderUnits): number {
  const round = (value: number, step: number) =>
    step * (way === '↓' ? Math.floor(value / step + 1e-9) : Math.ceil(value / step - 1e-9));
  if (mm <= 0) return mm;
  if (reader.system === 'inch' && reader.inches !== 'decimal') {
    const own = round(mm, convert(fractions[reader.inches], '[in_i]', 'mm'));
    const near = Math.abs(own - mm) <= lostAtMost * mm;
    return near ? own : round(mm, convert(finestFraction, '[in_i]', 'mm')) || mm;
  }
  const shown = reader.system === 'inch' ? convert(mm, 'mm', '[in_i]') : mm;
  return round(mm, (mm / shown) * 10 ** (Math.floor(Math.log10(shown)) - digits + 1));
}

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

/** The finest fraction of an inch that is spoken of, for lengths that no fraction shows. */
const finestFraction = 1 / 64;

function spoken(value: number, code: string, digits: number, reader: ReaderUnits, kept: boolean): string {
  const unit = unitByCode(code);
  const size = Math.abs(value * (unit?.factor ?? 1));
  const least = leastNamed[unit?.dimension ?? 'number'] ?? 0;
  const write = (of: number, digitsOf: number) => formatQuantity(of, code, reader, { digits: digitsOf, kept });
  const inFractions = unit?.dimension === 'length' && !kept && reader.system === 'inch' && reader.inches !== 'decimal';
  const finest = convert(finestFraction, '[in_i]', 'mm');
  // What the reader's own fraction does not show, a finer one may.
  if (inFractions && size > 0 && size < 2 * finest)
    return formatQuantity(value, code, { ...reader, inches: 'sixty-fourths' }, { digits });
  return unit && size > 0 && size < least ? `under ${write(least / unit.factor, 1)}` : write(value, digits);
}

/** What follows a quantity where its `in` would be read twice: `13/16 in in one go`. */
const wordIn = /^\s+in\b/;

/** A length in inches with its unit as a word, `13/16 inch`, `2 inches`: what to write before the word 'in'. */
function inchesAsWord(written: string): string {
  const [, number] = /^(?:under )?(.*) in$/.exec(written) ?? [];
  if (number === undefined) return written;
  return written.replace(/ in$/, /^(1|\d+\/\d+)$/.test(number) ? ' inch' : ' inches');
}

/** A sentence with its marked quantities written in the reader's units; text without a mark stays as it is. */
export function inReaderUnits(text: string, reader: ReaderUnits): string {
  if (!text.includes('⟦')) return text;
  const write = (value: number, unit: string, digits: number, how: string): string => {
    if (how !== '↓' && how !== '↑') return spoken(value, unit, digits, reader, how === '!');
    const finest = reader.inches === 'decimal' ? reader : { ...reader, inches: 'sixty-fourths' as const };
    return spoken(roundedTo(how, value, digits, reader), unit, digits + 2, finest, false);
  };
  return text
    .replace(markedTexts, (_, metric: string, inch: string) => (reader.system === 'inch' ? inch : metric))
    .replace(
      marked,
      (mark: string, value: string, unit: string, digits: string, how: string, at: number, all: string) => {
        const written = write(Number(value), unit, Number(digits), how);
        return wordIn.test(all.slice(at + mark.length, at + mark.length + 8)) ? inchesAsWord(written) : written;
      },
    );
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
