import type { EvidenceNote } from '../evidence/index.ts';
import { newtonsPerPound } from './constants.ts';

/** What a quantity measures; units of one dimension convert into each other. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'temperature'
  | 'temperature-difference'
  | 'percent'
  | 'angle'
  | 'force'
  | 'density'
  | 'time'
  | 'moisture-gain'
  | 'pressure'
  | 'liquid-density'
  | 'viscosity'
  | 'surface-tension'
  | 'spreading-rate'
  | 'mass-per-area'
  | 'energy-per-amount'
  | 'energy-per-mass'
  | 'heat-capacity'
  | 'thermal-conductivity'
  | 'film-coefficient'
  | 'rate'
  | 'coating-resistance'
  | 'speed'
  | 'turns'
  | 'power'
  | 'energy'
  | 'count'
  | 'money'
  | 'number';

/** A unit: its UCUM code, what it measures, how it converts, how it is shown and what else it may be called. */
export interface Unit {
  /** UCUM code. */
  code: string;
  dimension: Dimension;
  /** Canonical units in one of this unit. */
  factor: number;
  /** True where a value in this unit is shown in it to every reader: the trade counts in it, whatever else they measure in. */
  kept?: true;
  /** Reading of this scale at the canonical zero; 0 for all but Fahrenheit. */
  zero?: number;
  /** Label shown after a number. */
  label: string;
  /** Label after exactly 1, where it is another. */
  one?: string;
  /** Other spellings that a reader may type, in lower case. */
  names: readonly string[];
}

// The inch, the pound, the pound-force (standard gravity 9.806 65 m/s2) and the US gallon are defined by exact numbers of SI
// units; every factor below is one of these or a whole fraction of it.
const inch = 25.4;
const foot = 12 * inch;
const pound = 453.59237;
const ounce = pound / 16;
const gallon = 3785.411784;
const cubicInch = (inch / 10) ** 3;

const celsiusNames = [
  '°c',
  '° c',
  'c',
  'degc',
  'deg c',
  'celsius',
  'degrees c',
  'degrees celsius',
  'degree celsius',
  '℃',
];
const fahrenheitNames = [
  '°f',
  '° f',
  'f',
  'degf',
  'deg f',
  'fahrenheit',
  'degrees f',
  'degrees fahrenheit',
  'degree fahrenheit',
  '℉',
];

/** Every unit that is read and written here. */
export const units: readonly Unit[] = [
  {
    code: 'mm',
    dimension: 'length',
    factor: 1,
    label: 'mm',
    names: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
  },
  {
    code: 'cm',
    dimension: 'length',
    factor: 10,
    label: 'cm',
    names: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
  },
  { code: 'm', dimension: 'length', factor: 1000, label: 'm', names: ['metre', 'metres', 'meter', 'meters'] },
  {
    code: 'um',
    dimension: 'length',
    factor: 0.001,
    kept: true,
    label: 'µm',
    names: ['µm', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  },
  { code: '[in_i]', dimension: 'length', factor: inch, label: 'in', names: ['in.', 'inch', 'inches', '"'] },
  { code: '[ft_i]', dimension: 'length', factor: foot, label: 'ft', names: ['ft.', 'foot', 'feet', "'"] },
  { code: '[mil_i]', dimension: 'length', factor: inch / 1000, label: 'mil', names: ['mils', 'thou'] },

  {
    code: 'mm2',
    dimension: 'area',
    factor: 1,
    label: 'mm²',
    names: ['sq mm', 'square millimetres', 'square millimeters'],
  },
  {
    code: 'cm2',
    dimension: 'area',
    factor: 100,
    label: 'cm²',
    names: ['sq cm', 'square centimetres', 'square centimeters'],
  },
  {
    code: 'm2',
    dimension: 'area',
    factor: 1e6,
    label: 'm²',
    names: ['sq m', 'square metre', 'square metres', 'square meter', 'square meters'],
  },
  {
    code: '[sin_i]',
    dimension: 'area',
    factor: inch ** 2,
    label: 'in²',
    names: ['in2', 'sq in', 'sq. in.', 'square inch', 'square inches'],
  },
  {
    code: '[sft_i]',
    dimension: 'area',
    factor: foot ** 2,
    label: 'ft²',
    names: ['ft2', 'sq ft', 'sq. ft.', 'square foot', 'square feet'],
  },

  {
    code: 'mL',
    dimension: 'volume',
    factor: 1,
    label: 'ml',
    names: ['cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  },
  { code: 'L', dimension: 'volume', factor: 1000, label: 'l', names: ['litre', 'litres', 'liter', 'liters'] },
  { code: 'cm3', dimension: 'volume', factor: 1, label: 'cm³', names: ['cubic centimetres', 'cubic centimeters'] },
  {
    code: 'm3',
    dimension: 'volume',
    factor: 1e6,
    kept: true,
    label: 'm³',
    names: ['cubic metre', 'cubic metres', 'cubic meter', 'cubic meters'],
  },
  {
    code: '[foz_us]',
    dimension: 'volume',
    factor: gallon / 128,
    label: 'fl oz',
    names: ['fl. oz.', 'fl.oz.', 'floz', 'fluid ounce', 'fluid ounces'],
  },
  { code: '[cup_us]', dimension: 'volume', factor: gallon / 16, label: 'cup', names: ['cups'] },
  { code: '[pt_us]', dimension: 'volume', factor: gallon / 8, label: 'pt', names: ['pint', 'pints'] },
  { code: '[qt_us]', dimension: 'volume', factor: gallon / 4, label: 'qt', names: ['quart', 'quarts'] },
  { code: '[gal_us]', dimension: 'volume', factor: gallon, label: 'gal', names: ['gallon', 'gallons'] },
  {
    code: '[cin_i]',
    dimension: 'volume',
    factor: cubicInch,
    label: 'in³',
    names: ['in3', 'cu in', 'cu. in.', 'cubic inch', 'cubic inches'],
  },
  {
    code: '[cft_i]',
    dimension: 'volume',
    factor: 1728 * cubicInch,
    label: 'ft³',
    names: ['ft3', 'cu ft', 'cu. ft.', 'cubic foot', 'cubic feet'],
  },
  {
    code: '[bf_i]',
    dimension: 'volume',
    factor: 144 * cubicInch,
    kept: true,
    label: 'bd ft',
    names: ['bf', 'board foot', 'board feet'],
  },

  { code: 'g', dimension: 'mass', factor: 1, label: 'g', names: ['gram', 'grams', 'gramme', 'grammes'] },
  { code: 'kg', dimension: 'mass', factor: 1000, label: 'kg', names: ['kilogram', 'kilograms', 'kilo', 'kilos'] },
  { code: '[oz_av]', dimension: 'mass', factor: ounce, label: 'oz', names: ['oz.', 'ounce', 'ounces'] },
  { code: '[lb_av]', dimension: 'mass', factor: pound, label: 'lb', names: ['lb.', 'lbs', 'lbs.', 'pound', 'pounds'] },

  { code: 'Cel', dimension: 'temperature', factor: 1, label: '°C', names: celsiusNames },
  { code: '[degF]', dimension: 'temperature', factor: 5 / 9, zero: 32, label: '°F', names: fahrenheitNames },

  // UCUM counts steps of temperature in kelvin and degrees Rankine; readers write both as degrees.
  { code: 'K', dimension: 'temperature-difference', factor: 1, label: '°C', names: ['kelvin', 'cel', ...celsiusNames] },
  {
    code: '[degR]',
    dimension: 'temperature-difference',
    factor: 5 / 9,
    label: '°F',
    names: ['[degf]', ...fahrenheitNames],
  },

  { code: '%', dimension: 'percent', factor: 1, label: '%', names: ['percent', 'per cent', 'pct'] },

  { code: 'deg', dimension: 'angle', factor: 1, label: '°', names: ['degree', 'degrees'] },
  { code: 'rad', dimension: 'angle', factor: 180 / Math.PI, label: 'rad', names: ['radian', 'radians'] },

  { code: 'N', dimension: 'force', factor: 1, label: 'N', names: ['newton', 'newtons'] },
  { code: 'kN', dimension: 'force', factor: 1000, label: 'kN', names: ['kilonewton', 'kilonewtons'] },
  {
    code: '[lbf_av]',
    dimension: 'force',
    factor: newtonsPerPound,
    label: 'lbf',
    names: ['pound-force', 'pounds-force'],
  },

  { code: 'kg/m3', dimension: 'density', factor: 1, label: 'kg/m³', names: [] },
  { code: 'g/cm3', dimension: 'density', factor: 1000, label: 'g/cm³', names: ['g/ml', 'g/cc'] },
  {
    code: '[lb_av]/[cft_i]',
    dimension: 'density',
    factor: pound / (1.728 * cubicInch),
    label: 'lb/ft³',
    names: ['lb/ft3', 'lb/cu ft', 'pcf'],
  },

  { code: 's', dimension: 'time', factor: 1, label: 's', names: ['sec', 'secs', 'second', 'seconds'] },
  { code: 'min', dimension: 'time', factor: 60, label: 'min', names: ['mins', 'min.', 'minute', 'minutes'] },
  { code: 'h', dimension: 'time', factor: 3600, label: 'h', names: ['hr', 'hrs', 'hour', 'hours'] },
  // What was counted in days or months stays in them: two days are not 48 hours.
  { code: 'd', dimension: 'time', factor: 86400, kept: true, label: 'd', names: ['day', 'days'] },
  { code: 'wk', dimension: 'time', factor: 604800, label: 'wk', names: ['week', 'weeks'] },
  // UCUM's month, a twelfth of 365.25 days.
  {
    code: 'mo',
    dimension: 'time',
    factor: 2_629_800,
    kept: true,
    label: 'months',
    one: 'month',
    names: ['month'],
  },

  { code: 'g/kg', dimension: 'moisture-gain', factor: 1, label: 'g/kg', names: [] },
  {
    code: '[gr]/[lb_av]',
    dimension: 'moisture-gain',
    factor: 1 / 7,
    label: 'gr/lb',
    names: ['grains/lb', 'grains per pound'],
  },

  { code: 'Pa', dimension: 'pressure', factor: 1, label: 'Pa', names: [] },
  { code: 'hPa', dimension: 'pressure', factor: 100, label: 'hPa', names: ['mbar'] },
  { code: 'kPa', dimension: 'pressure', factor: 1000, label: 'kPa', names: [] },
  { code: '[psi]', dimension: 'pressure', factor: (newtonsPerPound * 1e6) / inch ** 2, label: 'psi', names: [] },

  // Makers print densities of resin in g/ml; in the inch system the gallon serves.
  { code: 'g/mL', dimension: 'liquid-density', factor: 1, label: 'g/ml', names: ['g/cc', 'g/cm3', 'g/cm³', 'kg/l'] },
  { code: 'g/L', dimension: 'liquid-density', factor: 0.001, label: 'g/l', names: ['kg/m3', 'kg/m³'] },
  {
    code: '[lb_av]/[gal_us]',
    dimension: 'liquid-density',
    factor: pound / gallon,
    label: 'lb/gal',
    names: ['lbs/gal', 'ppg'],
  },

  {
    code: 'mPa.s',
    dimension: 'viscosity',
    factor: 1,
    kept: true,
    label: 'mPa·s',
    names: ['mpas', 'cp', 'cps', 'centipoise'],
  },
  { code: 'Pa.s', dimension: 'viscosity', factor: 1000, kept: true, label: 'Pa·s', names: ['pas'] },

  { code: 'N/m', dimension: 'surface-tension', factor: 1, kept: true, label: 'N/m', names: [] },
  { code: 'mN/m', dimension: 'surface-tension', factor: 0.001, kept: true, label: 'mN/m', names: ['dyn/cm'] },

  { code: 'm2/L', dimension: 'spreading-rate', factor: 1, label: 'm²/l', names: ['m2/litre', 'm2/liter'] },
  {
    code: '[sft_i]/[gal_us]',
    dimension: 'spreading-rate',
    factor: foot ** 2 / 1e6 / (gallon / 1000),
    label: 'ft²/gal',
    names: ['sq ft/gal', 'ft2/gal', 'sq ft per gallon'],
  },

  { code: 'g/m2', dimension: 'mass-per-area', factor: 1, label: 'g/m²', names: ['gsm'] },
  {
    code: '[oz_av]/[sft_i]',
    dimension: 'mass-per-area',
    factor: ounce / (foot ** 2 / 1e6),
    label: 'oz/ft²',
    names: ['oz/ft2', 'oz/sq ft'],
  },
  // Limits on what passes into food are shown as their rule prints them.
  { code: 'mg/dm2', dimension: 'mass-per-area', factor: 0.1, kept: true, label: 'mg/dm²', names: [] },
  {
    code: 'mg/[sin_i]',
    dimension: 'mass-per-area',
    factor: 0.001 / (inch ** 2 / 1e6),
    kept: true,
    label: 'mg/in²',
    names: ['mg/in2', 'mg/sq in'],
  },

  // What only a laboratory measures is read and shown in SI to every reader.
  { code: 'J/mol', dimension: 'energy-per-amount', factor: 1, kept: true, label: 'J/mol', names: [] },
  { code: 'kJ/mol', dimension: 'energy-per-amount', factor: 1000, kept: true, label: 'kJ/mol', names: [] },
  { code: 'J/kg', dimension: 'energy-per-mass', factor: 1, kept: true, label: 'J/kg', names: [] },
  { code: 'J/g', dimension: 'energy-per-mass', factor: 1000, kept: true, label: 'J/g', names: ['kj/kg'] },
  {
    code: 'J/(kg.K)',
    dimension: 'heat-capacity',
    factor: 1,
    kept: true,
    label: 'J/(kg·K)',
    names: ['j/kgk', 'j/(kg k)', 'j/kg k'],
  },
  {
    code: 'W/(m.K)',
    dimension: 'thermal-conductivity',
    factor: 1,
    kept: true,
    label: 'W/(m·K)',
    names: ['w/mk', 'w/(m k)', 'w/m k'],
  },
  {
    code: 'W/(m2.K)',
    dimension: 'film-coefficient',
    factor: 1,
    kept: true,
    label: 'W/(m²·K)',
    names: ['w/m2k', 'w/(m2 k)', 'w/m²k', 'w/m2 k'],
  },
  { code: '/s', dimension: 'rate', factor: 1, kept: true, label: '1/s', names: ['s-1', 'per s'] },
  { code: 's/m', dimension: 'coating-resistance', factor: 1, kept: true, label: 's/m', names: [] },
  { code: 'Ms/m', dimension: 'coating-resistance', factor: 1e6, kept: true, label: '× 10⁶ s/m', names: [] },

  { code: 'm/s', dimension: 'speed', factor: 1, kept: true, label: 'm/s', names: [] },
  { code: '[ft_i]/min', dimension: 'speed', factor: foot / 60_000, label: 'ft/min', names: ['fpm', 'sfm'] },

  {
    code: '/min',
    dimension: 'turns',
    factor: 1,
    kept: true,
    label: '/min',
    names: ['rpm', '1/min', 'r/min', 'rev/min'],
  },

  { code: 'kW', dimension: 'power', factor: 1, kept: true, label: 'kW', names: ['kilowatt', 'kilowatts'] },
  { code: 'W', dimension: 'power', factor: 0.001, kept: true, label: 'W', names: ['watt', 'watts'] },
  {
    code: 'kW.h',
    dimension: 'energy',
    factor: 1,
    kept: true,
    label: 'kWh',
    names: ['kw h', 'kilowatt-hour', 'kilowatt-hours', 'kilowatt hour', 'kilowatt hours'],
  },
  { code: 'W.h', dimension: 'energy', factor: 0.001, kept: true, label: 'Wh', names: ['watt-hour', 'watt-hours'] },

  // What stands in braces is no unit but says what is counted: so UCUM writes it.
  { code: '{count}', dimension: 'count', factor: 1, label: '', names: [] },
  { code: '{money}', dimension: 'money', factor: 1, label: '', names: [] },

  { code: '1', dimension: 'number', factor: 1, label: '', names: [] },
];

/** What the conversion factors rest on. */
export const unitEvidence: EvidenceNote = {
  text: 'Factors between inch-pound and SI units are exact by definition: the inch is 25.4 mm, the pound 453.59237 g, the pound-force 4.4482216152605 N and the US gallon 3785.411784 ml.',
  basis: 'memory',
  citation: { source: 'nist-sp-811', locator: 'Appendix B' },
};
