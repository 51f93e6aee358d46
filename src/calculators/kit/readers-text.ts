import {
  canonicalUnit,
  convert,
  type Dimension,
  formatNumber,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
  unitLabel,
} from '../../model/quantity/index.ts';
import type { FieldMeta } from './fields.ts';
import { isTooLong } from './limits.ts';

/** The most by which a text in inches may differ from the metric one that it stands for: share of it, and inches. */
const closeEnough = { share: 0.005, inches: 1 / 64 };

/** What is measured in the reader's own units; weights and volumes of resin are metric for everybody, as scales and cups are. */
const turned: readonly Dimension[] = ['length', 'area', 'temperature'];

/**
 * The metric text of a page's worked case as a reader of inches would type it: `300 mm` is `11 13/16 in`, `18 °C` is `64.4 °F`.
 *
 * It is the same case: a length takes the coarsest fraction, down to 1/64, that lies within 1/64 in and half a hundredth of it, and
 * stays as it was where none does. What cannot be read, and what is not metric, stays too.
 */
export function readersText(meta: FieldMeta, text: string, units: ReaderUnits): string {
  const { dimension } = meta;
  if (units.system === 'metric' || meta.kind !== 'quantity' || !dimension || !turned.includes(dimension)) return text;
  if (isTooLong(meta, text)) return text;
  const usual = readerUnit(dimension, units);
  const read = parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] });
  if (!read.ok || /^\[/.test(read.unit)) return text;
  const value = convert(read.value, canonicalUnit[dimension], usual);
  const label = unitLabel(usual);
  if (dimension === 'temperature') return `${formatNumber(value, 6).replace('\u2212', '-')} ${label}`;
  if (dimension === 'area') return `${formatNumber(value, 3)} ${label}`;
  const fraction = [1, 2, 4, 8, 16, 32, 64]
    .map((steps) => ({ steps, count: Math.round(value * steps) }))
    .find(({ steps, count }) => {
      const off = Math.abs(count / steps - value);
      return off <= closeEnough.inches && off <= closeEnough.share * Math.abs(value);
    });
  if (!fraction) return text;
  const whole = Math.trunc(fraction.count / fraction.steps);
  const top = fraction.count - whole * fraction.steps;
  const parts = [whole === 0 && top !== 0 ? '' : `${whole}`, top === 0 ? '' : `${top}/${fraction.steps}`];
  return `${parts.filter(Boolean).join(' ')} ${label}`;
}
