import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  canonicalUnit,
  convert,
  type Dimension,
  formatClosely,
  formatQuantity,
  parseQuantity,
  type ReaderUnits,
  unitByCode,
  units,
  withUnit,
} from '../../../src/model/quantity/index.ts';

const dimensions = Object.keys(canonicalUnit) as Dimension[];
const anyUnit = fc.constantFrom(...units);
/** Units that a text can name; what has no unit is never typed behind a number. */
const namedUnit = fc.constantFrom(...units.filter(({ code, label }) => label !== '' || code === '1'));
const reader: fc.Arbitrary<ReaderUnits> = fc.record({
  system: fc.constantFrom('metric', 'inch'),
  inches: fc.constantFrom('sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'),
});
/** Strings made of what quantities are made of, so that many of them almost parse. */
const nearly = fc
  .array(
    fc.constantFrom(
      '1',
      '9',
      '7/8',
      '250',
      '0',
      '.',
      ',',
      ' ',
      '-',
      '−',
      '+',
      '"',
      "'",
      '″',
      '½',
      '°',
      'C',
      'F',
      'mm',
      'in',
      'ft',
      'lb',
      'oz',
      'fl',
      '%',
      'e9',
      '/',
      '[in_i]',
      'K',
      'İ',
    ),
    { maxLength: 12 },
  )
  .map((parts) => parts.join(''));
const anyText = fc.oneof(fc.string({ unit: 'binary' }), fc.string(), nearly);

describe('any text', () => {
  test('is read to a finite number or refused in words; nothing throws', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...dimensions), (text, dimension) => {
        const reading = parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] });
        if (reading.ok) {
          expect(Number.isFinite(reading.value)).toBe(true);
          expect(unitByCode(reading.unit)?.dimension).toBe(dimension);
        } else {
          expect(reading.problem).not.toMatch(/undefined|NaN|[.]$/);
          expect(reading.wayOut).toMatch(/[.]$/);
        }
      }),
      { numRuns: 5000 },
    );
  });

  test('with a unit added means what it meant, and adding it twice changes nothing', () => {
    fc.assert(
      fc.property(anyText, anyUnit, (text, unit) => {
        const options = { dimension: unit.dimension, bareUnit: unit.code };
        const explicit = withUnit(text, unit.code);
        expect(withUnit(explicit, unit.code)).toBe(explicit);
        const before = parseQuantity(text, options);
        // Whatever a bare number would take, the explicit text no longer asks.
        const after = parseQuantity(explicit, { ...options, bareUnit: canonicalUnit[unit.dimension] });
        if (before.ok) expect(after).toEqual(before);
        else expect(explicit).toBe(text);
      }),
      { numRuns: 5000 },
    );
  });
});

describe('round trips', () => {
  test('a number typed with any unit’s label, code or name converts to that number of the unit', () => {
    fc.assert(
      fc.property(namedUnit, fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.nat(), (unit, thousandths, pick) => {
        const spellings = [unit.code, unit.label, ...unit.names].filter(
          (name) => unit.dimension !== 'number' && name !== '',
        );
        const spelling = spellings[pick % Math.max(1, spellings.length)] ?? '';
        const value = thousandths / 1000;
        const reading = parseQuantity(`${value} ${spelling}`, { dimension: unit.dimension, bareUnit: unit.code });
        expect(reading).toMatchObject({ ok: true, unit: unit.code });
        const canonical = convert(value, unit.code, canonicalUnit[unit.dimension]);
        expect(reading.ok && Math.abs(reading.value - canonical)).toBeLessThanOrEqual(
          1e-12 * Math.max(1, Math.abs(canonical)),
        );
      }),
    );
  });

  test('text, value, text: what is written reads back as itself', () => {
    fc.assert(
      fc.property(
        anyUnit,
        fc.integer({ min: -99_999, max: 99_999 }),
        fc.integer({ min: 1, max: 5 }),
        reader,
        (unit, scaled, digits, style) => {
          const text = formatQuantity(scaled / 100, unit.code, style, { digits });
          if (text.startsWith('under 1/')) {
            // Nothing is written that a form could read back; what it says is true.
            const bound = 25.4 / Number(/^under 1\/(\d+) in$/.exec(text)?.[1]);
            expect(Math.abs(convert(scaled / 100, unit.code, 'mm'))).toBeLessThanOrEqual(bound / 2 + 1e-9);
            return;
          }
          const reading = parseQuantity(text, { dimension: unit.dimension, bareUnit: canonicalUnit[unit.dimension] });
          expect(reading).toMatchObject({ ok: true });
          if (!reading.ok) return;
          // Written again with digits to spare it must mean the same, though perhaps in a larger unit (128 fl oz, 1 gal).
          const decimals = { ...style, inches: 'decimal' } as const;
          const again = parseQuantity(
            formatQuantity(reading.value, canonicalUnit[unit.dimension], decimals, { digits: 12 }),
            {
              dimension: unit.dimension,
              bareUnit: canonicalUnit[unit.dimension],
            },
          );
          expect(again.ok && Math.abs(again.value - reading.value)).toBeLessThanOrEqual(
            1e-10 * Math.max(1, Math.abs(reading.value)),
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('fractions of an inch lie within half a step, carry no sign, and words say on which side the truth lies', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), (value) => {
        const style = { system: 'inch', inches: 'thirty-seconds' } as const;
        const text = formatQuantity(value, 'mm', style, { digits: 6 });
        expect(text).toMatch(/^[\d /]+ in$/);
        const reading = parseQuantity(text, { dimension: 'length', bareUnit: 'mm' });
        const rest = value - (reading.ok ? reading.value : Number.NaN);
        expect(Math.abs(rest)).toBeLessThanOrEqual(25.4 / 64 + 1e-9);
        const closely = formatClosely(value, 'mm', style, { digits: 6 });
        if (closely === text) expect(Math.abs(rest)).toBeLessThan(0.001);
        else expect(closely).toBe(`a little ${rest > 0 ? 'over' : 'under'} ${text}`);
      }),
    );
  });
});
