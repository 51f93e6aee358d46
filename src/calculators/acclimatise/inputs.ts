import * as z from 'zod/mini';
import { moistureField } from '../kit/board-fields.ts';
import { diffusionField, surfaceField } from '../kit/diffusion-fields.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';

const expert = 'For experts';

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  thickness: quantityField({
    label: 'Thickness',
    dimension: 'length',
    minimum: 1,
    maximum: 300,
    examples: ['27 mm', '1 1/16 in'],
  }),
  moistureNow: moistureField({
    label: 'Moisture content now',
    help: 'Mean of several readings along the board, not at its ends.',
    examples: ['12 %'],
  }),
  temperature: quantityField({
    label: 'Temperature of the room',
    dimension: 'temperature',
    minimum: -10,
    maximum: 60,
    examples: ['20 °C', '68 °F'],
  }),
  relativeHumidity: quantityField({
    label: 'Relative humidity of the room',
    dimension: 'percent',
    minimum: 0,
    maximum: 99,
    examples: ['45 %'],
  }),
  species: z.optional(speciesField({ label: 'Wood', help: 'Its density decides how fast moisture moves.' })),
  faces: z.optional(
    choiceField({
      label: 'Faces in the air',
      help: 'A board that lies on a bench or on others has one.',
      options: [
        { value: 'both', label: 'Both, on stickers' },
        { value: 'one', label: 'One' },
      ],
      examples: ['both'],
    }),
  ),
  diffusion: diffusionField(expert),
  surface: surfaceField(expert),
  coating: z.optional(
    quantityField({
      label: 'Resistance of a coating, s/m',
      help: 'On each open face: about 1e8 for two coats of varnish, 0 for bare wood.',
      group: expert,
      dimension: 'number',
      minimum: 0,
      maximum: 1e12,
      examples: ['8.7e7', '0'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;

/** The worked case: an ash board from a damper store, in the workshop. */
export const example = {
  metric: {
    thickness: '27 mm',
    moistureNow: '12 %',
    temperature: '20 °C',
    relativeHumidity: '40 %',
    species: 'white-ash',
  },
  inch: {
    thickness: '1 1/16 in',
    moistureNow: '12 %',
    temperature: '68 °F',
    relativeHumidity: '40 %',
    species: 'white-ash',
  },
} as const;
