import fc from 'fast-check';
import { expect, test } from 'vitest';
import { localTime, stampOf, whenFault, withOffset } from '../../../src/method/batch/moment.ts';
import { planClock } from '../../../src/method/schedule/calendar.ts';

test.each([
  ['America/Chicago', '2027-01-12T18:30', '2027-01-12T18:30:00-06:00'],
  ['America/Chicago', '2027-07-12T18:30', '2027-07-12T18:30:00-05:00'],
  ['Europe/Helsinki', '2027-01-12T00:05', '2027-01-12T00:05:00+02:00'],
  ['Asia/Kolkata', '2027-01-12T18:30', '2027-01-12T18:30:00+05:30'],
  // The clock goes from 2:00 to 3:00: half past two is as much later.
  ['America/Chicago', '2027-03-14T02:30', '2027-03-14T03:30:00-05:00'],
  // It shows half past one twice: the first.
  ['America/Chicago', '2027-11-07T01:30', '2027-11-07T01:30:00-05:00'],
])('in %s %s is %s', (zone, local, stamp) => {
  expect(stampOf(zone, local)).toBe(stamp);
});

test.each(['', '2027-01-12', '2027-02-30T10:00', '2027-01-12T25:00', 'soon', '2027-01-12T18:30:00Z'])(
  '“%s” is no local time',
  (text) => {
    expect(stampOf('America/Chicago', text)).toBeUndefined();
  },
);

test('any local time is the instant that the planner takes it for', async () => {
  const zones = ['America/Chicago', 'Europe/Helsinki', 'Australia/Lord_Howe', 'UTC'];
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...zones),
      fc.integer({ min: Date.UTC(2026, 0, 1) / 60_000, max: Date.UTC(2029, 0, 1) / 60_000 }),
      async (zone, minute) => {
        const instant = minute * 60_000;
        const local = localTime(zone, instant);
        const clock = await planClock(zone, '2026-01-01T00:00:00Z');
        const expected = Date.parse(clock.zero) + clock.minutesAt(local.replace('T', ' ')) * 60_000;
        expect(Date.parse(stampOf(zone, local) ?? '')).toBe(expected);
        expect(Date.parse(withOffset(zone, instant))).toBe(instant);
      },
    ),
    { numRuns: 80 },
  );
});

test('two entries of one second keep the order in which they were written', () => {
  const second = Date.UTC(2027, 0, 12, 15, 0, 7);
  const [one, other] = [withOffset('America/Chicago', second + 5), withOffset('America/Chicago', second + 250)];
  expect([one, other]).toEqual(['2027-01-12T09:00:07.005-06:00', '2027-01-12T09:00:07.250-06:00']);
  expect(Date.parse(one)).toBeLessThan(Date.parse(other));
});

test('a time that has not come, or is none, is refused; one before the batch is remarked on', () => {
  const [opened, now] = ['2027-01-12T08:00', '2027-01-13T10:00'].map((local) =>
    Date.parse(stampOf('America/Chicago', local) ?? ''),
  ) as [number, number];
  const found = (local: string) => whenFault('America/Chicago', local, opened, now);
  expect(found('2027-01-13T10:00')).toEqual({});
  expect(found('2027-01-12T08:00')).toEqual({});
  expect(found('2027-01-13T10:05').fault).toBe(
    '2027-01-13 10:05 has not come yet: it is 2027-01-13 10:00 in the shop. Give the day and time at which it was, not at which it will be.',
  );
  expect(found('2027-01-12T07:00')).toEqual({
    remark:
      'That is before the batch was opened, 2027-01-12 08:00. It is written down so; change it if another day was meant.',
  });
  expect(found('2027-01-12').fault).toContain('No whole day and time');
});
