import * as z from 'zod/mini';
import { airAlternatives, airFields, seasonsTogether } from '../kit/air-fields.ts';
import { cutField, widthField } from '../kit/board-fields.ts';
import { diffusionField, surfaceField } from '../kit/diffusion-fields.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { coatsField, finishField } from '../kit/finish-field.ts';
import { speciesField } from '../kit/species-field.ts';
import { lengthField } from '../kit/stock-fields.ts';

const board = 'The board';
const finish = 'The finish';
const place = 'Where it will live';
const expert = 'For experts';

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  species: speciesField({ label: 'Wood', group: board }),
  width: widthField({ label: 'Width across the grain', help: 'At the mean moisture of the year there.', group: board }),
  thickness: lengthField(
    { label: 'Thickness', group: board, examples: ['20 mm', '3/4 in'] },
    { minimum: 1, maximum: 300 },
  ),
  cut: z.optional(cutField({ group: board })),
  finish: finishField({ label: 'Finish', group: finish }),
  coats: coatsField(finish),
  faces: z.optional(
    choiceField({
      label: 'Faces coated',
      group: finish,
      options: [
        { value: 'both', label: 'Both alike' },
        { value: 'one', label: 'One, the other bare' },
      ],
      examples: ['both', 'one'],
    }),
  ),
  ...airFields(place),
  coating: z.optional(
    quantityField({
      label: 'Resistance of the coating',
      help: 'In place of the finish’s own, on moisture content, of each coated face: about 1e8 s/m for two coats of varnish.',
      group: expert,
      dimension: 'coating-resistance',
      minimum: 0,
      maximum: 1e12,
      examples: ['8.7e7 s/m', '0'],
    }),
  ),
  diffusion: diffusionField(expert),
  surface: surfaceField(expert),
});

export type Inputs = z.output<typeof inputs>;

export const alternatives = [airAlternatives];

export const together = [seasonsTogether];

const common = { species: 'white-ash', cut: 'flatsawn', finish: 'linseed-oil', coats: '3', faces: 'both' };

/** The worked case: an oiled tray board in a heated house in a cold-winter town. */
export const example = {
  metric: {
    ...common,
    width: '280 mm',
    thickness: '20 mm',
    place: 'duluth-mn',
    indoors: 'heated',
    heatTo: '20 °C',
    coolTo: '26 °C',
    moistureGain: '2 g/kg',
  },
  inch: {
    ...common,
    width: '11 in',
    thickness: '13/16 in',
    place: 'duluth-mn',
    indoors: 'heated',
    heatTo: '68 °F',
    coolTo: '79 °F',
    moistureGain: '2 g/kg',
  },
} as const;
