import * as z from 'zod/mini';
import { excerpt } from '../../model/quantity/index.ts';
import { choiceField, readField, shownWhen } from '../kit/fields.ts';
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

/** Longest texts that a card has room for, characters. */
export const longest = { shop: 40, note: 160 };

/** A line of the reader's own: plain text of a bounded length, on one line. */
function lineField(words: { label: string; help: string; longest: number; examples: readonly string[] }) {
  return readField(
    z.string(),
    (text) => {
      // Tabs, line ends and other control characters would break the card's lines.
      const line = text.replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ').trim();
      if ([...line].length <= words.longest) return { ok: true, value: line };
      return {
        ok: false,
        problem: `“${excerpt(line)}” has ${[...line].length} characters; the card has room for ${words.longest}`,
        wayOut: 'Shorten it.',
      };
    },
    { label: words.label, help: words.help, kind: 'text', examples: words.examples },
  );
}

const room = roomFields();

/** What the calculator asks; names are those of the address and the command line. */
export const inputs = z.strictObject({
  species: speciesField({ label: 'Wood' }),
  secondSpecies: z.optional(
    speciesField({
      label: 'Second wood',
      help: 'Where the board is of two: the label names both, and the stricter counts.',
    }),
  ),
  finish: finishChoice({ label: 'Finish' }),
  resinPlace: resinPlaceField(),
  coatedLength: coatedLengthField(),
  market: marketField(),
  food: z.optional(
    choiceField({
      label: 'Food on it',
      options: [
        { value: 'dry', label: 'Dry: bread, biscuits' },
        { value: 'moist', label: 'Moist: fruit, vegetables' },
        { value: 'fatty', label: 'Fatty: cheese, sausage' },
      ],
      examples: ['dry', 'moist'],
    }),
  ),
  resin: shownWhen(
    z.optional(resinField({ label: 'Resin', help: 'For the day of handing over. A kind, or your own data sheet.' })),
    poured,
  ),
  roomTemperature: shownWhen(room.roomTemperature, poured),
  nightTemperature: shownWhen(room.nightTemperature, poured),
  papers: papersField(),
  shop: z.optional(
    lineField({
      label: 'Name of the shop',
      help: `Up to ${longest.shop} characters.`,
      longest: longest.shop,
      examples: ['Lakeside workshop'],
    }),
  ),
  note: z.optional(
    lineField({
      label: 'A line of your own',
      help: `Up to ${longest.note} characters, printed as you type it unless it promises what nobody has shown.`,
      longest: longest.note,
      examples: ['Bring it back for new oil, any Saturday.'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;

const common = {
  species: 'sugar-maple',
  finish: 'tung-oil',
  resinPlace: 'beside-food',
  resin: 'slow-casting-2-1',
  market: 'eu',
  food: 'dry',
  papers: 'none',
  shop: 'Lakeside workshop',
  note: 'Bring it back for new oil, any Saturday.',
};

/** The worked case: a board of the lakeside workshop with an inlay. */
export const example = {
  metric: { ...common, roomTemperature: '20 °C' },
  inch: { ...common, roomTemperature: '68 °F' },
} as const;
