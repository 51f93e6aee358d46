import { formatNumber } from '../../model/quantity/index.ts';
import { dosingLimits } from '../../model/resin/dose.ts';
import type { Mix } from './mix.ts';

/** How the parts are measured and what that leaves open. */
export interface Measuring {
  /** Smallest division, in g or mL, after how the parts are measured; `assumed` where nobody said it. */
  division: number;
  divisionAssumed: boolean;
  by: Mix['by'];
  /** Worst over the cups: what the division leaves open, and what rounding to it takes, in percent. */
  readingError: number;
  roundingError: number;
  /** The least of either part in any cup before rounding, in the measured unit. */
  smallestPart: number;
}

const short = (value: number) => Number(value.toPrecision(2));

/** Divisions of scales and syringes that shops have, in g or mL. */
const usualDivisions = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
/** Percent of the smaller part that a division may be, so that reading and rounding stay within the limit together. */
const safeShare = 2;

/** How far off the ratio can be by measuring, and what mends it: one sentence of each. */
export function dosingWords({
  readingError: reading,
  roundingError: rounding,
  division,
  divisionAssumed,
  smallestPart,
  by,
}: Measuring): string {
  const unit = by === 'weight' ? 'g' : 'ml';
  const tool = by === 'weight' ? 'a scale' : 'marks';
  const off = reading + rounding;
  const finer = [...usualDivisions].reverse().find((each) => each <= (smallestPart * safeShare) / 100);
  const taken = divisionAssumed ? ' (taken: say yours)' : '';
  const what =
    smallestPart < division
      ? `The smallest cup needs ${short(smallestPart)} ${unit} of one part, and ${tool} of ${formatNumber(division, 2)} ${unit}${taken} cannot measure that.`
      : `With ${tool} of ${formatNumber(division, 2)} ${unit}${taken} the ratio of the smallest cup can be off by ${short(off)} %${
          off > dosingLimits.stop ? ', too far to pour' : ''
        }.`;
  const remedies = [
    ...(finer === undefined ? [] : [`measure to ${finer} ${unit}`]),
    `mix at least ${short((100 * division) / safeShare)} ${unit} of the smaller part in one cup`,
  ].join(', or ');
  return `${what} ${remedies.charAt(0).toUpperCase()}${remedies.slice(1)}.`;
}
