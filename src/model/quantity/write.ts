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
function unitFor(value: number, unit: Unit, reader: ReaderUnits): Unit {
  const usual = unitByCode(readerUnit(unit.dimension, reader)) as Unit;
  const steps = (larger[unit.dimension]?.[reader.system] ?? []).map((code) => unitByCode(code) as Unit);
  return steps.reduce(
    (best, step) => (Math.abs(value * unit.factor) >= step.factor * (reach[step.code] ?? 1) ? step : best),
    usual,
  );
}

/**
 * Inches to the nearest fraction, with a sign after them where the true value is a little less or more.
 *
 * @param inches the value
 * @param quantum size of the last digit that the figure deserves, in inches: no finer fraction is shown
 * @returns undefined where the value is too small for the fraction to say anything
 */
function fractionOfInch(
  inches: number,
  stepsWanted: number,
  quantum: number,
  remainderShown: boolean,
): string | undefined {
  let steps = stepsWanted;
  while (steps > 1 && 1 / steps < quantum / 2) steps /= 2;
  const size = Math.abs(inches);
  const count = Math.round(size * steps);
  if (count === 0 && size > 0) return undefined;
  const rest = size - count / steps;
  // Less than a thousandth of a step is noise of arithmetic and conversion, not a remainder.
  const noise = 1 / stepsWanted / 1000;
  const remainder = !remainderShown || Math.abs(rest) <= noise ? '' : rest > 0 ? ' +' : ` ${minus}`;
  const whole = Math.floor(count / steps);
  let top = count - whole * steps;
  let bottom = steps;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`;
  const number = whole === 0 && fraction ? fraction : `${whole}${fraction ? ` ${fraction}` : ''}`;
  return `${inches < 0 ? minus : ''}${number} in${remainder}`;
}

/**
 * Write a value in the reader's units: `250 mm`, `9 27/32 in −`, `70 °F`, `2.2 lb`.
 *
 * Inches come as the nearest fraction that the reader asked for; `−` or `+` behind them says that the true value is a
 * little less or more. A length too small for the fraction is written in decimals. Other values take the larger unit
 * of the system (kg, l, m², lb, gal, ft², min, h) once they reach one of it, days from three. Micrometres, board feet and cubic metres
 * stay what they are.
 *
 * @param value in `unit`
 * @param unit UCUM code; a code not known here is written behind the number as it is
 * @param reader the reader's system and way of writing inches
 * @param options `digits`: significant digits that the figure deserves, 3 unless told; `remainder`: false leaves out the sign
 *   behind a fraction, as a sentence does; `kept`: true writes it in the metric system for every reader
 */
export function formatQuantity(
  value: number,
  unit: string,
  reader: ReaderUnits = defaultUnits,
  options: { digits?: number | undefined; remainder?: boolean; kept?: boolean | undefined } = {},
): string {
  if (options.kept && reader.system !== 'metric') {
    return formatQuantity(value, unit, { ...reader, system: 'metric' }, { ...options, kept: false });
  }
  const digits = options.digits ?? 3;
  if (!Number.isFinite(value)) return notKnown;
  const source = unitByCode(unit);
  if (!source) return `${formatNumber(value, digits)} ${unit}`;
  const target = source.kept ? source : unitFor(value, source, reader);
  const shown = convert(value, source.code, target.code);
  if (target.code === '[in_i]' && reader.inches !== 'decimal') {
    // The figure's last digit counts in the unit that it was worked out in.
    const quantum = value === 0 ? 0 : convert(10 ** -decimals(value, digits), source.code, '[in_i]');
    const text = fractionOfInch(shown, stepsPerInch[reader.inches], quantum, options.remainder ?? true);
    if (text) return text;
  }
  const number = formatNumber(shown, digits);
  const label = unitLabel(target.code);
  return label === '' || label === '°' ? `${number}${label}` : `${number} ${label}`;
}
