import * as z from 'zod/mini';
import { explicitLog, readTemperatureLog, type TemperatureLog } from '../../model/resin/temperature-log.ts';
import { readField } from './fields.ts';

const cell = z.union([z.string(), z.number()]);
/** A reading in a file: a time from mixing in s or as text, or a date with the time of day; and a temperature in °C or as text. */
const reading = z.strictObject({ time: cell, temperature: cell });

/** The line of a log that says the same; numbers of a file are in canonical units. */
const lineOf = ({ time, temperature }: z.output<typeof reading>): string =>
  `${typeof time === 'number' ? `${time} s` : time}, ${typeof temperature === 'number' ? `${temperature} °C` : temperature}`;

/** A field for a log of temperatures since mixing: text as a logger writes it, in a file also a list of readings. */
export function temperatureLogField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<TemperatureLog, string | z.output<typeof reading>[]> {
  return readField(
    z.union([z.string(), z.array(reading)]),
    (log) => readTemperatureLog(typeof log === 'string' ? log : log.map(lineOf).join('\n')),
    {
      ...meta,
      kind: 'list',
      explicit: explicitLog,
      examples: ['0 h, 21 °C; 8 h, 20 °C; 12 h, 14 °C; 20 h, 14 °C; 24 h, 21 °C'],
    },
  );
}
