import { type Dimension, type Unit, units } from './unit-list.ts';

export { type Dimension, type Unit, unitEvidence, units } from './unit-list.ts';

/** The unit that values of each dimension have inside the model. */
export const canonicalUnit: Readonly<Record<Dimension, string>> = {
  length: 'mm',
  area: 'mm2',
  volume: 'mL',
  mass: 'g',
  temperature: 'Cel',
  'temperature-difference': 'K',
  percent: '%',
  angle: 'deg',
  force: 'N',
  density: 'kg/m3',
  time: 's',
  'moisture-gain': 'g/kg',
  pressure: 'Pa',
  'liquid-density': 'g/mL',
  viscosity: 'mPa.s',
  'surface-tension': 'N/m',
  'spreading-rate': 'm2/L',
  'mass-per-area': 'g/m2',
  'energy-per-amount': 'J/mol',
  'energy-per-mass': 'J/kg',
  'heat-capacity': 'J/(kg.K)',
  'thermal-conductivity': 'W/(m.K)',
  'film-coefficient': 'W/(m2.K)',
  rate: '/s',
  'coating-resistance': 's/m',
  speed: 'm/s',
  turns: '/min',
  power: 'kW',
  energy: 'kW.h',
  count: '{count}',
  money: '{money}',
  number: '1',
};

const byCode = new Map(units.map((unit) => [unit.code, unit]));

/** The unit with this UCUM code, or undefined where the code is not one used here. */
export function unitByCode(code: string): Unit | undefined {
  return byCode.get(code);
}

function requireUnit(code: string): Unit {
  const unit = byCode.get(code);
  if (!unit)
    throw new RangeError(`“${code}” is not a unit code used here; the codes are listed in quantity/unit-list.ts`);
  return unit;
}

/**
 * Convert a value between two units of one dimension.
 *
 * @param value in `from`; a temperature is a reading of the scale, and a step of temperature has the units K and [degR]
 * @param from UCUM code
 * @param to UCUM code
 * @throws RangeError for a code that is not known or units of two dimensions: a mistake in the program, not in what was typed
 */
export function convert(value: number, from: string, to: string): number {
  if (from === to) return value;
  const source = requireUnit(from);
  const target = requireUnit(to);
  if (source.dimension !== target.dimension) {
    throw new RangeError(`${from} measures ${source.dimension}, ${to} measures ${target.dimension}`);
  }
  const canonical = (value - (source.zero ?? 0)) * source.factor;
  const converted = canonical / target.factor + (target.zero ?? 0);
  // Adding an offset leaves noise where scales cross zero; beyond twelve decimals of a degree there is nothing else.
  return source.zero === target.zero ? converted : Number(converted.toFixed(12));
}

/** Dimensions that have more than one unit. Things, money and plain numbers have none at all. */
const inSeveral: ReadonlySet<Dimension> = new Set(
  units
    .filter(({ code, dimension }) => units.some((other) => other.dimension === dimension && other.code !== code))
    .map(({ dimension }) => dimension),
);

/** Whether a number without a unit may be meant in more than one: 40 may be °C or °F, a percentage is one and no other. */
export const hasSeveralUnits = (dimension: Dimension): boolean => inSeveral.has(dimension);

/** Label of a unit beside a number, for example `in` for `[in_i]`; a code not known here is its own label. */
export function unitLabel(code: string): string {
  return byCode.get(code)?.label ?? code;
}

/** How a reader wants figures written. */
export interface ReaderUnits {
  system: 'metric' | 'inch';
  /** How inches are written: to the nearest fraction of this size, or in decimals. */
  inches: 'sixteenths' | 'thirty-seconds' | 'sixty-fourths' | 'decimal';
}

/** Metric; inches, where asked for, to the nearest 1/32. */
export const defaultUnits: ReaderUnits = { system: 'metric', inches: 'thirty-seconds' };

const inchUnit: Readonly<Partial<Record<Dimension, string>>> = {
  length: '[in_i]',
  area: '[sin_i]',
  volume: '[foz_us]',
  mass: '[oz_av]',
  temperature: '[degF]',
  'temperature-difference': '[degR]',
  force: '[lbf_av]',
  density: '[lb_av]/[cft_i]',
  'moisture-gain': '[gr]/[lb_av]',
  pressure: '[psi]',
  'liquid-density': '[lb_av]/[gal_us]',
  'spreading-rate': '[sft_i]/[gal_us]',
  'mass-per-area': '[oz_av]/[sft_i]',
};

/** UCUM code of the unit that a bare number takes, for example `[in_i]` for a length read in inches. */
export function readerUnit(dimension: Dimension, reader: ReaderUnits): string {
  return (reader.system === 'inch' ? inchUnit[dimension] : undefined) ?? canonicalUnit[dimension];
}
