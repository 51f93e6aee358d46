import { convert, type ReaderUnits, unitByCode } from './units.ts';
import { unitFor } from './write.ts';

/*
 * Numbers for a spreadsheet. What is read by people says its unit behind each number, and changes it as the number grows; a column that
 * somebody adds up has one unit at its head and plain decimals below.
 */

/**
 * The one unit for all values of a column in the reader's units: that in which its largest value is written.
 *
 * @param values in `unit`
 * @param unit UCUM code; a code not known here stays
 * @param kept true where every reader gets its metric unit, as with resin in grams
 * @returns UCUM code
 */
export function columnUnit(values: readonly number[], unit: string, reader: ReaderUnits, kept = false): string {
  const source = unitByCode(unit);
  if (!source || source.kept) return unit;
  const largest = Math.max(0, ...values.filter(Number.isFinite).map(Math.abs));
  return unitFor(largest, source, kept ? { ...reader, system: 'metric' } : reader).code;
}

/** Decimals of a value to so many significant digits; a temperature, whose zero means nothing, has tenths at most. */
function placesOf(value: number, digits: number, temperature: boolean): number {
  const places = value === 0 ? 0 : digits - 1 - Math.floor(Math.log10(Math.abs(value)));
  return temperature ? Math.min(1, Math.max(0, places)) : places;
}

const rounded = (value: number, places: number): number =>
  places >= 0 ? Number(value.toFixed(Math.min(100, places))) : Math.round(value / 10 ** -places) * 10 ** -places;

/**
 * A value in another unit, with the digits that it deserves and no noise of the arithmetic behind them: 953, not 952.9537500000002.
 *
 * @param value in `from`
 * @param from, to UCUM codes of one dimension
 * @param digits significant digits that it deserves
 * @param beside the value whose last digit counts, in `from`, where this one is an end of its band: it then has no finer digit
 * @returns null where the value is not finite
 */
export function numberIn(value: number, from: string, to: string, digits = 3, beside = value): number | null {
  if (!Number.isFinite(value)) return null;
  const shown = from === to ? value : convert(value, from, to);
  const counted = from === to ? beside : convert(beside, from, to);
  const temperature = unitByCode(to)?.dimension === 'temperature';
  // An end that lies far below its value keeps at least one digit of its own: a band from 0.004 to 12 does not begin at nothing.
  const places = Math.max(placesOf(counted, digits, temperature), temperature ? 0 : placesOf(shown, 1, false));
  const number = rounded(shown, places);
  return Object.is(number, -0) ? 0 : number;
}
