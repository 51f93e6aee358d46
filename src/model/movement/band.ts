import type { Basis, Citation } from '../evidence/index.ts';
import type { Strains } from './formulas.ts';

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
  basis: 'memory',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 4', seen: 'memory' },
  sentence:
    'Boards of one wood differ: nine in ten should lie in this band, if their shrinkage is normally spread with a coefficient of variation of 15 % (handbook chapter 4, from memory).',
};

/** A value with its band. */
export interface Banded {
  value: number;
  low: number;
  high: number;
}

/** The strains of a board that moves less than the average of its wood, of the average, and of one that moves more. */
export function bandOf({ radial, tangential }: Strains): readonly [less: Strains, average: Strains, more: Strains] {
  const scaled = (factor: number): Strains => ({ radial: radial * factor, tangential: tangential * factor });
  return [scaled(1 - boardVariation.fraction), { radial, tangential }, scaled(1 + boardVariation.fraction)];
}

/** The band that three values span, the middle one being the value. */
export function banded(less: number, value: number, more: number): Banded {
  return { value, low: Math.min(less, value, more), high: Math.max(less, value, more) };
}
