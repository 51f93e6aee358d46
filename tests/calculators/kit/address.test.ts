import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import {
  activeSet,
  readAddress,
  startingInputs,
  withUnits,
  writeAddress,
} from '../../../src/calculators/kit/address.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { defaultUnits, type ReaderUnits } from '../../../src/model/quantity/index.ts';
import { addresses } from '../arbitrary.ts';
import { sample } from './sample.ts';

const calculator: Calculator = sample;
const inch: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };

describe('writing the address', () => {
  test.each([
    ['a bare number takes millimetres', { width: '250' }, defaultUnits, '?width=250+mm'],
    ['a bare number takes inches from a reader of inches', { width: '10' }, inch, '?width=10+in'],
    ['a text with a unit stays', { width: '9 7/8 in' }, defaultUnits, '?width=9+7%2F8+in'],
    ['a text that cannot be read stays', { width: 'wide' }, inch, '?width=wide'],
    ['a cleared field stays cleared', { width: '' }, inch, '?width='],
  ])('%s', (_, raw, units, expected) => {
    expect(writeAddress(calculator, raw, units)).toBe(expected);
  });

  test('what belongs to others stays', () => {
    const search = writeAddress(calculator, { width: '5 mm' }, defaultUnits, {
      search: '?a=1&other.width=2',
      prefix: 'me',
    });
    expect(search).toBe('?a=1&other.width=2&me.width=5+mm');
  });

  test('a name that is no longer given goes', () => {
    expect(writeAddress(calculator, { width: '5 mm' }, defaultUnits, { search: '?width=4+mm&paces=2' })).toBe(
      '?width=5+mm',
    );
  });
});

describe('inputs with their units', () => {
  test.each(calculators.map((each) => [each.id, each] as const))(
    'are what the address of %s says, so that a link answers what the form answered',
    (_, each) => {
      fc.assert(
        fc.property(addresses(each), fc.constantFrom(defaultUnits, inch), (raw, units) => {
          // Half a character of two, which no form and no address can hold, is replaced in an address.
          const whole = Object.fromEntries(
            Object.entries(raw).map(([name, text]) => [name, text.replace(/\p{Surrogate}/gu, '\uFFFD')]),
          );
          expect(readAddress(each, writeAddress(each, whole, units))).toEqual(withUnits(each, whole, units));
        }),
        { numRuns: 30 },
      );
    },
  );
});

describe('reading the address', () => {
  test('names of others are left out', () => {
    expect(readAddress(calculator, '?width=5&height=7&__proto__=1')).toEqual({ width: '5' });
  });

  test('of a repeated name the first counts', () => {
    expect(readAddress(calculator, '?width=5&width=6')).toEqual({ width: '5' });
  });

  test('address → inputs → address is the identity for any texts', () => {
    const texts = fc.record(
      { width: fc.string(), length: fc.string(), paces: fc.string(), face: fc.string() },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(defaultUnits, inch), fc.constantFrom('', 'me'), (raw, units, prefix) => {
        const search = writeAddress(calculator, raw, units, { prefix });
        const read = readAddress(calculator, search, prefix);
        expect(writeAddress(calculator, read, units, { prefix })).toBe(search);
        expect(Object.keys(read).sort()).toEqual(Object.keys(raw).sort());
      }),
    );
  });
});

describe('what a form starts from', () => {
  test('an address without inputs takes the worked case in the reader’s units', () => {
    expect(startingInputs(calculator, {}, inch, '?utm=1')).toEqual(sample.example.inch);
  });

  test('a short address stays as it was written, and the rest is the worked case in the reader’s units', () => {
    expect(startingInputs(calculator, {}, inch, '?width=5+mm')).toEqual({ ...sample.example.inch, width: '5 mm' });
  });

  test('a preset comes in the reader’s units where a fraction says the same', () => {
    const start = (width: string) => startingInputs(calculator, { width }, inch, '').width;
    expect(['300 mm', '24 cm', '25.4 mm', '3 mm', '9 7/8 in', 'wide', '7'].map(start)).toEqual([
      '11 13/16 in',
      '9 7/16 in',
      '1 in',
      '3 mm',
      '9 7/8 in',
      'wide',
      '7 mm',
    ]);
  });

  test.each([
    ['of an address', {}, '?width=300'],
    ['of a page', { width: '300' }, '?length=700+mm'],
  ])('a bare number %s is millimetres for a reader of inches as well', (_, preset, search) => {
    expect(['300 mm', '11 13/16 in']).toContain(startingInputs(calculator, preset, inch, search).width);
    expect(startingInputs(calculator, preset, defaultUnits, search).width).toBe('300');
  });

  test('a preset lies over the worked case and the address over the preset', () => {
    expect(startingInputs(calculator, { face: 'both', width: '7 mm' }, defaultUnits, '?width=8+mm')).toMatchObject({
      face: 'both',
      width: '8 mm',
      length: '600 mm',
    });
  });

  test('one set of alternatives turns the other out of the worked case', () => {
    const raw = startingInputs(calculator, {}, defaultUnits, '?paces=3+%25');
    expect(raw).toEqual({ width: '300 mm', face: 'one', paces: '3 %' });
    expect(activeSet(calculator.alternatives?.[0] as never, raw)).toBe(1);
  });

  test('a cleared set is not filled again', () => {
    expect(startingInputs(calculator, {}, defaultUnits, '?length=')).toEqual({
      width: '300 mm',
      face: 'one',
      length: '',
    });
  });
});
