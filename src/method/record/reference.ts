import * as z from 'zod/mini';
import { quantityText } from './names.ts';

/** Where a value comes from: a JSON Pointer (RFC 6901) into the worked case of the method. */
export const pointer = z
  .string()
  .check(
    z.regex(
      /^\/(makes|parameters|calculations|tools|materials)(\/[^/]+)+$/,
      'A reference begins with /makes, /parameters, /calculations, /tools or /materials, such as /calculations/heat/figures/peakRise.',
    ),
    z.describe(
      'JSON Pointer (RFC 6901): /makes/pieces, /parameters/<name>, /calculations/<name>/figures/<figure>, /calculations/<name>/events/<event>, /calculations/<name>/uses/<use>, /tools/<name>/<limit>.',
    ),
  );

/** Which end of the band of a figure. */
export const bandEnd = z
  .enum(['value', 'low', 'high'])
  .check(z.describe('Which end of its band, where it has one; the value itself unless told.'));

/**
 * A reference: the value at a pointer, and which end of its band where it has one.
 *
 * `take: high` hands on the upper end: how deep a pour may get, how long a coat may need.
 */
export const reference = z.strictObject({
  from: pointer,
  take: z.exactOptional(bandEnd),
});
export type Reference = z.output<typeof reference>;

/** Whether an entry refers to something instead of saying it. */
export function isReference(entry: unknown): entry is Reference {
  return typeof entry === 'object' && entry !== null && !Array.isArray(entry) && 'from' in entry;
}

/** A quantity that is written, or refers to one. */
export const quantityOrReference = z.union([quantityText, reference], {
  error: 'Write a quantity, such as 40 min, or refer to one: { from: /calculations/clock/events/sandable }.',
});
export type QuantityOrReference = z.output<typeof quantityOrReference>;
