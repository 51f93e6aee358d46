import { describe, expect, test } from 'vitest';
import { canonicalUnit, type Dimension, parseQuantity, withUnit } from '../../../src/model/quantity/index.ts';

const length = { dimension: 'length', bareUnit: 'mm' } as const;

describe('what is read', () => {
  const rows: readonly (readonly [
    text: string,
    dimension: Dimension,
    bareUnit: string,
    value: number,
    unit: string,
  ])[] = [
    ['250 mm', 'length', 'mm', 250, 'mm'],
    ['250mm', 'length', '[in_i]', 250, 'mm'],
    ['25 cm', 'length', 'mm', 250, 'cm'],
    ['0.25 metres', 'length', 'mm', 250, 'm'],
    ['250 millimeters', 'length', 'mm', 250, 'mm'],
    ['9 7/8 in', 'length', 'mm', 250.825, '[in_i]'],
    ['9-7/8"', 'length', 'mm', 250.825, '[in_i]'],
    ['9 7/8″', 'length', 'mm', 250.825, '[in_i]'],
    ['9 7/8”', 'length', 'mm', 250.825, '[in_i]'],
    ['9⅞ in', 'length', 'mm', 250.825, '[in_i]'],
    ['⅞ inch', 'length', 'mm', 22.225, '[in_i]'],
    ['7⁄8 in', 'length', 'mm', 22.225, '[in_i]'],
    ['9 7/8 in −', 'length', 'mm', 250.825, '[in_i]'],
    ['10.25 in', 'length', 'mm', 260.35, '[in_i]'],
    ['10.25 Inches', 'length', 'mm', 260.35, '[in_i]'],
    ['3 [in_i]', 'length', 'mm', 76.2, '[in_i]'],
    ['1\' 3 1/2"', 'length', 'mm', 393.7, '[in_i]'],
    ['1′ 3½″', 'length', 'mm', 393.7, '[in_i]'],
    ["1' 3", 'length', 'mm', 381, '[in_i]'],
    ['1 ft 3.5 in', 'length', 'mm', 393.7, '[in_i]'],
    ['2 feet', 'length', 'mm', 609.6, '[ft_i]'],
    ['6ft3 1/2', 'length', 'mm', 1917.7, '[in_i]'],
    ['6ft3', 'length', '[in_i]', 1905, '[in_i]'],
    ['6ft2in', 'length', 'mm', 1879.6, '[in_i]'],
    ['7 1/2', 'percent', '%', 7.5, '%'],
    ['2,5 mm', 'length', 'mm', 2.5, 'mm'],
    ['0,125 in', 'length', 'mm', 3.175, '[in_i]'],
    ['1,2345 mm', 'length', 'mm', 1.2345, 'mm'],
    ['1,250.5 mm', 'length', 'mm', 1250.5, 'mm'],
    ['1.250,5 mm', 'length', 'mm', 1250.5, 'mm'],
    ['1,250,000 mm', 'length', 'mm', 1_250_000, 'mm'],
    ['.5 mm', 'length', 'mm', 0.5, 'mm'],
    ['5e-3 m', 'length', 'mm', 5, 'm'],
    ['12', 'length', 'mm', 12, 'mm'],
    ['12', 'length', '[in_i]', 304.8, '[in_i]'],
    ['9 7/8', 'length', '[in_i]', 250.825, '[in_i]'],
    ['+12', 'length', 'mm', 12, 'mm'],
    ['\u00a0250\u2009mm ', 'length', 'mm', 250, 'mm'],
    ['70 °F', 'temperature', 'Cel', 21.111111111111, '[degF]'],
    ['70 F', 'temperature', 'Cel', 21.111111111111, '[degF]'],
    ['20 Cel', 'temperature', '[degF]', 20, 'Cel'],
    ['20℃', 'temperature', '[degF]', 20, 'Cel'],
    ['-5 °C', 'temperature', 'Cel', -5, 'Cel'],
    ['−5 °C', 'temperature', 'Cel', -5, 'Cel'],
    ['-40 degF', 'temperature', 'Cel', -40, '[degF]'],
    ['9 °F', 'temperature-difference', 'K', 5, '[degR]'],
    ['5 °C', 'temperature-difference', 'K', 5, 'K'],
    ['55 %', 'percent', '%', 55, '%'],
    ['55%', 'percent', '%', 55, '%'],
    ['55 per cent', 'percent', '%', 55, '%'],
    ['45°', 'angle', 'deg', 45, 'deg'],
    ['1.10 g/ml', 'liquid-density', 'g/mL', 1.1, 'g/mL'],
    ['1100 kg/m³', 'liquid-density', 'g/mL', 1.1, 'g/L'],
    ['9.18 lb/gal', 'liquid-density', 'g/mL', (9.18 * 453.59237) / 3785.411784, '[lb_av]/[gal_us]'],
    ['600 cP', 'viscosity', 'mPa.s', 600, 'mPa.s'],
    ['0.6 Pa·s', 'viscosity', 'mPa.s', 600, 'Pa.s'],
    ['40 mN/m', 'surface-tension', 'N/m', 0.04, 'mN/m'],
    ['10 m²/l', 'spreading-rate', 'm2/L', 10, 'm2/L'],
    ['400 sq ft/gal', 'spreading-rate', 'm2/L', (400 * 0.09290304) / 3.785411784, '[sft_i]/[gal_us]'],
    ['150 g/m2', 'mass-per-area', 'g/m2', 150, 'g/m2'],
    ['58.6 kJ/mol', 'energy-per-amount', 'J/mol', 58_600, 'kJ/mol'],
    ['400 J/g', 'energy-per-mass', 'J/kg', 400_000, 'J/g'],
    ['2000 J/(kg·K)', 'heat-capacity', 'J/(kg.K)', 2000, 'J/(kg.K)'],
    ['0.18 W/mK', 'thermal-conductivity', 'W/(m.K)', 0.18, 'W/(m.K)'],
    ['10 W/m²K', 'film-coefficient', 'W/(m2.K)', 10, 'W/(m2.K)'],
    ['6.2e-4 1/s', 'rate', '/s', 6.2e-4, '/s'],
    ['8.7e7 s/m', 'coating-resistance', 's/m', 8.7e7, 's/m'],
    ['3 fl oz', 'volume', 'mL', 88.7205886875, '[foz_us]'],
    ['250 ml', 'volume', 'mL', 250, 'mL'],
    ['2 bd ft', 'volume', 'mL', 4719.474432, '[bf_i]'],
    ['2 lb 3 oz', 'mass', 'g', 992.23330937, '[oz_av]'],
    ['1450 lbf', 'force', 'N', 6449.9213421277, '[lbf_av]'],
    ['44 lb/ft³', 'density', 'kg/m3', 704.81238845425, '[lb_av]/[cft_i]'],
    ['1 h 30 min', 'time', 's', 5400, 'min'],
    ['14 gr/lb', 'moisture-gain', 'g/kg', 2, '[gr]/[lb_av]'],
    ['1.5 kW', 'power', 'kW', 1.5, 'kW'],
    ['750 watts', 'power', 'kW', 0.75, 'W'],
    ['2.4 kWh', 'energy', 'kW.h', 2.4, 'kW.h'],
    ['500 Wh', 'energy', 'kW.h', 0.5, 'W.h'],
    ['12', 'number', '1', 12, '1'],
  ];
  test.each(rows)('%s as %s (bare number in %s) is %d', (text, dimension, bareUnit, value, unit) => {
    const reading = parseQuantity(text, { dimension, bareUnit });
    expect(reading).toMatchObject({ ok: true, unit });
    expect(reading.ok && reading.value).toBeCloseTo(value, 8);
  });

  test('typed digits come back without the noise of binary arithmetic', () => {
    expect(parseQuantity('10.25 in', length)).toEqual({ ok: true, value: 260.35, unit: '[in_i]' });
    expect(parseQuantity('-0', length)).toEqual({ ok: true, value: 0, unit: 'mm' });
  });
});

describe('a degree sign that names no scale', () => {
  test.each(['62°', '62 °', '62 degrees', '62 deg'])('%s is a bare number, and gets the unit of one', (text) => {
    expect(parseQuantity(text, { dimension: 'temperature', bareUnit: 'Cel' })).toEqual({
      ok: true,
      value: 62,
      unit: 'Cel',
      noScale: true,
    });
    expect(withUnit(text, '[degF]')).toBe('62 °F');
    expect(withUnit(text, 'Cel')).toBe('62 °C');
  });

  test('an angle is an angle, and a temperature with its scale has it', () => {
    expect(parseQuantity('62°', { dimension: 'angle', bareUnit: 'deg' })).toEqual({ ok: true, value: 62, unit: 'deg' });
    expect(parseQuantity('20 °C', { dimension: 'temperature', bareUnit: '[degF]' })).toEqual({
      ok: true,
      value: 20,
      unit: 'Cel',
    });
    expect(withUnit('62', 'deg')).toBe('62°');
  });
});

describe('what is refused, with what was read and a way out', () => {
  test.each([
    ['', 'length', 'Nothing was entered where a length is needed', 'Write a length such as 250 mm or 9 7/8 in.'],
    ['wide', 'length', '“wide” is not a length', 'Write a length such as 250 mm or 9 7/8 in.'],
    ['5 cubits', 'length', '“cubits” is not a unit of length', 'Use mm, cm, m, in or ft.'],
    ['5 mmx', 'length', '“mmx” is not a unit of length', 'Use mm, cm, m, in or ft.'],
    ['5 kg', 'length', '“5 kg” is a weight: “kg” does not measure a length', 'Use mm, cm, m, in or ft.'],
    [
      '3 oz',
      'volume',
      '“3 oz” is a weight: “oz” does not measure a volume',
      'Use ml, l, cm³, fl oz, pt, qt, gal, in³ or bd ft.',
    ],
    ['5 mm2', 'length', '“5 mm2” is an area: “mm2” does not measure a length', 'Use mm, cm, m, in or ft.'],
    [
      '10 1/4',
      'length',
      '“10 1/4” has a fraction and no unit, and nobody means a fraction of a mm',
      'Write 10 1/4 in for inches, or 10.25 mm.',
    ],
    ['6 ft2', 'length', '“6 ft2” is an area: “ft2” does not measure a length', 'Use mm, cm, m, in or ft.'],
    ['1,250 mm', 'length', '“1,250” can mean 1.250 or 1250', 'Write 1250 without a separator, or 1.250 with a point.'],
    [
      '1.250.000',
      'length',
      '“1.250.000” is not a number',
      'Write the number without thousands separators, with one decimal point or comma.',
    ],
    [
      '1 250 mm',
      'length',
      '“1 250 mm” holds two numbers without a unit between them',
      'Write a length such as 250 mm or 9 7/8 in.',
    ],
    ['2 lb 3', 'mass', '“2 lb 3” ends in a number without a unit', 'Write a weight such as 900 g or 2 lb 3 oz.'],
    [
      '1\' 15"',
      'length',
      '“1\' 15"” does not add up: 15 in cannot follow 1 ft',
      'Write whole ft and then less than one ft in a smaller unit, or use one unit alone.',
    ],
    [
      '1.5 ft 3 in',
      'length',
      '“1.5 ft 3 in” does not add up: 3 in cannot follow 1.5 ft',
      'Write whole ft and then less than one ft in a smaller unit, or use one unit alone.',
    ],
    [
      '20 °C 5 °F',
      'temperature',
      '“20 °C 5 °F” does not add up: 5 °F cannot follow 20 °C',
      'Write whole °C and then less than one °C in a smaller unit, or use one unit alone.',
    ],
    ['1/0 in', 'length', '“1/0” divides by zero', 'Write a fraction such as 7/8.'],
    [
      '9 9/8 in',
      'length',
      '“9 9/8” has a fraction of one or more after a whole number',
      'Write a fraction below one there, such as 9 7/8.',
    ],
    ['9e99 mm', 'length', '“9e99” is too large', 'Check the number, or use a larger unit.'],
    ['5 in across', 'length', '“across” in “5 in across” cannot be read', 'Write a length such as 250 mm or 9 7/8 in.'],
    ['9 mm', 'number', '“9 mm” is a length: “mm” does not measure a number', 'Use no unit.'],
  ] as const)('%s as %s', (text, dimension, problem, wayOut) => {
    expect(parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] })).toEqual({
      ok: false,
      problem,
      wayOut,
    });
  });

  test('a long text is shortened in the message', () => {
    const reading = parseQuantity('w'.repeat(500), length);
    expect(!reading.ok && reading.problem.length).toBeLessThan(80);
  });
});

describe('withUnit', () => {
  test.each([
    ['250', 'mm', '250 mm'],
    [' 9 7/8 ', '[in_i]', '9 7/8 in'],
    ['−5', 'Cel', '−5 °C'],
    ['45', 'deg', '45°'],
    ['55', '%', '55 %'],
    ['12', '1', '12'],
    ['9 7/8"', 'mm', '9 7/8"'],
    ["1' 3", 'mm', "1' 3"],
    ['1,250', 'mm', '1,250'],
    ['wide', 'mm', 'wide'],
    ['', 'mm', ''],
  ])('%j with %s is %j', (text, bareUnit, expected) => {
    expect(withUnit(text, bareUnit)).toBe(expected);
  });
});
