import * as z from 'zod/mini';
import { choiceField } from './fields.ts';

/** Where the board is sold: rules, and so the words on a label, differ. */
export const marketField = () =>
  choiceField({
    label: 'Sold in',
    help: 'Elsewhere, ask your food authority.',
    options: [
      { value: 'us', label: 'United States' },
      { value: 'eu', label: 'European Union' },
    ],
    examples: ['us', 'eu'],
  });

/** Where cast resin lies in the board. */
export const resinPlaceField = () =>
  z.optional(
    choiceField({
      label: 'Cast resin',
      options: [
        { value: 'none', label: 'None' },
        { value: 'under-food', label: 'Food lies on it' },
        { value: 'beside-food', label: 'Same face, apart from food' },
        { value: 'underside', label: 'Underside only' },
      ],
      examples: ['beside-food', 'none'],
    }),
  );

/** Which makers' declarations are at hand. */
export const papersField = () =>
  z.optional(
    choiceField({
      label: 'Written declarations that you hold',
      help: 'From the maker, for this food, this market and the whole recipe, bisphenols included.',
      options: [
        { value: 'none', label: 'None' },
        { value: 'finish', label: 'Finish' },
        { value: 'resin', label: 'Resin' },
        { value: 'both', label: 'Both' },
      ],
      examples: ['none', 'both'],
    }),
  );
