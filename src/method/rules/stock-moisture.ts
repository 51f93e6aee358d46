import { type AirGiven, yearOfAir } from '../../model/moisture/year-of-air.ts';
import { amount } from '../../model/quantity/index.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import { askedOf, figureOf, numberTold, placeOf, stepsThat } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Points of moisture content between the wood and the middle of its year. Common practice, as the page on acclimatising gives it. */
export const mostPoints = 2;

/** Wood fit to be worked: near the middle of what its year will make of it. */
export const stockMoisture = rule({
  id: 'stock-moisture',
  level: 'warn',
  title: 'Wood is worked near the middle of its year',
  looksAt:
    'How dry the wood is when it is worked (the moisture told to the movement through the year, the balance that acclimatising comes to) beside the driest and the wettest that it will be where the piece will live.',
  why: `More than ${mostPoints} points from that middle, all of the change goes one way: joints, inlay and flatness are asked for twice as much.`,
  find(worked) {
    const wood = Object.values(worked.materials).filter(({ record }) => record.kind === 'wood');
    if (wood.length === 0) return [];
    const now = worksAt(worked);
    const range = rangeOf(worked);
    if (now.length === 0) {
      // What was asked and refused is another rule's.
      if (askedOf(worked, 'seasonal-movement', 'acclimatise').some(({ errors }) => errors)) return [];
      if (stepsThat(worked, 'inspect').some(({ record }) => record.looksFor?.includes('moisture'))) return [];
      return [unsaid(wood[0]?.path ?? ['materials'], 'how dry the wood is when it is worked')];
    }
    if (!range) return [unsaid(now[0]?.place.path ?? ['steps'], 'where the piece will live')];
    const middle = (range.driest + range.wettest) / 2;
    return now.flatMap(({ moisture, place }) => {
      const off = moisture - middle;
      if (Math.abs(off) <= mostPoints) return [];
      return [
        {
          ...place,
          message: `The wood is worked at ${tenths(moisture)}; where it will live it goes from ${tenths(range.driest)} to ${tenths(range.wettest)} through the year. That is ${Math.abs(off).toFixed(1)} points ${off > 0 ? 'above' : 'below'} the ${tenths(middle)} in the middle of its year; up to ${mostPoints} are usual.`,
          wayOut: `Let it ${off > 0 ? 'dry' : 'take up moisture'} to between ${tenths(Math.max(0, middle - mostPoints))} and ${tenths(middle + mostPoints)} first, in air that is kept so.`,
        },
      ];
    });
  },
});

/** A moisture content to the tenth that a meter shows, where the rule decides by tenths. */
export const tenths = (moisture: number) => amount(Number(moisture.toFixed(1)), '%');

interface AtWork {
  moisture: number;
  place: Pick<Found, 'path' | 'step'>;
}

/** How dry the wood is when it is worked, wherever that is said. */
export function worksAt(worked: WorkedMethod): AtWork[] {
  const settles = askedOf(worked, 'acclimatise').flatMap((calculation) =>
    at(calculation, figureOf(calculation, 'balance')?.value),
  );
  const moves = askedOf(worked, 'seasonal-movement').flatMap((calculation) =>
    at(calculation, numberTold(calculation, 'moistureNow') ?? figureOf(calculation, 'moistureNow')?.value),
  );
  // Where the one is handed on to the other, it is one moisture, told where the year is asked.
  const apart = settles.filter(({ moisture }) => !moves.some((other) => Math.abs(other.moisture - moisture) < 0.05));
  return [...apart, ...moves];
}

const at = (calculation: WorkedCalculation, moisture: number | undefined): AtWork[] =>
  moisture === undefined ? [] : [{ moisture, place: placeOf(calculation) }];

/** Driest and wettest of the place that the case names, %. */
function rangeOf(worked: WorkedMethod): { driest: number; wettest: number } | undefined {
  for (const calculation of askedOf(worked, 'seasonal-movement', 'finish-and-moisture')) {
    const year = yearOfAir((calculation.inputs ?? {}) as AirGiven);
    if (!year.ok) continue;
    const moistures = year.value.readings.map(({ moisture }) => moisture);
    return { driest: Math.min(...moistures), wettest: Math.max(...moistures) };
  }
  return undefined;
}

const unsaid = (path: Found['path'], what: string): Found => ({
  path,
  message: `Nowhere is it said ${what}.`,
  wayOut:
    'Ask for the movement through the year (seasonal-movement) with the moisture of the wood and the place, or measure the wood in an inspection that looks for moisture.',
});
