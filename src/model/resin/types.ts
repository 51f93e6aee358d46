import type { Figure } from '../evidence/index.ts';

/**
 * Names of the figures of a two-part resin, in the order in which they are listed. Part A is the resin, part B the hardener.
 *
 * Units: `volumeRatio` and `weightRatio` are parts of B to one of A; densities g/mL; times s from the end of mixing;
 * `potLifeMass` and `greatestMass` g; `greatestVolume` mL; depths mm; temperatures °C; viscosity mPa·s; `pigmentLimit` % by mass of the mix.
 */
export const resinFigureNames = [
  'volumeRatio',
  'weightRatio',
  'densityA',
  'densityB',
  'viscosity',
  'potLife',
  'potLifeMass',
  'potLifeTemperature',
  'secondPotLife',
  'secondPotLifeTemperature',
  'greatestDepth',
  'greatestDepthTemperature',
  'greatestVolume',
  'greatestMass',
  'recoatOpens',
  'recoatCloses',
  'sandable',
  'cure',
  'foodService',
  'cureTemperature',
  'pigmentLimit',
] as const;

/** The name of a figure of a resin: one of `resinFigureNames`. */
export type ResinFigureName = (typeof resinFigureNames)[number];

/**
 * What a pot life on a data sheet means: the mass has set to a gel, or it only became too thick to use.
 * In conversion of the cure the first is 0.577 and the second 0.20 (see `gelConversion`, `workConversion`).
 */
export type PotLifeMeaning = 'gel' | 'usable';

/**
 * A two-part resin with everything that is known of it: a generic kind, or a maker's data sheet laid over the kind nearest to it.
 * A figure is null where neither says anything.
 */
export interface Resin {
  /** Id of the generic kind, for example `slow-casting-2-1`; of the kind laid under a data sheet, where it is one. */
  kind: string;
  /** Sentence case: `Slow casting epoxy, 2:1 by volume`, or the reader's own name of the sheet. */
  name: string;
  /** True where a data sheet was laid over the kind; its own figures have the basis `supplier-sheet`. */
  fromSheet: boolean;
  figures: Readonly<Record<ResinFigureName, Figure | null>>;
  potLifeMeans: PotLifeMeaning;
  /** Which of the two class sets of kinetics the resin starts from, before it is fitted to its pot life. */
  kinetics: 'fast' | 'slow';
}
