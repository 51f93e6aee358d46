import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import {
  type Colour,
  type Cup,
  cupCounts,
  cupsOf,
  mostCups,
  smallestCup,
  toDivisions,
} from '../../model/resin/batches.ts';
import { type Allowances, type Dose, doseOf, readingError } from '../../model/resin/dose.ts';
import { type Parts, partsOfMass } from '../../model/resin/ratio.ts';
import { layerShares } from '../../model/resin/shapes.ts';
import { type Inputs, usual } from './inputs.ts';
import { type Mix, mixOf } from './mix.ts';
import { depthOf, type Place, placeOf } from './place.ts';

/** Everything that the answer, its tables and the drum sheet show. */
export interface DosePlan {
  mix: Mix;
  place: Place;
  allowances: Allowances;
  dose: Dose;
  /** The whole mix by its parts, unrounded. */
  parts: Parts;
  layers: number;
  /** mm, where the depth is known. */
  layerThickness?: number;
  colours: readonly Colour[];
  cups: readonly Cup[];
  /** g of mix that no cup exceeds, and what sets it; absent where nothing does. */
  largestCup?: { mass: number; setBy: 'reader' | 'pot life' | 'time' };
  /** Smallest division, in g or mL, after how the parts are measured. */
  division: number;
  /** What all cups together take, in whole divisions. */
  measured: { a: number; b: number };
  /** Worst over the cups: what the division leaves open, and what rounding to it takes, in percent. */
  readingError: number;
  roundingError: number;
  /** The least of either part in any cup, in the measured unit. */
  smallestPart: number;
}

/**
 * Share of the time to gel for which a cup can be worked: about half, from the cure of both classes, in which the viscosity
 * has doubled at 0.48 of the time that a thin layer takes to gel.
 */
export const workedShare = 0.48;

const clear: readonly Colour[] = [{ name: 'clear', share: 1, pigment: 0 }];

/** Work out the dose of some inputs. Errors name the inputs. */
export function planOf(given: Inputs): Outcome<DosePlan> {
  const mixed = mixOf(given);
  if (!mixed.ok) return mixed;
  const mix = mixed.value;
  const found = placeOf(given);
  if (!found.ok) return found;
  const place = found.value;
  const layered = layersOf(given, place);
  if (!layered.ok) return layered;
  const sealed = sealOf(given, place);
  if (!sealed.ok) return sealed;

  // Somebody who says how much is wanted means just that; a place that is filled loses some on the way.
  const filling = place.from !== 'mass' && place.from !== 'volume';
  const allowances = {
    drip: given.drip ?? 0,
    residue: given.residue ?? (filling ? usual.residue : 0),
    spare: given.spare ?? (filling ? usual.spare : 0),
  };
  const { layers, shares } = layered.value;
  const dose = doseOf(place.mass ?? (place.volume ?? 0) * mix.density, shares, sealed.value, allowances);
  const colours = given.colours ?? clear;
  const largestCup = largestCupOf(given);
  const largest = largestCup?.mass ?? Number.POSITIVE_INFINITY;
  const count = cupCounts(dose.stages, colours, largest);
  if (count > mostCups) {
    const byTime = largestCup?.setBy === 'time';
    return refuse(
      byTime ? 'timeFor100g' : 'cupMass',
      `With at most ${Number(largest.toPrecision(2))} g in a cup this takes ${count} cups, more than ${mostCups}`,
      byTime
        ? 'Place it faster, pick a slower resin, or split the work.'
        : 'Give a larger cup that the maker’s sheet allows, or split the work.',
    );
  }
  const byWeight = mix.by === 'weight';
  const division = byWeight
    ? (given.scaleDivision ?? usual.scaleDivision)
    : (given.volumeDivision ?? usual.volumeDivision);
  const measure = {
    ratio: byWeight ? mix.weightRatio : mix.volumeRatio,
    perGramA: byWeight ? 1 : 1 / mix.densityA,
    perGramB: byWeight ? 1 : 1 / mix.densityB,
    division,
  };
  const cups = cupsOf(dose.stages, colours, largest, measure);
  const steps = (part: 'a' | 'b') => cups.reduce((sum, cup) => sum + Math.round(cup[part] / division), 0);
  const least = smallestCup(dose.stages, colours, largest);
  const inLeast = partsOfMass(least, mix.weightRatio, mix.densityA, mix.densityB);
  const smallest = byWeight ? Math.min(inLeast.massA, inLeast.massB) : Math.min(inLeast.volumeA, inLeast.volumeB);
  const depth = depthOf(place);
  return answer({
    mix,
    place,
    allowances,
    dose,
    parts: partsOfMass(dose.total, mix.weightRatio, mix.densityA, mix.densityB),
    layers,
    ...(depth === undefined ? {} : { layerThickness: depth / layers }),
    colours,
    cups,
    ...(largestCup ? { largestCup } : {}),
    division,
    measured: { a: toDivisions(steps('a'), division), b: toDivisions(steps('b'), division) },
    readingError: readingError(division, smallest),
    roundingError: cups.reduce((worst, { off }) => Math.max(worst, Math.abs(off)), 0),
    smallestPart: smallest,
  });
}

function layersOf(given: Inputs, place: Place): Outcome<{ layers: number; shares: number[] }> {
  const depth = depthOf(place);
  const allowed = given.resin?.figures.greatestDepth?.value;
  if (given.layers !== undefined && !Number.isInteger(given.layers)) {
    return refuse('layers', `${given.layers} is not a whole number of layers`, 'Give, for example, 2.');
  }
  const needed = depth !== undefined && allowed !== undefined ? Math.ceil(depth / allowed - 1e-9) : 1;
  const layers = given.layers ?? needed;
  const most = 60;
  if (layers > most) {
    return refuse(
      'depth',
      `${depth} mm would take ${layers} layers of at most ${allowed} mm, more than ${most}`,
      'Pick a resin that is poured deeper, or give a smaller depth.',
    );
  }
  const shares = place.profile ? layerShares(place.profile, layers) : Array.from({ length: layers }, () => 1 / layers);
  return answer({ layers, shares });
}

/** g of mix that bare wood soaks up as a seal coat; 0 where nothing says how much wood there is, which a caution then says. */
function sealOf({ sealCoat = 0, bareArea }: Inputs, place: Place): Outcome<number> {
  if (sealCoat === 0) return answer(0);
  if (sealCoat < 1) {
    return refuse(
      'sealCoat',
      `${sealCoat} g/m² is no coat`,
      'Bare wood takes 100 to 200 g/m²; leave it empty for none.',
    );
  }
  const bare = bareArea ?? place.bare;
  if (bare === undefined) return answer(0);
  return answer((sealCoat * bare) / 1e6);
}

function largestCupOf({ resin, cupMass, timeFor100g }: Inputs): DosePlan['largestCup'] {
  const { potLife, potLifeMass } = resin?.figures ?? {};
  const mass = cupMass ?? potLifeMass?.value;
  const worked = potLife && potLife.value * (resin?.potLifeMeans === 'usable' ? 1 : workedShare);
  const byTime = worked && timeFor100g !== undefined ? (100 * worked) / timeFor100g : undefined;
  if (byTime !== undefined && (mass === undefined || byTime < mass)) return { mass: byTime, setBy: 'time' };
  if (mass === undefined) return undefined;
  return { mass, setBy: cupMass === undefined ? 'pot life' : 'reader' };
}
