import { answer, type Basis, derivedBasis, type Outcome, refuse } from '../../model/evidence/index.ts';
import { bothRatios } from '../../model/resin/kinds.ts';
import { mixedDensity } from '../../model/resin/ratio.ts';
import type { Inputs } from './inputs.ts';

/** The mix that the inputs name: its ratio both ways, its densities in g/mL, and how firmly they are known. */
export interface Mix {
  weightRatio: number;
  volumeRatio: number;
  densityA: number;
  densityB: number;
  density: number;
  /** How the ratio is known, the densities, and both together. */
  ratioBasis: Basis;
  densityBasis: Basis;
  basis: Basis;
  by: 'weight' | 'volume';
}

/**
 * The mix of a resin, or of a ratio and densities given beside it.
 *
 * The ratio that is stated for the way the parts are measured counts; where a sheet states only the other, that one
 * follows from the densities. So masses and volumes of the answer always agree with each other.
 */
export function mixOf({ resin, mixRatio, mixRatioBy, measureBy, ...own }: Inputs): Outcome<Mix> {
  const by = measureBy ?? 'weight';
  if (!resin && mixRatio === undefined) {
    return refuse('resin', 'No resin was named and no mix ratio given', 'Pick a resin, or give a ratio such as 2:1.');
  }
  const densityA = own.densityA ?? resin?.figures.densityA?.value;
  const densityB = own.densityB ?? resin?.figures.densityB?.value;
  if (densityA === undefined || densityB === undefined) {
    const [field, part] = densityA === undefined ? (['densityA', 'A'] as const) : (['densityB', 'B'] as const);
    return refuse(
      field,
      `The density of part ${part} is not known, so weights and volumes cannot be turned into each other`,
      'Take it from the maker’s sheet, or pick a resin that stands in for it.',
    );
  }
  const stated = statedRatio(resin, mixRatio, mixRatioBy, by);
  if (!stated) {
    return refuse('resin', 'The mix ratio of this resin is not known', 'Give it as a mix ratio, such as 2:1.');
  }
  const ratios = bothRatios(stated.ratio, densityA, densityB);
  const densityBasis = derivedBasis([
    own.densityA === undefined ? (resin?.figures.densityA?.basis ?? 'memory') : 'supplier-sheet',
    own.densityB === undefined ? (resin?.figures.densityB?.basis ?? 'memory') : 'supplier-sheet',
  ]);
  return answer({
    weightRatio: ratios.weight,
    volumeRatio: ratios.volume,
    densityA,
    densityB,
    density: mixedDensity(ratios.weight, densityA, densityB),
    ratioBasis: stated.basis,
    densityBasis,
    basis: derivedBasis([stated.basis, densityBasis]),
    by,
  });
}

function statedRatio(
  resin: Inputs['resin'],
  mixRatio: number | undefined,
  mixRatioBy: Inputs['mixRatioBy'],
  by: 'weight' | 'volume',
): { ratio: { volume: number } | { weight: number }; basis: Basis } | undefined {
  if (mixRatio !== undefined) {
    return {
      ratio: (mixRatioBy ?? 'volume') === 'volume' ? { volume: mixRatio } : { weight: mixRatio },
      basis: 'supplier-sheet',
    };
  }
  const { volumeRatio, weightRatio } = resin?.figures ?? {};
  if (volumeRatio && (by === 'volume' || !weightRatio)) {
    return { ratio: { volume: volumeRatio.value }, basis: volumeRatio.basis };
  }
  return weightRatio ? { ratio: { weight: weightRatio.value }, basis: weightRatio.basis } : undefined;
}
