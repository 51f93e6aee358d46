import { expect, test } from 'vitest';
import { hoursOfClass } from '../../../src/method/class/sessions.ts';
import { answerMethod } from '../../../src/method/page/answer.ts';
import { askedWith, classLines, type PlanCalendar } from '../../../src/method/page/calendars.ts';
import { readCalendar } from '../../../src/method/page/read-calendar.ts';
import { readMethod } from '../../../src/method/read.ts';
import { type MethodText, readCalendarTexts, readMethodTexts } from '../../../src/store/index.ts';

type Taught = { calendar: string; people: number; evenings: number };

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
  const first = '2027-02-09 18:30-21:00';
  expect(askedWith(six, { taught }, {})).toEqual({ hours: six.hours, start: '2027-01-23', people: 14, first });
  expect(askedWith(six, { taught }, { start: '2027-02-09', people: 3 })).toEqual({
    hours: six.hours,
    start: '2027-02-09',
    people: 3,
    first,
  });
  expect(askedWith(six, { taught: { ...taught, evenings: 3 } }, {})).not.toHaveProperty('first');
  expect(askedWith(six, {}, { end: '2027-03-01' })).toEqual({ hours: six.hours });
});

test('a class begins with its sessions, those before the students come without them', () => {
  const lines = classLines(six, 2);
  expect(lines).toEqual(['2027-01-23 09:00-16:00 teacher only', '2027-02-09 18:30-21:00', '2027-02-16 18:30-21:00']);
  const read = hoursOfClass(lines.join('\n'), 'UTC');
  expect(read).toMatchObject({ ok: true, alone: ['2027-01-23 09:00-16:00'], unused: [] });
});

test('with the calendar of its class a method keeps the students’ evenings for the students', async () => {
  const { text, file } = readMethodTexts().find(({ id }) => id === 'class-of-twelve') as MethodText;
  const calendar = calendars.find(({ id }) => id === 'six-tuesdays') as PlanCalendar;
  const { record } = readMethod(text, file);
  const answer = await answerMethod({ text, file, ...askedWith(calendar, { taught: record?.taught as Taught }, {}) });
  const timetable = answer.ok ? answer.page.timetable : undefined;
  const dayOf = (id: string) => {
    const start = timetable?.steps.find((step) => step.id === id)?.start;
    return start === undefined ? undefined : timetable?.moments[start]?.date;
  };
  const steps = Object.entries(record?.steps ?? {});
  const briefed = steps.find(([, { act }]) => act === 'brief')?.[0];
  expect(dayOf(briefed ?? '')).toBe('2027-02-09');
  expect(dayOf(steps.at(-1)?.[0] ?? '')).toBe('2027-03-16');
});
