import type { Caution } from '../../model/evidence/index.ts';
import type { BoardYear } from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';

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

/** A moisture meter reads no closer than this; what lies nearer is no difference, points (common practice). */
const meterStep = 2;

/** Said of a board that is wetter than any month of its place makes it: it will not come back to the width it has now. */
export function wetterThanItsPlace(now: number, readings: readonly { moisture: number }[]): Caution[] {
  const wettest = Math.max(...readings.map(({ moisture }) => moisture));
  if (now <= wettest + meterStep) return [];
  return [
    {
      id: 'wetter-than-its-place',
      level: 'warning',
      own: true,
      text: `Let it dry before it is cut to size, glued or poured: at ${amount(now, '%', 2)} it is wetter than its place ever makes it (${amount(wettest, '%', 2)} at most), and it does not come back to the width it has now.`,
      why: 'Wood that dries after it was worked shrinks away from its resin, opens its joints, and may check and warp, which no figure here foretells.',
      basis: 'shop-practice',
    },
  ];
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
