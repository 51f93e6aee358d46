import * as z from 'zod/mini';
import { schemaFaults } from '../../model/data/issue.ts';

const clockTime = '([01]\\d|2[0-3]):[0-5]\\d';
const times = `${clockTime}-(${clockTime}|24:00)`;

/** Minutes after midnight of '18:30'. */
export function minutesOfClock(text: string): number {
  const [hours, minutes] = text.split(':').map(Number);
  return (hours as number) * 60 + (minutes as number);
}

const endsLater = z.refine<string>((text) => {
  const [start = '', end = ''] = text.slice(-11).split('-');
  return !/^\d\d:\d\d$/.test(start) || minutesOfClock(start) < minutesOfClock(end);
}, 'It closes no later than it opens. Write hours of one day, such as 09:00-17:00; hours past midnight are two entries, 22:00-24:00 and 00:00-02:00 of the next day.');

/** Whether a text begins with a day that the calendar has, year-month-day. */
function beginsWithDay(text: string): boolean {
  const [year, month, day] = text.slice(0, 10).split('-').map(Number);
  const date = new Date(Date.UTC(year as number, (month as number) - 1, day as number));
  return date.getUTCMonth() + 1 === month && date.getUTCDate() === day;
}

const isDay = z.refine<string>(
  beginsWithDay,
  'There is no such day. Write a day of the calendar as year-month-day, such as 2027-01-12.',
);

/**
 * What is wrong with the start or the wanted end of a plan, a day or a local time.
 *
 * @returns what was read, what is allowed and a way out; undefined where it can be used
 */
export function dayOrTimeFault(text: string): string | undefined {
  if (new RegExp(`^\\d{4}-\\d\\d-\\d\\d( ${clockTime})?$`).test(text) && beginsWithDay(text)) return undefined;
  return `“${text.slice(0, 60)}” is not a day of the calendar. Write year-month-day, such as 2027-01-12, with a time behind it where it matters: "2027-01-12 18:30".`;
}

const range = z
  .string()
  .check(
    z.regex(
      new RegExp(`^${times}$`),
      'Hours are written from and to, on the clock of 24 hours with two digits each, such as 09:00-12:00.',
    ),
    endsLater,
  );

const rangesOfDay = z.array(range).check(
  z.refine<string[]>((ranges) => {
    const sorted = [...ranges].sort();
    return sorted.every((text, at) => at === 0 || (sorted[at - 1] as string).slice(6) <= text.slice(0, 5));
  }, 'Two of its openings overlap. Let each begin when the one before has closed, or write them as one.'),
);

const day = z
  .string()
  .check(z.regex(/^\d{4}-\d\d-\d\d$/, 'A day is written year-month-day, such as 2027-12-24.'), isDay);

const session = z
  .string()
  .check(
    z.regex(
      new RegExp(`^\\d{4}-\\d\\d-\\d\\d ${times}$`),
      'A session is written as its day and its hours, such as 2027-01-12 18:30-21:00.',
    ),
    isDay,
    endsLater,
  );

const zone = z.string().check(
  z.describe('Time zone by its name in the IANA list; that of the shop where left out there.'),
  z.refine<string>((name) => {
    try {
      new Intl.DateTimeFormat('en', { timeZone: name });
      return /^[A-Za-z]/.test(name);
    } catch {
      return false;
    }
  }, 'It is not the name of a time zone. Write one of the IANA time zone database, such as Europe/Helsinki or America/Chicago.'),
);

/** Names of the days of a week, Monday first, as ISO 8601 numbers them. */
export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/**
 * When a place is open: hours of each day of the week but on holidays, and single sessions, which are held on a holiday too. All in clock times of
 * its zone.
 */
export const openingHours = z
  .strictObject({
    zone,
    week: z.optional(
      z
        .strictObject(
          Object.fromEntries(
            weekdays.map((name) => [
              name,
              z.optional(rangesOfDay.check(z.describe('Hours of this day of the week, such as 18:30-21:00.'))),
            ]),
          ),
        )
        .check(z.describe('Hours of each day of the week; a day that is left out is closed.')),
    ),
    holidays: z.optional(z.array(day).check(z.describe('Days on which the hours of the week do not hold.'))),
    sessions: z.optional(
      z.array(session).check(z.describe('Single openings, such as 2027-01-12 18:30-21:00; held on a holiday too.')),
    ),
  })
  .check(
    z.refine<{ week?: object | undefined; sessions?: readonly string[] | undefined }>(
      ({ week, sessions }) =>
        Object.values(week ?? {}).some((ranges) => ranges.length > 0) || (sessions?.length ?? 0) > 0,
      'It is never open. Add hours to a day of week, such as tue: 18:30-21:00, or a session, such as 2027-01-12 18:30-21:00.',
    ),
  );

/** Opening hours as they are written. */
export interface OpeningHours {
  readonly zone: string;
  readonly week?: Readonly<Partial<Record<(typeof weekdays)[number], readonly string[]>>> | undefined;
  readonly holidays?: readonly string[] | undefined;
  readonly sessions?: readonly string[] | undefined;
}

/** What is wrong with opening hours: where, and in words what was read, what is allowed and a way out. */
export interface HoursFault {
  /** Such as `week.tue.0`; empty for the whole. */
  readonly field: string;
  readonly text: string;
}

/** Read opening hours, with every fault told. */
export function readOpeningHours(
  value: unknown,
):
  | { readonly ok: true; readonly hours: OpeningHours }
  | { readonly ok: false; readonly faults: readonly HoursFault[] } {
  const read = z.safeParse(openingHours, value);
  if (read.success) return { ok: true, hours: read.data as OpeningHours };
  return {
    ok: false,
    faults: read.error.issues.flatMap((issue) =>
      schemaFaults([issue], value, openingHours).map(({ path, message }) => ({
        field: path.join('.'),
        text: issue.code === 'custom' ? `${readAt(value, path)}${message}` : message,
      })),
    ),
  };
}

/** What a field holds, where it is a text short enough to repeat. */
function readAt(value: unknown, path: readonly PropertyKey[]): string {
  const found = path.reduce<unknown>((inner, key) => (inner as Record<PropertyKey, unknown> | undefined)?.[key], value);
  if (typeof found === 'string') return `“${found.slice(0, 60)}” cannot be used. `;
  return Array.isArray(found) ? `${found.join(', ').slice(0, 120)} cannot be used. ` : '';
}
