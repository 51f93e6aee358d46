import type { ReaderUnits } from './units.ts';
import { formatQuantity } from './write.ts';

/*
 * Quantities within a sentence. A calculator writes a sentence once, for every reader; the quantity in it is marked, and
 * whatever shows the sentence writes it in the units of whoever reads it.
 */

/** Brackets that no sentence of ours and no reader's keyboard has otherwise. */
const marked = /⟦(-?[\d.]+(?:e[+-]?\d+)?) (\S+) (\d{1,2})(!?)⟧/g;

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

/** Whether a text still holds a marked quantity: nothing that a reader sees may. */
export function holdsAmount(text: string): boolean {
  return text.includes('⟦') && text.search(marked) >= 0;
}

/** A sentence with its marked quantities written in the reader's units; text without a mark stays as it is. */
export function inReaderUnits(text: string, reader: ReaderUnits): string {
  if (!text.includes('⟦')) return text;
  return text.replace(marked, (_, value: string, unit: string, digits: string, kept: string) =>
    formatQuantity(Number(value), unit, reader, { digits: Number(digits), remainder: false, kept: kept === '!' }),
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
