import * as z from 'zod/mini';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';

/** What the calculator asks: a resin, the cup, the shop, and when the cup is spread. */
export const inputs = z.strictObject({
  resin: resinField({ label: 'Resin', help: 'A generic kind, or the data sheet of yours.' }),
  mass: quantityField({
    label: 'Mixed resin in the cup',
    dimension: 'mass',
    minimum: 5,
    maximum: 20_000,
    examples: ['200 g', '7 oz'],
  }),
  shopTemperature: quantityField({
    label: 'Temperature of the shop',
    dimension: 'temperature',
    minimum: 0,
    maximum: 45,
    examples: ['22 °C', '72 °F'],
  }),
  resinTemperature: z.optional(
    quantityField({
      label: 'Temperature of the mixed resin',
      help: 'Where it was warmed or stood elsewhere. Empty: as the shop.',
      dimension: 'temperature',
      minimum: 0,
      maximum: 60,
      examples: ['30 °C', '86 °F'],
    }),
  ),
  spreadAfter: z.optional(
    quantityField({
      label: 'Spread thin after',
      help: 'Time from mixing until the cup is poured out and spread.',
      dimension: 'time',
      minimum: 0,
      maximum: 20 * 86_400,
      examples: ['10 min', '1 h'],
    }),
  ),
});

export type Inputs = z.output<typeof inputs>;
