import { dayOrTimeFault } from '../schedule/hours.ts';

/** A class that meets every week, as typed. */
export interface WeeklyRule {
  /** Day of the first session: 2027-02-09. */
  first: string;
  /** From and to: 18:30-21:00. */
  times: string;
  /** How many sessions. */
  weeks: string;
}

/** Sessions that a weekly rule makes, at most: half a year. */
const mostWeeks = 26;

/**
 * The sessions of a class that meets every week, a line each.
 *
 * @returns the lines, or what is wrong with each field of the rule
 */
export function weeklySessions({
  first,
  times,
  weeks,
}: WeeklyRule): { ok: true; lines: string[] } | { ok: false; faults: { field: keyof WeeklyRule; message: string }[] } {
  const faults: { field: keyof WeeklyRule; message: string }[] = [];
  const day = first.trim();
  if (day.length !== 10 || dayOrTimeFault(day) !== undefined)
    faults.push({
      field: 'first',
      message: `“${day.slice(0, 40)}” is not a day of the calendar. Write year-month-day, such as 2027-02-09.`,
    });
  const hours = /^([01]\d|2[0-3]):[0-5]\d-(([01]\d|2[0-3]):[0-5]\d|24:00)$/;
  const tidy = times.trim().replace(/\s*(?:[-–—]|to)\s*/, '-');
  const [from = '', to = ''] = tidy.split('-');
  if (!hours.test(tidy) || from >= to)
    faults.push({
      field: 'times',
      message: `“${times.trim().slice(0, 40)}” does not say from when to when. Write both on the clock of 24 hours, such as 18:30-21:00.`,
    });
  const count = /^\s*\d{1,3}\s*$/.test(weeks) ? Number(weeks) : Number.NaN;
  if (!(count >= 1 && count <= mostWeeks))
    faults.push({
      field: 'weeks',
      message: `“${weeks.trim().slice(0, 40)}” is no number of sessions. Give a whole number from 1 to ${mostWeeks}, such as 6.`,
    });
  if (faults.length > 0) return { ok: false, faults };
  const start = Date.parse(`${day}T00:00:00Z`);
  return {
    ok: true,
    lines: Array.from(
      { length: count },
      (_, week) => `${new Date(start + week * 7 * 86_400_000).toISOString().slice(0, 10)} ${tidy}`,
    ),
  };
}
