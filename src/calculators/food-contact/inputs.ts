import * as z from 'zod/mini';
import { choiceField, quantityField, shownWhen } from '../kit/fields.ts';
import { finishChoice } from '../kit/finish-choice-field.ts';
import {
  coatedLengthField,
  marketField,
  papersField,
  poured,
  resinPlaceField,
  roomFields,
} from '../kit/food-fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { speciesField } from '../kit/species-field.ts';

const days = (label: string, help: string, examples: readonly string[]) =>
  quantityField({ label, help, dimension: 'number', minimum: 0, maximum: 3650, examples });

const room = roomFields();

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  market: marketField(),
  food: choiceField({
    label: 'Food on it',
    help: 'The hardest that it will meet in normal use.',
    options: [
      { value: 'dry', label: 'Dry: bread, biscuits' },
      { value: 'moist', label: 'Moist: fruit, vegetables' },
      { value: 'fatty', label: 'Fatty: cheese, sausage' },
      { value: 'hot', label: 'Hot' },
    ],
    examples: ['dry', 'moist', 'fatty', 'hot'],
  }),
  species: z.optional(speciesField({ label: 'Wood' })),
  secondSpecies: z.optional(
    speciesField({
      label: 'Second wood',
      help: 'Where the board is of two: the label names both, and the stricter counts.',
    }),
  ),
  finish: z.optional(finishChoice({ label: 'Finish' })),
  daysSinceCoat: z.optional(
    days('Days since the last coat', 'Warm and dry days; cold ones count half at most.', ['10', '0']),
  ),
  fullCure: z.optional(
    quantityField({
      label: 'Full cure by the sheet of your finish, days',
      help: 'Wins over the usual days of its kind. Not the time until it is dry to the touch.',
      dimension: 'number',
      minimum: 0.25,
      maximum: 3650,
      examples: ['28', '10'],
    }),
  ),
  resinPlace: resinPlaceField(),
  coatedLength: coatedLengthField(),
  resin: shownWhen(z.optional(resinField({ label: 'Resin', help: 'A kind, or your own data sheet.' })), poured),
  daysSincePour: shownWhen(
    z.optional(days('Days since the last pour', 'Left empty: as many as since the last coat.', ['14', '7'])),
    poured,
  ),
  roomTemperature: shownWhen(room.roomTemperature, poured),
  nightTemperature: shownWhen(room.nightTemperature, poured),
  papers: papersField(),
});

export type Inputs = z.output<typeof inputs>;

const common = {
  market: 'eu',
  food: 'moist',
  species: 'sugar-maple',
  finish: 'tung-oil',
  daysSinceCoat: '10',
  resinPlace: 'beside-food',
  resin: 'slow-casting-2-1',
  daysSincePour: '14',
  papers: 'none',
};

/** The worked case: a bought board of maple with an inlay, ten days after its last coat. */
export const example = {
  metric: { ...common, roomTemperature: '20 °C' },
  inch: { ...common, roomTemperature: '68 °F' },
} as const;
