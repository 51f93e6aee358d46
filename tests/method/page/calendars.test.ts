import { expect, test } from 'vitest';
import { hoursOfClass } from '../../../src/method/class/sessions.ts';
import { askedWith, classLines } from '../../../src/method/page/calendars.ts';
import { readCalendar } from '../../../src/method/page/read-calendar.ts';
import { readMethod } from '../../../src/method/read.ts';
import { readCalendarTexts, readMethodTexts } from '../../../src/store/index.ts';

const calendars = readCalendarTexts().map(readCalendar);
const taughtOf = readMethodTexts().flatMap(({ file, text }) => {
  const taught = readMethod(text, file).record?.taught;
  return taught ? [[file, taught] as const] : [];
});

test.each(taughtOf)('%s names a calendar that is there, with sessions enough', (_, { calendar, evenings }) => {
  const found = calendars.find(({ id }) => id === calendar);
  expect(found?.hours.sessions?.length).toBeGreaterThanOrEqual(evenings);
});

test('at least one method is taught by a calendar', () => {
  expect(taughtOf.length).toBeGreaterThan(0);
});

const six = {
  id: 'two-evenings',
  title: 'Two Evenings',
  hours: { zone: 'UTC', sessions: ['2027-02-16 18:30-21:00', '2027-02-09 18:30-21:00', '2027-01-23 09:00-16:00'] },
};

test('a chosen calendar asks its hours from its first session on, and as many people as the method is taught with', () => {
  const taught = { calendar: 'two-evenings', people: 14, evenings: 2 };
  expect(askedWith(six, { taught }, {})).toEqual({ hours: six.hours, start: '2027-01-23', people: 14 });
  expect(askedWith(six, { taught }, { start: '2027-02-09', people: 3 })).toEqual({
    hours: six.hours,
    start: '2027-02-09',
    people: 3,
  });
  expect(askedWith(six, {}, { end: '2027-03-01' })).toEqual({ hours: six.hours });
});

test('a class begins with its sessions, those before the students come without them', () => {
  const lines = classLines(six, 2);
  expect(lines).toEqual(['2027-01-23 09:00-16:00 teacher only', '2027-02-09 18:30-21:00', '2027-02-16 18:30-21:00']);
  const read = hoursOfClass(lines.join('\n'), 'UTC');
  expect(read).toMatchObject({ ok: true, alone: ['2027-01-23 09:00-16:00'], unused: [] });
});
