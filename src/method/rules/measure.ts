import { amount, canonicalUnit, convert, type Dimension, unitByCode } from '../../model/quantity/index.ts';
import type { CaseQuantity, WorkedMethod } from '../case/types.ts';
import type { WrittenQuantity } from './written.ts';

/** A quantity of the case, in the canonical unit of its dimension. */
export interface Measure {
  dimension: Dimension;
  value: number;
  low?: number;
  high?: number;
  label: string;
}

/** As it stands in a sentence. */
export const inWords = ({ dimension, value }: Measure): string => amount(value, canonicalUnit[dimension]);

/** Whether a written quantity is this one, to the digits written. */
export const means = ({ dimension, value, give }: WrittenQuantity, measure: Measure): boolean =>
  measure.dimension === dimension && Math.abs(measure.value - value) <= give * 1.0001;

/** Whether it lies in the band of a figure. */
export const isInside = ({ value }: WrittenQuantity, { low, high }: Measure): boolean =>
  low !== undefined && high !== undefined && value >= low && value <= high;

/** A quantity of the case as a measure; none of a unit that is not known here. */
export function measureOf({ value, unit, low, high, label }: CaseQuantity): Measure[] {
  const known = unitByCode(unit);
  if (!known) return [];
  const canonical = (of: number) => convert(of, unit, canonicalUnit[known.dimension]);
  return [
    {
      dimension: known.dimension,
      value: canonical(value),
      ...(low === undefined || high === undefined ? {} : { low: canonical(low), high: canonical(high) }),
      label,
    },
  ];
}

/** What a pointer leads to, where it is a quantity. */
export function measureAt(worked: WorkedMethod, pointer: string): Measure[] {
  const value = worked.at(pointer);
  return value?.kind === 'quantity' ? measureOf(value) : [];
}
