import * as z from 'zod/mini';
import { type AirReading, parseReadings, readingsInFahrenheit } from '../../model/moisture/index.ts';
import { readField } from './fields.ts';

/** Own readings as read, with a note that says how: units assumed, rows averaged. */
export interface OwnReadings {
  readings: AirReading[];
  note: string;
}

/** A field for the reader's own readings of temperature and humidity: typed lines or the text of a logger's CSV file. */
export function readingsField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<OwnReadings, string> {
  return readField(
    z.string(),
    (text) => {
      const outcome = parseReadings(text);
      if (outcome.ok) return outcome;
      const [first] = outcome.errors;
      return { ok: false, problem: (first?.message ?? '').replace(/\.$/, ''), wayOut: '' };
    },
    {
      ...meta,
      kind: 'readings',
      // In °C what has no unit is read by what is plausible, and the answer says how.
      explicit: (text, reader) => (reader.system === 'inch' ? readingsInFahrenheit(text) : text),
      examples: ['Jan, 20 °C, 25 %; Apr, 20 °C, 38 %; Jul, 24 °C, 58 %; Oct, 21 °C, 42 %'],
    },
  );
}
