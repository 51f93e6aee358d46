import * as z from 'zod/mini';

/** A name inside a method: of a parameter, a material, a tool, a step, a calculation. Letters, digits and hyphens, a letter first. */
export const methodName = z
  .string()
  .check(
    z.regex(
      /^[a-z][a-zA-Z0-9]*(-[a-zA-Z0-9]+)*$/,
      'A name begins with a small letter and has letters, digits and hyphens, such as second-coat.',
    ),
    z.maxLength(60, 'A name has at most 60 characters.'),
  );

/** A line of text for a reader. */
export const line = z
  .string()
  .check(z.minLength(1), z.maxLength(300, 'At most 300 characters; the rest belongs into the text of a step.'));

/**
 * Text of a step: Markdown without raw HTML, in which `{/calculations/heat/figures/peakRise}` stands for the figure and `{20 cm}` for that length in
 * the reader's units.
 */
export const markdown = z
  .string()
  .check(
    z.minLength(1),
    z.maxLength(4000, 'At most 4,000 characters; what is longer is two steps.'),
    z.describe(
      'Markdown without HTML. A JSON Pointer in braces, {/calculations/heat/figures/peakRise}, shows that figure; a quantity in braces, {20 cm}, {1/8 in} or {35 °C}, is shown in the reader’s units, and a difference of temperatures, {10 K}, in degrees.',
    ),
  );

/** A quantity as a maker writes it, number and unit: `305 mm`, `12 in`, `40 min`. */
export const quantityText = z
  .union([z.string().check(z.minLength(1), z.maxLength(60)), z.number()])
  .check(z.describe('A number and its unit, such as 305 mm, 12 in or 40 min; a number alone where there is no unit.'));
