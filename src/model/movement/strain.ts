import { answer, type EquationRecord, type Outcome, refuse } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { changeByCoefficient, changeByShrinkage, type Strains, smallRange } from './formulas.ts';
import type { MovementProperties } from './properties.ts';

/** Which of the handbook's two equations: 13-2 by coefficient, 13-3 by shrinkage. */
export type MovementEquation = '13-2' | '13-3';

/** The equation's record: id, title, formula, basis and citation. */
export const movementRecords: Readonly<Record<MovementEquation, EquationRecord>> = {
  '13-2': changeByCoefficient.record,
  '13-3': changeByShrinkage.record,
};

/**
 * The equation to use for a set of moisture contents.
 *
 * One equation serves the whole set: changing over between two months would put a small step (`seam`) into the year, and
 * a board could seem to narrow while it takes up moisture.
 *
 * A mixed lot such as commercial red oak has coefficients in print and no shrinkage: it is answered from 6 % to 14 % and nowhere else.
 *
 * @param moistures every moisture content of the question, start and ends, %
 * @param properties of the wood
 * @returns `13-2` where all lie from 6 % to 14 % and both coefficients are printed for the wood; otherwise `13-3`, or a refusal on
 *   `species` where no shrinkage is printed
 */
export function chooseEquation(
  moistures: readonly number[],
  properties: MovementProperties,
): Outcome<MovementEquation> {
  const outside = moistures.find((moisture) => moisture < smallRange.from || moisture > smallRange.to);
  const printed = properties.radialCoefficient !== null && properties.tangentialCoefficient !== null;
  if (outside === undefined && printed) return answer('13-2');
  if (properties.radialShrinkage !== null && properties.tangentialShrinkage !== null) return answer('13-3');
  return refuse(
    'species',
    `Of this wood only coefficients are published, which hold from ${smallRange.from} to ${smallRange.to} % moisture content, and ${amount(outside ?? 0, '%')} lies outside`,
    'Stay within that range, or pick a wood whose shrinkage is published: of a mixed lot, one of the trees that are sold under its name.',
  );
}

/** A moisture content as far as it changes size: what is above the start of shrinkage counts as the start. */
function effective(moisture: number, properties: MovementProperties): number {
  return Math.min(moisture, properties.shrinkageStart);
}

/** Strains of free wood, and whether a moisture content had to count as the start of shrinkage. */
export interface CappedStrains extends Strains {
  /** True where `from` or `to` lies above the start of shrinkage, where wood no longer swells. */
  capped: boolean;
}

/**
 * Strains of free wood from one moisture content to another, as fractions of the dimension at `from`.
 *
 * @param from moisture content at the start, %
 * @param to moisture content at the end, %
 * @param properties of the wood
 * @param equation as `chooseEquation` gives it for every moisture content in question; a wood that has print for one of the two
 *   alone is computed by that one whatever is asked
 */
export function strains(
  from: number,
  to: number,
  properties: MovementProperties,
  equation: MovementEquation,
): CappedStrains {
  const { radialShrinkage, tangentialShrinkage, shrinkageStart, radialCoefficient, tangentialCoefficient } = properties;
  const start = effective(from, properties);
  const end = effective(to, properties);
  const capped = start < from || end < to;
  const byCoefficient = radialCoefficient !== null && tangentialCoefficient !== null;
  const byShrinkage = radialShrinkage !== null && tangentialShrinkage !== null;
  if (byCoefficient && (equation === '13-2' || !byShrinkage)) {
    return {
      radial: changeByCoefficient(1, radialCoefficient, start, end),
      tangential: changeByCoefficient(1, tangentialCoefficient, start, end),
      capped,
    };
  }
  if (!byShrinkage) throw new Error('A wood without coefficients and without shrinkage has no movement properties.');
  return {
    radial: changeByShrinkage(1, radialShrinkage, start, end, shrinkageStart),
    tangential: changeByShrinkage(1, tangentialShrinkage, start, end, shrinkageStart),
    capped,
  };
}

/** How far apart two sources may lie by rounding and by their different footing, as a fraction of the change. */
export const usualSeam = 0.03;

/**
 * How far the two published equations lie apart where both hold, from 6 % to 14 %.
 *
 * The first applies a coefficient made for the dimension at 10 % to whatever the start is, and both coefficient and
 * shrinkage are rounded in print; so they part by a few percent of the change.
 *
 * @param properties of the wood
 * @returns the largest difference in each direction as a fraction of the change by 13-3, or null where the wood has no
 *   printed coefficients, or no printed shrinkage
 */
export function seam(properties: MovementProperties): Strains | null {
  const { radialShrinkage, tangentialShrinkage, shrinkageStart, radialCoefficient, tangentialCoefficient } = properties;
  if (radialCoefficient === null || tangentialCoefficient === null) return null;
  if (radialShrinkage === null || tangentialShrinkage === null) return null;
  const worst = (coefficient: number, shrinkage: number) =>
    // The ratio of the two depends on the starting moisture alone, in a straight line: its ends are its extremes.
    Math.max(
      ...[smallRange.from, smallRange.to].map((from) => {
        const wide = changeByShrinkage(1, shrinkage, from, from + 1, shrinkageStart);
        return Math.abs(changeByCoefficient(1, coefficient, from, from + 1) / wide - 1);
      }),
    );
  return {
    radial: worst(radialCoefficient, radialShrinkage),
    tangential: worst(tangentialCoefficient, tangentialShrinkage),
  };
}
