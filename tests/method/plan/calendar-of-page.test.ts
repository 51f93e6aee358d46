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
  const clock = ({ year, month, day, hour, minute, isDate, zone }: Ical.Time) => {
    expect(isDate).toBe(false);
    expect(zone).toBe(Ical.Timezone.localTimezone);
    const two = (value: number) => String(value).padStart(2, '0');
    return `${year}-${two(month)}-${two(day)} ${two(hour)}:${two(minute)}`;
  };
  for (const [at, { start, end, work }] of timetable.sessions.entries()) {
    const event = events[at] as Ical.Event;
    const named = (minute: number) => `${timetable.moments[minute]?.date} ${timetable.moments[minute]?.time}`;
    expect(clock(event.startDate)).toBe(named(start));
    expect(clock(event.endDate)).toBe(named(end));
    const lines = event.description.split('\n');
    expect(lines).toHaveLength(work.length);
    for (const [line, { step }] of work.entries())
      expect(lines[line]).toContain(page.steps.find(({ id }) => id === step)?.title);
  }
});

test('the calendar of one plan is the same whatever the zone of its shop: 9:00 is 9:00 where it is taught', async () => {
  const shop = (zone: string) => `shop: 1\nname: Ours\nzone: ${zone}\ncurrency: EUR\n`;
  const files = await Promise.all(
    ['America/Chicago', 'Europe/London', 'Asia/Tokyo'].map(async (zone) => {
      const page = await pageOf({ start: '2027-06-14', people: 2, shop: shop(zone) });
      expect(page.timetable?.zone).toBe(zone);
      return calendarOfPage(page, defaultUnits);
    }),
  );
  expect(new Set(files).size).toBe(1);
  expect(files[0]).toMatch(/DTSTART:20270614T\d{6}\r/);
  expect(files[0]).not.toMatch(/TZID|X-WR-TIMEZONE|DT(?:START|END)[^\r]*Z\r/);
});

test('a page of no named day has no calendar', async () => {
  expect(calendarOfPage(await pageOf({}), defaultUnits)).toBeUndefined();
});
