import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amount,
  asTyped,
  atLeast,
  atMost,
  defaultUnits,
  formatQuantity,
  holdsAmount,
  inReaderUnits,
  ofEach,
  parseQuantity,
  type ReaderUnits,
  sumOf,
  toldApart,
  wordsInReaderUnits,
} from '../../../src/model/quantity/index.ts';

const inches = { system: 'inch', inches: 'thirty-seconds' } as const;

describe('a quantity in a sentence', () => {
  test('is written in the units of whoever reads it', () => {
    const text = `Moves ${amount(6.8, 'mm', 2)} over the year: leave ${amount(4, 'mm', 1)} each side`;
    expect(inReaderUnits(text, defaultUnits)).toBe('Moves 6.8 mm over the year: leave 4 mm each side');
    expect(inReaderUnits(text, inches)).toBe('Moves 9/32 in over the year: leave 5/32 in each side');
  });

  test('stays in grams where it must be weighed in grams', () => {
    expect(inReaderUnits(amount(46.2, 'g', 3, true), inches)).toBe('46.2 g');
  });

  test('names nothing that nobody can measure', () => {
    const said = (value: number, unit: string, reader = defaultUnits as typeof defaultUnits) =>
      inReaderUnits(amount(value, unit, 2), reader);
    expect([0, 0.0099, 0.01, -0.003].map((value) => said(value, 'mm'))).toEqual([
      '0 mm',
      'under 0.01 mm',
      '0.01 mm',
      'under 0.01 mm',
    ]);
    expect(said(0.19, 'mm', inches)).toBe('under 1/64 in');
    expect([4.5e-101, 0.049, 0.05].map((value) => said(value, '%'))).toEqual([
      'under 0.05 %',
      'under 0.05 %',
      '0.05 %',
    ]);
  });

  test('never rounds up what must not be passed', () => {
    const said = (mm: number, reader: typeof defaultUnits | typeof inches = defaultUnits) =>
      inReaderUnits(atMost(mm, 'mm'), reader);
    expect([3.63, 10, 9.99, 14.2857].map((mm) => said(mm))).toEqual(['3.6 mm', '10 mm', '9.9 mm', '14 mm']);
    // The reader's own fraction where it loses little: 14.8 mm are 37.3 64ths, 18 whole 32nds.
    expect(said(14.8, inches)).toBe('9/16 in');
    expect(said(14.8, { ...inches, inches: 'sixty-fourths' })).toBe('37/64 in');
    expect([3.63, 25.4, 6.5].map((mm) => said(mm, inches))).toEqual(['9/64 in', '1 in', '1/4 in']);
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), (mm) => {
        const read = parseQuantity(said(mm, inches), { dimension: 'length', bareUnit: 'mm' });
        expect(read.ok && read.value).toBeLessThanOrEqual(mm + 1e-6);
        const metric = parseQuantity(said(mm), { dimension: 'length', bareUnit: 'mm' });
        expect(metric.ok && metric.value).toBeLessThanOrEqual(mm + 1e-6);
      }),
    );
  });

  const readers: readonly ReaderUnits[] = [
    defaultUnits,
    ...(['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const).map((style) => ({
      system: 'inch' as const,
      inches: style,
    })),
  ];

  test('a length reads the same in a sentence and as a figure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3000, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom(...readers),
        (mm, digits, reader) => {
          expect(inReaderUnits(amount(mm, 'mm', digits), reader)).toBe(formatQuantity(mm, 'mm', reader, { digits }));
        },
      ),
    );
  });

  test('a limit reads the same in a sentence and as a figure, and may be typed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), fc.constantFrom(...readers), (mm, reader) => {
        const said = inReaderUnits(atMost(mm, 'mm'), reader);
        expect(said).toBe(formatQuantity(mm, 'mm', reader, { digits: 2, limit: true }));
        const read = parseQuantity(said, { dimension: 'length', bareUnit: 'mm' });
        expect(read.ok && read.value).toBeLessThanOrEqual(mm + 1e-6);
      }),
    );
  });

  describe('layers of one depth', () => {
    const size = (said: string) => {
      const read = parseQuantity(said.replace(/^(about|a little under) /, ''), { dimension: 'length', bareUnit: 'mm' });
      return read.ok ? read.value : Number.NaN;
    };

    test.each([
      ['45 mm in three', 45, 3, 18, '15 mm', '19/32 in'],
      ['1 25/32 in in three', 45.24375, 3, 18, 'about 15.1 mm', '19/32 in'],
      ['40 mm in three', 40, 3, 19, 'about 13.3 mm', 'about 17/32 in'],
      ['50 mm in three', 50, 3, 19, 'about 16.7 mm', '21/32 in'],
      ['25 mm in two', 25, 2, 19, '12.5 mm', 'about 1/2 in'],
      ['at the limit, which a rule in inches does not show', 57, 3, 19, '19 mm', 'a little under 3/4 in'],
      ['without a limit', 40, 3, undefined, 'about 13.3 mm', 'about 17/32 in'],
    ] as const)('%s', (_, depth, count, most, metric, inch) => {
      expect(inReaderUnits(ofEach(depth, count, most), defaultUnits)).toBe(metric);
      expect(inReaderUnits(ofEach(depth, count, most), inches)).toBe(inch);
    });

    test('add up to the depth as it is written or are said to do so about, and none is more than is allowed', () => {
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 400, noNaN: true }),
          fc.integer({ min: 2, max: 60 }),
          fc.double({ min: 1, max: 1.5, noNaN: true }),
          fc.constantFrom(...readers),
          (depth, count, spare, reader) => {
            const most = (depth / count) * spare;
            const said = inReaderUnits(ofEach(depth, count, most), reader);
            if (depth / count < 0.5) return;
            if (!said.startsWith('a little under')) expect(size(said)).toBeLessThanOrEqual(most * (1 + 1e-9));
            if (!/^(?:about|a little under) /.test(said))
              expect(count * size(said)).toBeCloseTo(size(inReaderUnits(amount(depth, 'mm', 3), reader)), 3);
          },
        ),
      );
    });
  });

  test('a sum is that of its parts as they are written, or said to be about so much', () => {
    expect(inReaderUnits(sumOf([6, 0.6]), defaultUnits)).toBe('6.6 mm');
    expect(inReaderUnits(sumOf([6, 0.6]), inches)).toBe('about 1/4 in');
    expect(inReaderUnits(`Do not pour ${sumOf([6, 0.6])} in one go`, inches)).toBe(
      'Do not pour about 1/4 inch in one go',
    );
    expect(inReaderUnits(sumOf([19.05, 0.79375]), inches)).toBe('25/32 in');
    expect(sumOf([6])).toBe(amount(6, 'mm', 2));
    const size = (said: string) => {
      const read = parseQuantity(said, { dimension: 'length', bareUnit: 'mm' });
      return read.ok ? read.value : Number.NaN;
    };
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 90, noNaN: true }), { minLength: 2, maxLength: 4 }),
        fc.constantFrom(...readers),
        (parts, reader) => {
          const said = inReaderUnits(sumOf(parts), reader);
          if (said.startsWith('about ')) return;
          const added = parts.map((mm) => size(inReaderUnits(amount(mm, 'mm', 2), reader)));
          expect(size(said)).toBeCloseTo(
            added.reduce((sum, part) => sum + part, 0),
            3,
          );
        },
      ),
    );
  });

  test('two lengths that lie near are told apart, each in the reader’s own unit', () => {
    const both = (one: number, other: number, reader: ReaderUnits) =>
      [one, other].map((mm) => inReaderUnits(toldApart(one, other)(mm), reader));
    expect(both(20.6375, 19, inches)).toEqual(['13/16 in', '3/4 in']);
    expect(both(3.175, 3, inches)).toEqual(['0.125 in', '0.118 in']);
    expect(both(3.175, 3, defaultUnits)).toEqual(['3.17 mm', '3 mm']);
    expect(both(50.8, 19, inches)).toEqual(['2 in', '3/4 in']);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 400, noNaN: true }),
        fc.double({ min: 1.002, max: 1.2, noNaN: true }),
        fc.constantFrom(...readers),
        (least, share, reader) => {
          const [one, other] = both(least * share, least, reader) as [string, string];
          expect(one).not.toBe(other);
          for (const said of [one, other]) expect(said).toMatch(reader.system === 'metric' ? / mm$/ : / in$/);
        },
      ),
    );
  });

  test('before the word “in” an inch is a word', () => {
    const said = (mm: number, reader: ReaderUnits = inches) =>
      inReaderUnits(`Do not pour ${amount(mm, 'mm', 2)} in one go.`, reader);
    expect([20.6, 25.4, 50.8, 0.4].map((mm) => said(mm))).toEqual([
      'Do not pour 13/16 inch in one go.',
      'Do not pour 1 inch in one go.',
      'Do not pour 2 inches in one go.',
      'Do not pour 1/64 inch in one go.',
    ]);
    expect(said(20.6, { ...inches, inches: 'decimal' })).toBe('Do not pour 0.81 inches in one go.');
    expect(said(20.6, defaultUnits)).toBe('Do not pour 21 mm in one go.');
    expect(inReaderUnits(`${amount(25.4, 'mm')} inside, ${amount(25.4, 'mm')}`, inches)).toBe('1 in inside, 1 in');
    for (const written of ['13/16 inch', '2 inches', '0.81 inches'])
      expect(parseQuantity(written, { dimension: 'length', bareUnit: 'mm' })).toMatchObject({
        ok: true,
        unit: '[in_i]',
      });
  });

  test('an example is given to each reader as they would type it', () => {
    const text = `Give it, such as ${asTyped({ metric: '300 mm', inch: '12 in' })}.`;
    expect(inReaderUnits(text, defaultUnits)).toBe('Give it, such as 300 mm.');
    expect(inReaderUnits(text, inches)).toBe('Give it, such as 12 in.');
    expect(holdsAmount(text)).toBe(true);
    expect(asTyped({ metric: '50 %', inch: '50 %' })).toBe('50 %');
  });

  test('what must be reached is rounded up in whichever unit it is read', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), (mm) => {
        for (const reader of [defaultUnits, inches, { ...inches, inches: 'decimal' } as const]) {
          const written = inReaderUnits(atLeast(mm, 'mm', 4), reader);
          const read = parseQuantity(written, { dimension: 'length', bareUnit: 'mm' });
          expect(read.ok && read.value).toBeGreaterThanOrEqual(mm - 1e-6);
        }
      }),
    );
  });

  test('reads a thermometer to a tenth', () => {
    expect([21.04, 4.9e-101, -3.96].map((value) => inReaderUnits(amount(value, 'Cel'), defaultUnits))).toEqual([
      '21 °C',
      '0 °C',
      '−4 °C',
    ]);
  });

  test('leaves text without a mark alone, brackets included', () => {
    for (const text of ['', '20 mm', '⟦', '⟦20 mm⟧', 'a ⟦b c d⟧']) expect(inReaderUnits(text, inches)).toBe(text);
  });

  test('is found in lists and objects, and what holds none is given back itself', () => {
    const plain = { text: 'none', rows: [['a', 1, null]] };
    expect(wordsInReaderUnits(plain, inches)).toBe(plain);
    expect(wordsInReaderUnits({ ...plain, text: amount(25.4, 'mm') }, inches)).toEqual({ ...plain, text: '1 in' });
  });

  test('any finite value in any unit is written, with no mark left', () => {
    fc.assert(
      fc.property(
        fc
          .double({ noNaN: true, noDefaultInfinity: true })
          .filter((value) => (Math.abs(value) >= 1 && Math.abs(value) < 1e9) || value === 0),
        fc.constantFrom('mm', 'g', '%', 's', 'mL', '[bf_i]'),
        fc.integer({ min: 1, max: 9 }),
        (value, unit, digits) => {
          const text = inReaderUnits(`a ${amount(value, unit, digits)} b`, defaultUnits);
          expect(holdsAmount(text)).toBe(false);
          expect(text).toBe(`a ${formatQuantity(value, unit, defaultUnits, { digits })} b`);
        },
      ),
    );
  });
});
