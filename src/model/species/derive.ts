import { derivedBasis, type Figure } from '../evidence/index.ts';
import { coefficientFromShrinkage, densityAt } from './equations.ts';
import { figureKinds } from './labels.ts';
import { tidy } from './printed.ts';
import type { FigureName } from './types.ts';

/**
 * Coefficient of dimensional change from total shrinkage.
 *
 * @param name which of the two
 * @param shrinkage the wood's shrinkage in that direction, or null where none is published
 * @param start moisture content at which shrinkage starts
 * @returns a figure no firmer than those that went in, or null
 */
export function deriveCoefficient(
  name: 'radialCoefficient' | 'tangentialCoefficient',
  shrinkage: Figure | null,
  start: Figure | null,
): Figure | null {
  if (shrinkage === null || start === null) return null;
  const { low, high } = shrinkage;
  const ends =
    low === undefined || high === undefined
      ? {}
      : {
          low: tidy(coefficientFromShrinkage(low, start.value)),
          high: tidy(coefficientFromShrinkage(high, start.value)),
          band: 'From the lowest and highest shrinkage.',
        };
  return {
    ...figureKinds[name],
    value: tidy(coefficientFromShrinkage(shrinkage.value, start.value)),
    ...ends,
    basis: derivedBasis([shrinkage.basis, start.basis]),
    ...(shrinkage.citation ? { citation: shrinkage.citation } : {}),
    note: `Derived from the shrinkage of ${shrinkage.value} %, taken to start at ${start.value} %.`,
  };
}

/** Whether a wood's coefficient is the one that follows from its shrinkage, not one that a source prints for it. */
export function followsFromShrinkage(
  name: 'radialCoefficient' | 'tangentialCoefficient',
  figures: Readonly<Record<FigureName, Figure | null>>,
): boolean {
  const shrinkage = figures[name === 'radialCoefficient' ? 'radialShrinkage' : 'tangentialShrinkage'];
  const derived = deriveCoefficient(name, shrinkage, figures.shrinkageStart);
  return derived !== null && JSON.stringify(figures[name]) === JSON.stringify(derived);
}

/**
 * Density at 12 % moisture content from specific gravity at 12 %, by Eq. 4-14.
 *
 * @param specificGravity the resolved figure, or null where none is published
 * @returns kg/m3, or null
 */
export function deriveDensity(specificGravity: Figure | null): Figure | null {
  if (specificGravity === null) return null;
  return {
    ...figureKinds.density12,
    value: tidy(densityAt(specificGravity.value, 12)),
    basis: derivedBasis([specificGravity.basis]),
    ...(specificGravity.citation ? { citation: specificGravity.citation } : {}),
    note: `By Eq. 4-14 from the specific gravity of ${specificGravity.value} at 12 %.`,
  };
}
