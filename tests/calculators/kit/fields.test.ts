import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bareUnitFor, fieldMeta, quantityField, rangeWords } from '../../../src/calculators/kit/fields.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';

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

describe('the unit of a bare number', () => {
  const meta = fieldMeta(energy) as NonNullable<ReturnType<typeof fieldMeta>>;

  test('is written in the address as it was read', () => {
    expect(bareUnitFor(meta, '58.6', defaultUnits)).toBe('kJ/mol');
    expect(bareUnitFor(meta, '58600', defaultUnits)).toBe('J/mol');
  });

  const life = quantityField({
    label: 'Pot life',
    dimension: 'time',
    minimum: 300,
    maximum: 20 * 86_400,
    examples: ['30 min'],
  });

  test('of a time is never guessed', () => {
    expect(life.safeParse('30').error?.issues[0]?.message).toBe(
      '30 has no unit, and may be minutes, hours or days. Write it behind the number, such as 30 min.',
    );
    expect(life.safeParse(1800)).toMatchObject({ success: true, data: 1800 });
    expect(life.safeParse('30 min')).toMatchObject({ success: true, data: 1800 });
    expect(bareUnitFor(fieldMeta(life) as typeof meta, '30', defaultUnits)).toBeUndefined();
  });

  test('of a time whose label names the unit is read in it, and a program’s number in seconds', () => {
    const hours = quantityField({
      label: 'Hours of day',
      dimension: 'time',
      elseBare: 'h',
      minimum: 0,
      maximum: 23 * 3600,
      examples: ['10 h'],
    });
    expect(hours.safeParse('10')).toMatchObject({ success: true, data: 36_000 });
    expect(hours.safeParse('0')).toMatchObject({ success: true, data: 0 });
    expect(hours.safeParse('90 min')).toMatchObject({ success: true, data: 5400 });
    expect(hours.safeParse(7200)).toMatchObject({ success: true, data: 7200 });
    expect(bareUnitFor(fieldMeta(hours) as typeof meta, '10', defaultUnits)).toBe('h');
  });

  test('a time outside its range is told the range in minutes and days', () => {
    expect(rangeWords(fieldMeta(life) as typeof meta)).toBe('5 min to 20 d');
    expect(life.safeParse('10 s').error?.issues[0]?.message).toContain('5 min to 20 d');
  });
});
