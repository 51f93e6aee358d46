import type { Caution } from '../evidence/index.ts';
import { kineticsOf } from './fit.ts';
import { ratioLimits } from './ratio.ts';
import { ratioConflict, sheetWarnings } from './resin.ts';
import { silentOn, warIn } from './told.ts';
import type { Resin } from './types.ts';

/** What a data sheet leaves out, and what cannot be told without it. */
export interface Missing {
  id: 'ratio' | 'densities' | 'potLife' | 'greatestDepth' | 'recoat' | 'cure' | 'foodService';
  /** For example ‘no greatest depth’. */
  what: string;
  /** What it blocks, a clause that goes on after a colon. */
  blocks: string;
}

/** What a reader's own data sheet is told before any calculator is asked. */
export interface SheetReview {
  /** What no calculator can tell while two figures are at war; undefined where none are. */
  war: string | undefined;
  /** Which figures do not agree, and by how much. */
  clashes: readonly Caution[];
  missing: readonly Missing[];
}

/**
 * Hold a reader's own data sheet against itself: what clashes in it, what it leaves out, and what each gap blocks. By the functions that the
 * calculators judge it with, so that a sheet is told here of all that will stop it there.
 */
export function reviewSheet(resin: Resin): SheetReview {
  // Only what the sheet states can clash; what the fit says of a kind is for the answer that uses it.
  const unlikely = kineticsOf(resin).cautions.filter(({ id }) => id.endsWith('pot-life-unlikely'));
  return { war: warIn(resin), clashes: [...sheetWarnings(resin), ...unlikely], missing: missingOf(resin) };
}

function missingOf(resin: Resin): Missing[] {
  if (!resin.fromSheet) return [];
  const lacks = (...names: Parameters<typeof silentOn>[1][]) => names.some((name) => silentOn(resin, name));
  const noRatio = resin.figures.volumeRatio === null && resin.figures.weightRatio === null;
  const oneRatio = !noRatio && (lacks('volumeRatio') || lacks('weightRatio'));
  const conflict = ratioConflict(resin);
  const all: readonly (readonly [holds: boolean, missing: Missing])[] = [
    [noRatio, { id: 'ratio', what: 'no mix ratio', blocks: 'nothing can be dosed; it stands on the bottle' }],
    [
      lacks('densityA', 'densityB') && (oneRatio || (conflict !== undefined && conflict.apart <= ratioLimits.stop)),
      {
        id: 'densities',
        what: 'not both densities',
        blocks: 'weights and volumes rest on densities from memory; measure the way that the ratio is stated',
      },
    ],
    [
      lacks('potLife'),
      {
        id: 'potLife',
        what: 'no pot life',
        blocks:
          'no cup can be timed, no pour told but for the depth that the sheet states, nothing is read off the clock of its cure, and nothing says how much may stand in one cup',
      },
    ],
    [
      lacks('greatestDepth'),
      { id: 'greatestDepth', what: 'no greatest depth', blocks: 'no pour can be judged, nor its layers planned' },
    ],
    [
      lacks('recoatOpens', 'recoatCloses'),
      {
        id: 'recoat',
        what: lacks('recoatOpens') ? 'no recoat window' : 'no end of the recoat window',
        blocks: 'the next coat goes by the estimate of the clock at best; sand where in doubt',
      },
    ],
    [
      lacks('cure'),
      { id: 'cure', what: 'no full cure', blocks: 'no day can be given for machine, oil, food or handing over' },
    ],
    [
      lacks('foodService'),
      {
        id: 'foodService',
        what: 'no day for food',
        blocks: lacks('cure')
          ? 'ask the maker whether it may touch food at all'
          : 'the full cure stands in, and clears nothing; ask the maker whether it may touch food at all',
      },
    ],
  ];
  return all.flatMap(([holds, missing]) => (holds ? [missing] : []));
}
