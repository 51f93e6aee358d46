import * as z from 'zod/mini';
import { explicitLog, readTemperatureLog, type TemperatureLog } from '../../model/resin/temperature-log.ts';
import { readField } from './fields.ts';
import { type ListColumn, type ListEntry, objectOf, objectRows } from './list-field.ts';

/** A reading in a file: a time from mixing in s or as text, or a date with the time of day; and a temperature in °C or as text. */
const columns: readonly ListColumn<'time' | 'temperature'>[] = [
  { name: 'time', label: 'Time from mixing, or date and time', example: '8 h' },
  { name: 'temperature', label: 'Temperature', example: '15 °C' },
];

/** The line of a log that says the same; numbers of a file are in canonical units. */
const lineOf = ({ time, temperature }: ListEntry): string =>
  `${typeof time === 'number' ? `${time} s` : time}, ${typeof temperature === 'number' ? `${temperature} °C` : temperature}`;

/** A field for a log of temperatures since mixing: text as a logger writes it, in a file also a list of readings. */
export function temperatureLogField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<TemperatureLog, string | ListEntry[]> {
  return readField(
    z.union([z.string(), z.array(objectOf(columns))]),
    (log) => readTemperatureLog(typeof log === 'string' ? log : log.map(lineOf).join('\n')),
    {
      ...meta,
      kind: 'list',
      rows: objectRows('reading', columns),
      explicit: explicitLog,
      examples: [
        '0 h, 21 °C; 8 h, 20 °C; 12 h, 14 °C; 20 h, 14 °C; 24 h, 21 °C',
        '0 h, 70 °F; 8 h, 68 °F; 12 h, 57 °F; 20 h, 57 °F; 24 h, 70 °F',
      ],
    },
  );
}
