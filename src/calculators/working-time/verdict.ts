import type { Caution, Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { CupRun } from '../../model/resin/cup.ts';
import { emptyWithin } from '../../model/resin/cup-heat.ts';
import type { ResinKinetics } from '../../model/resin/fit.ts';
import { silentOn, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type Start, shown, type Times } from './times.ts';

/** Why no time can be given: the sheet states no pot life, is at war with itself, or one that no resin for pouring has; a generic kind's is not the sheet's. */
export function untoldBy(resin: Resin, { cautions }: ResinKinetics): string | undefined {
  if (silentOn(resin, 'potLife'))
    return 'Your sheet names no pot life, so nothing can be said of a cup of it. Ask the maker: how long, for how many grams, at what temperature.';
  const war = warIn(resin);
  if (war) return `No times for ${resin.name}: ${war}. Look at the sheet again, or ask the maker.`;
  if (cautions.some(({ id }) => id === 'pot-life-unlikely'))
    return 'The pot life of your sheet is that of no epoxy for coating or casting. Look at it again: the time, its unit, mass and temperature.';
  return undefined;
}

const grams = (value: number) => amount(value, 'g', 3, true);

/** What the cup comes to: its time and the half of it to plan by, and what spreading gains. */
export function verdictOf(
  run: CupRun,
  thin: Times,
  mass: number,
  { air, resin }: Start,
  after: number | undefined,
  own: readonly Caution[],
): Verdict {
  if (after !== undefined && after >= run.gel)
    return {
      level: 'stop',
      text: `After ${shown(after)} this cup has gelled: there is nothing left to spread. It gels after ${shown(run.gel)}.`,
    };
  const where = `${grams(mass)} at ${amount(air, 'Cel')}${resin === undefined ? '' : `, mixed at ${amount(resin, 'Cel')}`}`;
  const text = `About ${shown(run.work)} for ${where}: be done in ${shown(emptyWithin(run.work))}; spread thin at once it stays workable for ${shown(thin.work)}.`;
  return { level: own.some(({ level }) => level !== 'note') ? 'care' : 'good', text };
}
