import type * as z from 'zod/mini';
import { quantityField } from './fields.ts';

type QuantityField = z.ZodMiniType<number, string | number>;

/** A length in mm with its range. */
export function lengthField(
  words: { label: string; help?: string; group?: string; examples: readonly string[] },
  range: { minimum: number; maximum: number } = { minimum: 1, maximum: 10_000 },
): QuantityField {
  return quantityField({ dimension: 'length', ...range, ...words });
}

/** A whole number of things. */
export function countField(
  words: { label: string; help?: string; group?: string; examples: readonly string[] },
  range: { minimum: number; maximum: number },
): QuantityField {
  return quantityField({ dimension: 'number', whole: true, ...range, ...words });
}

/** Width of a saw cut. */
export function kerfField(group?: string): QuantityField {
  return lengthField(
    { label: 'Saw cut', help: 'Width of the kerf.', examples: ['3 mm', '1/8 in'], ...(group ? { group } : {}) },
    { minimum: 0, maximum: 20 },
  );
}
