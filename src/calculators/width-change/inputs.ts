import * as z from 'zod/mini';
import { cutField, moistureField, widthField } from '../kit/board-fields.ts';
import type { Alternatives } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  species: speciesField({ label: 'Wood' }),
  width: widthField({ help: 'Across the grain, at the first moisture content.' }),
  moistureFrom: moistureField({ label: 'Moisture content, from', examples: ['8 %'] }),
  moistureTo: moistureField({ label: 'Moisture content, to', examples: ['11 %'] }),
  cut: z.optional(cutField()),
  ringAngle: z.optional(
    quantityField({
      label: 'Angle between rings and face',
      help: 'In the middle of the board’s width, seen on the end grain: 0° is flatsawn, 90° quartersawn.',
      dimension: 'angle',
      minimum: 0,
      maximum: 90,
      examples: ['30°'],
    }),
  ),
});

/** A cut is a ring angle. */
export const alternatives: readonly Alternatives[] = [
  {
    label: 'Rings on the end grain',
    sets: [
      { label: 'By cut', fields: ['cut'] },
      { label: 'By angle', fields: ['ringAngle'] },
    ],
  },
];

/** The worked case: a bought board that goes from the shop’s air to a damper house. */
export const example = {
  metric: { species: 'sugar-maple', width: '280 mm', moistureFrom: '8 %', moistureTo: '11 %', cut: 'flatsawn' },
  inch: { species: 'sugar-maple', width: '11 in', moistureFrom: '8 %', moistureTo: '11 %', cut: 'flatsawn' },
} as const;
