import * as z from 'zod/mini';
import { quantityField } from './fields.ts';

/** Coefficients of moisture in wood that only a laboratory knows, each optional. */

/** Diffusion coefficient across the grain, m²/s. */
export const diffusionField = (group: string) =>
  z.optional(
    quantityField({
      label: 'Diffusion coefficient, m²/s',
      help: 'Across the grain, on moisture content, such as 0.6e-10.',
      group,
      dimension: 'number',
      minimum: 1e-13,
      maximum: 1e-7,
      examples: ['0.6e-10'],
    }),
  );

/** Surface coefficient on moisture content, m/s. */
export const surfaceField = (group: string) =>
  z.optional(
    quantityField({
      label: 'Surface coefficient, m/s',
      help: 'On moisture content; still air gives 0.3 to 1 × 10⁻⁷.',
      group,
      dimension: 'number',
      minimum: 1e-11,
      maximum: 1,
      examples: ['5e-8'],
    }),
  );
