import type * as z from 'zod/mini';
import { type Cut, cuts } from '../../model/movement/index.ts';
import { choiceField, quantityField } from './fields.ts';

type QuantityField = z.ZodMiniType<number, string | number>;

/** Width of a board or panel across the grain, mm. */
export function widthField(words: { label?: string; help?: string; group?: string } = {}): QuantityField {
  return quantityField({
    label: 'Width',
    dimension: 'length',
    minimum: 1,
    maximum: 3000,
    examples: ['300 mm', '12 in'],
    ...words,
  });
}

/** A moisture content, % of the ovendry mass. */
export function moistureField(words: {
  label: string;
  help?: string;
  group?: string;
  examples: readonly string[];
}): QuantityField {
  return quantityField({ dimension: 'percent', minimum: 0, maximum: 200, ...words });
}

/** How a board is cut, by the rings on its end. */
export function cutField(words: { help?: string; group?: string } = {}): z.ZodMiniType<Cut, string> {
  const labels: Record<Cut, string> = { flatsawn: 'Flatsawn', rift: 'Rift', quartersawn: 'Quartersawn' };
  return choiceField({
    label: 'Cut',
    options: cuts.map((value) => ({ value, label: labels[value] })),
    examples: ['flatsawn', 'rift', 'quartersawn'],
    ...words,
  });
}
