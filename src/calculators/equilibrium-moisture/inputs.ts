import * as z from 'zod/mini';
import type { Alternatives } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  temperature: quantityField({
    label: 'Temperature of the air',
    dimension: 'temperature',
    // Where Eq. 4-5 is solved for; the handbook's table, which it fits, runs from -1.1 to 132 °C.
    minimum: -40,
    maximum: 130,
    examples: ['20 °C', '68 °F'],
  }),
  relativeHumidity: z.optional(
    quantityField({
      label: 'Relative humidity',
      help: 'As a hygrometer shows it.',
      dimension: 'percent',
      minimum: 0,
      maximum: 100,
      examples: ['50 %'],
    }),
  ),
  moistureContent: z.optional(
    quantityField({
      label: 'Moisture content of the wood',
      help: 'Water as a share of the ovendry mass, as a moisture meter shows it.',
      dimension: 'percent',
      minimum: 0,
      maximum: 30,
      examples: ['8 %'],
    }),
  ),
});

/** Each follows from the other. */
export const alternatives: readonly Alternatives[] = [
  {
    label: 'What you know',
    sets: [
      { label: 'The air', fields: ['relativeHumidity'] },
      { label: 'The wood', fields: ['moistureContent'] },
    ],
  },
];

/** The worked case: the air of the workshop. */
export const example = {
  metric: { temperature: '20 °C', relativeHumidity: '50 %' },
  inch: { temperature: '68 °F', relativeHumidity: '50 %' },
} as const;
