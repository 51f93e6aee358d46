import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amount,
  canonicalUnit,
  convert,
  defaultUnits,
  formatBand,
  formatClosely,
  formatNumber,
  formatQuantity,
  inReaderUnits,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
  shownAtMost,
  unitLabel,
  units,
} from '../../../src/model/quantity/index.ts';

const inches = (size: ReaderUnits['inches']): ReaderUnits => ({ system: 'inch', inches: size });

describe('inches, as a shop says them', () => {
  test.each([
    [250.825, 'thirty-seconds', '9 7/8 in'],
    [250.5, 'thirty-seconds', '9 7/8 in'],
    [251, 'thirty-seconds', '9 7/8 in'],
    [250, 'thirty-seconds', '9 27/32 in'],
    [250, 'sixteenths', '9 13/16 in'],
    [250, 'decimal', '9.84 in'],
    [3.7, 'thirty-seconds', '5/32 in'],
    [3.7, 'sixty-fourths', '9/64 in'],
    [-6.35, 'thirty-seconds', '−1/4 in'],
    [0, 'thirty-seconds', '0 in'],
    [25.4, 'thirty-seconds', '1 in'],
    [0.2, 'thirty-seconds', '1/64 in'],
    [-0.2, 'thirty-seconds', '−1/64 in'],
    [0.19, 'thirty-seconds', 'under 1/64 in'],
    [-0.19, 'thirty-seconds', 'under 1/64 in'],
    [0.5, 'thirty-seconds', '1/64 in'],
    [0.8, 'thirty-seconds', '1/32 in'],
    [0.8, 'sixteenths', '1/16 in'],
    [0.5, 'sixteenths', '1/64 in'],
    [0.15, 'sixty-fourths', 'under 1/64 in'],
    [0.2, 'decimal', '0.00787 in'],
  ] as const)('%d mm in %s is %s', (value, size, expected) => {
    expect(formatQuantity(value, 'mm', inches(size))).toBe(expected);
  });

  test('a fraction is never finer than the figure deserves', () => {
    // 1200 mm to three digits is good to about 10 mm, which is no place for a thirty-second.
    expect(formatQuantity(1200, 'mm', inches('thirty-seconds'))).toBe('47 1/4 in');
    expect(formatQuantity(1200, 'mm', inches('thirty-seconds'), { digits: 4 })).toBe('47 1/4 in');
    expect(formatQuantity(250, 'mm', inches('sixty-fourths'), { digits: 1 })).toBe('10 in');
  });
});

describe('other quantities', () => {
  test.each([
    [250, 'mm', 'metric', '250 mm'],
    [9.875, '[in_i]', 'metric', '251 mm'],
    [21.11, 'Cel', 'metric', '21.1 °C'],
    [21.11, 'Cel', 'inch', '70 °F'],
    [0.123, 'Cel', 'metric', '0.1 °C'],
    [0, 'Cel', 'inch', '32 °F'],
    [5.678, 'Cel', 'metric', '5.7 °C'],
    [-5, 'Cel', 'metric', '−5 °C'],
    [5, 'K', 'inch', '9 °F'],
    [8.04, '%', 'inch', '8.04 %'],
    [45, 'deg', 'inch', '45°'],
    [850, 'g', 'metric', '850 g'],
    [1200, 'g', 'metric', '1.2 kg'],
    [1200, 'g', 'inch', '2.65 lb'],
    [2000, 'mL', 'metric', '2 l'],
    [250, 'mL', 'inch', '8.45 fl oz'],
    [6400, 'N', 'inch', '1440 lbf'],
    [676, 'kg/m3', 'inch', '42.2 lb/ft³'],
    [5400, 's', 'metric', '1.5 h'],
    [86_400, 's', 'metric', '24 h'],
    [129_600, 's', 'metric', '36 h'],
    [259_200, 's', 'metric', '3 d'],
    [2, 'g/kg', 'inch', '14 gr/lb'],
    [0.00245, '1', 'metric', '0.00245'],
    [12, 'lm', 'metric', '12 lm'],
    [Number.NaN, 'mm', 'metric', 'not known'],
    [Number.POSITIVE_INFINITY, 'mm', 'inch', 'not known'],
  ] as const)('%d %s for a %s reader is %s', (value, unit, system, expected) => {
    expect(formatQuantity(value, unit, { system, inches: 'thirty-seconds' })).toBe(expected);
  });

  test('metric unless told otherwise', () => {
    expect(formatQuantity(250, 'mm')).toBe(formatQuantity(250, 'mm', defaultUnits));
  });

  test.each([
    [1234.5, 3, '1230'],
    [0.000123456, 3, '0.000123'],
    [70.04, 3, '70'],
    [99.96, 3, '100'],
    [-1.5, 2, '−1.5'],
    [0, 3, '0'],
    [1e21, 3, '1000000000000000000000'],
  ] as const)('%d to %d digits is %s', (value, digits, expected) => {
    expect(formatNumber(value, digits)).toBe(expected);
  });
});

describe('the table of units', () => {
  test.each([
    [1, '[in_i]', 'mm', 25.4],
    [1, '[ft_i]', '[in_i]', 12],
    [1, '[lb_av]', '[oz_av]', 16],
    [1, '[lb_av]', 'g', 453.59237],
    [1, '[gal_us]', '[foz_us]', 128],
    [231, '[cin_i]', '[gal_us]', 1],
    [12, '[bf_i]', '[cft_i]', 1],
    [1, '[lbf_av]', 'N', 4.4482216152605],
    [212, '[degF]', 'Cel', 100],
    [-40, 'Cel', '[degF]', -40],
    [1, 'g/cm3', 'kg/m3', 1000],
    [7, '[gr]/[lb_av]', 'g/kg', 1],
  ])('%d %s in %s is %d', (value, from, to, expected) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, 9);
  });

  test('codes are unique, and each converts to and from the canonical unit', () => {
    expect(new Set(units.map((unit) => unit.code)).size).toBe(units.length);
    for (const unit of units) {
      const canonical = convert(2, unit.code, readerUnit(unit.dimension, defaultUnits));
      expect(convert(canonical, readerUnit(unit.dimension, defaultUnits), unit.code)).toBeCloseTo(2, 9);
    }
  });

  test('a mix of dimensions or an unknown code is a mistake in the program', () => {
    expect(() => convert(1, 'mm', 'g')).toThrow('mm measures length, g measures mass');
    expect(() => convert(1, 'mm', 'cubit')).toThrow('“cubit” is not a unit code');
  });

  test('labels', () => {
    expect(['mm', '[in_i]', 'Cel', '%', 'N', '[lbf_av]', '1', 'other'].map(unitLabel)).toEqual([
      'mm',
      'in',
      '°C',
      '%',
      'N',
      'lbf',
      '',
      'other',
    ]);
  });
});

describe('units that the trade counts in', () => {
  const inch: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };
  test.each([
    [36.7, '[bf_i]', '36.7 bd ft'],
    [0.087, 'm3', '0.087 m³'],
    [125, 'um', '125 µm'],
  ])('%d %s is written so for every reader', (value, unit, text) => {
    expect(formatQuantity(value, unit)).toBe(text);
    expect(formatQuantity(value, unit, inch)).toBe(text);
  });
});

test.each([
  [2, 'd', '2 d'],
  [0, 'd', '0 d'],
  [0.5, 'd', '0.5 d'],
  [1, 'mo', '1 month'],
  [6, 'mo', '6 months'],
])('%d %s, counted in days or months, stays in them: %s', (value, unit, words) => {
  expect(formatQuantity(value, unit)).toBe(words);
});

test('a quantity that is kept is metric for every reader, in the larger unit where it reaches one', () => {
  const inch: ReaderUnits = { system: 'inch', inches: 'thirty-seconds' };
  expect(formatQuantity(666, 'g', inch)).toBe('1.47 lb');
  expect(formatQuantity(666, 'g', inch, { kept: true })).toBe('666 g');
  expect(formatQuantity(1332, 'g', inch, { kept: true })).toBe('1.33 kg');
  expect(formatQuantity(574, 'mL', inch, { kept: true })).toBe('574 ml');
});

describe('a note in which the remainder matters', () => {
  test.each([
    [8, 'a little over 5/16 in'],
    [250, 'a little under 9 27/32 in'],
    [254, '10 in'],
    [0, '0 in'],
  ])('%d mm is %s', (value, text) => {
    expect(formatClosely(value, 'mm', inches('thirty-seconds'))).toBe(text);
  });

  test('says nothing more where nothing is lost', () => {
    expect(formatClosely(250, 'mm')).toBe('250 mm');
    expect(formatClosely(250, 'mm', inches('decimal'))).toBe('9.84 in');
  });
});

test.each([
  [59.7 * 60, 's', defaultUnits, 2, '1 h'],
  [71.8 * 3600, 's', defaultUnits, 2, '3 d'],
  [999.8, 'g', defaultUnits, 3, '1 kg'],
  [450, 'g', inches('thirty-seconds'), 1, '1 lb'],
  [3760, 'mL', inches('thirty-seconds'), 2, '1 gal'],
] as const)('%d %s that rounds up to a whole larger unit is written as one', (value, unit, reader, digits, text) => {
  expect(formatQuantity(value, unit, reader, { digits })).toBe(text);
});

test('no band reads backwards or leaves its value out, in any unit and to any number of digits', () => {
  const readers = [defaultUnits, inches('decimal'), inches('thirty-seconds')];
  const share = fc.double({ min: 0, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.entries(canonicalUnit)),
      fc.double({ min: -2, max: 7, noNaN: true }),
      fc.tuple(share, share),
      fc.constantFrom(...readers),
      fc.integer({ min: 1, max: 3 }),
      ([dimension, unit], power, [under, over], reader, digits) => {
        const value = 10 ** power;
        const band = formatBand(value, { low: value * (1 - under), high: value * (1 + over) }, unit, reader, {
          digits,
        });
        if (band === undefined) return;
        const size = (text: string) => {
          const read = parseQuantity(text.replace(/^under /, ''), {
            dimension: dimension as keyof typeof canonicalUnit,
            bareUnit: unit,
          });
          if (!read.ok) throw new Error(`“${text}”: ${read.problem}`);
          return read.value;
        };
        const [low, high = low] = band.split(' to ').map(size) as [number, number?];
        const shown = size(formatQuantity(value, unit, reader, { digits }));
        expect(low).toBeLessThanOrEqual(shown * (1 + 1e-12));
        expect(high).toBeGreaterThanOrEqual(shown * (1 - 1e-12));
      },
    ),
    { numRuns: 2000 },
  );
});

describe('a band', () => {
  const inch = inches('thirty-seconds');
  test.each([
    ['both ends', 6.8, 6.24, 7.1, 'mm', defaultUnits, 2, '6.2 mm to 7.1 mm'],
    ['ends that read the same, once', 55_000, 50_200, 50_500, 's', defaultUnits, 2, '14 h'],
    ['ends that read as the figure does, not at all', 50_400, 50_200, 50_500, 's', defaultUnits, 2, undefined],
    ['no digit beyond the last of the figure', 1234, 987.6, 1456, 'N', defaultUnits, 2, '1000 N to 1500 N'],
    // Its last digit is an hour and not ten thousand seconds, and a hundredth of an inch and not a millimetre.
    ['an end to the hour where the value is', 101_931, 98_121, 105_675, 's', defaultUnits, 2, '27 h to 29 h'],
    ['an end to the value’s place in another unit', 252_748, 238_321, 265_038, 's', defaultUnits, 2, '66 h to 3.1 d'],
    ['decimal inches to one place', 101, 95, 106, 'mm', inches('decimal'), 3, '3.74 in to 4.17 in'],
    ['a small end keeps one digit', 10, 2.34, 41, '%', defaultUnits, 1, '2 % to 40 %'],
    ['an end that is nothing', 3, 0, 5, 'mm', defaultUnits, 2, '0 mm to 5 mm'],
    ['fractions', 8, 7.1, 9.6, 'mm', inch, 2, '9/32 in to 3/8 in'],
    ['fractions too small to be read', 0.15, 0.1, 0.19, 'mm', inch, 2, undefined],
    ['an end too small to be read', 1.5, 0.1, 2.4, 'mm', inch, 2, 'under 1/64 in to 3/32 in'],
  ] as const)('shows %s', (_, value, low, high, unit, reader, digits, text) => {
    expect(formatBand(value, { low, high }, unit, reader, { digits })).toBe(text);
  });
});

test('a whole temperature that was typed comes back whole, to as few digits as two', () => {
  const inch = inches('thirty-seconds');
  for (let degrees = -20; degrees <= 199; degrees += 1) {
    const celsius = convert(degrees, '[degF]', 'Cel');
    const said = `${degrees} °F`.replace('-', '−');
    expect(formatQuantity(celsius, 'Cel', inch)).toBe(said);
    expect(inReaderUnits(amount(celsius, 'Cel'), inch)).toBe(said);
    if (Math.abs(celsius) >= 1) expect(formatQuantity(celsius, 'Cel', inch, { digits: 2 })).toBe(said);
  }
});

test.each([
  [2.5, '0.09 oz'],
  [0.2, '0.007 oz'],
  [14, '0.49 oz'],
  [100, '3.53 oz'],
])('%s g as ounces is %s: no scale of a shop shows more', (grams, text) => {
  expect(formatQuantity(grams, 'g', { ...defaultUnits, system: 'inch' })).toBe(text);
});

test.each([
  [14_220, '3.9 h'],
  [14_400, '4 h'],
  [3582, '59 min'],
  [7653, '2.1 h'],
  [59, '59 s'],
])('a limit of %s s is said to be %s and never more', (seconds, text) => {
  expect(formatQuantity(shownAtMost(seconds, 's', 2), 's', defaultUnits, { digits: 2 })).toBe(text);
});

test('a limit is never rounded up, nor down by more than its last digit', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (seconds) => {
      const said = shownAtMost(seconds, 's', 2);
      expect(said).toBeLessThanOrEqual(seconds * (1 + 1e-8));
      expect(said).toBeGreaterThan(0.9 * seconds);
    }),
  );
});
