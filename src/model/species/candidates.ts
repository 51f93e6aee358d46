import { basisOfSeen, type Citation, type Figure, type Seen } from '../evidence/index.ts';
import { newtonsPerPound } from '../quantity/constants.ts';
import { rungOf } from './authority.ts';
import { kilogramsPerCubicMetre } from './equations.ts';
import { figureKinds } from './labels.ts';
import { type PrintedValue, tidy } from './printed.ts';
import type { FigureName } from './types.ts';

/** A figure that some row gives for a wood, before one is chosen for each name. */
export interface Candidate {
  name: FigureName | 'other';
  figure: Figure;
  /** From `rungs` (authority.ts); within a rung the order of the tables decides. */
  rung: number;
  /** A figure of a group never stands for one wood. */
  group: boolean;
}

/** What a row gives, in the units it prints. */
export interface Given {
  name: FigureName | 'other';
  /** Needed for `other`; a named figure has its own. */
  label?: string;
  printed: PrintedValue;
  /** Unit as printed: a UCUM code, lbf, lb/ft3 or g/cm3. */
  unit: string;
  seen: Seen;
  citation: Citation;
  group: boolean;
  note?: string;
}

const conversions: Readonly<Record<string, { factor: number; unit: string; words: string }>> = {
  lbf: { factor: newtonsPerPound, unit: 'N', words: 'lbf' },
  '% per 1 % MC': { factor: 0.01, unit: '1', words: '% for 1 % of moisture content' },
  'lb/ft3': { factor: kilogramsPerCubicMetre, unit: 'kg/m3', words: 'lb/ft³' },
  'g/cm3': { factor: 1000, unit: 'kg/m3', words: 'g/cm³' },
};

function printedWords({ value, low, high }: PrintedValue): string {
  return low === undefined || high === undefined ? String(value) : `${low} to ${high}`;
}

/** Sentences joined by a space, the missing ones left out; undefined where none is left. */
export function sentences(...parts: readonly (string | undefined)[]): string | undefined {
  const given = parts.filter((part): part is string => part !== undefined && part !== '');
  return given.length === 0 ? undefined : given.join(' ');
}

/** Make a candidate of what a row prints; pounds become newtons and kilograms, and a note keeps the printed number. */
export function candidate(given: Given): Candidate {
  const { printed } = given;
  const conversion = conversions[given.unit];
  const factor = conversion?.factor ?? 1;
  const basis = basisOfSeen(given.seen);
  const kind = given.name === 'other' ? undefined : figureKinds[given.name];
  const note = sentences(
    conversion ? `Given as ${printedWords(printed)} ${conversion.words}.` : undefined,
    printed.note,
    given.note,
  );
  const convert = (value: number) => (conversion ? tidy(value * factor) : value);
  const label = given.name === 'other' ? (given.label ?? 'Other figure') : figureKinds[given.name].label;
  const figure: Figure = {
    label: given.group ? `${label} (of the group)` : label,
    value: convert(printed.value),
    unit: kind?.unit ?? conversion?.unit ?? given.unit,
    ...(printed.low === undefined ? {} : { low: convert(printed.low) }),
    ...(printed.high === undefined ? {} : { high: convert(printed.high) }),
    ...(printed.band === undefined ? {} : { band: printed.band }),
    basis,
    citation: given.citation,
    ...(note === undefined ? {} : { note }),
  };
  return { name: given.name, figure, rung: rungOf(given.citation.source, basis), group: given.group };
}
