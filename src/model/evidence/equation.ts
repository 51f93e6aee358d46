import type { Basis } from './basis.ts';
import type { Citation } from './figure.ts';

/** A symbol of an equation as its source writes it, what it means and its unit. */
export interface EquationSymbol {
  /** KaTeX source, for example `S_T`. */
  tex: string;
  meaning: string;
  /** Unit in words or UCUM, for example `%` or `mm`. */
  unit: string;
}

/** What is shown of an equation on the Equations page and cited by every answer that used it. */
export interface EquationRecord {
  /** Stable id, for example `wood-handbook-13-2`. */
  id: string;
  title: string;
  /** The formula in KaTeX, with the source's own symbols. */
  tex: string;
  symbols: readonly EquationSymbol[];
  /** Where it holds, in words with numbers and units. */
  validity: string;
  /** `published` for a formula read or quoted, `memory` where its printed form was not seen, `derived` for ours. */
  basis: Basis;
  citation?: Citation;
  /** Misprints, departures and doubts: what is printed, what we use, and why. */
  remarks?: string;
}

/** A function that carries the record of the formula it computes. */
export type Equation<F extends (...args: never[]) => unknown> = F & { readonly record: EquationRecord };

/**
 * Join a formula's record to the function that computes it, so that the page and the code cannot part.
 *
 * @param record what to show and cite
 * @param compute the pure function; its docstring names arguments and units
 * @returns the same function, with `record` on it
 */
export function equation<F extends (...args: never[]) => unknown>(record: EquationRecord, compute: F): Equation<F> {
  return Object.assign(compute, { record });
}
