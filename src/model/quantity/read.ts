import { numberPattern, readNumber } from './number.ts';
import { canonicalUnit, convert, type Dimension, type Unit, unitByCode, unitLabel, units } from './units.ts';
import { formatNumber } from './write.ts';

/**
 * What a text says: a value in the dimension's canonical unit and the unit it was typed in (UCUM), or why it says nothing. `noScale` is
 * true where a degree sign said neither °C nor °F, and the unit is that of a bare number.
 */
export type QuantityReading =
  | { ok: true; value: number; unit: string; noScale?: true }
  | { ok: false; problem: string; wayOut: string };

/** How a field is to be read: what it measures, and the unit (UCUM) that a bare number takes. */
export interface ReadingOptions {
  dimension: Dimension;
  bareUnit: string;
}

/** A dimension in words, with texts to follow and the units to name when one is missing. */
const dimensionWords: Readonly<Record<Dimension, { noun: string; examples: string; allowed: string }>> = {
  length: { noun: 'a length', examples: '250 mm or 9 7/8 in', allowed: 'mm, cm, m, in or ft' },
  area: { noun: 'an area', examples: '1.5 m² or 16 sq ft', allowed: 'mm², cm², m², in² or ft²' },
  volume: { noun: 'a volume', examples: '250 ml or 8 fl oz', allowed: 'ml, l, cm³, fl oz, pt, qt, gal, in³ or bd ft' },
  mass: { noun: 'a weight', examples: '900 g or 2 lb 3 oz', allowed: 'g, kg, oz or lb' },
  temperature: { noun: 'a temperature', examples: '20 °C or 68 °F', allowed: '°C or °F' },
  'temperature-difference': { noun: 'a difference of temperature', examples: '5 °C or 9 °F', allowed: '°C or °F' },
  percent: { noun: 'a percentage', examples: '8 % or 12.5 %', allowed: '%' },
  angle: { noun: 'an angle', examples: '45° or 22.5°', allowed: '°' },
  force: { noun: 'a force', examples: '6400 N or 1450 lbf', allowed: 'N, kN or lbf' },
  density: { noun: 'a density', examples: '700 kg/m³ or 44 lb/ft³', allowed: 'kg/m³, g/cm³ or lb/ft³' },
  time: { noun: 'a time', examples: '45 min or 1 h 30 min', allowed: 's, min, h or d' },
  'moisture-gain': { noun: 'moisture in air', examples: '2 g/kg or 14 gr/lb', allowed: 'g/kg or gr/lb' },
  pressure: { noun: 'a pressure', examples: '101.3 kPa or 14.7 psi', allowed: 'Pa, hPa, kPa or psi' },
  'liquid-density': {
    noun: 'a density of a liquid',
    examples: '1.10 g/ml or 9.2 lb/gal',
    allowed: 'g/ml, g/l, kg/m³ or lb/gal',
  },
  viscosity: { noun: 'a viscosity', examples: '600 mPa·s or 600 cP', allowed: 'mPa·s, cP or Pa·s' },
  'surface-tension': { noun: 'a surface tension', examples: '0.040 N/m or 40 mN/m', allowed: 'N/m or mN/m' },
  'spreading-rate': { noun: 'a spreading rate', examples: '10 m²/l or 400 ft²/gal', allowed: 'm²/l or ft²/gal' },
  'mass-per-area': { noun: 'a weight for an area', examples: '150 g/m² or 0.5 oz/ft²', allowed: 'g/m² or oz/ft²' },
  'energy-per-amount': {
    noun: 'an activation energy',
    examples: '58.6 kJ/mol or 58600 J/mol',
    allowed: 'J/mol or kJ/mol',
  },
  'energy-per-mass': { noun: 'a heat of reaction', examples: '400 J/g or 400000 J/kg', allowed: 'J/kg, J/g or kJ/kg' },
  'heat-capacity': { noun: 'a heat capacity', examples: '2000 J/(kg·K)', allowed: 'J/(kg·K)' },
  'thermal-conductivity': { noun: 'a thermal conductivity', examples: '0.18 W/(m·K)', allowed: 'W/(m·K)' },
  'film-coefficient': { noun: 'a heat transfer coefficient', examples: '10 W/(m²·K)', allowed: 'W/(m²·K)' },
  rate: { noun: 'a rate', examples: '6.2e-4 1/s', allowed: '1/s' },
  'coating-resistance': { noun: 'a resistance to moisture', examples: '1e8 s/m', allowed: 's/m' },
  speed: { noun: 'a speed', examples: '40 m/s or 8000 ft/min', allowed: 'm/s or ft/min' },
  turns: { noun: 'a speed of rotation', examples: '18000/min or 18000 rpm', allowed: '/min or rpm' },
  power: { noun: 'a power', examples: '1.5 kW or 750 W', allowed: 'W or kW' },
  energy: { noun: 'an amount of energy', examples: '2.4 kWh', allowed: 'Wh or kWh' },
  count: { noun: 'a number of things', examples: '12', allowed: 'no unit' },
  money: { noun: 'a sum of money', examples: '9.50', allowed: 'no unit' },
  number: { noun: 'a number', examples: '12 or 0.5', allowed: 'no unit' },
};

/** Spellings in lower case by their first letter, longest first, so that `mm2` is tried before `mm` and `mm` before `m`. */
const spellings: ReadonlyMap<string, readonly (readonly [string, readonly Unit[]])[]> = (() => {
  const found = new Map<string, Set<Unit>>();
  for (const unit of units) {
    // What has no unit has no spelling.
    if (unit.label === '') continue;
    for (const spelling of [unit.code, unit.label, ...unit.names]) {
      const key = spelling.toLowerCase();
      found.set(key, (found.get(key) ?? new Set()).add(unit));
    }
  }
  const longestFirst = [...found].map(([key, set]) => [key, [...set]] as const).sort(([a], [b]) => b.length - a.length);
  const byLetter = new Map<string, (readonly [string, readonly Unit[]])[]>();
  for (const entry of longestFirst) {
    const letter = entry[0].charAt(0);
    byLetter.set(letter, [...(byLetter.get(letter) ?? []), entry]);
  }
  return byLetter;
})();

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

/** One spelling for each sign: spaces, minus, primes, fractions. */
function plain(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (character) => ` ${vulgar[character]}`)
    .replace(/\s+/g, ' ')
    .replace(/[\u2212\u2010-\u2015\ufe63\uff0d]/g, '-')
    .replace(/''|[\u2018\u2019\u2032\u02b9]{2}|[\u201c\u201d\u2033\u02ba]/g, '"')
    .replace(/[\u2018\u2019\u2032\u02b9]/g, "'")
    .replace(/\u2044/g, '/')
    .replace(/\u03bc/g, 'µ')
    .trim();
}

/** The text as read, short enough to stand in a message. */
function quoted(text: string): string {
  const shown = text.replace(/\s+/g, ' ').trim();
  return `“${shown.length > 40 ? `${shown.slice(0, 39)}…` : shown}”`;
}

interface Term {
  value: number;
  unit: Unit | undefined;
  /** Whether it was typed as a fraction, as `9 7/8`. */
  fraction: boolean;
}
type Parsed =
  | { ok: true; terms: [Term, ...Term[]]; negative: boolean; noScale: boolean }
  | { ok: false; problem: string; wayOut: string };

/** Feet close behind a number, with inches close behind them, as in `6ft3 1/2`: as a length that is no cubic foot. */
const closeFeet = /^(?:ft|foot|feet)(?=\d)/i;

/**
 * The unit that `rest` starts with: the longest known spelling that ends where a word ends.
 *
 * @param close whether it stands right behind its number, without a blank
 */
function unitAt(
  rest: string,
  dimension: Dimension,
  close: boolean,
): { length: number; unit: Unit | undefined; measures: Unit } | undefined {
  const feet = dimension === 'length' && close ? closeFeet.exec(rest)?.[0] : undefined;
  const foot = feet === undefined ? undefined : unitByCode('[ft_i]');
  if (feet !== undefined && foot) return { length: feet.length, unit: foot, measures: foot };
  for (const [spelling, candidates] of spellings.get(rest.charAt(0).toLowerCase()) ?? []) {
    if (rest.slice(0, spelling.length).toLowerCase() !== spelling) continue;
    const next = rest.charAt(spelling.length);
    if (/[\p{L}\p{M}]$/u.test(spelling) && /^[\p{L}\p{M}_/[]/u.test(next)) continue;
    const unit = candidates.find((candidate) => candidate.dimension === dimension);
    return { length: spelling.length, unit, measures: unit ?? (candidates[0] as Unit) };
  }
  return undefined;
}

/** A degree sign alone says neither °C nor °F: such a number is bare, and its unit is whatever a bare number takes. */
const isNoScale = (dimension: Dimension, measured: Unit): boolean =>
  dimension === 'temperature' && measured.code === 'deg';

/** No quantity is longer; what is longer is not searched for one. */
const longest = 200;

function parse(text: string, dimension: Dimension): Parsed {
  const words = dimensionWords[dimension];
  const example = `Write ${words.noun} such as ${words.examples}.`;
  if (text.length > longest)
    return { ok: false, problem: `${quoted(text.slice(0, longest))} is too long for ${words.noun}`, wayOut: example };
  let rest = plain(text);
  if (rest === '') return { ok: false, problem: `Nothing was entered where ${words.noun} is needed`, wayOut: example };
  const negative = rest.startsWith('-');
  if (/^[-+]/.test(rest)) rest = rest.slice(1).trimStart();
  // Figures copied from an answer may end in a sign that says 'a little less' or 'a little more'.
  if (/[^\d\s/.,] [-+]$/.test(rest)) rest = rest.slice(0, -1).trimEnd();
  const terms: Term[] = [];
  let noScale = false;
  while (rest !== '') {
    const match = numberPattern.exec(rest);
    if (!match) {
      const problem =
        terms.length === 0
          ? `${quoted(text)} is not ${words.noun}`
          : `${quoted(rest)} in ${quoted(text)} cannot be read`;
      return { ok: false, problem, wayOut: example };
    }
    const number = readNumber(match);
    if (!number.ok) return number;
    const behind = rest.slice(match[0].length);
    rest = behind.trimStart();
    const found = unitAt(rest, dimension, behind === rest);
    const fraction = match[6] === undefined;
    if (!found) {
      const word = /^[^\d\s]+/.exec(rest)?.[0];
      if (word)
        return {
          ok: false,
          problem: `${quoted(word)} is not a unit of ${words.noun.replace(/^an? /, '')}`,
          wayOut: `Use ${words.allowed}.`,
        };
      terms.push({ value: number.value, unit: undefined, fraction });
      continue;
    }
    if (!found.unit) {
      if (isNoScale(dimension, found.measures)) {
        noScale = true;
        terms.push({ value: number.value, unit: undefined, fraction });
        rest = rest.slice(found.length).trimStart();
        continue;
      }
      const other = dimensionWords[found.measures.dimension].noun;
      const word = rest.slice(0, found.length);
      return {
        ok: false,
        problem: `${quoted(text)} is ${other}: ${quoted(word)} does not measure ${words.noun}`,
        wayOut: `Use ${words.allowed}.`,
      };
    }
    terms.push({ value: number.value, unit: found.unit, fraction });
    rest = rest.slice(found.length).trimStart();
  }
  const [first, ...others] = terms;
  if (!first) return { ok: false, problem: `${quoted(text)} has no number`, wayOut: example };
  return { ok: true, terms: [first, ...others], negative, noScale };
}

/** Units of length of which fractions are spoken. */
const fractioned: ReadonlySet<string> = new Set(['[in_i]', '[ft_i]', '[yd_i]']);

type Reading =
  | { ok: true; value: number; unit: string; bare: boolean; noScale?: true }
  | { ok: false; problem: string; wayOut: string };

/** Without the noise of binary arithmetic in the last digits (10.25 in is 260.35 mm), and without a negative zero. */
function tidy(value: number): number {
  return Number(value.toPrecision(14)) + 0;
}

/** Join `1 ft` and `3 1/2 in` into one value: all parts but the last whole, each smaller than one of the unit before it. */
function join(text: string, terms: readonly [Term, ...Term[]], negative: boolean, options: ReadingOptions): Reading {
  const words = dimensionWords[options.dimension];
  const example = `Write ${words.noun} such as ${words.examples}.`;
  const [first, ...others] = terms;
  const firstUnit = first.unit ?? unitByCode(options.bareUnit);
  if (!firstUnit) throw new RangeError(`“${options.bareUnit}” is not a unit code used here`);
  const sign = negative ? -1 : 1;
  const bare = first.unit === undefined;
  if (
    bare &&
    first.fraction &&
    options.dimension === 'length' &&
    !fractioned.has(firstUnit.code) &&
    others.length === 0
  ) {
    const number = plain(text);
    return {
      ok: false,
      problem: `${quoted(text)} has a fraction and no unit, and nobody means a fraction of a ${firstUnit.label}`,
      wayOut: `Write ${number} in for inches, or ${formatNumber(sign * first.value, 5)} ${firstUnit.label}.`,
    };
  }
  if (others.length === 0) {
    const value = convert(sign * first.value, firstUnit.code, canonicalUnit[options.dimension]);
    return { ok: true, value: tidy(value), unit: firstUnit.code, bare };
  }
  if (bare)
    return { ok: false, problem: `${quoted(text)} holds two numbers without a unit between them`, wayOut: example };
  let total = first.value * firstUnit.factor;
  let before: { value: number; unit: Unit } = { value: first.value, unit: firstUnit };
  for (const term of others) {
    // After feet a bare number is inches, as it is spoken.
    const unit = term.unit ?? (before.unit.code === '[ft_i]' ? unitByCode('[in_i]') : undefined);
    if (!unit) return { ok: false, problem: `${quoted(text)} ends in a number without a unit`, wayOut: example };
    const descends = unit.zero === undefined && unit.factor < before.unit.factor;
    if (!descends || !Number.isInteger(before.value) || term.value * unit.factor >= before.unit.factor) {
      return {
        ok: false,
        problem: `${quoted(text)} does not add up: ${term.value} ${unit.label} cannot follow ${before.value} ${before.unit.label}`,
        wayOut: `Write whole ${before.unit.label} and then less than one ${before.unit.label} in a smaller unit, or use one unit alone.`,
      };
    }
    total += term.value * unit.factor;
    before = { value: term.value, unit };
  }
  return { ok: true, value: tidy(sign * total), unit: before.unit.code, bare };
}

function read(text: string, options: ReadingOptions): Reading {
  const parsed = parse(text, options.dimension);
  if (!parsed.ok) return parsed;
  const joined = join(text, parsed.terms, parsed.negative, options);
  return joined.ok && parsed.noScale ? { ...joined, noScale: true } : joined;
}

/**
 * Read a quantity as a shop writes it: `250 mm`, `9 7/8 in`, `9-7/8"`, `1' 3 1/2"`, `2,5 mm`, `−5 °C`, `2 lb 3 oz`, `20 Cel`.
 *
 * @param text what was typed; any string
 * @param options what it measures, and the UCUM unit that a bare number takes
 * @returns the value in the canonical unit of the dimension and the unit typed (the smallest, where there are two),
 *   or the problem, which names what was read, and a way out. It never throws for what a reader may type.
 */
export function parseQuantity(text: string, options: ReadingOptions): QuantityReading {
  const reading = read(text, options);
  if (!reading.ok) return reading;
  const { value, unit, noScale } = reading;
  return { ok: true, value, unit, ...(noScale ? { noScale } : {}) };
}

/**
 * Put the unit behind a bare number, for the address: `250` with `mm` gives `250 mm`, and `62°` with °F gives `62 °F`.
 * A text that has a unit, or does not parse, comes back as it was.
 */
export function withUnit(text: string, bareUnit: string): string {
  const unit = unitByCode(bareUnit);
  if (!unit || unit.label === '') return text;
  const reading = read(text, { dimension: unit.dimension, bareUnit });
  if (!reading.ok || !reading.bare) return text;
  const label = unitLabel(bareUnit);
  if (reading.noScale) return text.replace(/\s*(?:°|deg(?:rees?)?)\s*$/i, ` ${label}`);
  return label === '°' ? `${text.trim()}°` : `${text.trim()} ${label}`;
}
