import * as z from 'zod/mini';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { dayAndNight, type History, steady } from '../../model/resin/history.ts';
import { choiceField, quantityField } from './fields.ts';

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
          'Give that of the day too, such as 20 °C.',
        );
  }
  if (night === undefined || night === day) return answer({ history: steady(day), words: `at ${amount(day, 'Cel')}` });
  return answer({
    history: dayAndNight({ warm: Math.max(day, night), cool: Math.min(day, night) }, warmHours),
    words: `at ${amount(day, 'Cel')} by day and ${amount(night, 'Cel')} by night`,
  });
}
