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

/** A moment as the clock of the place shows it. */
interface LocalMoment {
  /** 2027-01-12 */
  date: string;
  /** 18:30 */
  time: string;
}

interface Session {
  start: LocalMoment;
  end: LocalMoment;
  /** What is done in it, a line each. */
  lines: readonly string[];
  /** The moment at which its work begins, as its id says it. */
  begins: LocalMoment;
}

/** The clock of the place, in the fields of universal time: a floating time is written from those as they are. */
const onTheClock = ({ date, time }: LocalMoment) => new Date(`${date}T${time}:00Z`);

/*
 * Times float (RFC 5545, 3.3.5, form #1): a session is at 18:30 by the clock on the wall of the shop, and stays there in whatever zone its file is
 * opened. An instant would stand at another hour in the calendar of a reader elsewhere, by the zone of a shop record that is perhaps not theirs.
 */
function fileOf({ title, language, version, file }: OfMethod, sessions: readonly Session[], units: ReaderUnits) {
  const stamp = new Date(`${version ?? noVersion}T00:00:00Z`);
  const calendar = new ICalCalendar({
    name: title,
    prodId: { company: 'kerf-and-cure', product: 'method', language: language.slice(0, 2).toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const [at, { start, end, lines, begins }] of sessions.entries())
    calendar.createEvent({
      id: `${file.replace(/\W+/g, '-')}-${begins.date}T${begins.time}-${at + 1}@kerf-and-cure`,
      stamp,
      start: onTheClock(start),
      end: onTheClock(end),
      floating: true,
      summary: `${title}, session ${at + 1} of ${sessions.length}`,
      description: inReaderUnits(lines.join('\n'), units),
    });
  return calendar.toString();
}

/**
 * The sessions of a plan as an iCalendar file (RFC 5545): an event a session with what to do in it, at the local times of the shop.
 *
 * @returns undefined where there is no timetable
 */
export function calendarFile(plan: Plan, units: ReaderUnits): string | undefined {
  const { worked, timetable } = plan;
  if (!timetable.ok) return undefined;
  const sessions = plan.sessions.map(({ start, end, work }) => ({
    start: timetable.momentAt(start),
    end: timetable.momentAt(end),
    lines: work.map((duty) => `${timetable.momentAt(duty.start).time} ${dutyWords(plan, duty)}`),
    begins: timetable.momentAt(work[0]?.start ?? start),
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
  // The page names the clock of every minute at which a session or its work begins or ends.
  const clock = (minute: number) => timetable.moments[minute] as LocalMoment;
  const titles = new Map(steps.map(({ id, title }) => [id, title]));
  const sessions = timetable.sessions.map(({ start, end, work }) => ({
    start: clock(start),
    end: clock(end),
    lines: work.map(
      (each) =>
        `${clock(each.start).time} ${workWords(titles.get(each.step) ?? each.step, each, makes.pieces, timetable.people ?? [])}`,
    ),
    begins: clock(work[0]?.start ?? start),
  }));
  return fileOf(page, sessions, units);
}
