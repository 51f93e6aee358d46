import * as z from 'zod/mini';
import { choiceField, quantityField } from '../kit/fields.ts';
import { outlineFields } from '../kit/outline-fields.ts';
import { countField, lengthField } from '../kit/stock-fields.ts';

const group = {
  outline: 'Outline',
  tools: 'Bit and router',
  board: 'Board and grain',
  inlay: 'Inlay that stands proud',
  sheet: 'Several on a template blank',
};

function degrees(
  label: string,
  help: string,
  range: { minimum: number; maximum: number },
  examples: readonly string[],
) {
  return z.optional(quantityField({ label, help, group: group.board, dimension: 'angle', ...range, examples }));
}

/** What the calculator asks: an outline of ours or a drawing, the bit, the board, and a blank for several copies. */
export const inputs = z.strictObject({
  ...outlineFields(group.outline),
  clearance: z.optional(
    lengthField(
      {
        label: 'Clearance',
        group: group.tools,
        help: 'Wood left outside the line by the saw.',
        examples: ['3 mm', '1/8 in'],
      },
      { minimum: 0, maximum: 50 },
    ),
  ),
  routing: z.optional(
    choiceField({
      label: 'Router',
      group: group.tools,
      options: [
        { value: 'handheld', label: 'Handheld' },
        { value: 'table', label: 'In a table' },
      ],
      examples: ['handheld', 'table'],
    }),
  ),
  bitDiameter: z.optional(
    lengthField(
      { label: 'Bit diameter', group: group.tools, examples: ['12.7 mm', '1/2 in'] },
      { minimum: 1, maximum: 100 },
    ),
  ),
  cuttingLength: z.optional(
    lengthField(
      { label: 'Cutting length', group: group.tools, examples: ['25 mm', '1 in'] },
      { minimum: 1, maximum: 150 },
    ),
  ),
  stock: z.optional(
    lengthField(
      { label: 'Thickness of the stock', group: group.tools, examples: ['20 mm', '3/4 in'] },
      { minimum: 1, maximum: 150 },
    ),
  ),
  template: z.optional(
    lengthField(
      { label: 'Thickness of the template', group: group.tools, examples: ['12 mm', '1/2 in'] },
      { minimum: 1, maximum: 60 },
    ),
  ),
  grain: degrees(
    'Grain angle',
    'From the outline’s length to the grain, counter-clockwise as it is drawn: 0 along, 90 across.',
    { minimum: -180, maximum: 180 },
    ['0 °'],
  ),
  boardLength: z.optional(
    lengthField(
      { label: 'Board length', group: group.board, help: 'Along the grain.', examples: ['600 mm', '24 in'] },
      { minimum: 10, maximum: 10_000 },
    ),
  ),
  boardWidth: z.optional(
    lengthField(
      { label: 'Board width', group: group.board, help: 'Across the grain.', examples: ['240 mm', '9 1/2 in'] },
      { minimum: 10, maximum: 3000 },
    ),
  ),
  mostSwing: degrees(
    'Most swing',
    'How far the outline may be turned off the grain to fit the board.',
    { minimum: 0, maximum: 45 },
    ['5 °'],
  ),
  shortGrainBelow: z.optional(
    lengthField(
      {
        label: 'Short grain below',
        group: group.board,
        help: 'Parts wider than this are strong enough across the grain.',
        examples: ['60 mm', '2 3/8 in'],
      },
      { minimum: 1, maximum: 500 },
    ),
  ),
  inlayLength: z.optional(
    lengthField(
      {
        label: 'Inlay length',
        group: group.inlay,
        help: 'In the middle of the outline. The template gets a window over it, the board does not.',
        examples: ['280 mm', '11 in'],
      },
      { minimum: 5, maximum: 2500 },
    ),
  ),
  inlayWidth: z.optional(
    lengthField(
      { label: 'Inlay width', group: group.inlay, examples: ['18 mm', '3/4 in'] },
      { minimum: 2, maximum: 1000 },
    ),
  ),
  inlayRoom: z.optional(
    lengthField(
      {
        label: 'Room around it',
        group: group.inlay,
        help: 'Between the inlay and the window, all round: a finger.',
        examples: ['20 mm', '3/4 in'],
      },
      { minimum: 3, maximum: 100 },
    ),
  ),
  sheetLength: z.optional(
    lengthField(
      { label: 'Blank length', group: group.sheet, examples: ['1220 mm', '48 in'] },
      { minimum: 50, maximum: 5000 },
    ),
  ),
  sheetWidth: z.optional(
    lengthField(
      { label: 'Blank width', group: group.sheet, examples: ['610 mm', '24 in'] },
      { minimum: 50, maximum: 3000 },
    ),
  ),
  spacing: z.optional(
    lengthField(
      {
        label: 'Spacing',
        group: group.sheet,
        help: 'Between copies and to the edge: the bit and a little more.',
        examples: ['15 mm', '5/8 in'],
      },
      { minimum: 1, maximum: 200 },
    ),
  ),
  copies: z.optional(
    countField(
      { label: 'Copies wanted', group: group.sheet, help: 'Empty: as many as fit.', examples: ['4'] },
      { minimum: 1, maximum: 500 },
    ),
  ),
});

export type Inputs = z.output<typeof inputs>;

/** What is taken where an input is left empty. Common practice. */
export const usual = {
  clearance: 3,
  routing: 'handheld',
  grain: 0,
  mostSwing: 5,
  shortGrainBelow: 60,
  inlayRoom: 20,
  spacing: 15,
} as const;
