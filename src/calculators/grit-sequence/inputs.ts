import * as z from 'zod/mini';
import { finishKinds, sandingMethods, startSurfaces, usualRatio } from '../../model/abrasive/index.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField } from '../kit/stock-fields.ts';
import { drawerField, gritField } from './fields.ts';

/** What the calculator asks: from which surface to which, the grits in the drawer, and how much is sanded how. */
export const inputs = z.strictObject({
  material: z.optional(
    choiceField({
      label: 'Material',
      options: [
        { value: 'wood', label: 'Wood' },
        { value: 'inlay', label: 'Wood with a resin inlay' },
        { value: 'resin', label: 'Resin' },
      ],
      examples: ['wood', 'inlay', 'resin'],
    }),
  ),
  surface: z.optional(
    choiceField({
      label: 'Surface now',
      options: startSurfaces.map(({ id, label }) => ({ value: id, label })),
      examples: ['planed', 'router-flattened'],
    }),
  ),
  sandedWith: z.optional(
    gritField({ label: 'Sanded already with', help: 'The last grit used.', examples: ['120', 'P80'] }),
  ),
  finish: z.optional(
    choiceField({
      label: 'Finish',
      options: finishKinds.map(({ id, label }) => ({ value: id, label })),
      examples: ['oil-or-wax'],
    }),
  ),
  lastGrit: z.optional(gritField({ label: 'Last grit', examples: ['320', 'P2000'] })),
  drawer: drawerField({ label: 'Grits in the drawer', help: 'As printed on the paper, parted by commas or spaces.' }),
  grading: z.optional(
    choiceField({
      label: 'A number without a P is',
      help: 'Paper graded in Europe carries a P. Above 220 the two differ: P400 is far coarser than ANSI 400.',
      options: [
        { value: 'p', label: 'A P grade' },
        { value: 'ansi', label: 'A US (ANSI) grade' },
      ],
      examples: ['p', 'ansi'],
    }),
  ),
  water: z.optional(
    choiceField({
      label: 'Water will reach the wood',
      help: 'From washing, food or a water-based finish: then the grain is raised on purpose before.',
      options: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      examples: ['yes'],
    }),
  ),
  area: quantityField({
    label: 'Area of one piece',
    help: 'Both faces and the edges.',
    dimension: 'area',
    minimum: 100,
    maximum: 1e8,
    examples: ['0.27 m²', '2.9 sq ft'],
  }),
  count: z.optional(countField({ label: 'Pieces', examples: ['12'] }, { minimum: 1, maximum: 1000 })),
  method: z.optional(
    choiceField({
      label: 'Sanding',
      options: sandingMethods.map(({ id, label }) => ({ value: id, label })),
      examples: ['random-orbit'],
    }),
  ),
  ratio: z.optional(
    quantityField({
      label: 'Largest step',
      help: `Grain size of one grit over that of the next; ${usualRatio.wood} is usual.`,
      dimension: 'number',
      minimum: 1.1,
      maximum: 5,
      examples: ['1.7'],
    }),
  ),
});

/** The inputs as read: area in mm². */
export type Inputs = z.output<typeof inputs>;
