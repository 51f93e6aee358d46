import * as z from 'zod/mini';
import type { Alternatives, Together } from './calculator.ts';
import { climateField } from './climate-field.ts';
import { choiceField, type FieldMeta, quantityField } from './fields.ts';
import { readingsField } from './readings-field.ts';

/** Questions about a heated house are asked only of one. */
const whenHeated = { field: 'indoors', is: ['heated', ''] };

const temperature = (
  group: string,
  label: string,
  examples: readonly string[],
  more: Pick<FieldMeta, 'help' | 'when'> = {},
) => quantityField({ label, group, dimension: 'temperature', minimum: -40, maximum: 60, examples, ...more });

/** A relative humidity, %. */
export const humidityField = (label: string, group: string, example: string) =>
  quantityField({ label, group, dimension: 'percent', minimum: 0, maximum: 100, examples: [example] });

/** The fields that say where a board will live: a place and how the room is kept, two seasons, or own readings. */
export function airFields(group: string) {
  return {
    place: z.optional(
      climateField({
        label: 'Nearest place',
        help: 'Type a town, a state or a country. The air outdoors there, month by month.',
        group,
      }),
    ),
    indoors: z.optional(
      choiceField({
        label: 'Kept',
        group,
        options: [
          { value: 'heated', label: 'Heated house' },
          { value: 'unheated', label: 'Unheated shed' },
        ],
        examples: ['heated', 'unheated'],
      }),
    ),
    heatTo: z.optional(temperature(group, 'Heated to', ['20 °C', '68 °F'], { when: whenHeated })),
    coolTo: z.optional(temperature(group, 'Cooled to', ['26 °C', '79 °F'], { when: whenHeated })),
    moistureGain: z.optional(
      quantityField({
        label: 'Moisture added indoors',
        help: 'By people, cooking and washing in a shut house: 1 to 4 g per kg of air. A humidifier adds more.',
        group,
        dimension: 'moisture-gain',
        minimum: 0,
        maximum: 20,
        examples: ['2 g/kg'],
        when: whenHeated,
      }),
    ),
    readings: z.optional(
      readingsField({
        label: 'Own readings',
        help: 'One a line or parted by semicolons: name, temperature, relative humidity. Or a logger’s file with a header row.',
        group,
      }),
    ),
    dryTemperature: z.optional(temperature(group, 'Dry season, temperature', ['20 °C', '68 °F'])),
    dryHumidity: z.optional(humidityField('Dry season, relative humidity', group, '25 %')),
    wetTemperature: z.optional(temperature(group, 'Damp season, temperature', ['24 °C', '75 °F'])),
    wetHumidity: z.optional(humidityField('Damp season, relative humidity', group, '60 %')),
  };
}

/** The three ways of saying it. */
export const airAlternatives: Alternatives = {
  label: 'The air there',
  sets: [
    {
      label: 'By climate',
      fields: ['place', 'indoors', 'heatTo', 'coolTo', 'moistureGain'],
      // How the house is kept says nothing beside own readings, but does not contradict them.
      deciding: ['place'],
      yields: { place: 'own' },
    },
    { label: 'Two seasons', fields: ['dryTemperature', 'dryHumidity', 'wetTemperature', 'wetHumidity'] },
    { label: 'Own readings', fields: ['readings'] },
  ],
};

/** Two seasons are four readings. */
export const seasonsTogether: Together = {
  fields: ['dryTemperature', 'dryHumidity', 'wetTemperature', 'wetHumidity'],
  why: 'A dry and a damp season are four readings',
};
