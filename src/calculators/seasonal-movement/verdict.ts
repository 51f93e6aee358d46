import type { Caution, Verdict } from '../../model/evidence/index.ts';
import type { Banded, InlayMovement, Labelled } from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';

/** A board or a panel through its year, as far as the verdict asks. */
export interface Moved {
  narrowest: Labelled;
  widest: Labelled;
  swing: Banded;
  changeFromNow: { low: Labelled; high: Labelled };
  /** Deepest cup, mm; absent where none was worked out. */
  cup?: number;
  inlay?: Pick<InlayMovement, 'inlayWidth' | 'swing' | 'percent'> | undefined;
}

/** A cup that a straight-edge shows, mm (common practice). */
export const visibleCup = 0.5;

/** A movement that no rule shows has no month worth naming, mm. */
const leastMove = 0.01;

/** What a wet board loses for good before its first year begins: what is gone even in its wettest month. */
const dryFirst = ({ high }: Moved['changeFromNow']) =>
  `Let it dry first: it will be at least ${amount(Math.max(0, -high.high), 'mm', 2)} narrower than now. `;

/** A gap is left in half millimetres. */
const gapStep = 0.5;

/** What must be left on each side of a board that is held, mm: half of the most that it may grow from now, in whole steps. */
export const gapFor = (growth: number): number => Math.max(0, Math.ceil((growth / 2 - 1e-9) / gapStep) * gapStep);

/**
 * What a year of movement comes to. Cautions of this very case make it one to mind.
 *
 * @param wet whether the board is wetter than its place ever makes it: drying comes before all else
 */
export function verdictOf(moved: Moved, cautions: readonly Caution[], wet = false): Verdict {
  const { swing, narrowest, widest, changeFromNow, cup = 0, inlay } = moved;
  const gap = gapFor(changeFromNow.high.high);
  const when = swing.value >= leastMove ? `, narrowest in ${narrowest.label} and widest in ${widest.label}` : '';
  const parts = [
    `${wet ? dryFirst(changeFromNow) : ''}The board moves ${amount(swing.value, 'mm', 2)} over the year${when}`,
    gap > 0
      ? `leave ${amount(gap, 'mm', 2)} each side where it is held`
      : 'it grows no wider than it is now: leave no gap for growth',
    ...(Math.abs(cup) >= visibleCup ? [`it cups by up to ${amount(Math.abs(cup), 'mm', 1)}`] : []),
    ...(inlay
      ? [
          `across the inlay of ${amount(inlay.inlayWidth, 'mm')} the wood works ${amount(inlay.swing.value, 'mm', 1)} that the resin does not follow`,
        ]
      : []),
  ];
  const mind = inlay !== undefined || cautions.some(({ own, level }) => own && level !== 'note');
  return { level: mind ? 'care' : 'good', text: `${parts[0]}: ${parts.slice(1).join('; ')}.` };
}
