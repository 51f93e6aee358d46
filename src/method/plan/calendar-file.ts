import { ICalCalendar, ICalCalendarMethod } from 'ical-generator';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import type { Plan } from './index.ts';
import { dutyWords } from './words.ts';

/** Stamp of a file without a version of its own: the same input gives the same bytes. */
const noVersion = '1970-01-01';

/**
 * The sessions of a plan as an iCalendar file (RFC 5545): an event a session with what to do in it, and the plan's last moment.
 *
 * @returns undefined where there is no timetable
 */
export function calendarFile(plan: Plan, units: ReaderUnits): string | undefined {
  const { worked, timetable, sessions } = plan;
  if (!timetable.ok) return undefined;
  const { record, file } = worked;
  const stamp = new Date(`${record.version ?? noVersion}T00:00:00Z`);
  const calendar = new ICalCalendar({
    name: record.title,
    prodId: { company: 'kerf-and-cure', product: 'method', language: record.language.slice(0, 2).toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
  });
  const instant = (minutes: number) => new Date(timetable.clock.momentAt(minutes).instant);
  for (const [at, { start, end, work }] of sessions.entries()) {
    const lines = work.map((duty) => `${timetable.momentAt(duty.start).time} ${dutyWords(plan, duty)}`);
    const instants = [...new Set(work.map(({ start: from }) => timetable.momentAt(from).instant))];
    calendar.createEvent({
      id: `${file.replace(/\W+/g, '-')}-${instants[0]}-${at + 1}@kerf-and-cure`,
      stamp,
      start: instant(start),
      end: instant(end),
      summary: `${record.title}, session ${at + 1} of ${sessions.length}`,
      description: inReaderUnits(lines.join('\n'), units),
    });
  }
  return calendar.toString();
}
