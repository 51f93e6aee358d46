import { woodInSentence } from '../food/index.ts';
import type { Species } from '../species/types.ts';
import { assumedDensity, densityRange } from './index.ts';

/** A density, and what it is of. */
export interface KnownDensity {
  /** kg/m³, air-dry. */
  density: number;
  /** In words, for a sentence that ends with it. */
  words: string;
  /** True outside the densities that the working values of diffusion cover. */
  outside: boolean;
}

/** Air-dry density of a wood, from the firmest figure that says it. */
export function densityOf(species: Species | undefined): KnownDensity {
  const { density12, densityAirDry } = species?.figures ?? {};
  const known = density12?.value ?? densityAirDry?.value;
  const density = known ?? assumedDensity;
  const words =
    species && known
      ? `${woodInSentence(species.name)}, ${density.toFixed(0)} kg/m³`
      : `a usual hardwood of ${assumedDensity} kg/m³${species ? `, since the density of ${woodInSentence(species.name)} is not published` : ''}`;
  return { density, words, outside: density < densityRange.minimum || density > densityRange.maximum };
}
