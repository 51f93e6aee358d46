import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount, formatNumber } from '../../model/quantity/index.ts';
import { rateFactor } from '../../model/resin/clock.ts';
import type { CupRun } from '../../model/resin/cup.ts';
import { cupHeat } from '../../model/resin/cup-heat.ts';
import type { ResinKinetics } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { shopAirCautions, steadyAir } from '../../model/resin/shop-air.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { Inputs } from './inputs.ts';
import { cup, type Start, shown, type Times } from './times.ts';

/** What this very cup must beware of, the gravest first. */
export function ownCautionsOf(
  { resin, mass, shopTemperature, spreadAfter }: Inputs,
  known: ResinKinetics,
  run: CupRun,
): Caution[] {
  return [
    ...spreading(run, spreadAfter),
    ...cupHeat(run, mass, shopTemperature),
    ...shopAirCautions(steadyAir(shopTemperature)),
    ...sheetWarnings(resin),
    ...known.cautions,
    ...kindOnly(resin),
  ];
}

/** A generic kind’s clock is nobody’s sheet. */
function kindOnly(resin: Resin): Caution[] {
  if (resin.fromSheet) return [];
  return [
    {
      id: 'clock-of-a-kind',
      level: 'warning',
      own: true,
      text: 'This is the clock of a generic kind, from memory: enter the pot life of your sheet.',
      basis: 'memory',
    },
  ];
}

const standing = ['resin-cup-heat', 'resin-skin', 'resin-air'];
/** What holds of every cup. */
export const standingCautions = () => standing.flatMap((id) => cautionById(id) ?? []);

function spreading(run: CupRun, after: number | undefined): Caution[] {
  if (after === undefined || after < run.work) return [];
  const gone = after >= run.gel;
  return [
    {
      id: gone ? 'gelled-in-cup' : 'too-late-to-spread',
      level: gone ? 'danger' : 'warning',
      own: true,
      text: gone
        ? `After ${shown(after)} the cup has gelled: do not pour it, set it outdoors.`
        : `After ${shown(after)} the cup is past its working time: it will not level. Mix less, or spread sooner.`,
      basis: 'memory',
    },
  ];
}

/** What ten degrees more, of shop and resin alike, do to a thin layer and to this cup: the rule of thumb holds for the first alone. */
export function tenDegrees(
  known: ResinKinetics,
  mass: number,
  run: CupRun,
  thin: Times,
  { air, resin }: Start,
): Caution {
  const warmer = cup(known, mass, { air: air + 10, ...(resin === undefined ? {} : { resin: resin + 10 }) });
  const film = rateFactor(known.kinetics.activationEnergy, air, air + 10);
  const own = warmer ? run.gel / warmer.gel : film;
  const factor = (value: number) => formatNumber(value, 2);
  const why =
    own > 1.15 * film
      ? 'since then it heats itself as well'
      : 'since it heats itself at either temperature and more can hardly be gained';
  return {
    id: 'ten-degrees',
    level: 'note',
    text: `${amount(10, 'K', 2)} more${resin === undefined ? '' : ' in shop and cup'} divide the time of a thin layer by ${factor(film)} and that of this cup by ${factor(own)}, ${why}.`,
    why: `That ${amount(10, 'K', 2)} halve the time is a rule for thin layers only. Spread thin at once, this resin stays workable ${factor(thin.work / run.work)} times as long and gels ${factor(thin.gel / run.gel)} times later; towards the end of the time in the cup that gain is gone.`,
    basis: 'memory',
  };
}
