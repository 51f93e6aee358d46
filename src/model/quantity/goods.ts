import { parseQuantity, type QuantityReading, withUnit } from './read.ts';
import { excerpt } from './text.ts';
import { canonicalUnit, convert, type Dimension } from './units.ts';

/** What is bought and used up is measured so; what none of them measures is counted. */
const measuresOfGoods: readonly Dimension[] = ['volume', 'mass', 'area', 'length', 'energy'];

const counted = /^\+?(\d{1,9})(?:\s*(?:pieces?|pcs?\.?|each))?$/i;

/**
 * Read an amount of goods, whatever measures it: `5 L`, `2 lb 3 oz`, `12 bd ft`, `1.5 m²`, `10 m`; a bare whole number counts things.
 *
 * @returns the value in the unit typed (UCUM), or the problem and a way out. It never throws for what a reader may type.
 */
export function parseGoods(text: string): QuantityReading {
  const count = counted.exec(text.trim());
  if (count) return { ok: true, value: Number(count[1]), unit: '{count}' };
  for (const dimension of measuresOfGoods) {
    const bareUnit = canonicalUnit[dimension];
    if (withUnit(text, bareUnit) !== text) {
      return {
        ok: false,
        problem: `“${excerpt(text)}” has no unit, and is no whole number of things`,
        wayOut:
          'Write it with its unit, such as 5 L, 1 kg, 12 bd ft or 2 m; or a whole number, such as 50, for things.',
      };
    }
    const read = parseQuantity(text, { dimension, bareUnit });
    if (!read.ok) continue;
    // Without the noise of going to the canonical unit and back.
    const value = Number(convert(read.value, canonicalUnit[dimension], read.unit).toPrecision(14));
    return { ok: true, value, unit: read.unit };
  }
  return {
    ok: false,
    problem: `“${excerpt(text)}” is no amount of goods`,
    wayOut:
      'Write a number and its unit, such as 5 L, 1 kg, 12 bd ft, 1.5 m² or 2 m; a whole number, such as 50, counts things.',
  };
}
