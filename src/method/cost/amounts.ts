import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import { canonicalUnit, convert, excerpt, formatNumber, unitByCode, unitLabel } from '../../model/quantity/index.ts';

/** An amount of goods. */
export interface Amount {
  value: number;
  /** UCUM code; `{count}` for things that are counted. */
  unit: string;
}

const measures: Readonly<Partial<Record<string, string>>> = {
  volume: 'by volume',
  mass: 'by weight',
  area: 'by area',
  length: 'by length',
  count: 'by the piece',
  energy: 'by energy',
};

/** An amount in words: `5 l`, `12 pieces`. */
export function amountWords({ value, unit }: Amount): string {
  if (unit === '{count}') return `${formatNumber(value, 6)} ${value === 1 ? 'piece' : 'pieces'}`;
  return `${formatNumber(value, 6)} ${unitLabel(unit)}`;
}

/** Without the noise of going from unit to unit and back. */
export const tidy = (value: number): number => Number(value.toPrecision(12));

/**
 * An amount in another unit: of the same measure, or, where the density is known, between weight and volume.
 *
 * @param density g/mL
 * @returns the value in `unit`, or words that say what is missing, for the field `unit`
 */
export function inUnit(amount: Amount, unit: string, what: string, density?: number): Outcome<number> {
  const [from, to] = [unitByCode(amount.unit), unitByCode(unit)];
  if (!from || !to) {
    return refuse(
      'unit',
      `“${excerpt(from ? unit : amount.unit)}” is not a unit that is known here (${what})`,
      'Give a UCUM code such as L, kg, [bf_i] or {count}.',
    );
  }
  if (!Number.isFinite(amount.value) || Math.abs(amount.value) > 1e15)
    return refuse('amount', `The amount of ${what} is not a number that can be reckoned with`, 'Look at the amount.');
  if (from.dimension === to.dimension) return answer(tidy(convert(amount.value, from.code, to.code)));
  const asked = measures[to.dimension] ?? `in ${unitLabel(unit)}`;
  const given = measures[from.dimension] ?? `in ${unitLabel(amount.unit)}`;
  const weighed = [from.dimension, to.dimension].sort().join(' ') === 'mass volume';
  if (!weighed) {
    return refuse(
      'unit',
      `${what} is needed ${asked} and sold or kept ${given}, and the two cannot be compared`,
      'State both in the same measure.',
    );
  }
  if (density === undefined || !(density > 0) || !Number.isFinite(density)) {
    return refuse(
      'density',
      `${what} is needed ${asked} and sold or kept ${given}: that takes its density, which is not given`,
      'Add its density, such as 1.1 g/ml, from its data sheet.',
    );
  }
  const canonical = convert(amount.value, from.code, canonicalUnit[from.dimension]);
  const other = from.dimension === 'mass' ? canonical / density : canonical * density;
  return answer(tidy(convert(other, canonicalUnit[to.dimension], unit)));
}
