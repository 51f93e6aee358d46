import * as z from 'zod/mini';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { dayAndNight, type History, steady } from '../../model/resin/history.ts';
import { choiceField, quantityField, shownWhen } from './fields.ts';

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

/** Where there is resin in the board, and so a question about it. */
export const poured = { field: 'resinPlace', is: ['under-food', 'beside-food', 'coat', 'underside'] };

/** Where resin lies in the board. */
export const resinPlaceField = () =>
  z.optional(
    choiceField({
      label: 'Resin in the board',
      options: [
        { value: 'none', label: 'None' },
        { value: 'under-food', label: 'Food lies on it' },
        { value: 'beside-food', label: 'Same face, apart from food' },
        { value: 'coat', label: 'A coat on a part of it, kept free of food' },
        { value: 'underside', label: 'Underside only' },
      ],
      examples: ['beside-food', 'none'],
    }),
  );

/** How much of the board a coat covers, from one end: the label says it, so that a buyer knows which end is meant. */
export const coatedLengthField = () =>
  shownWhen(
    z.optional(
      quantityField({
        label: 'Length of the coated end',
        help: 'From the end of the board to the line. The label says it; empty: it says “the coated part”.',
        dimension: 'length',
        minimum: 5,
        maximum: 2000,
        examples: ['120 mm', '4 3/4 in'],
      }),
    ),
    { field: 'resinPlace', is: ['coat'] },
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

const temperature = (label: string, help: string, examples: readonly string[]) =>
  z.optional(quantityField({ label, help, dimension: 'temperature', minimum: 0, maximum: 45, examples }));

/** Where the resin has cured: the clock counts its days there. */
export const roomFields = () => ({
  roomTemperature: temperature('Room since the pour', 'By day, where the nights are colder.', ['20 °C', '68 °F']),
  nightTemperature: temperature('By night', 'Empty: as by day.', ['12 °C', '54 °F']),
});

/** Hours of day that the cure clock takes too, where nothing else is told. */
const warmHours = 10;

/** The temperatures of the room, and how they stand in a sentence; undefined where they were not told. */
export function roomOf(given: {
  roomTemperature?: number | undefined;
  nightTemperature?: number | undefined;
}): Outcome<{ history: History; words: string } | undefined> {
  const { roomTemperature: day, nightTemperature: night } = given;
  if (day === undefined) {
    return night === undefined
      ? answer(undefined)
      : refuse(
          'roomTemperature',
          'Of day and night one temperature is missing',
          `Give that of the day too, such as ${amount(20, 'Cel')}.`,
        );
  }
  if (night === undefined || night === day) return answer({ history: steady(day), words: `at ${amount(day, 'Cel')}` });
  return answer({
    history: dayAndNight({ warm: Math.max(day, night), cool: Math.min(day, night) }, warmHours),
    words: `at ${amount(day, 'Cel')} by day and ${amount(night, 'Cel')} by night`,
  });
}
