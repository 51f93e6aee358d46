import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { clockTime, fieldText, momentOf } from '../../../src/calculators/view/clock.ts';

const hours = (count: number) => count * 3600;
const days = (count: number) => hours(24 * count);
// 7 March 2026 is a Saturday.
const evening = new Date(2026, 2, 7, 18, 0);

describe('the clock time of an event', () => {
  test.each([
    ['some minutes off, to five minutes', 38 * 60, 'en-US', 'Sat 6:40 pm'],
    ['some hours off, to a quarter', hours(6) + 11 * 60, 'en-US', 'Sun 12:15 am'],
    ['a day off, to the hour', hours(20) + 20 * 60, 'en-US', 'Sun 2 pm'],
    ['where the clock has 24 hours', hours(20), 'de-DE', 'Sun 14:00'],
    ['to the nearest hour, not the one that has begun', hours(23) + 58 * 60, 'en-GB', 'Sun 18:00'],
    ['more than six days off, with the date', days(20), 'en-US', 'Fri 27 Mar 6 pm'],
    ['at the start', 0, 'en-US', 'Sat 6 pm'],
  ])('%s', (_, after, locale, words) => {
    expect(clockTime(evening, after, locale)).toBe(words);
  });

  describe('over the change to summer time', () => {
    const zone = process.env.TZ;
    beforeAll(() => {
      process.env.TZ = 'America/Chicago';
    });
    afterAll(() => {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    });
    test('twenty hours are twenty hours, whatever the clock shows', () => {
      // In 2026 clocks in the United States go forward on 8 March at 2 in the morning (15 U.S.C. 260a: second Sunday of March).
      expect(clockTime(new Date('2026-03-07T18:00:00-06:00'), hours(20), 'en-US')).toBe('Sun 3 pm');
    });
  });
});

describe('the field of the start', () => {
  test('starts on the nearest quarter of an hour', () => {
    expect(fieldText(new Date(2026, 2, 7, 18, 7))).toBe('2026-03-07T18:00');
    expect(fieldText(new Date(2026, 2, 7, 23, 59))).toBe('2026-03-08T00:00');
  });

  test('what it holds is read back', () => {
    fc.assert(
      fc.property(fc.date({ min: new Date(2000, 0, 1), max: new Date(2090, 0, 1), noInvalidDate: true }), (date) => {
        const text = fieldText(date);
        const read = momentOf(text);
        expect(Math.abs((read as Date).getTime() - date.getTime())).toBeLessThanOrEqual(15 * 30 * 1000);
        expect(fieldText(read as Date)).toBe(text);
      }),
    );
  });

  test.each(['', '2026', '2026-13-40T00:00', 'tomorrow'])('“%s” is no start', (text) => {
    expect(momentOf(text)).toBeUndefined();
  });

  test('what writes a time is made once, however many times are written', () => {
    const write = () => [hours(1), hours(20), days(20)].map((after) => clockTime(evening, after, 'en-NZ'));
    const first = write();
    const made = vi.spyOn(Intl, 'DateTimeFormat');
    expect(write()).toEqual(first);
    expect(made).not.toHaveBeenCalled();
    made.mockRestore();
  });

  test('the browser’s own clock is used unless told', () => {
    vi.useFakeTimers({ now: evening });
    expect(clockTime(evening, 0)).toMatch(/^Sat (6 pm|18:00)$/);
    vi.useRealTimers();
  });
});
