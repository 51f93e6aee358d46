/** The order of day and month in a date such as 3/4/2024. */
export type DateOrder = 'day-first' | 'month-first';

const names = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const dayLength = 86_400_000;

/** A date as read: certain, or with two readings of its first two parts. */
type DateParts = { year: number; month: number; day: number } | { year: number; first: number; second: number };

function fullYear(text: string): number {
  const year = Number(text);
  return text.length > 2 ? year : year + (year < 70 ? 2000 : 1900);
}

function monthOf(name: string): number {
  return names.indexOf(name.slice(0, 3).toLowerCase()) + 1;
}

/** Parts of a date that starts a cell; a time of day after it is left aside. */
function partsOf(text: string): DateParts | undefined {
  const cell = text.trim();
  let match = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?!\d)/.exec(cell);
  if (match) return { year: Number(match[1]), month: Number(match[3]), day: Number(match[4]) };
  match = /^(\d{4})(\d{2})(\d{2})(?:$|[T\s])/.exec(cell);
  if (match) return { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  match = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/.exec(cell);
  if (match) return { year: fullYear(match[4] as string), first: Number(match[1]), second: Number(match[3]) };
  match = /^(?:[a-z]{3,9}\.?,?\s+)?(\d{1,2})[-\s.]+([a-z]{3,9})\.?[-\s,]+(\d{4}|\d{2})(?!\d)/i.exec(cell);
  if (match && monthOf(match[2] as string) > 0) {
    return { year: fullYear(match[3] as string), month: monthOf(match[2] as string), day: Number(match[1]) };
  }
  match = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:,\s*|\s+)(\d{4})(?!\d)/i.exec(cell);
  if (match && monthOf(match[1] as string) > 0) {
    return { year: Number(match[3]), month: monthOf(match[1] as string), day: Number(match[2]) };
  }
  // Seconds or milliseconds since 1970, as some loggers write them.
  match = /^(\d{10})(\d{3})?$/.exec(cell);
  if (match) {
    const date = new Date(Number(match[1]) * 1000);
    return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
  }
  return undefined;
}

/** The day's number since 1970-01-01, or undefined where the calendar has no such day. */
function dayNumber(year: number, month: number, day: number): number | undefined {
  if (year < 1950 || year > 2150) return undefined;
  const time = Date.UTC(year, month - 1, day);
  const date = new Date(time);
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day ? time / dayLength : undefined;
}

function dayOf(parts: DateParts, order: DateOrder): number | undefined {
  if ('day' in parts) return dayNumber(parts.year, parts.month, parts.day);
  const [day, month] = order === 'day-first' ? [parts.first, parts.second] : [parts.second, parts.first];
  return dayNumber(parts.year, month, day);
}

function span(days: readonly number[]): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const day of days) {
    low = Math.min(low, day);
    high = Math.max(high, day);
  }
  return high - low;
}

/** Dates of a column as day numbers since 1970-01-01, or the first cell that is not a date. */
export type DatesReading =
  | { ok: true; days: number[]; note: string | undefined }
  | { ok: false; index: number; reason: 'not-a-date' | 'orders-disagree' };

/**
 * Read a column of dates together, since one date alone may not say which part is its day.
 *
 * A part above 12 decides. Where none is, the order that keeps the dates closer together is taken, and where both
 * do alike, the day is taken first; the note says which was assumed.
 */
export function readDates(cells: readonly string[]): DatesReading {
  const all: DateParts[] = [];
  for (const [index, cell] of cells.entries()) {
    const parts = partsOf(cell);
    if (parts === undefined) return { ok: false, index, reason: 'not-a-date' };
    all.push(parts);
  }
  const read = (order: DateOrder) => {
    const days: number[] = [];
    for (const [index, parts] of all.entries()) {
      const day = dayOf(parts, order);
      if (day === undefined) return { days, failed: index };
      days.push(day);
    }
    return { days, failed: undefined };
  };
  const dayFirst = read('day-first');
  const monthFirst = read('month-first');
  if (dayFirst.failed !== undefined && monthFirst.failed !== undefined) {
    const index = Math.max(dayFirst.failed, monthFirst.failed);
    const disagree = dayFirst.failed !== monthFirst.failed;
    return { ok: false, index, reason: disagree ? 'orders-disagree' : 'not-a-date' };
  }
  if (dayFirst.failed !== undefined) return { ok: true, days: monthFirst.days, note: undefined };
  if (monthFirst.failed !== undefined) return { ok: true, days: dayFirst.days, note: undefined };
  if (dayFirst.days.every((day, index) => day === monthFirst.days[index])) {
    return { ok: true, days: dayFirst.days, note: undefined };
  }
  const example = cells.find((_, index) => dayFirst.days[index] !== monthFirst.days[index])?.trim();
  const monthCloser = span(monthFirst.days) < span(dayFirst.days);
  return {
    ok: true,
    days: monthCloser ? monthFirst.days : dayFirst.days,
    note: `Dates such as ${example} were read with the ${monthCloser ? 'month' : 'day'} first, which the file does not prove; write dates as 2024-03-27 to be sure.`,
  };
}

/** A day number as year, month (0 to 11) and day of the month. */
export function calendar(day: number): { year: number; month: number; dayOfMonth: number } {
  const date = new Date(day * dayLength);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth(), dayOfMonth: date.getUTCDate() };
}

/** A day number as 2024-03-27. */
export function isoDay(day: number): string {
  return new Date(day * dayLength).toISOString().slice(0, 10);
}
