import * as z from 'zod/mini';
import { explicitLog, readTemperatureLog, type TemperatureLog } from '../../model/resin/temperature-log.ts';
import { readField } from './fields.ts';

/** A field for a log of temperatures since mixing. */
export function temperatureLogField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<TemperatureLog, string> {
  return readField(z.string(), readTemperatureLog, {
    ...meta,
    kind: 'list',
    explicit: explicitLog,
    examples: ['0 h, 21 °C; 8 h, 20 °C; 12 h, 14 °C; 20 h, 14 °C; 24 h, 21 °C'],
  });
}
