import type { Basis, Citation } from '../evidence/index.ts';
import type { Strains } from './formulas.ts';
import type { MovementProperties } from './properties.ts';
import { type MovementEquation, strains, usualSeam } from './strain.ts';

/** How much the shrinkage of boards of one species varies, and the band made of it. */
export const boardVariation: {
  /** Standard deviation over mean. */
  coefficientOfVariation: number;
  /** Standard deviations to each side of the mean. */
  deviations: number;
  /** Half of the band, as a fraction of the strain. */
  fraction: number;
  basis: Basis;
  citation: Citation;
  /** What the band means, for a figure's `band`. */
  sentence: string;
} = {
  coefficientOfVariation: 0.15,
  deviations: 1.645,
  fraction: 0.15 * 1.645,
  basis: 'published',
  citation: { source: 'fpl-gtr-282', locator: 'p. 4-10', seen: 'quoted' },
  sentence:
    'Boards of one wood differ: nine in ten should lie in this band, if their shrinkage is normally spread with a coefficient of variation of about 15 % (handbook, chapter 4). Where sources disagree on how far the wood moves, the band holds them all.',
};

/** A value with its band. */
export interface Banded {
  value: number;
  low: number;
  high: number;
}

/** How far a wood moves by its sources, as multiples of what one equation gives: by the least and by the most of them. */
export interface Spread {
  least: Strains;
  most: Strains;
}

/**
 * What the sources of a wood's movement say, against the equation that is used.
 *
 * The handbook's coefficients and its shrinkage, and any other source, each make an average board. Those that lie no
 * further from the equation's than rounding goes are one source.
 *
 * @param properties of the wood
 * @param equation the one that answers
 */
export function spreadOf(properties: MovementProperties, equation: MovementEquation): Spread {
  // From 10 %, where a coefficient of Table 13-5 holds exactly, over one percent.
  const by = (which: MovementEquation) => strains(10, 11, properties, which);
  const used = by(equation);
  const sources: readonly Strains[] = [by('13-2'), by('13-3'), ...(properties.elsewhere ?? [])];
  const ratios = (direction: keyof Strains) => {
    const all = sources.map((source) => source[direction] / used[direction]);
    return [1, ...all.filter((ratio) => Math.abs(ratio - 1) > usualSeam)];
  };
  const [radial, tangential] = [ratios('radial'), ratios('tangential')];
  return {
    least: { radial: Math.min(...radial), tangential: Math.min(...tangential) },
    most: { radial: Math.max(...radial), tangential: Math.max(...tangential) },
  };
}

/**
 * The strains of a board that moves less than the average of its wood, of the average, and of one that moves more.
 *
 * Where sources disagree on the average, the least board is one of the least source and the most one of the most.
 *
 * @param average strains by the equation that answers
 * @param spread of the wood's sources about that equation
 */
export function bandOf(
  { radial, tangential }: Strains,
  { least, most }: Spread,
): readonly [less: Strains, average: Strains, more: Strains] {
  const scaled = (by: Strains, factor: number): Strains => ({
    radial: radial * by.radial * factor,
    tangential: tangential * by.tangential * factor,
  });
  return [
    scaled(least, 1 - boardVariation.fraction),
    { radial, tangential },
    scaled(most, 1 + boardVariation.fraction),
  ];
}

/** The band that three values of the same unit span, the middle one being the value. */
export function banded(less: number, value: number, more: number): Banded {
  return { value, low: Math.min(less, value, more), high: Math.max(less, value, more) };
}
