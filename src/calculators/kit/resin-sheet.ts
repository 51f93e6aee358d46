import * as z from 'zod/mini';
import { answer, type FieldError, type Outcome } from '../../model/evidence/index.ts';
import { canonicalUnit, defaultUnits, nameKey, withUnit } from '../../model/quantity/index.ts';
import { resinKinds } from '../../model/resin/kinds.ts';
import { parseMixRatio } from '../../model/resin/ratio.ts';
import type { ResinSheet } from '../../model/resin/resin.ts';
import type { ResinFigureName } from '../../model/resin/types.ts';
import { readInputs } from './answer.ts';
import type { Asking, RawInputs } from './calculator.ts';
import { bareUnitFor, choiceField, excerpt, type FieldMeta, fieldMeta, quantityField, readField } from './fields.ts';

const group = {
  mix: 'Mix ratio and densities',
  pot: 'Pot life',
  pour: 'Pouring',
  times: 'Times after mixing',
  more: 'More of the sheet',
};
const minute = 60;
const hour = 3600;
const day = 86_400;

/** Longest name of a sheet. */
const longestName = 80;

type Words = { label: string; group: string; help?: string; examples: readonly string[] };

function ratio(words: Words) {
  return z.optional(readField(z.string(), parseMixRatio, { ...words, kind: 'text' }));
}

function temperature(words: Words) {
  return z.optional(quantityField({ dimension: 'temperature', minimum: 0, maximum: 60, ...words }));
}

function time(words: Words, minimum: number, maximum: number) {
  return z.optional(quantityField({ dimension: 'time', minimum, maximum, ...words }));
}

function liquidDensity(label: string, example: string) {
  return z.optional(
    quantityField({
      label,
      group: group.mix,
      dimension: 'liquid-density',
      elseBare: 'g/L',
      minimum: 0.7,
      maximum: 3,
      examples: [example, `${Number(example.split(' ')[0]) * 1000} kg/m³`],
    }),
  );
}

/** The entries of a maker's data sheet, each a text; all but the name may be left out. */
export const resinSheetInputs = z.strictObject({
  name: readField(
    z.string(),
    (text) => {
      const name = text.replace(/\s+/g, ' ').trim();
      if (name.length > longestName) {
        return {
          ok: false,
          problem: `The name has ${name.length} characters, more than ${longestName}`,
          wayOut: 'Shorten it.',
        };
      }
      if (nameKey(name) === '') {
        return {
          ok: false,
          problem: `“${excerpt(name)}” has no letter or digit`,
          wayOut: 'Give a name that you can tell from others.',
        };
      }
      return { ok: true, value: name };
    },
    {
      kind: 'text',
      label: 'Name of the sheet',
      help: 'What you call it on your shelf; with the date of the sheet, so that a later one can be told from it.',
      examples: ['Lakeside casting resin, sheet of March'],
    },
  ),
  kind: z.optional(
    choiceField({
      label: 'Generic kind nearest to it',
      help: 'Stands in for what the sheet does not say; the nearest is found by pot life and ratio.',
      options: [
        { value: '', label: 'The nearest' },
        ...resinKinds.map(({ kind, name }) => ({ value: kind, label: name })),
      ],
      examples: ['slow-casting-2-1'],
    }),
  ),
  mixByVolume: ratio({
    label: 'Mix ratio by volume',
    group: group.mix,
    help: 'Resin first, hardener second.',
    examples: ['2:1', '1:1'],
  }),
  mixByWeight: ratio({
    label: 'Mix ratio by weight',
    group: group.mix,
    help: 'Resin first. It differs from the ratio by volume, since the parts differ in density.',
    examples: ['100:43', '100:84'],
  }),
  densityA: liquidDensity('Density of part A, resin', '1.16 g/ml'),
  densityB: liquidDensity('Density of part B, hardener', '1 g/ml'),
  potLife: time({ label: 'Pot life', group: group.pot, examples: ['6 h', '30 min'] }, 5 * minute, 20 * day),
  potLifeMass: z.optional(
    quantityField({
      label: 'Mass that it is stated for',
      group: group.pot,
      dimension: 'mass',
      minimum: 5,
      maximum: 20_000,
      examples: ['100 g', '1 lb'],
    }),
  ),
  potLifeTemperature: temperature({
    label: 'Temperature that it is stated for',
    group: group.pot,
    examples: ['25 °C', '77 °F'],
  }),
  potLifeMeans: z.optional(
    choiceField({
      label: 'What the sheet means by pot life',
      group: group.pot,
      options: [
        { value: '', label: 'It does not say' },
        { value: 'gel', label: 'Until the cup has set to a gel' },
        { value: 'usable', label: 'As long as it can be worked' },
      ],
      examples: ['gel', 'usable'],
    }),
  ),
  secondPotLife: time(
    {
      label: 'Pot life at another temperature',
      group: group.pot,
      help: 'Same mass. It shows how strongly this resin answers to warmth.',
      examples: ['11 h', '45 min'],
    },
    5 * minute,
    20 * day,
  ),
  secondPotLifeTemperature: temperature({
    label: 'That other temperature',
    group: group.pot,
    examples: ['20 °C', '68 °F'],
  }),
  greatestDepth: z.optional(
    quantityField({
      label: 'Greatest depth of one pour',
      group: group.pour,
      dimension: 'length',
      minimum: 0.5,
      maximum: 200,
      examples: ['20 mm', '3/4 in'],
    }),
  ),
  greatestDepthTemperature: temperature({
    label: 'At this temperature',
    group: group.pour,
    examples: ['20 °C', '68 °F'],
  }),
  recoatOpens: time(
    { label: 'Next coat or layer from', group: group.times, examples: ['20 h', '4 h'] },
    5 * minute,
    30 * day,
  ),
  recoatCloses: time(
    {
      label: 'Next coat without sanding until',
      group: group.times,
      help: 'After that it must be abraded first.',
      examples: ['48 h', '12 h'],
    },
    5 * minute,
    60 * day,
  ),
  sandable: time({ label: 'Sandable after', group: group.times, examples: ['72 h', '24 h'] }, hour, 60 * day),
  cure: time({ label: 'Full cure after', group: group.times, examples: ['7 d'] }, hour, 120 * day),
  foodService: time(
    {
      label: 'Food contact after',
      group: group.times,
      help: 'Only where the maker declares the resin for it.',
      examples: ['30 d'],
    },
    hour,
    365 * day,
  ),
  cureTemperature: temperature({
    label: 'Temperature of these times',
    group: group.times,
    examples: ['22 °C', '72 °F'],
  }),
  viscosity: z.optional(
    quantityField({
      label: 'Viscosity of the mix',
      group: group.more,
      help: 'Of both parts together, near 25 °C.',
      dimension: 'viscosity',
      minimum: 1,
      maximum: 100_000,
      examples: ['400 mPa·s'],
    }),
  ),
  pigmentLimit: z.optional(
    quantityField({
      label: 'Most pigment',
      group: group.more,
      help: 'By mass of the mix.',
      dimension: 'percent',
      minimum: 0,
      maximum: 50,
      examples: ['5 %'],
    }),
  ),
});

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
      potLifeMass: '3.5 oz',
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
  const { potLifeTemperature, secondPotLifeTemperature, potLife, secondPotLife, recoatOpens, recoatCloses } = values;
  if (potLifeTemperature !== undefined && secondPotLifeTemperature !== undefined) {
    const warmer = secondPotLifeTemperature - potLifeTemperature;
    if (Math.abs(warmer) < 1) {
      errors.push({
        field: 'secondPotLifeTemperature',
        message: 'Both pot lives are stated for about the same temperature. Give temperatures at least 1 °C apart.',
      });
    } else if (potLife !== undefined && secondPotLife !== undefined && (secondPotLife - potLife) * warmer >= 0) {
      errors.push({
        field: 'secondPotLife',
        message:
          'The pot life does not grow shorter as it grows warmer, as every resin’s does. Look whether the two are swapped.',
      });
    }
  }
  if (recoatOpens !== undefined && recoatCloses !== undefined && recoatCloses <= recoatOpens) {
    errors.push({
      field: 'recoatCloses',
      message: 'The next coat would have to follow before it may. Look whether the two times are swapped.',
    });
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
