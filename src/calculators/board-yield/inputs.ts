import * as z from 'zod/mini';
import { asTyped } from '../../model/quantity/index.ts';
import { choiceField } from '../kit/fields.ts';
import { kerfField, lengthField } from '../kit/stock-fields.ts';
import { acrossTheBoard, blanksField, boardsField } from './fields.ts';

const knot = asTyped({ metric: 'knot 700 to 780 mm', inch: 'knot 27 1/2 to 30 3/4 in' });

/** What the calculator asks: the rack, the blanks, and how the shop cuts. */
export const inputs = z.strictObject({
  boards: boardsField({
    label: 'Boards',
    help: `One a line: name, length, width, then each place to cut out with where it begins and ends, measured from one end: ${knot}. One that leaves wood beside it has its place across too, measured from one edge: ${knot} ${acrossTheBoard}.`,
  }),
  blanks: blanksField({
    label: 'Blanks wanted',
    help: 'One a line: name, length along the grain, width, how many. Sizes before working, allowances included.',
  }),
  kerf: z.optional(kerfField()),
  endTrim: z.optional(
    lengthField(
      {
        label: 'Cut off each end of a board',
        help: 'End checks and sealer, before any blank is cut. Give 0 where the blanks have extra length at their own ends, as those of an order have.',
        examples: ['25 mm', '1 in'],
      },
      { minimum: 0, maximum: 1000 },
    ),
  ),
  edgeTrim: z.optional(
    lengthField(
      {
        label: 'Taken off each edge of a board',
        help: 'Bark edge, or what the jointer takes before the first rip.',
        examples: ['5 mm', '1/4 in'],
      },
      { minimum: 0, maximum: 500 },
    ),
  ),
  snipe: z.optional(
    lengthField(
      { label: 'Planer snipe', help: 'Length that the planer cuts too deep at an end.', examples: ['50 mm', '2 in'] },
      { minimum: 0, maximum: 500 },
    ),
  ),
  planed: z.optional(
    choiceField({
      label: 'Planed',
      options: [
        { value: 'boards', label: 'Before cutting up: snipe on boards' },
        { value: 'blanks', label: 'After cutting up: snipe on blanks' },
      ],
      examples: ['boards'],
    }),
  ),
  first: z.optional(
    choiceField({
      label: 'First cut',
      help: 'What the shop does first to a board: the saw goes right through, whichever it is.',
      options: [
        { value: 'crosscut', label: 'Crosscut, then rip' },
        { value: 'rip', label: 'Rip, then crosscut' },
      ],
      examples: ['crosscut'],
    }),
  ),
});
