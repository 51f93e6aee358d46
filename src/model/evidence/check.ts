import type { Seen } from './basis.ts';
import type { Citation } from './figure.ts';

/** A value, published or of our own by another road, that ours must reproduce. */
export interface CheckValue {
  /** Unique within its set, for example `white-fir-width`. */
  id: string;
  /** What is compared, in words with units. */
  what: string;
  /** The number that ours is set beside: published, or worked out here on another road (`isOwn`). */
  published: number;
  /** Ours, computed when the check runs. */
  ours: () => number;
  unit: string;
  /** Largest difference allowed, in the same unit, and why that much. */
  tolerance: number;
  reason: string;
  citation: Citation;
}

/**
 * Values from one place.
 *
 * A set of kind `check` holds values that were read (`source-text` or `quoted`) or worked out on another road than what they
 * check (source `kerf-and-cure`): a difference beyond the tolerance is a failure. A set of kind `comparison` holds values
 * from memory or from a rival model: its worst difference is reported and nothing passes or fails by it.
 */
export interface CheckSet {
  id: string;
  title: string;
  kind: 'check' | 'comparison';
  /** What the set shows and what it cannot show. */
  about: string;
  values: readonly CheckValue[];
}

/** A published value known to differ from ours, and why; the list fails once an entry is no longer needed. */
export interface CheckException {
  set: string;
  id: string;
  reason: string;
}

/** A check value beside what our calculation gives for it, in the unit of the value. */
export interface CheckOutcome {
  value: CheckValue;
  ours: number;
  difference: number;
  within: boolean;
  /** Present where the difference is a known one. */
  exception?: CheckException;
}

/** What a set of check values comes to. */
export interface CheckReport {
  set: CheckSet;
  outcomes: CheckOutcome[];
  /** Values outside their tolerance that no exception explains; always 0 for a comparison. */
  failures: number;
  /** Exceptions whose value is within its tolerance after all, or does not exist: they must be removed. */
  staleExceptions: CheckException[];
  /** The largest difference by size, or undefined for an empty set. */
  worst: CheckOutcome | undefined;
}

/** Whether a value read this way may serve as a test oracle. */
export function isOracle(seen: Seen | undefined): boolean {
  return seen === 'source-text' || seen === 'quoted';
}

/** Whether a value was worked out here, on another road than what it checks, and so was published by nobody. */
export function isOwn({ citation }: Pick<CheckValue, 'citation'>): boolean {
  return citation.source === 'kerf-and-cure';
}

/** Whether a value may prove something: it was read, or it was worked out here on another road than what it checks. */
export function mayProve(value: CheckValue): boolean {
  return isOwn(value) || isOracle(value.citation.seen);
}

/**
 * Run every value of a set.
 *
 * @param set the values
 * @param exceptions all known differences, of any set
 */
export function runChecks(set: CheckSet, exceptions: readonly CheckException[]): CheckReport {
  const mine = exceptions.filter((exception) => exception.set === set.id);
  const outcomes = set.values.map((value): CheckOutcome => {
    const ours = value.ours();
    const difference = ours - value.published;
    // The tolerance is stated in decimals; the slack keeps a difference of exactly that size inside it.
    const within = Math.abs(difference) <= value.tolerance * (1 + 1e-9) + 1e-12;
    const exception = mine.find((candidate) => candidate.id === value.id);
    return { value, ours, difference, within, ...(exception ? { exception } : {}) };
  });
  const staleExceptions = mine.filter((exception) => {
    const outcome = outcomes.find((candidate) => candidate.value.id === exception.id);
    return outcome === undefined || outcome.within;
  });
  const failures =
    set.kind === 'comparison' ? 0 : outcomes.filter((outcome) => !outcome.within && !outcome.exception).length;
  const worst = outcomes.reduce<CheckOutcome | undefined>(
    (most, outcome) => (most && Math.abs(most.difference) >= Math.abs(outcome.difference) ? most : outcome),
    undefined,
  );
  return { set, outcomes, failures, staleExceptions, worst };
}
