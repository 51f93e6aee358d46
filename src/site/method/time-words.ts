import type { ShownMoment, ShownTimetable } from '../../method/page/types.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';

/** Minutes as a reader says them: `40 min`, `2 h`, `3 d`. */
export const minutesText = (minutes: number, units: ReaderUnits): string =>
  formatQuantity(minutes * 60, 's', units, { digits: 2 });

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

/** Month and day as a printed calendar has them; the year only where asked. */
const dated = (date: string, year: boolean) =>
  new Intl.DateTimeFormat('en-GB', {
    day: 'numeric',
    month: 'short',
    ...(year ? { year: 'numeric' } : {}),
    timeZone: 'UTC',
  }).format(new Date(`${date}T00:00:00Z`));

/** The day of a moment: `Tue 12 Jan`, or `Day 3 (Wed)` where no day was asked for. */
export function dayText(moment: ShownMoment, relative: boolean, year = false): string {
  const weekday = capital(moment.weekday);
  return relative ? `Day ${moment.day} (${weekday})` : `${weekday} ${dated(moment.date, year)}`;
}

/** The same in as few letters as an axis has room for. */
export const shortDay = (moment: ShownMoment, relative: boolean): string =>
  relative ? String(moment.day) : dated(moment.date, false);

/** Days from the first to the last, both counted. */
export function daysOf({ moments, start, end }: Pick<ShownTimetable, 'moments' | 'start' | 'end'>): number {
  return (moments[end]?.day ?? 1) - (moments[start]?.day ?? 1) + 1;
}
