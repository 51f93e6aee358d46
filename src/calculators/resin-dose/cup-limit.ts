import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { assumed as assumedOfSheets, isAssumed } from '../../model/resin/assumed.ts';
import { overfill } from '../../model/resin/batches.ts';
import { cupOf, runCup } from '../../model/resin/cup.ts';
import { cupHeat, emptyWithin, workedShare } from '../../model/resin/cup-heat.ts';
import { kineticsOf, type ResinKinetics } from '../../model/resin/fit.ts';
import { silentOn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type Hindrance, hindrance } from './hindrance.ts';
import type { Inputs } from './inputs.ts';

/** The most that one cup holds, g of mix, and what sets it. */
export interface CupLimit {
  mass: number;
  setBy: 'reader' | 'pot life' | 'time';
}

/** What is known of the time that a cup leaves. */
export interface CupClock {
  known: ResinKinetics;
  /** °C of shop and resin; `assumed` where none was given (`takenShop`). */
  celsius: number;
  assumed: boolean;
  /** Mass that the pot life is stated for, g; `massAssumed` where the sheet does not say it. */
  statedMass: number;
  massAssumed: boolean;
}

/** What a cup takes to stir, twice, s, and to pour, s a gram, where nobody says how long: common practice and memory. */
const usualHandling = { stirring: 4 * 60, pouring: 60 / 100 } as const;
const leastCup = 0.5;

/**
 * The clock of a resin's cup, by the pot life that its sheet or its kind states.
 *
 * @returns undefined where nobody states one, or states one that no resin for pouring has
 */
export function clockOf(resin: Resin | undefined, shop: number | undefined): CupClock | undefined {
  const { potLife, potLifeMass } = resin?.figures ?? {};
  // Beside a sheet of the reader's own the pot life of a generic kind is nobody's word.
  if (!resin || !potLife || (resin.fromSheet && potLife.basis !== 'supplier-sheet')) return undefined;
  const known = kineticsOf(resin);
  if (known.cautions.some(({ id }) => id === 'pot-life-unlikely')) return undefined;
  return {
    known,
    celsius: shop ?? takenShop(resin),
    assumed: shop === undefined,
    statedMass: potLifeMass?.value ?? assumedOfSheets.potLifeMass,
    massAssumed: isAssumed(resin, 'potLifeMass'),
  };
}

/**
 * The shop that is taken where none was given, °C: the warmer of those that the pot life and the greatest depth are stated for, since a warm
 * shop is the dangerous one for a cup.
 */
export function takenShop(resin: Resin): number {
  const { greatestDepthTemperature, potLifeTemperature } = resin.figures;
  const states = (name: 'potLife' | 'greatestDepth') => resin.figures[name] !== null && !silentOn(resin, name);
  const known = [
    ...(states('potLife') ? [potLifeTemperature?.value ?? assumedOfSheets.potLifeTemperature] : []),
    ...(states('greatestDepth') ? [greatestDepthTemperature?.value ?? assumedOfSheets.depthTemperature] : []),
  ];
  return known.length > 0 ? Math.max(...known) : assumedOfSheets.potLifeTemperature;
}

/** Working time of a cup of a mass, s; undefined where it never grows too thick. */
function workOf({ known, celsius }: CupClock, mass: number): number | undefined {
  return runCup(cupOf(mass, known.thermal), known.kinetics, { air: celsius })?.work;
}

/** s until a cup must be empty. */
function timeToEmpty(clock: CupClock, mass: number): number | undefined {
  const work = workOf(clock, mass);
  return work === undefined ? undefined : workedShare * work;
}

/** The most that a cup may hold, or that nothing says it. */
export function cupLimitOf(
  { cupMass, timeFor100g }: Inputs,
  clock: CupClock | undefined,
): { limit: CupLimit } | { hindrance: Hindrance } {
  const mass = cupMass ?? clock?.statedMass;
  if (mass === undefined) {
    return {
      hindrance: hindrance(
        'no-cup-limit',
        'unknown',
        'Nothing says how much may stand in one cup. Give the pot life of your sheet with its mass, or the most that you mix in one cup.',
      ),
    };
  }
  const byTime = clock && timeFor100g !== undefined ? massInTime(clock, timeFor100g / 100, mass) : mass;
  if (byTime < mass) return { limit: { mass: byTime, setBy: 'time' } };
  return { limit: { mass, setBy: cupMass === undefined ? 'pot life' : 'reader' } };
}

/** The most that can be placed in half of what a cup of just that mass can be worked, up to `most`; g. */
function massInTime(clock: CupClock, secondsPerGram: number, most: number): number {
  const late = (mass: number) => secondsPerGram * mass > (timeToEmpty(clock, mass) ?? Number.POSITIVE_INFINITY);
  if (!late(most)) return most;
  let [low, high] = [Math.log(leastCup), Math.log(most)];
  while (high - low > 0.002) {
    const middle = (low + high) / 2;
    if (late(Math.exp(middle))) high = middle;
    else low = middle;
  }
  return Math.exp(low);
}

/** What a cup of a mass comes to, held against its own clock. */
export interface CupVerdict {
  /** What must be said of its heat where it is left standing; empty where nothing is, or no clock is known. */
  heat: readonly Caution[];
  /** True where it holds more than the pot life is stated for. */
  beyondStated: boolean;
  /** s until it must be empty; undefined where no clock is known. */
  empty: number | undefined;
  /** True where stirring and pouring takes longer than that. */
  tooLate: boolean;
}

/** Hold the largest cup against the pot life and its own clock. */
export function judgeCup(mass: number, { timeFor100g }: Inputs, clock: CupClock | undefined): CupVerdict {
  if (!clock) return { heat: [], beyondStated: false, empty: undefined, tooLate: false };
  const run = runCup(cupOf(mass, clock.known.thermal), clock.known.kinetics, { air: clock.celsius, until: 'peak' });
  const empty = run && emptyWithin(run.work);
  // Somebody who says how long 100 g take has had the cups cut to it already.
  const taken = timeFor100g === undefined ? usualHandling.stirring + usualHandling.pouring * mass : 0;
  return {
    heat: run ? cupHeat(run, mass, clock.celsius, clock.assumed) : [],
    beyondStated: mass > clock.statedMass * (1 + overfill),
    empty,
    tooLate: empty !== undefined && taken > empty,
  };
}

/** A cup larger than the pot life is stated for that nobody empties in time. */
export function cupTooLarge(mass: number, verdict: CupVerdict, clock: CupClock | undefined): Hindrance[] {
  if (!clock || !verdict.beyondStated || !verdict.tooLate) return [];
  const grams = (value: number) => amount(value, 'g', 3, true);
  return [
    hindrance(
      'cup-too-large',
      'stop',
      `${grams(mass)} in one cup is too thick to work after ${amount(2 * (verdict.empty ?? 0), 's', 2)} and then ${verdict.heat.some(({ level }) => level === 'danger') ? 'runs away until it smokes' : 'heats itself'}. Mix no more at a time than the ${grams(clock.statedMass)} that the pot life is stated for.`,
    ),
  ];
}
