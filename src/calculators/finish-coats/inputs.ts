import * as z from 'zod/mini';
import type { Alternatives } from '../kit/calculator.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { coatsField, finishField } from '../kit/finish-field.ts';
import { outlineFields } from '../kit/outline-fields.ts';
import { countField, lengthField } from '../kit/stock-fields.ts';

const board = 'The board';
const finish = 'The finish';
const expert = 'For experts';

const { shape, ...measures } = outlineFields(board);

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  shape: z.optional(shape),
  ...measures,
  thickness: z.optional(
    lengthField(
      { label: 'Thickness', help: 'For the edges.', group: board, examples: ['20 mm', '3/4 in'] },
      { minimum: 1, maximum: 300 },
    ),
  ),
  sides: z.optional(
    choiceField({
      label: 'Coated',
      group: board,
      options: [
        { value: 'all', label: 'Both faces and the edges' },
        { value: 'faces', label: 'Both faces' },
        { value: 'face-and-edges', label: 'One face and the edges' },
        { value: 'face', label: 'One face' },
      ],
      examples: ['all', 'face'],
    }),
  ),
  area: z.optional(
    quantityField({
      label: 'Area that is coated',
      help: 'Of one board: all that gets wet.',
      group: board,
      dimension: 'area',
      minimum: 100,
      maximum: 1e8,
      examples: ['2300 cm2', '350 in2'],
    }),
  ),
  boards: z.optional(
    countField({ label: 'Boards', group: board, examples: ['1', '12'] }, { minimum: 1, maximum: 1000 }),
  ),
  finish: finishField({ label: 'Finish', group: finish }),
  coats: coatsField(finish),
  resin: z.optional(
    choiceField({
      label: 'Resin in the board',
      group: finish,
      options: [
        { value: 'none', label: 'None' },
        { value: 'inlay', label: 'An inlay or a coat, cured by its sheet' },
      ],
      examples: ['inlay', 'none'],
    }),
  ),
  spare: z.optional(
    quantityField({
      label: 'Spare',
      help: 'For what stays in cloth, brush and can.',
      group: finish,
      dimension: 'percent',
      minimum: 0,
      maximum: 200,
      examples: ['10 %'],
    }),
  ),
  spreadingFirst: z.optional(
    quantityField({
      label: 'Spreading rate, first coat',
      help: 'From the sheet of the finish, in place of the usual one.',
      group: expert,
      dimension: 'spreading-rate',
      minimum: 0.1,
      maximum: 200,
      examples: ['14 m2/L', '570 ft2/gal'],
    }),
  ),
  spreadingNext: z.optional(
    quantityField({
      label: 'Spreading rate, further coats',
      group: expert,
      dimension: 'spreading-rate',
      minimum: 0.1,
      maximum: 200,
      examples: ['28 m2/L', '1140 ft2/gal'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;

/** Of these a reader knows one set. */
export const alternatives: readonly Alternatives[] = [
  {
    label: 'How large it is',
    sets: [
      { label: 'By its outline', fields: ['shape', ...Object.keys(measures), 'thickness', 'sides'] },
      { label: 'By area', fields: ['area'] },
    ],
  },
];

/** What is taken where an input is left empty. Common practice. */
export const usual = { sides: 'all', boards: 1, spare: 10 } as const;

const common = {
  shape: 'rounded-rectangle',
  sides: 'all',
  boards: '12',
  finish: 'linseed-oil',
  coats: '3',
  resin: 'inlay',
  spare: '10 %',
};

/** The worked case: the trays of an evening class of twelve. */
export const example = {
  metric: { ...common, length: '470 mm', width: '280 mm', cornerRadius: '25 mm', thickness: '20 mm' },
  inch: { ...common, length: '18 1/2 in', width: '11 in', cornerRadius: '1 in', thickness: '13/16 in' },
} as const;
