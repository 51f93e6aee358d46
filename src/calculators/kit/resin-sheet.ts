import type * as z from 'zod/mini';
import { answer, type FieldError, type Outcome } from '../../model/evidence/index.ts';
import { canonicalUnit, defaultUnits, excerpt, withUnit } from '../../model/quantity/index.ts';
import type { ResinSheet } from '../../model/resin/resin.ts';
import type { ResinFigureName } from '../../model/resin/types.ts';
import { readInputs } from './answer.ts';
import type { Asking, RawInputs } from './calculator.ts';
import { bareUnitFor, type FieldMeta, fieldMeta } from './fields.ts';
import { resinSheetInputs } from './resin-sheet-entries.ts';

type SheetValues = z.output<typeof resinSheetInputs>;

/** What a form of the sheet needs to know. */
export const resinSheetForm: Asking = {
  title: 'Data sheet of a resin',
  inputs: resinSheetInputs as unknown as z.ZodMiniType,
  example: {
    metric: {
      name: 'Lakeside casting resin, sheet of March',
      mixByVolume: '2:1',
      mixByWeight: '100:43',
      densityA: '1.16 g/ml',
      densityB: '1.00 g/ml',
      potLife: '6 h',
      potLifeMass: '100 g',
      potLifeTemperature: '25 °C',
      greatestDepth: '20 mm',
      greatestDepthTemperature: '20 °C',
    },
    inch: {
      name: 'Lakeside casting resin, sheet of March',
      mixByVolume: '2:1',
      mixByWeight: '100:43',
      densityA: '9.68 lb/gal',
      densityB: '8.35 lb/gal',
      potLife: '6 h',
      potLifeMass: '100 g',
      potLifeTemperature: '77 °F',
      greatestDepth: '3/4 in',
      greatestDepthTemperature: '68 °F',
    },
  },
};

/** Entries that say nothing without the other. */
const needs: readonly (readonly [entry: keyof SheetValues, of: keyof SheetValues])[] = [
  ['potLifeMass', 'potLife'],
  ['potLifeTemperature', 'potLife'],
  ['secondPotLife', 'potLife'],
  ['secondPotLife', 'potLifeTemperature'],
  ['secondPotLife', 'secondPotLifeTemperature'],
  ['secondPotLifeTemperature', 'secondPotLife'],
  ['greatestDepthTemperature', 'greatestDepth'],
];

/**
 * The texts of a sheet as a file or an address holds them: entries in the form's order, empty ones left out, a number of a
 * program with the unit that it was in.
 */
export function tidySheet(raw: Readonly<Record<string, unknown>>): RawInputs {
  const tidy: Record<string, string> = {};
  for (const [name, schema] of Object.entries(resinSheetInputs._zod.def.shape as Record<string, z.ZodMiniType>)) {
    const value = Object.hasOwn(raw, name) ? raw[name] : undefined;
    const text = typeof value === 'number' ? explicitNumber(value, fieldMeta(schema)) : value;
    if (typeof text === 'string' && text.trim() !== '') tidy[name] = text.trim();
  }
  return tidy;
}

/** A bare number with the unit in which its entry reads it. */
function explicitNumber(value: number, meta: FieldMeta | undefined): string {
  const text = String(value);
  if (!meta?.dimension) return text;
  return withUnit(text, bareUnitFor(meta, text, defaultUnits) ?? canonicalUnit[meta.dimension]);
}

/**
 * Read a data sheet, given as an object of texts (or numbers in the canonical unit) by entry.
 *
 * @returns the sheet in the model's units, or one error an entry, whose field is the entry
 */
export function readResinSheet(raw: Readonly<Record<string, unknown>>): Outcome<ResinSheet> {
  const read = readInputs({ inputs: resinSheetInputs }, raw);
  if (!read.ok) return read;
  const values = read.value;
  const errors = consistency(values);
  if (errors.length > 0) return { ok: false, errors };
  const { name, kind, potLifeMeans, mixByVolume, mixByWeight, ...rest } = values;
  const figures: Partial<Record<ResinFigureName, number>> = {};
  for (const [entry, value] of Object.entries(rest)) if (value !== undefined) figures[entry as ResinFigureName] = value;
  if (mixByVolume !== undefined) figures.volumeRatio = mixByVolume;
  if (mixByWeight !== undefined) figures.weightRatio = mixByWeight;
  return answer({
    name,
    figures,
    ...(kind ? { kind } : {}),
    ...(potLifeMeans ? { potLifeMeans } : {}),
  });
}

/** Entries that say nothing alone. What clashes is no error of an entry: the sheet is kept as typed, and its review says it. */
function consistency(values: SheetValues): FieldError[] {
  const errors: FieldError[] = [];
  const label = (entry: keyof SheetValues) => entryLabel(entry);
  for (const [entry, of] of needs) {
    if (values[entry] !== undefined && values[of] === undefined && !errors.some(({ field }) => field === of)) {
      errors.push({
        field: of,
        message: `Nothing is given for ${label(of)}, and ${label(entry)} says nothing without it. Give both or neither.`,
      });
    }
  }
  return errors;
}

/** Label of an entry, for a message that names it: in lower case; a name that is no entry stands as it was given. */
export function entryLabel(entry: string): string {
  const { shape } = resinSheetInputs._zod.def as { shape: Record<string, z.ZodMiniType> };
  // A name that every object bears is no entry.
  const schema = Object.hasOwn(shape, entry) ? shape[entry] : undefined;
  return (schema && fieldMeta(schema)?.label.toLowerCase()) ?? `“${excerpt(entry)}”`;
}
