import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type Colour, cupCounts, cupsOf, mostCups, smallestCup, toDivisions } from '../../model/resin/batches.ts';
import { type ColourBatch, colouredAtOnce, type FilledCup } from '../../model/resin/coloured.ts';
import {
  type Allowances,
  bareWoodTakes,
  type Dose,
  doseOf,
  dosingLimits,
  readingError,
} from '../../model/resin/dose.ts';
import { type Parts, partsOfMass } from '../../model/resin/ratio.ts';
import { timesAtWar } from '../../model/resin/told.ts';
import {
  type CupClock,
  type CupLimit,
  type CupVerdict,
  clockOf,
  cupLimitOf,
  cupTooLarge,
  judgeCup,
} from './cup-limit.ts';
import { dosingWords, type Measuring } from './dosing-words.ts';
import { gravest, type Hindrance, hindrance } from './hindrance.ts';
import { type Inputs, usual } from './inputs.ts';
import { type Layers, layersOf } from './layers.ts';
import { type Mix, mixOf, withDensities } from './mix.ts';
import { type Place, placeOf } from './place.ts';

/** Everything that the answer, its tables and the mixing sheet show. */
export interface DosePlan extends Measuring {
  given: Inputs;
  mix: Mix;
  place: Place;
  allowances: Allowances;
  dose: Dose;
  /** The whole mix by its parts, unrounded. */
  parts: Parts;
  layers: Layers;
  colours: readonly Colour[];
  cups: readonly FilledCup[];
  /** Part A that takes its pigment before cups are filled from it; none by volume, or where no colour fills two cups. */
  batches: readonly ColourBatch[];
  /** What no cup exceeds, and what sets it. */
  cupLimit: CupLimit;
  /** g of mix in the fullest cup, as measured, and what that cup comes to. */
  largestCup: number;
  cup: CupVerdict;
  clock: CupClock | undefined;
  /** What all cups together take, in whole divisions. */
  measured: { a: number; b: number };
}

/** No dose: what keeps it from being given, the gravest first, and what is known all the same. */
export interface NoDose {
  given: Inputs;
  place: Place;
  hindrances: readonly [Hindrance, ...Hindrance[]];
  measuring?: Measuring;
  /** What the largest cup comes to, where cups were cut. */
  cup?: CupVerdict;
}

export type Planned = { plan: DosePlan } | { none: NoDose };

const clear: readonly Colour[] = [{ name: 'clear', share: 1, pigment: 0 }];

/** Work out the dose of some inputs, or why there is none. Errors name the inputs. */
export function planOf(inputs: Inputs): Outcome<Planned> {
  const resin = withDensities(inputs.resin, inputs);
  const given: Inputs = { ...inputs, ...(resin ? { resin } : {}) };
  const mixed = mixOf(given);
  if (!mixed.ok) return mixed;
  const found = placeOf(given);
  if (!found.ok) return found;
  const place = found.value;
  const clock = clockOf(resin, given.shopTemperature);
  const limited = cupLimitOf(given, clock);
  const unknownMix = 'hindrance' in mixed.value ? [mixed.value.hindrance] : [];
  // Layers are looked at even where the mix is not known, so that a reader is told at once of all that is missing.
  const layered = layersOf(given, place, 'mix' in mixed.value ? mixed.value.mix.density : usualDensity);
  if (!layered.ok) return layered;
  const war = resin && timesAtWar(resin);
  const hindrances = [
    ...(war
      ? [hindrance('sheet-at-war', 'unknown', `Not by this sheet: ${war}. Look at it again, or ask the maker.`)]
      : []),
    ...unknownMix,
    ...('hindrance' in layered.value ? [layered.value.hindrance] : []),
    ...('hindrance' in limited ? [limited.hindrance] : []),
  ];
  if (war || 'hindrance' in mixed.value || 'hindrance' in layered.value || 'hindrance' in limited) {
    return none(given, place, hindrances);
  }
  return dosed(given, place, mixed.value.mix, layered.value.layers, limited.limit, clock);
}

/** g/mL of a mix of which nothing is known, for the amount of one pour alone. */
const usualDensity = 1.1;

function none(
  given: Inputs,
  place: Place,
  all: readonly Hindrance[],
  more: Pick<NoDose, 'measuring' | 'cup'> = {},
): Outcome<Planned> {
  const first = gravest(all) as Hindrance;
  return answer({
    none: {
      given,
      place,
      hindrances: [first, ...all.filter((one) => one !== first)],
      ...more,
    },
  });
}

function dosed(
  given: Inputs,
  place: Place,
  mix: Mix,
  layers: Layers,
  cupLimit: CupLimit,
  clock: CupClock | undefined,
): Outcome<Planned> {
  const sealed = sealOf(given, place);
  if (!sealed.ok) return sealed;
  // Somebody who says how much is wanted means just that; a place that is filled loses some on the way.
  const filling = place.from !== 'mass' && place.from !== 'volume';
  const allowances = {
    drip: given.drip ?? 0,
    residue: given.residue ?? (filling ? usual.residue : 0),
    spare: given.spare ?? (filling ? usual.spare : 0),
  };
  const dose = doseOf(place.mass ?? (place.volume ?? 0) * mix.density, layers.shares, sealed.value, allowances);
  const colours = given.colours ?? clear;
  const count = cupCounts(dose.stages, colours, cupLimit.mass);
  if (count > mostCups) return tooManyCups(cupLimit, count);
  const byWeight = mix.by === 'weight';
  const asked = byWeight ? given.scaleDivision : given.volumeDivision;
  const division = asked ?? (byWeight ? usual.scaleDivision : usual.volumeDivision);
  const measure = {
    ratio: byWeight ? mix.weightRatio : mix.volumeRatio,
    perGramA: byWeight ? 1 : 1 / mix.densityA,
    perGramB: byWeight ? 1 : 1 / mix.densityB,
    division,
  };
  const cut = cupsOf(dose.stages, colours, cupLimit.mass, measure);
  const { cups, batches } = byWeight ? colouredAtOnce(cut, measure) : { cups: cut as FilledCup[], batches: [] };
  const least = smallestCup(dose.stages, colours, cupLimit.mass);
  const inLeast = partsOfMass(least, mix.weightRatio, mix.densityA, mix.densityB);
  const smallest = byWeight ? Math.min(inLeast.massA, inLeast.massB) : Math.min(inLeast.volumeA, inLeast.volumeB);
  const measuring: Measuring = {
    division,
    divisionAssumed: asked === undefined,
    by: mix.by,
    readingError: readingError(division, smallest),
    roundingError: cups.reduce((worst, { off }) => Math.max(worst, Math.abs(off)), 0),
    smallestPart: smallest,
  };
  const largestCup = cups.reduce((most, { mass }) => Math.max(most, mass), 0);
  const cup = judgeCup(largestCup, given, clock);
  const hindrances = [...cupTooLarge(largestCup, cup, clock), ...tooFarOff(measuring)];
  if (hindrances.length > 0) return none(given, place, hindrances, { measuring, cup });
  const steps = (part: 'a' | 'b') => cups.reduce((sum, one) => sum + Math.round(one[part] / division), 0);
  return answer({
    plan: {
      ...measuring,
      given,
      mix,
      place,
      allowances,
      dose,
      parts: partsOfMass(dose.total, mix.weightRatio, mix.densityA, mix.densityB),
      layers,
      colours,
      cups,
      batches,
      cupLimit,
      largestCup,
      cup,
      clock,
      measured: { a: toDivisions(steps('a'), division), b: toDivisions(steps('b'), division) },
    },
  });
}

function tooManyCups({ mass, setBy }: CupLimit, count: number): Outcome<never> {
  const byTime = setBy === 'time';
  return refuse(
    byTime ? 'timeFor100g' : 'cupMass',
    `With at most ${amount(mass, 'g', 2, true)} in a cup this takes ${count} cups, more than ${mostCups}`,
    byTime
      ? 'Place it faster, pick a slower resin, or split the work.'
      : 'Give a larger cup that the maker’s sheet allows, or split the work.',
  );
}

/** A ratio that cannot be measured well enough. */
function tooFarOff(measuring: Measuring): Hindrance[] {
  return measuring.readingError + measuring.roundingError > dosingLimits.stop
    ? [hindrance('dosing-error', 'stop', dosingWords(measuring))]
    : [];
}

/** g of mix that bare wood soaks up as a seal coat; 0 where nothing says how much wood there is, which a caution then says. */
function sealOf({ sealCoat = 0, bareArea }: Inputs, place: Place): Outcome<number> {
  if (sealCoat === 0) return answer(0);
  if (sealCoat < 1) {
    return refuse(
      'sealCoat',
      `${amount(sealCoat, 'g/m2')} is no coat`,
      `Bare wood takes ${bareWoodTakes}; leave it empty for none.`,
    );
  }
  const bare = bareArea ?? place.bare;
  if (bare === undefined) return answer(0);
  return answer((sealCoat * bare) / 1e6);
}
