import type { Caution } from '../../model/evidence/index.ts';
import type { BoardYear } from '../../model/movement/index.ts';

/** Said beside widths that are those at balance. */
export const lagCaution: Caution = {
  id: 'board-lags',
  level: 'note',
  text: 'The board is taken to be at balance with each month. A thick or finished board follows weeks behind and swings less.',
  basis: 'derived',
};

/** Wood this near the pith is taken to be juvenile, mm: a handful of rings (common practice; trees differ widely). */
const juvenileReach = 30;

/** Said where the pith was measured and lies so near the face, within the board’s width, that the board holds juvenile wood. */
export function nearPith({ pithAssumed, section }: BoardYear): Caution[] {
  const { width, pithDepth, pithOffset } = section;
  const near = pithDepth < juvenileReach && Math.abs(pithOffset) < width / 2 + juvenileReach;
  return near && !pithAssumed ? [juvenileCaution] : [];
}

const juvenileCaution: Caution = {
  id: 'near-the-pith',
  level: 'warning',
  own: true,
  text: 'This board was cut beside the pith: expect it to check towards the pith and to bow, whatever the figures say.',
  why: 'The first rings of a tree are juvenile wood, which shrinks along its length as well; the tables, and so these figures, are for mature wood.',
  basis: 'memory',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 5, juvenile wood', seen: 'memory' },
};
