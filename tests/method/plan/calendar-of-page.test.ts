import Ical from 'ical.js';
import { expect, test } from 'vitest';
import { answerMethod, MethodMemory } from '../../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion } from '../../../src/method/page/types.ts';
import { calendarOfPage } from '../../../src/method/plan/calendar-file.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { methodFiles } from '../../methods/files.ts';

async function pageOf(asked: Partial<MethodQuestion>): Promise<MethodPage> {
  const file = methodFiles.find(({ name }) => name === 'first-tray.yaml');
  const answered = await answerMethod(
    { text: file?.text ?? '', file: 'first-tray.yaml', ...asked },
    new MethodMemory(),
  );
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.page;
}

test('the calendar of a page has each session at its local hours, with its work in order', async () => {
  const page = await pageOf({ start: '2027-03-10', people: 2 });
  const { timetable } = page;
  if (!timetable) throw new Error('No timetable.');
  const events = new Ical.Component(Ical.parse(calendarOfPage(page, defaultUnits) ?? ''))
    .getAllSubcomponents('vevent')
    .map((event) => new Ical.Event(event));
  expect(events).toHaveLength(timetable.sessions.length);
  // By the clock of the browser, which knows of daylight saving time by itself.
  const clock = new Intl.DateTimeFormat('sv-SE', { timeZone: timetable.zone, dateStyle: 'short', timeStyle: 'short' });
  for (const [at, { start, end, work }] of timetable.sessions.entries()) {
    const event = events[at] as Ical.Event;
    const named = (minute: number) => `${timetable.moments[minute]?.date} ${timetable.moments[minute]?.time}`;
    expect(clock.format(event.startDate.toJSDate())).toBe(named(start));
    expect(clock.format(event.endDate.toJSDate())).toBe(named(end));
    const lines = event.description.split('\n');
    expect(lines).toHaveLength(work.length);
    for (const [line, { step }] of work.entries())
      expect(lines[line]).toContain(page.steps.find(({ id }) => id === step)?.title);
  }
});

test('a page of no named day has no calendar', async () => {
  expect(calendarOfPage(await pageOf({}), defaultUnits)).toBeUndefined();
});
