import { ICalCalendar, ICalCalendarMethod } from 'ical-generator';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import type { MethodPage } from '../page/types.ts';
import type { Plan } from './index.ts';
import { dutyWords, workWords } from './words.ts';

/** Stamp of a file without a version of its own: the same input gives the same bytes. */
const noVersion = '1970-01-01';

/** What a calendar says of its method. */
interface OfMethod {
  title: string;
  /** As the method names it: `en`. */
  language: string;
  version?: string | undefined;
  file: string;
}

interface Session {
  start: Date;
  end: Date;
  /** What is done in it, a line each. */
  lines: readonly string[];
  /** The instant at which its work begins, as its id says it. */
  begins: string;
}

function fileOf({ title, language, version, file }: OfMethod, sessions: readonly Session[], units: ReaderUnits) {
  const stamp = new Date(`${version ?? noVersion}T00:00:00Z`);
  const calendar = new ICalCalendar({
    name: title,
    prodId: { company: 'kerf-and-cure', product: 'method', language: language.slice(0, 2).toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const [at, { start, end, lines, begins }] of sessions.entries())
    calendar.createEvent({
      id: `${file.replace(/\W+/g, '-')}-${begins}-${at + 1}@kerf-and-cure`,
      stamp,
      start,
      end,
      summary: `${title}, session ${at + 1} of ${sessions.length}`,
      description: inReaderUnits(lines.join('\n'), units),
    });
  return calendar.toString();
}

/**
 * The sessions of a plan as an iCalendar file (RFC 5545): an event a session with what to do in it.
 *
 * @returns undefined where there is no timetable
 */
export function calendarFile(plan: Plan, units: ReaderUnits): string | undefined {
  const { worked, timetable } = plan;
  if (!timetable.ok) return undefined;
  const instant = (minutes: number) => new Date(timetable.clock.momentAt(minutes).instant);
  const sessions = plan.sessions.map(({ start, end, work }) => ({
    start: instant(start),
    end: instant(end),
    lines: work.map((duty) => `${timetable.momentAt(duty.start).time} ${dutyWords(plan, duty)}`),
    begins: timetable.momentAt(work[0]?.start ?? start).instant,
  }));
  return fileOf({ ...worked.record, file: worked.file }, sessions, units);
}

/**
 * The same of a method's page.
 *
 * @returns undefined where there is no timetable, or none with dates
 */
export function calendarOfPage(page: MethodPage, units: ReaderUnits): string | undefined {
  const { timetable, steps, makes } = page;
  if (!timetable || timetable.relative) return undefined;
  const zero = Date.parse(timetable.zero);
  const instant = (minutes: number) => new Date(zero + 60_000 * minutes);
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const sessions = timetable.sessions.map(({ start, end, work }) => ({
    start: instant(start),
    end: instant(end),
    lines: work.map(
      (each) =>
        `${timetable.moments[each.start]?.time ?? ''} ${workWords(titles.get(each.step) ?? each.step, each, makes.pieces, timetable.people ?? [])}`,
    ),
    begins: instant(work[0]?.start ?? start).toISOString(),
  }));
  return fileOf(page, sessions, units);
}
