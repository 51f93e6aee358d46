import * as z from 'zod/mini';
import { type AirReading, parseReadings, readingsInFahrenheit, writeReading } from '../../model/moisture/index.ts';
import { withUnit } from '../../model/quantity/index.ts';
import { readField } from './fields.ts';
import { type ListColumn, type ListEntry, objectOf, objectRows } from './list-field.ts';

/** Own readings as read, with a note that says how: units assumed, rows averaged. */
export interface OwnReadings {
  readings: AirReading[];
  note: string;
}

const columns: readonly ListColumn<keyof AirReading>[] = [
  { name: 'label', label: 'Month or name', example: 'Jan', optional: true },
  { name: 'temperature', label: 'Temperature', example: '20 °C' },
  { name: 'humidity', label: 'Relative humidity', example: '25 %' },
];

/** A reading of a file as a line of text; a number is in °C and in %. */
const lineOf = ({ label = '', temperature, humidity }: ListEntry) =>
  writeReading(String(label), withUnit(String(temperature), 'Cel'), withUnit(String(humidity), '%'));

/**
 * A field for the reader's own readings of temperature and humidity: typed lines, the text of a logger's CSV file, or in a file a list
 * of objects.
 */
export function readingsField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<OwnReadings, string | ListEntry[]> {
  return readField(
    z.union([z.string(), z.array(objectOf(columns))]),
    (value) => {
      const outcome = parseReadings(typeof value === 'string' ? value : value.map(lineOf).join('\n'));
      if (outcome.ok) return outcome;
      const [first] = outcome.errors;
      return { ok: false, problem: (first?.message ?? '').replace(/\.$/, ''), wayOut: '' };
    },
    {
      ...meta,
      kind: 'readings',
      rows: objectRows('reading', columns),
      // In °C what has no unit is read by what is plausible, and the answer says how.
      explicit: (text, reader) => (reader.system === 'inch' ? readingsInFahrenheit(text) : text),
      examples: [
        'Jan, 20 °C, 25 %; Apr, 20 °C, 38 %; Jul, 24 °C, 58 %; Oct, 21 °C, 42 %',
        'Jan, 68 °F, 25 %; Apr, 68 °F, 38 %; Jul, 75 °F, 58 %; Oct, 70 °F, 42 %',
      ],
    },
  );
}
