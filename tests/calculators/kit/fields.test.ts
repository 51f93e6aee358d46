import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantityField } from '../../../src/calculators/kit/fields.ts';

const energy = quantityField({
  label: 'Activation energy',
  dimension: 'energy-per-amount',
  minimum: 10_000,
  maximum: 200_000,
  elseBare: 'kJ/mol',
  examples: ['58.6 kJ/mol'],
});

describe('a bare number that may be in one of two units', () => {
  test.each([
    ['58600', 58_600],
    ['58.6', 58_600],
    ['58.6 kJ/mol', 58_600],
    ['200', 200_000],
    ['10000', 10_000],
  ])('%s is %s J/mol', (text, value) => {
    expect(energy.safeParse(text)).toMatchObject({ success: true, data: value });
  });

  test.each(['5', '500', '9999', '200001', '-58.6', '58.6 mJ'])('%s is refused', (text) => {
    expect(energy.safeParse(text).success).toBe(false);
  });

  test('a unit that was typed is never read as another', () => {
    expect(energy.safeParse('58.6 J/mol').success).toBe(false);
  });

  test('no number can be meant in both units', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (number) => {
        const read = energy.safeParse(number);
        if (read.success) expect([number, number * 1000].some((each) => Math.abs(each - read.data) < 1e-6)).toBe(true);
      }),
    );
  });
});
