import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOrTimeFault } from '../../../src/method/schedule/hours.ts';
import { type OpeningHours, planClock, readOpeningHours, schedule } from '../../../src/method/schedule/index.ts';

const shop = (zone: string): OpeningHours => ({
  zone,
  week: Object.fromEntries(
    ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'].map((day) => [day, ['09:00-12:00', '13:00-17:00']]),
  ),
});

/** Nights of 2027 on which clocks change, by the rules of each zone: the day after, and elapsed hours from 17:00 to 09:00. */
const changes = [
  ['Europe/Helsinki', '2027-03-27', '2027-03-28', 15],
  ['Europe/Helsinki', '2027-10-30', '2027-10-31', 17],
  ['America/Chicago', '2027-03-13', '2027-03-14', 15],
  ['America/Chicago', '2027-11-06', '2027-11-07', 17],
  ['Australia/Lord_Howe', '2027-10-02', '2027-10-03', 15.5],
  ['Australia/Lord_Howe', '2027-04-03', '2027-04-04', 16.5],
] as const;

describe('shifts keep the clock, waits keep elapsed time', () => {
  test.each(changes)('%s, the night after %s', async (zone, before, after, hours) => {
    const clock = await planClock(zone, `${before} 08:00`);
    const open = clock.openSpans(shop(zone), 3 * 24 * 60);
    expect(open.slice(0, 2)).toEqual([
      { start: 60, end: 240 },
      { start: 300, end: 540 },
    ]);
    const next = open[2]?.start as number;
    expect((next - 540) / 60).toBe(hours);
    expect(clock.momentAt(next)).toMatchObject({ date: after, time: '09:00' });
    expect(clock.minutesAt(`${after} 09:00`)).toBe(next);
  });

  test('a cure of 16 hours from 17:00 is done at 09:00 on a common night, at 10:00 and 08:00 by the clock on the others', async () => {
    const doneAt = async (date: string) => {
      const clock = await planClock('Europe/Helsinki', `${date} 17:00`);
      return clock.momentAt(16 * 60).time;
    };
    expect(await Promise.all(['2027-03-20', '2027-03-27', '2027-10-30'].map(doneAt))).toEqual([
      '09:00',
      '10:00',
      '08:00',
    ]);
  });

  test('of the hour that the clock shows twice, both halves are told apart', async () => {
    const clock = await planClock('Europe/Helsinki', '2027-10-31 03:30');
    expect([0, 60].map((minutes) => clock.momentAt(minutes))).toMatchObject([
      { time: '03:30', offset: '+03:00', instant: '2027-10-31T00:30:00Z' },
      { time: '03:30', offset: '+02:00', instant: '2027-10-31T01:30:00Z' },
    ]);
  });

  test('an opening across the skipped hour is an hour shorter', async () => {
    const clock = await planClock('Europe/Helsinki', '2027-03-28 00:00');
    const hours = { zone: 'Europe/Helsinki', week: { sun: ['02:00-05:00'] } };
    expect(clock.openSpans(hours, 1440)).toEqual([{ start: 120, end: 240 }]);
  });

  test('the year ends between two openings', async () => {
    const clock = await planClock('Europe/Helsinki', '2027-12-31 16:00');
    const hours = { ...shop('Europe/Helsinki'), holidays: ['2028-01-01'] };
    const open = clock.openSpans(hours, 3 * 24 * 60);
    expect(open.slice(0, 2).map(({ start }) => clock.momentAt(start))).toMatchObject([
      { date: '2027-12-31', time: '16:00', weekday: 'fri' },
      { date: '2028-01-02', time: '09:00', weekday: 'sun' },
    ]);
    expect(open[1]?.start).toBe(8 * 60 + 24 * 60 + 9 * 60);
  });

  test('a weekly evening, a session, a session on a holiday, and one until midnight', async () => {
    const zone = 'Europe/Helsinki';
    const clock = await planClock(zone, '2027-01-11 00:00');
    const local = (hours: OpeningHours) =>
      clock.openSpans(hours, 14 * 1440).map(({ start, end }) => {
        const [opens, closes] = [clock.momentAt(start), clock.momentAt(end)];
        return `${opens.date} ${opens.time}-${closes.time}`;
      });
    expect(local({ zone, week: { tue: ['18:30-21:00'] } })).toEqual([
      '2027-01-12 18:30-21:00',
      '2027-01-19 18:30-21:00',
    ]);
    expect(
      local({ zone, week: { tue: ['18:30-21:00'] }, holidays: ['2027-01-19'], sessions: ['2027-01-19 10:00-24:00'] }),
    ).toEqual(['2027-01-12 18:30-21:00', '2027-01-19 10:00-00:00']);
  });
});

test('minutes and clocks turn into each other, through a year of every zone tried', async () => {
  for (const zone of ['Europe/Helsinki', 'America/Chicago', 'Australia/Lord_Howe', 'Asia/Kolkata']) {
    const clock = await planClock(zone, '2027-01-01T00:00:00Z');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 365 * 1440 }), (minutes) => {
        const { date, time, instant } = clock.momentAt(minutes);
        expect(Date.parse(instant)).toBe(Date.UTC(2027, 0, 1) + minutes * 60_000);
        // The second road: the platform's own formatting of the instant.
        const shown = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' });
        expect(`${date} ${time}`).toBe(shown.format(Date.parse(instant)));
        const back = clock.minutesAt(`${date} ${time}`);
        expect([0, 30, 60]).toContain(minutes - back);
      }),
      { numRuns: 60 },
    );
  }
});

test('a plan over the night of the change: the cure counts hours, the work waits for opening', async () => {
  const zone = 'Europe/Helsinki';
  const clock = await planClock(zone, '2027-03-27 16:00');
  const plan = schedule(
    {
      activities: [
        { id: 'pour', duration: 60, uses: {}, calendar: 'shop', splittable: false },
        { id: 'cure', duration: 16 * 60, uses: {}, splittable: false },
        { id: 'demould', duration: 30, uses: {}, calendar: 'shop', splittable: false },
      ],
      lags: [
        { from: 'pour', to: 'cure', kind: 'end-start', most: 0 },
        { from: 'cure', to: 'demould', kind: 'end-start' },
      ],
      holds: [],
      resources: {},
      calendars: [clock.calendar('shop', shop(zone), 3 * 1440)],
      horizon: 3 * 1440,
    },
    { nodes: 100 },
  );
  expect(plan.ok).toBe(true);
  const start = plan.ok ? plan.placements.map(({ pieces }) => clock.momentAt(pieces[0]?.start as number)) : [];
  expect(start.map(({ date, time }) => `${date} ${time}`)).toEqual([
    '2027-03-27 16:00',
    '2027-03-27 17:00',
    '2027-03-28 10:00',
  ]);
});

describe('opening hours that cannot be read', () => {
  const base = { zone: 'Europe/Helsinki', week: { tue: ['18:30-21:00'] } };
  test.each([
    ['a zone of another name', { ...base, zone: 'Lakeside' }, 'zone', /“Lakeside”.*IANA.*Europe\/Helsinki/],
    ['one digit', { ...base, week: { tue: ['9:00-12:00'] } }, 'week.tue.0', /“9:00-12:00”.*two digits.*09:00-12:00/],
    ['no such hour', { ...base, week: { tue: ['09:00-25:00'] } }, 'week.tue.0', /“09:00-25:00”.*24 hours/],
    ['past midnight', { ...base, week: { tue: ['22:00-02:00'] } }, 'week.tue.0', /“22:00-02:00”.*next day/],
    ['an overlap', { ...base, week: { tue: ['09:00-12:00', '11:00-13:00'] } }, 'week.tue', /11:00-13:00.*overlap/],
    ['another name of a day', { ...base, week: { tues: ['09:00-12:00'] } }, 'week.tues', /“tues”.*not a field/],
    ['no such day', { ...base, holidays: ['2027-02-30'] }, 'holidays.0', /“2027-02-30”.*no such day/],
    ['a session without hours', { ...base, sessions: ['2027-01-12'] }, 'sessions.0', /“2027-01-12”.*18:30-21:00/],
    ['a session on no day', { ...base, sessions: ['2027-13-12 18:30-21:00'] }, 'sessions.0', /no such day/],
    ['never open', { zone: base.zone, week: { tue: [] } }, '', /never open.*tue: 18:30-21:00/],
    ['no object', 'tuesdays', '', /“tuesdays”/],
  ])('%s', (_, value, field, text) => {
    const read = readOpeningHours(value);
    expect(read.ok).toBe(false);
    const faults = read.ok ? [] : read.faults;
    expect(faults.map((fault) => fault.field)).toContain(field);
    expect(faults.find((fault) => fault.field === field)?.text).toMatch(text);
  });

  test('the two ways to write them are read as they stand', () => {
    expect(readOpeningHours(base)).toEqual({ ok: true, hours: base });
    const sessions = { zone: 'Europe/Helsinki', sessions: ['2027-01-12 18:30-21:00'] };
    expect(readOpeningHours(sessions)).toEqual({ ok: true, hours: sessions });
  });

  test.each(['2027-01-12', '2028-02-29', '2027-01-12 18:30', '2027-12-31 00:00'])(
    '%s can begin or end a plan',
    (text) => {
      expect(dayOrTimeFault(text)).toBeUndefined();
    },
  );

  test.each([
    '2027-02-29',
    '2027-13-01',
    '2027-1-12',
    '12.01.2027',
    '2027-01-12 24:30',
    '2027-01-12T18:30',
    '',
    'tomorrow',
  ])('“%s” cannot, and the words say what can', (text) => {
    expect(dayOrTimeFault(text)).toContain(`“${text}” is not a day of the calendar. Write year-month-day, such as`);
  });

  test('a zero or a time that is none', async () => {
    await expect(planClock('Europe/Helsinki', '11 Jan 2027')).rejects.toThrow(/zero: “11 Jan 2027”.*2027-01-12 18:30/);
    await expect(planClock('Europe/Helsinki', '2027-99-11T06:00:00Z')).rejects.toThrow(/zero: .*universal time/);
    await expect(planClock('Lakeside', '2027-01-11 08:00')).rejects.toThrow(/zone: “Lakeside”.*IANA/);
    const clock = await planClock('Europe/Helsinki', '2027-01-11 08:00');
    expect(() => clock.minutesAt('2027-02-30 08:00')).toThrow(/time: “2027-02-30 08:00”/);
    expect(() => clock.openSpans(shop('Asia/Kolkata'), 1440)).toThrow(/zone: “Asia\/Kolkata”.*Europe\/Helsinki/);
  });
});
