import { expect, test } from 'vitest';
import { spanWords } from '../../src/site/finish/span.ts';

const hour = 3600;
const day = 24 * hour;

test.each([
  [1800, 2700, '30 to 45 minutes'],
  [hour, 4 * hour, '1 to 4 hours'],
  [8 * hour, day, '8 to 24 hours'],
  [12 * hour, 2 * day, '12 hours to 2 days'],
  [12 * hour, 3 * day, '12 hours to 3 days'],
  [2 * day, 7 * day, '2 to 7 days'],
  [7 * day, 28 * day, '1 to 4 weeks'],
  [21 * day, 42 * day, '3 to 6 weeks'],
  [5 * day, 14 * day, '5 days to 2 weeks'],
  [28 * day, 182 * day, '1 to 6 months'],
  [52 * 7 * day, 260 * 7 * day, '1 to 5 years'],
  [day, day, 'about 24 hours'],
] as const)('%i to %i s is %s', (low, high, words) => {
  expect(spanWords(low, high)).toBe(words);
});
