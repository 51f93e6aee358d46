import * as z from 'zod/mini';
import { asTyped } from '../../model/quantity/index.ts';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { temperatureLogField } from '../kit/temperature-log-field.ts';

const temperature = (label: string, examples: readonly string[], help?: string) =>
  z.optional(
    quantityField({ label, dimension: 'temperature', minimum: 0, maximum: 45, examples, ...(help ? { help } : {}) }),
  );

const hours = (label: string, help: string, minimum: number) =>
  z.optional(
    quantityField({
      label,
      help,
      dimension: 'time',
      elseBare: 'h',
      minimum,
      maximum: 23 * 3600,
      examples: ['10 h', '8 h'],
    }),
  );

/** What the calculator asks: a resin, and the temperature since mixing in one of three ways. */
export const inputs = z.strictObject({
  resin: resinField({ label: 'Resin', help: 'A generic kind, or the data sheet of yours.' }),
  shopTemperature: temperature('Temperature of the shop', ['20 °C', '68 °F']),
  dayTemperature: temperature('By day', ['21 °C', '70 °F'], 'While the shop is heated.'),
  nightTemperature: temperature('By night', ['14 °C', '57 °F']),
  warmHours: hours('Hours of day', 'How long the shop is warm each day. Empty: 10 h.', 3600),
  warmHoursLeft: hours('Hours of day left at mixing', 'Empty: mixed as the day begins.', 0),
  log: z.optional(
    temperatureLogField({
      label: 'Log of temperatures since mixing',
      help: `A time and a temperature a line, the first at mixing: ${asTyped({ metric: '8 h, 15 °C', inch: '8 h, 60 °F' })}. Or the rows of a logger.`,
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;

/** Sets of inputs that exclude each other. */
export const alternatives = [
  {
    label: 'The temperature',
    sets: [
      { label: 'Even', fields: ['shopTemperature'] },
      { label: 'Day and night', fields: ['dayTemperature', 'nightTemperature', 'warmHours', 'warmHoursLeft'] },
      { label: 'A log', fields: ['log'] },
    ],
  },
] as const;

/** Inputs that say nothing without each other. */
export const together = [
  {
    fields: ['dayTemperature', 'nightTemperature'],
    why: 'The temperatures by day and by night say nothing without each other',
  },
] as const;
