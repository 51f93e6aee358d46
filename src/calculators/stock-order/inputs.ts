import * as z from 'zod/mini';
import { type Allowances, hardwoodGrades, usualAllowances } from '../../model/stock/index.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField, kerfField, lengthField } from '../kit/stock-fields.ts';
import { priceField } from './price.ts';

const allowanceGroup = 'Allowances';
const yardGroup = 'At the yard';

const helpOf = (id: keyof Allowances) => usualAllowances.find((one) => one.id === id)?.why ?? '';

/** What the calculator asks: the finished pieces, how the wood is bought, and what of it is lost. */
export const inputs = z.strictObject({
  length: lengthField(
    { label: 'Finished length', help: 'Along the grain.', examples: ['450 mm', '18 in'] },
    { minimum: 10, maximum: 5000 },
  ),
  width: lengthField({ label: 'Finished width', examples: ['250 mm', '10 in'] }, { minimum: 5, maximum: 1500 }),
  thickness: lengthField({ label: 'Finished thickness', examples: ['19 mm', '3/4 in'] }, { minimum: 1, maximum: 150 }),
  count: countField({ label: 'Pieces wanted', examples: ['12'] }, { minimum: 1, maximum: 1000 }),
  surfacing: z.optional(
    choiceField({
      label: 'Bought',
      options: [
        { value: 'rough', label: 'Rough' },
        { value: 's2s', label: 'Planed on two faces (S2S)' },
      ],
      examples: ['rough', 's2s'],
      group: yardGroup,
    }),
  ),
  boardLength: z.optional(
    lengthField(
      { label: 'Length of a board', help: '8 ft, unless given.', examples: ['2440 mm', '8 ft'], group: yardGroup },
      { minimum: 100, maximum: 12_000 },
    ),
  ),
  boardWidth: z.optional(
    lengthField(
      {
        label: 'Width of a board',
        help: 'The rough width, up to a whole inch and at least 4 in, unless given.',
        examples: ['280 mm', '11 in'],
        group: yardGroup,
      },
      { minimum: 20, maximum: 2000 },
    ),
  ),
  grade: z.optional(
    choiceField({
      label: 'Grade',
      help: 'Adds boards where the clear share that the grade promises falls short.',
      options: hardwoodGrades.map((grade) => ({ value: grade.id, label: grade.name })),
      examples: ['1-common'],
      group: yardGroup,
    }),
  ),
  clearFaces: z.optional(
    choiceField({
      label: 'Faces that must be clear',
      options: [
        { value: 'both', label: 'Both' },
        { value: 'one', label: 'The better one' },
      ],
      examples: ['both'],
      group: yardGroup,
    }),
  ),
  rate: z.optional(
    priceField({
      label: 'Price',
      help: 'In any currency, with its sign or without: $9.50, 9.50 EUR.',
      group: yardGroup,
    }),
  ),
  ratePer: z.optional(
    choiceField({
      label: 'Price is for',
      options: [
        { value: 'board-foot', label: 'A board foot' },
        { value: 'cubic-metre', label: 'A cubic metre' },
      ],
      examples: ['board-foot'],
      group: yardGroup,
    }),
  ),
  endTrim: z.optional(
    lengthField(
      {
        label: 'Extra length, each end of a blank',
        help: `Beyond the finished length; a board is not trimmed besides. ${helpOf('endTrim')}`,
        examples: ['50 mm', '2 in'],
        group: allowanceGroup,
      },
      { minimum: 0, maximum: 500 },
    ),
  ),
  outlineClearance: z.optional(
    lengthField(
      {
        label: 'Clearance outside the line',
        help: helpOf('outlineClearance'),
        examples: ['3.2 mm', '1/8 in'],
        group: allowanceGroup,
      },
      { minimum: 0, maximum: 50 },
    ),
  ),
  planing: z.optional(
    lengthField(
      {
        label: 'Planing, each face',
        help: helpOf('planing'),
        examples: ['2.4 mm', '3/32 in'],
        group: allowanceGroup,
      },
      { minimum: 0, maximum: 30 },
    ),
  ),
  spare: z.optional(
    quantityField({
      label: 'Spare pieces',
      help: helpOf('spare'),
      dimension: 'percent',
      minimum: 0,
      maximum: 200,
      examples: ['10 %'],
      group: allowanceGroup,
    }),
  ),
  kerf: z.optional(kerfField(allowanceGroup)),
});

/** The inputs as read: lengths in mm, spares in %. */
export type Inputs = z.output<typeof inputs>;
