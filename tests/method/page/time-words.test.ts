import { expect, test } from 'vitest';
import { exactTime, noLessThan } from '../../../src/method/page/time-words.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test.each([
  [30, '30 min', '30 min'],
  [120, '2 h', '2 h'],
  [229, '3 h 49 min', '3 h 49 min'],
  [229.9, '3 h 49 min', '3 h 50 min'],
  [1440, '1 d', '1 d'],
  [6026, '4 d 4 h 26 min', '4 d 5 h'],
  // 7.57 d
  [10896, '7 d 13 h 36 min', '7 d 14 h'],
  [0, '0 min', '0 min'],
])('%d min is %s to the minute, and %s to wait at least', (minutes, exact, least) => {
  expect(plain(exactTime(minutes))).toBe(exact);
  expect(plain(noLessThan(minutes))).toBe(least);
});

test('a wait is never told shorter than it is, nor a window longer', () => {
  const minutesOf = (text: string) =>
    [...plain(text).matchAll(/(\d+) (d|h|min)/g)].reduce(
      (sum, [, count, unit]) => sum + Number(count) * (unit === 'd' ? 1440 : unit === 'h' ? 60 : 1),
      0,
    );
  for (let minutes = 0.3; minutes < 40_000; minutes = minutes * 1.07 + 0.1) {
    expect(minutesOf(noLessThan(minutes))).toBeGreaterThanOrEqual(minutes - 1e-3);
    expect(minutesOf(exactTime(minutes))).toBeLessThanOrEqual(minutes);
  }
});
