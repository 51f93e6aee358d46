import type { Basis, Citation } from '../evidence/index.ts';

/**
 * The order in which sources speak for a wood: the first that gives a figure is shown, the rest stand beside it.
 *
 * The handbook's averages rest on many trees, and a newer edition mends the older. Then come other documents of its
 * laboratory, then research that measured trees of its own by one method, then any other named document, then what
 * follows by an equation from figures that were read. The handbook from memory comes next: a single old lot must not
 * outrank it merely because that was read.
 */
export const rungs = {
  newestHandbook: 0,
  olderHandbook: 1,
  laboratory: 2,
  measured: 3,
  document: 4,
  derived: 5,
  memory: 6,
  singleLot: 7,
} as const;

const standing: Partial<Record<Citation['source'], number>> = {
  'fpl-gtr-282': rungs.newestHandbook,
  'fpl-gtr-190': rungs.olderHandbook,
  'fpl-gtr-113': rungs.olderHandbook,
  'fpl-fact-sheets': rungs.laboratory,
  'fpl-gtr-83': rungs.laboratory,
  'cirad-krvf0e': rungs.measured,
  tropix: rungs.measured,
  'record-1914': rungs.singleLot,
};

/**
 * Rung of a figure: the lower, the firmer.
 *
 * @param source the work that it is from
 * @param basis how it is known; what nobody read is never firmer than memory
 */
export function rungOf(source: Citation['source'], basis: Basis): number {
  const rung = standing[source] ?? rungs.document;
  return basis === 'memory' ? Math.max(rung, rungs.memory) : rung;
}
