import { cite, type EvidenceNote } from '../evidence/index.ts';
import type { Species } from '../species/types.ts';
import { coefficientEvidence, densityRange, stillAirSurface, workingDiffusion } from './index.ts';
import { densityOf } from './wood-density.ts';

/** Above it wood holds free water, of which the working values say nothing, %. */
const fibreSaturation = 30;

/** How fast moisture moves in a wood and through its face, and what that rests on. */
export interface WoodCoefficients {
  /** m²/s. */
  diffusion: number;
  /** m/s. */
  surface: number;
  /** True where both are the reader’s own. */
  own: boolean;
  evidence: readonly EvidenceNote[];
}

/**
 * The coefficients of a wood: the reader’s own, else working values by its density.
 *
 * @param given wood; mean temperature, °C, and mean moisture content, %; own coefficients, m²/s and m/s
 */
export function woodCoefficients(given: {
  species?: Species | undefined;
  temperature: number;
  moisture: number;
  diffusion?: number | undefined;
  surface?: number | undefined;
}): WoodCoefficients {
  const wood = densityOf(given.species);
  const working = workingDiffusion(wood.density, given.temperature, Math.min(fibreSaturation, given.moisture));
  return {
    diffusion: given.diffusion ?? working,
    surface: given.surface ?? stillAirSurface,
    own: given.diffusion !== undefined && given.surface !== undefined,
    evidence: [
      ...(given.diffusion === undefined ? workingNotes(working, wood) : [own('diffusion')]),
      ...(given.surface === undefined ? [] : [own('surface')]),
      ...coefficientEvidence,
    ],
  };
}

const own = (which: 'diffusion' | 'surface'): EvidenceNote => ({
  text: `The ${which} coefficient is the reader’s own.`,
  basis: 'supplier-sheet',
});

function workingNotes(working: number, { words, outside }: ReturnType<typeof densityOf>): EvidenceNote[] {
  return [
    cite(workingDiffusion, `D is taken as ${(working * 1e10).toPrecision(2)} × 10⁻¹⁰ m²/s for ${words}.`),
    ...(outside
      ? [
          {
            text: `The density lies outside the ${densityRange.minimum} to ${densityRange.maximum} kg/m³ that the working values cover; the nearest is used.`,
            basis: 'memory' as const,
          },
        ]
      : []),
  ];
}
