import { expect, test } from 'vitest';
import { lengthInBoth, riseInBoth, temperatureInBoth } from '../../../src/calculators/kit/both-units.ts';

test('a sentence names both units', () => {
  expect(lengthInBoth(10)).toBe('10 mm (0.39 in)');
  expect(lengthInBoth(19.05)).toBe('19 mm (0.75 in)');
  expect(temperatureInBoth(22)).toBe('22 °C (72 °F)');
  // 120 × 1.8 + 32.
  expect(temperatureInBoth(120)).toBe('120 °C (248 °F)');
  expect(riseInBoth(40)).toBe('40 °C (72 °F)');
  expect(riseInBoth(0.5, 1)).toBe('0.5 °C (0.9 °F)');
});
