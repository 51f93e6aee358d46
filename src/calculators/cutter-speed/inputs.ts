import * as z from 'zod/mini';
import { boringBits } from '../../model/stock/index.ts';
import { choiceField, shownWhen } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';
import { countField, lengthField } from '../kit/stock-fields.ts';

const routing = { field: 'work', is: ['', 'routing'] };
const boring = { field: 'work', is: ['boring'] };

/** What the calculator asks: the bit, and for one kind of work or the other what is cut with it. */
export const inputs = z.strictObject({
  work: z.optional(
    choiceField({
      label: 'Work',
      options: [
        { value: 'routing', label: 'Routing to a template' },
        { value: 'boring', label: 'Boring a hole' },
      ],
      examples: ['routing', 'boring'],
    }),
  ),
  diameter: lengthField(
    { label: 'Diameter of the bit', examples: ['12.7 mm', '1/2 in'] },
    { minimum: 0.5, maximum: 200 },
  ),
  turns: z.optional(
    countField(
      { label: 'Turns a minute', help: 'As the machine is set.', examples: ['18000'] },
      { minimum: 50, maximum: 60_000 },
    ),
  ),
  cuttingLength: z.optional(
    shownWhen(
      lengthField(
        { label: 'Cutting length of the bit', help: 'Without its bearing.', examples: ['25 mm', '1 in'] },
        { minimum: 1, maximum: 150 },
      ),
      routing,
    ),
  ),
  bearing: z.optional(
    shownWhen(
      choiceField({
        label: 'Bearing',
        help: 'The template lies against the base of a handheld router with the one, and under the work with the other; at a table it is the other way up.',
        options: [
          { value: 'shank', label: 'By the shank: template on the router’s side' },
          { value: 'tip', label: 'At the tip: template on the far side' },
        ],
        examples: ['shank', 'tip'],
      }),
      routing,
    ),
  ),
  stock: z.optional(
    shownWhen(
      lengthField({ label: 'Thickness of the stock', examples: ['20 mm', '3/4 in'] }, { minimum: 1, maximum: 150 }),
      routing,
    ),
  ),
  template: z.optional(
    shownWhen(
      lengthField({ label: 'Thickness of the template', examples: ['12 mm', '1/2 in'] }, { minimum: 1, maximum: 60 }),
      routing,
    ),
  ),
  depthOfPass: z.optional(
    shownWhen(
      lengthField(
        {
          label: 'Depth of one pass',
          help: 'Half the diameter and at most 1/4 in, unless given.',
          examples: ['6 mm', '1/4 in'],
        },
        { minimum: 0.5, maximum: 60 },
      ),
      routing,
    ),
  ),
  bit: z.optional(
    shownWhen(
      choiceField({
        label: 'Kind of bit',
        options: boringBits.map((one) => ({ value: one.id, label: one.name })),
        examples: ['forstner'],
      }),
      boring,
    ),
  ),
  species: z.optional(
    shownWhen(
      speciesField({ label: 'Wood', help: 'Its hardness decides the speed; a hard wood, unless given.' }),
      boring,
    ),
  ),
});
/** The inputs as read: lengths in mm, turns a minute. */
export type Inputs = z.output<typeof inputs>;
