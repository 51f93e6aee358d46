import { cautionById } from '../../model/evidence/cautions.ts';
import { type Caution, cite, type EvidenceNote } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  boardFeet,
  pushBlockWidth as narrow,
  netOfGrossTally,
  type OrderPlan,
  roughShortfall,
  surfaceMeasure,
  tallyBoardFeet,
  usualAllowances,
} from '../../model/stock/index.ts';

/** What to ask and to beware of at the yard. */
export function cautionsOf(plan: OrderPlan): Caution[] {
  return [
    ...(plan.thinIfShort
      ? [
          {
            id: 'thin-lumber',
            level: 'warning' as const,
            text: 'Measure the thickness before you pay, or take the next one.',
            why: `Kiln-dried rough lumber may be ${amount(roughShortfall, 'mm', 2)} under its nominal thickness, and then this board is too thin.`,
            own: true,
            basis: 'published' as const,
            citation: { source: 'sawing-and-drying-forum' as const, seen: 'quoted' as const },
          },
        ]
      : []),
    ...(plan.rough.width < narrow
      ? [
          {
            id: 'narrow-rips',
            level: 'danger' as const,
            text: 'Rip the narrow parts with a push block, guard and riving knife in place, never with fingers between blade and fence.',
            why: `They are ${amount(plan.rough.width, 'mm')} wide, narrower than a hand can guide past a blade.`,
            own: true,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...['stock-handling'].flatMap((id) => cautionById(id) ?? []),
    {
      id: 'gross-tally',
      level: 'note',
      text: 'Ask whether the tally is gross or net.',
      why: `Lumber measured before kiln-drying arrives about ${Math.round(100 * (1 - netOfGrossTally))} % short in board feet: of this order, ${(plan.boardFeet / netOfGrossTally).toFixed(1)} would have to be invoiced gross.`,
      basis: 'shop-practice',
    },
    {
      id: 'cupped-stock',
      level: 'note',
      text: 'Measure a cupped or twisted board and plan its flattening before you count on a thickness.',
      why: 'It needs more than the usual planing allowance.',
      basis: 'shop-practice',
    },
    {
      id: 'moisture-not-graded',
      level: 'note',
      text: 'Ask for a moisture content, and measure on arrival.',
      why: 'A hardwood grade says nothing of moisture.',
      basis: 'memory',
      citation: { source: 'nhla-rules', seen: 'memory' },
    },
  ];
}

/** What the order rests on. */
export function evidenceOf(plan: OrderPlan): EvidenceNote[] {
  return [
    cite(boardFeet, 'Used for the fractional count.'),
    cite(surfaceMeasure, 'Used for the grader’s tally of each board.'),
    cite(tallyBoardFeet, 'Used for the grader’s tally of all boards.'),
    {
      text: `Nominal thickness ${plan.nominal.name} from the table of rough and surfaced thicknesses.`,
      basis: plan.nominal.basis,
      citation: { source: 'hardwood-dimensions-table', seen: plan.nominal.seen },
    },
    ...usualAllowances.map(({ label, why, basis }) => ({ text: `${label}, unless given: ${why}`, basis })),
  ];
}
