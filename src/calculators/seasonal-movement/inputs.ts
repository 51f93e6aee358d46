import * as z from 'zod/mini';
import { cutField, moistureField, widthField } from '../kit/board-fields.ts';
import type { Alternatives } from '../kit/calculator.ts';
import { climateField } from '../kit/climate-field.ts';
import { choiceField, type FieldMeta, quantityField } from '../kit/fields.ts';
import { readingsField } from '../kit/readings-field.ts';
import { speciesField } from '../kit/species-field.ts';
import { stavesField } from '../kit/staves-field.ts';

const board = 'The board';
const now = 'As it is now';
const place = 'Where it will live';

/** Questions about a heated house are asked only of one. */
const whenHeated = { field: 'indoors', is: ['heated', ''] };

const temperature = (label: string, examples: readonly string[], more: Pick<FieldMeta, 'help' | 'when'> = {}) =>
  quantityField({ label, group: place, dimension: 'temperature', minimum: -40, maximum: 60, examples, ...more });

const humidity = (label: string, group: string, example: string) =>
  quantityField({ label, group, dimension: 'percent', minimum: 0, maximum: 100, examples: [example] });

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  species: z.optional(speciesField({ label: 'Wood', group: board })),
  width: z.optional(widthField({ label: 'Width across the grain', group: board })),
  staves: z.optional(stavesField({ label: 'Staves, from edge to edge', group: board })),
  thickness: quantityField({
    label: 'Thickness',
    group: board,
    dimension: 'length',
    minimum: 1,
    maximum: 300,
    examples: ['20 mm', '3/4 in'],
  }),
  cut: z.optional(cutField({ group: board })),
  pithDepth: z.optional(
    quantityField({
      label: 'Pith, below the heart-side face',
      help: 'Continue the rings of the end grain to their centre; measure from there straight up to the plane of the nearer face.',
      group: board,
      dimension: 'length',
      minimum: -150,
      maximum: 5000,
      examples: ['60 mm', '2 1/2 in'],
    }),
  ),
  pithOffset: z.optional(
    quantityField({
      label: 'Pith, sideways from the middle of the width',
      help: '0 where the rings are symmetrical. To either side: the answer is the same mirrored.',
      group: board,
      dimension: 'length',
      minimum: -5000,
      maximum: 5000,
      examples: ['0 mm', '0 in'],
    }),
  ),
  inlayWidth: z.optional(
    quantityField({
      label: 'Resin inlay, its width across the grain',
      help: 'Shows how far the wood would move over it. Leave empty for a plain board.',
      group: board,
      dimension: 'length',
      minimum: 1,
      maximum: 3000,
      examples: ['80 mm', '3 in'],
    }),
  ),
  moistureNow: z.optional(
    moistureField({
      label: 'Moisture content',
      help: 'By a moisture meter, in several places.',
      group: now,
      examples: ['8 %'],
    }),
  ),
  shopTemperature: z.optional(
    quantityField({
      label: 'Temperature of the shop',
      help: 'Where the board has lain for weeks: its moisture is taken at balance with that air.',
      group: now,
      dimension: 'temperature',
      minimum: -40,
      maximum: 60,
      examples: ['18 °C', '65 °F'],
    }),
  ),
  shopHumidity: z.optional(humidity('Relative humidity of the shop', now, '45 %')),
  place: z.optional(
    climateField({ label: 'Nearest place', help: 'Outdoor climate of a typical year, by month.', group: place }),
  ),
  indoors: z.optional(
    choiceField({
      label: 'Kept',
      group: place,
      options: [
        { value: 'heated', label: 'Heated house' },
        { value: 'unheated', label: 'Unheated shed' },
      ],
      examples: ['heated', 'unheated'],
    }),
  ),
  heatTo: z.optional(temperature('Heated to', ['20 °C', '68 °F'], { when: whenHeated })),
  coolTo: z.optional(temperature('Cooled to', ['26 °C', '79 °F'], { when: whenHeated })),
  moistureGain: z.optional(
    quantityField({
      label: 'Moisture added indoors',
      help: 'By people, cooking and washing in a shut house: 1 to 4 g per kg of air. A humidifier adds more.',
      group: place,
      dimension: 'moisture-gain',
      minimum: 0,
      maximum: 20,
      examples: ['2 g/kg'],
      when: whenHeated,
    }),
  ),
  readings: z.optional(
    readingsField({
      label: 'Own readings',
      help: 'One a line or parted by semicolons: name, temperature, relative humidity. Or a logger’s file with a header row.',
      group: place,
    }),
  ),
  dryTemperature: z.optional(temperature('Dry season, temperature', ['20 °C', '68 °F'])),
  dryHumidity: z.optional(humidity('Dry season, relative humidity', place, '25 %')),
  wetTemperature: z.optional(temperature('Damp season, temperature', ['24 °C', '75 °F'])),
  wetHumidity: z.optional(humidity('Damp season, relative humidity', place, '60 %')),
});

export type Inputs = z.output<typeof inputs>;

/** Of each of these a reader knows one set. */
export const alternatives: readonly Alternatives[] = [
  {
    label: 'One board, or a panel glued from staves',
    sets: [
      { label: 'One board', fields: ['species', 'width'] },
      { label: 'Panel', fields: ['staves'] },
    ],
  },
  {
    label: 'Rings on the end grain',
    sets: [
      { label: 'By cut', fields: ['cut'] },
      { label: 'By the pith', fields: ['pithDepth', 'pithOffset'] },
    ],
  },
  {
    label: 'How dry it is',
    sets: [
      { label: 'By meter', fields: ['moistureNow'] },
      { label: 'By the shop’s air', fields: ['shopTemperature', 'shopHumidity'] },
    ],
  },
  {
    label: 'The air there',
    sets: [
      { label: 'By climate', fields: ['place', 'indoors', 'heatTo', 'coolTo', 'moistureGain'] },
      { label: 'Two seasons', fields: ['dryTemperature', 'dryHumidity', 'wetTemperature', 'wetHumidity'] },
      { label: 'Own readings', fields: ['readings'] },
    ],
  },
];

/** The worked case: a tray board for a heated house in a cold-winter town. */
export const example = {
  metric: {
    species: 'white-ash',
    width: '300 mm',
    thickness: '20 mm',
    cut: 'flatsawn',
    moistureNow: '8 %',
    place: 'duluth-mn',
    indoors: 'heated',
    heatTo: '20 °C',
    coolTo: '26 °C',
    moistureGain: '2 g/kg',
  },
  inch: {
    species: 'white-ash',
    width: '12 in',
    thickness: '3/4 in',
    cut: 'flatsawn',
    moistureNow: '8 %',
    place: 'duluth-mn',
    indoors: 'heated',
    heatTo: '68 °F',
    coolTo: '79 °F',
    moistureGain: '2 g/kg',
  },
} as const;
