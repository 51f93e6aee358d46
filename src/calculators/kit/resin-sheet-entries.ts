import * as z from 'zod/mini';
import { amount, excerpt, nameKey } from '../../model/quantity/index.ts';
import { day, hour, minute } from '../../model/quantity/seconds.ts';
import { resinKinds } from '../../model/resin/kinds.ts';
import { parseMixRatio } from '../../model/resin/ratio.ts';
import { choiceField, quantityField, readField } from './fields.ts';

const group = {
  mix: 'Mix ratio and densities',
  pot: 'Pot life',
  pour: 'Pouring',
  times: 'Times after mixing',
  more: 'More of the sheet',
};

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
      unitAsked: true,
      minimum: 5,
      maximum: 20_000,
      examples: ['100 g', '150 g'],
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
    help: 'Where the sheet names none, leave it empty: 20 °C (68 °F) is assumed, and every answer says so.',
    examples: ['20 °C', '68 °F'],
  }),
  greatestVolume: z.optional(
    quantityField({
      label: 'Greatest volume of one pour',
      help: 'Where the sheet limits litres or gallons too.',
      group: group.pour,
      dimension: 'volume',
      minimum: 5,
      maximum: 200_000,
      examples: ['10 L', '2 gal'],
    }),
  ),
  greatestMass: z.optional(
    quantityField({
      label: 'Greatest mass of one pour',
      group: group.pour,
      dimension: 'mass',
      unitAsked: true,
      minimum: 5,
      maximum: 200_000,
      examples: ['10 kg', '20 lb'],
    }),
  ),
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
    help: 'Of the waits above. Where the sheet names none, leave it empty: that of the pot life, else 25 °C (77 °F), is assumed.',
    examples: ['22 °C', '72 °F'],
  }),
  viscosity: z.optional(
    quantityField({
      label: 'Viscosity of the mix',
      group: group.more,
      help: `Of both parts together, near ${amount(25, 'Cel')}.`,
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
