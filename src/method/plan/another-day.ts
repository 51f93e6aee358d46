import type { WorkedMethod } from '../case/types.ts';
import { weekdays } from '../schedule/hours.ts';
import { type TimetableOptions, timetableOf } from './timetable.ts';

const names: Readonly<Record<(typeof weekdays)[number], string>> = {
  mon: 'Mondays',
  tue: 'Tuesdays',
  wed: 'Wednesdays',
  thu: 'Thursdays',
  fri: 'Fridays',
  sat: 'Saturdays',
  sun: 'Sundays',
};

/**
 * One more day of the week with the hours of one that is open, with which there is a plan: planned with it, not guessed. The days behind
 * the one that is open come first.
 *
 * @returns how a reader says it; undefined where no such day helps, or no day of the week is open
 */
export async function anotherDay(worked: WorkedMethod, options: TimetableOptions): Promise<string | undefined> {
  const { week = {} } = options.hours;
  const first = weekdays.findIndex((name) => (week[name]?.length ?? 0) > 0);
  const [times] = week[weekdays[first] ?? 'mon'] ?? [];
  if (times === undefined) return undefined;
  for (let ahead = 1; ahead < weekdays.length; ahead++) {
    const name = weekdays[(first + ahead) % weekdays.length] as (typeof weekdays)[number];
    if ((week[name]?.length ?? 0) > 0) continue;
    const hours = { ...options.hours, week: { ...week, [name]: [times] } };
    if ((await timetableOf(worked, { ...options, hours })).ok)
      return `the shop open on ${names[name]} too, ${times.replace('-', ' to ')}`;
  }
  return undefined;
}
