import type { Caution } from '../evidence/index.ts';
import { amount, shownAtMost } from '../quantity/index.ts';
import type { CupRun } from './cup.ts';

/** A rise above the air from which a cup left to itself is warned of, K; from memory. */
const hotRise = 25;

/** Share of a cup's working time that is reckoned with: the other half is for what goes wrong. */
export const workedShare = 0.5;

/** s within which a cup that can be worked for so many must be empty, as they are said: rounded down, since it is a limit. */
export const emptyWithin = (work: number): number => shownAtMost(workedShare * work, 's', 2);

/**
 * What must be said of the heat of a cup that is left standing: that it runs away, that it grows hot, or nothing. It is the one place that
 * judges it, so that whoever doses a cup and whoever times it hear the same.
 *
 * @param run of the cup, followed past its highest temperature (`until: 'peak'`)
 * @param mass of the mix in it, g
 * @param air °C
 * @param assumed whether nobody said how warm the air is
 */
export function cupHeat(run: CupRun, mass: number, air: number, assumed = false): Caution[] {
  const what = `Left in the cup${assumed ? ` at ${amount(air, 'Cel')} (assumed)` : ''}, ${amount(mass, 'g', 3, true)} of this mix`;
  const common = { own: true, basis: 'memory' } as const;
  if (run.ranAway) {
    return [
      {
        ...common,
        id: 'cup-runs-away',
        level: 'danger',
        text: `${what} runs away: have it out and spread within ${amount(emptyWithin(run.work), 's', 2)}.`,
        why: 'Once it gels it grows hot enough to smoke within minutes.',
      },
    ];
  }
  if (run.peak === null || run.peak - air <= hotRise) return [];
  return [
    {
      ...common,
      id: 'cup-grows-hot',
      level: 'warning',
      text: `${what} grows hot: spread it in time.`,
      why: 'A little more of it or a warmer shop would make it run away.',
    },
  ];
}
