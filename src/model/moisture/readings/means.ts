import { months } from '../months.ts';
import type { AirReading } from '../rooms.ts';
import { calendar, isoDay } from './dates.ts';

/** From this many days on, a log is shown by month; below, by week. */
const monthlyFrom = 70;
/** Up to this many days, a log is shown by day. */
const dailyUpTo = 10;
/** Up to this many rows, every row is kept. */
export const rowsKept = 24;
/** Months of separate years are kept apart up to this many; beyond, all Januaries are one. */
const monthsKept = 24;
/** A month with fewer days than this is named in the note. */
const fewDays = 10;

/** A log by month, week or day, and a sentence that says how. */
export interface Means {
  readings: AirReading[];
  note: string;
}

interface Group {
  label: string;
  days: Set<number>;
  count: number;
  temperature: number;
  humidity: number;
}

/** Mean of a group to 0.01, which is finer than any sensor and keeps an address short. */
function mean(sum: number, count: number): number {
  return Math.round((sum / count) * 100) / 100;
}

function grouped(rows: readonly AirReading[], days: readonly number[], labelOf: (day: number) => string): Group[] {
  const groups = new Map<string, Group>();
  const order = rows.map((_, index) => index).sort((one, other) => (days[one] as number) - (days[other] as number));
  for (const index of order) {
    const row = rows[index] as AirReading;
    const day = days[index] as number;
    const label = labelOf(day);
    const group = groups.get(label) ?? { label, days: new Set(), count: 0, temperature: 0, humidity: 0 };
    group.days.add(day);
    group.count += 1;
    group.temperature += row.temperature;
    group.humidity += row.humidity;
    groups.set(label, group);
  }
  return [...groups.values()];
}

function readingsOf(groups: readonly Group[]): AirReading[] {
  return groups.map(({ label, count, temperature, humidity }) => ({
    label,
    temperature: mean(temperature, count),
    humidity: mean(humidity, count),
  }));
}

/**
 * A dated log as means: by month from 70 days on, by week below, by day up to 10 days.
 *
 * The mean of a log's humidity hides its swings; wood averages them too, a little above what the mean gives.
 *
 * @param rows one a line of the log, in any order, at least one
 * @param days the day number of each row
 */
export function meansOf(rows: readonly AirReading[], days: readonly number[]): Means {
  let first = days[0] as number;
  let last = first;
  for (const day of days) {
    first = Math.min(first, day);
    last = Math.max(last, day);
  }
  const from = `${rows.length} rows from ${isoDay(first)} to ${isoDay(last)}`;
  const spanned = last - first + 1;
  if (spanned <= dailyUpTo) {
    return { readings: readingsOf(grouped(rows, days, isoDay)), note: `${from}, as daily means.` };
  }
  if (spanned < monthlyFrom) {
    const week = (day: number) => `week of ${isoDay(day - ((day - first) % 7))}`;
    return { readings: readingsOf(grouped(rows, days, week)), note: `${from}, as weekly means.` };
  }
  const separate = grouped(rows, days, (day) => {
    const { year, month } = calendar(day);
    return `${months[month]} ${year}`;
  });
  if (separate.length <= monthsKept) {
    const single = new Set(separate.map(({ label }) => label.slice(0, 3))).size === separate.length;
    const groups = single ? separate.map((group) => ({ ...group, label: group.label.slice(0, 3) })) : separate;
    return { readings: readingsOf(groups), note: `${from}, as monthly means.${thinMonths(groups)}` };
  }
  const all = grouped(rows, days, (day) => months[calendar(day).month] as string);
  const groups = months.flatMap((label) => all.filter((group) => group.label === label));
  return {
    readings: readingsOf(groups),
    note: `${from}, as monthly means over ${Math.round(spanned / 365.25)} years.${thinMonths(groups)}`,
  };
}

function thinMonths(groups: readonly Group[]): string {
  const thin = groups.filter(({ days }) => days.size < fewDays);
  if (thin.length === 0) return '';
  const named = thin.map(({ label, days }) => `${label} (${days.size} ${days.size === 1 ? 'day' : 'days'})`);
  return ` Few days in ${named.join(', ')}.`;
}
