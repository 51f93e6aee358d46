import {
  convert,
  type Dimension,
  defaultUnits,
  type ReaderUnits,
  readerUnit,
  type Unit,
  unitByCode,
  unitLabel,
} from './units.ts';

const minus = '\u2212';
const notKnown = 'not known';

/** Steps in an inch for each way of writing inches as fractions. */
const stepsPerInch = { sixteenths: 16, 'thirty-seconds': 32, 'sixty-fourths': 64 } as const;

/** Steps in an inch of the finest fraction that is spoken of: what is less than two of them is written in it for every reader. */
const finestSteps = stepsPerInch['sixty-fourths'];

/** Larger units that a reader would rather see once a value reaches one of them (canonical units of the dimension). */
const larger: Readonly<Partial<Record<Dimension, Readonly<Record<ReaderUnits['system'], readonly string[]>>>>> = {
  area: { metric: ['cm2', 'm2'], inch: ['[sft_i]'] },
  volume: { metric: ['L'], inch: ['[gal_us]'] },
  mass: { metric: ['kg'], inch: ['[lb_av]'] },
  time: { metric: ['min', 'h', 'd'], inch: ['min', 'h', 'd'] },
  pressure: { metric: ['kPa'], inch: [] },
};

/** Decimals that show a value to this many significant digits. */
function decimals(value: number, digits: number): number {
  return value === 0 ? 0 : digits - 1 - Math.floor(Math.log10(Math.abs(value)));
}

/**
 * Write a number to so many significant digits, without trailing zeros or an exponent: `0.0079`, `12.5`, `1230`.
 * A minus is the sign U+2212. A number that is not finite is written `not known`.
 */
export function formatNumber(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return notKnown;
  const rounded = Number(value.toPrecision(digits));
  if (!Number.isFinite(rounded)) return notKnown;
  // From here on toFixed would write an exponent.
  if (Math.abs(rounded) >= 1e21) return BigInt(rounded).toString().replace('-', minus);
  const text = rounded.toFixed(Math.min(100, Math.max(0, decimals(rounded, digits))));
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed.replace('-', minus);
}

/** How many of a larger unit a value must reach to be written in it, where that is not one: 36 h says more than 1.5 d. */
const reach: Readonly<Record<string, number>> = { d: 3 };

/** The reader's unit for a value: the usual one of the dimension, or the largest of which the value reaches enough. */
export function unitFor(value: number, unit: Unit, reader: ReaderUnits): Unit {
  const usual = unitByCode(readerUnit(unit.dimension, reader)) as Unit;
  const steps = (larger[unit.dimension]?.[reader.system] ?? []).map((code) => unitByCode(code) as Unit);
  return steps.reduce(
    (best, step) => (Math.abs(value * unit.factor) >= step.factor * (reach[step.code] ?? 1) ? step : best),
    usual,
  );
}

/**
 * The unit that a value is written in, and its size in it. What rounds up to a whole larger unit is one: 59.7 min to two digits are 1 h and
 * not 60 min, so that nothing smaller reads as more.
 */
function placed(value: number, source: Unit, reader: ReaderUnits, digits: number): { target: Unit; shown: number } {
  const target = source.kept ? source : unitFor(value, source, reader);
  const shown = convert(value, source.code, target.code);
  if (source.kept || target.dimension === 'temperature') return { target, shown };
  const rounded = Number(shown.toPrecision(digits));
  const next = unitFor(rounded, target, reader);
  return next === target ? { target, shown } : { target: next, shown: convert(rounded, target.code, next.code) };
}

/** The size of the last digit that a value to so many significant digits has, in the value's own unit. */
const lastDigit = (value: number, digits: number): number => (value === 0 ? 0 : 10 ** -decimals(value, digits));

/**
 * A value rounded down to what is shown of it, in the unit that it is shown in: a limit that is not to be passed never reads as more than it is.
 *
 * @param value in `unit`, not negative
 * @param unit UCUM code
 * @param digits significant digits that are shown
 */
export function shownAtMost(value: number, unit: string, digits: number): number {
  const source = unitByCode(unit);
  if (!source || value === 0) return value;
  const target = unitFor(value, source, defaultUnits);
  const shown = convert(value, unit, target.code);
  const step = lastDigit(shown, digits);
  return convert(step * Math.floor(shown / step + 1e-9), target.code, unit);
}

/** Share of a length that rounding one way to the reader's own fraction may take; where it takes more, it goes to whole 64ths. */
const lostAtMost = 0.05;

/**
 * A length rounded one way to what the reader's rule shows: so many digits, or the fraction of an inch that the reader chose.
 *
 * @param way down for what must not be passed, up for what must be reached
 * @param value in `unit`, a unit of length; the result is in it too
 */
export function roundedOneWay(
  way: '↓' | '↑',
  value: number,
  unit: string,
  reader: ReaderUnits,
  digits: number,
): number {
  const round = (size: number, step: number) =>
    step * (way === '↓' ? Math.floor(size / step + 1e-9) : Math.ceil(size / step - 1e-9));
  if (value <= 0) return value;
  if (reader.system === 'inch' && reader.inches !== 'decimal') {
    const stepOf = (steps: number) => convert(1 / steps, '[in_i]', unit);
    const own = round(value, stepOf(stepsPerInch[reader.inches]));
    const near = Math.abs(own - value) <= lostAtMost * value;
    return near ? own : round(value, stepOf(finestSteps)) || value;
  }
  const shown = reader.system === 'inch' ? convert(value, unit, '[in_i]') : value;
  return round(value, (value / shown) * lastDigit(shown, digits));
}

/**
 * The size that a length reads as once it is written.
 *
 * @param value in `unit`, a unit of length; the result is in it too
 */
export function lengthAsWritten(value: number, unit: string, reader: ReaderUnits, digits: number): number {
  const source = unitByCode(unit) as Unit;
  const { target, shown } = placed(value, source, reader, digits);
  if (target.code === '[in_i]' && reader.inches !== 'decimal')
    return value - convert(written(value, unit, reader, { digits }).rest, '[in_i]', unit);
  return convert(Number(shown.toPrecision(digits)), target.code, unit);
}

interface Written {
  text: string;
  /** What the true size has more than the text says, inches; negative where it has less. 0 but for fractions of an inch. */
  rest: number;
}

/**
 * Inches to the nearest fraction.
 *
 * @param inches the value
 * @param stepsWanted steps in an inch that the reader asked for
 * @param quantum size of the last digit that the figure deserves, in inches: no finer fraction is shown
 * @returns undefined where the value is too small for the fraction to say anything
 */
function fractionOfInch(inches: number, stepsWanted: number, quantum: number): Written | undefined {
  let steps = stepsWanted;
  while (steps > 1 && 1 / steps < quantum / 2) steps /= 2;
  const size = Math.abs(inches);
  const count = Math.round(size * steps);
  if (count === 0 && size > 0) return undefined;
  const whole = Math.floor(count / steps);
  let top = count - whole * steps;
  let bottom = steps;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const number = whole === 0 && fraction ? fraction : `${whole}${fraction ? ` ${fraction}` : ''}`;
  return { text: `${inches < 0 ? minus : ''}${number} in`, rest: size - count / steps };
}

/**
 * A temperature, whose zero means nothing, deserves places and not digits: 40 °C to two digits is 104 °F and not 100. No thermometer of a
 * shop shows more than tenths.
 */
function temperatureNumber(shown: number, value: number, digits: number): string {
  const places = Math.min(1, decimals(value, digits));
  const step = 10 ** Math.max(0, -places);
  return formatNumber(step * Number((shown / step).toFixed(Math.max(0, places))), 6);
}

/** How a quantity is written. */
export interface WritingOptions {
  /** Significant digits that the figure deserves; 3 unless told. */
  digits?: number | undefined;
  /** Written in the metric system for every reader. */
  kept?: boolean | undefined;
  /** A length that must not be passed: rounded down, never up, so that what is shown may be done. */
  limit?: boolean | undefined;
}

/**
 * Write a value in the reader's units: `250 mm`, `9 27/32 in`, `70 °F`, `2.2 lb`.
 *
 * Inches come as the nearest fraction that the reader asked for, what is under 1/32 in as 64ths, and what is too small for these as
 * `under 1/64 in`. Other values take the
 * larger unit of the system (kg, l, m², lb, gal, ft², min, h) once they reach one of it, days from three. Micrometres, board feet,
 * cubic metres and what is given in days or months stay what they are. A temperature has a tenth at most.
 *
 * What this writes is for reading. A text that goes back into a field is never made by it: there the typed text itself is kept, with
 * its unit behind it (`withUnit`).
 *
 * @param value in `unit`
 * @param unit UCUM code; a code not known here is written behind the number as it is
 * @param reader the reader's system and way of writing inches
 */
export function formatQuantity(
  value: number,
  unit: string,
  reader: ReaderUnits = defaultUnits,
  options: WritingOptions = {},
): string {
  return written(value, unit, reader, options).text;
}

/**
 * The same, and where a fraction of an inch is not the whole truth, on which side that lies: `a little under 9 27/32 in`.
 * For a note in which the remainder matters.
 */
export function formatClosely(
  value: number,
  unit: string,
  reader: ReaderUnits = defaultUnits,
  options: WritingOptions = {},
): string {
  const { text, rest } = written(value, unit, reader, options);
  // Less than a hundred-thousandth of an inch is noise of arithmetic and conversion, not a remainder.
  if (Math.abs(rest) < 1e-5) return text;
  return `a little ${rest > 0 ? 'over' : 'under'} ${text}`;
}

/** Digits of a part of an ounce, so that its last is a hundredth. */
const ounceDigits = (shown: number, digits: number) =>
  shown === 0 ? digits : Math.max(1, Math.min(digits, 3 + Math.floor(Math.log10(Math.abs(shown)))));

function written(value: number, unit: string, reader: ReaderUnits, options: WritingOptions): Written {
  const plain = (text: string): Written => ({ text, rest: 0 });
  if (options.kept && reader.system !== 'metric') {
    return written(value, unit, { ...reader, system: 'metric' }, { ...options, kept: false });
  }
  const digits = options.digits ?? 3;
  if (!Number.isFinite(value)) return plain(notKnown);
  const source = unitByCode(unit);
  if (options.limit && source?.dimension === 'length') {
    const finest = reader.inches === 'decimal' ? reader : { ...reader, inches: 'sixty-fourths' as const };
    return written(roundedOneWay('↓', value, unit, reader, digits), unit, finest, { digits: digits + 2 });
  }
  if (!source) return plain(`${formatNumber(value, digits)} ${unit}`);
  const { target, shown } = placed(value, source, reader, digits);
  if (target.code === '[in_i]' && reader.inches !== 'decimal') {
    // Half a millimetre to the nearest 1/32 would be half as much again.
    const steps = Math.abs(shown) < 2 / finestSteps ? finestSteps : stepsPerInch[reader.inches];
    // The figure's last digit counts in the unit that it was worked out in.
    const quantum = convert(lastDigit(value, digits), source.code, '[in_i]');
    return fractionOfInch(shown, steps, quantum) ?? plain(`under 1/${finestSteps} in`);
  }
  // No scale of a shop shows less than a hundredth of an ounce.
  const deserved = target.code === '[oz_av]' && Math.abs(shown) < 1 ? ounceDigits(shown, digits) : digits;
  const number =
    target.dimension === 'temperature' ? temperatureNumber(shown, value, digits) : formatNumber(shown, deserved);
  const label = number === '1' && target.one ? target.one : unitLabel(target.code);
  return plain(label === '' || label === '°' ? `${number}${label}` : `${number} ${label}`);
}

/**
 * The unit that the digits of a value are counted in: the one that it is written in, but for fractions of an inch and for temperatures, which
 * are rounded by the place that the figure has in its own.
 */
function countedIn(value: number, source: Unit, reader: ReaderUnits, digits: number): Unit {
  const { target } = placed(value, source, reader, digits);
  const byOwnPlace = target.dimension === 'temperature' || (target.code === '[in_i]' && reader.inches !== 'decimal');
  return byOwnPlace ? source : target;
}

/**
 * The band about a value in the reader's units: `6.2 mm to 7.1 mm`, or one of them where both read the same.
 *
 * An end has no digit beyond the last one that the value shows.
 *
 * @param value the figure within the band, in `unit`
 * @param low, high its ends, in `unit`
 * @returns undefined where the band says nothing that the figure does not
 */
export function formatBand(
  value: number,
  { low, high }: { low: number; high: number },
  unit: string,
  reader: ReaderUnits = defaultUnits,
  options: WritingOptions = {},
): string | undefined {
  const digits = options.digits ?? 3;
  const source = unitByCode(unit);
  const shownTo: ReaderUnits = options.kept ? { ...reader, system: 'metric' } : reader;
  const counted = (of: number) => (source ? countedIn(of, source, shownTo, digits).code : unit);
  const own = counted(value);
  // Counted where the value is not shown, a place may be as wide as the band: ten thousand seconds are nearly three hours.
  const place = lastDigit(convert(value, unit, own), digits);
  const end = (of: number) => {
    const its = counted(of);
    const [size, step] = [Math.abs(convert(of, unit, its)), convert(place, own, its)];
    const reaching = size === 0 || step === 0 ? digits : Math.floor(Math.log10(size) - Math.log10(step)) + 1;
    return formatQuantity(of, unit, reader, { ...options, digits: Math.max(1, Math.min(digits, reaching)) });
  };
  const [from, to] = [end(low), end(high)];
  if (from !== to) return `${from} to ${to}`;
  return from === formatQuantity(value, unit, reader, options) ? undefined : from;
}
