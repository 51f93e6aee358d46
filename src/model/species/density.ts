import { derivedBasis, type Figure } from '../evidence/index.ts';

import { densityAt } from './equations.ts';
import { figureKinds } from './labels.ts';
import { tidy } from './printed.ts';

/**
 * Density at 12 % moisture content from specific gravity at 12 %, by Eq. 4-14.
 *
 * @param specificGravity the resolved figure, or null where none is published
 * @returns kg/m3, or null
 */
export function densityFrom(specificGravity: Figure | null): Figure | null {
  if (specificGravity === null) return null;
  return {
    ...figureKinds.density12,
    value: tidy(densityAt(specificGravity.value, 12)),
    basis: derivedBasis([specificGravity.basis]),
    ...(specificGravity.citation ? { citation: specificGravity.citation } : {}),
    note: `By Eq. 4-14 from the specific gravity of ${specificGravity.value} at 12 %.`,
  };
}
