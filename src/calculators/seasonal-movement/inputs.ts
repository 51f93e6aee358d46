import * as z from 'zod/mini';
import { airAlternatives, airFields, humidityField, seasonsTogether } from '../kit/air-fields.ts';
import { cutField, moistureField, widthField } from '../kit/board-fields.ts';
import type { Alternatives, Together } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';
import { stavesField } from '../kit/staves-field.ts';

const board = 'The board';
const now = 'As it is now';
const place = 'Where it will live';

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
  shopHumidity: z.optional(humidityField('Relative humidity of the shop', now, '45 %')),
  ...airFields(place),
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
  airAlternatives,
];

/** What says nothing without the rest of it. */
export const together: readonly Together[] = [
  { fields: ['shopTemperature', 'shopHumidity'], why: 'The air of the shop is a temperature and a humidity' },
  seasonsTogether,
];

/** The worked case: a tray board for a heated house in a cold-winter town. */
export const example = {
  metric: {
    species: 'white-ash',
    width: '280 mm',
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
    width: '11 in',
    thickness: '13/16 in',
    cut: 'flatsawn',
    moistureNow: '8 %',
    place: 'duluth-mn',
    indoors: 'heated',
    heatTo: '68 °F',
    coolTo: '79 °F',
    moistureGain: '2 g/kg',
  },
} as const;
