import { minutesOfClock, type OpeningHours, weekdays } from './hours.ts';
import { type Calendar, ProblemError, type Span } from './problem.ts';
import { joined } from './track.ts';

type Dates = typeof Temporal;

/** The browser's own dates where it has them, else the library's, loaded only then. */
async function dates(): Promise<Dates> {
  const own = (globalThis as { Temporal?: Dates }).Temporal;
  return own ?? ((await import('temporal-polyfill')).Temporal as unknown as Dates);
}

/** A minute of a plan on the clock of its zone. */
export interface Moment {
  /** Year-month-day. */
  readonly date: string;
  /** Hours and minutes, 24 h. */
  readonly time: string;
  /** Monday to Sunday as `mon` to `sun`. */
  readonly weekday: (typeof weekdays)[number];
  /** Such as +02:00; it tells the two hours apart that the clock shows twice in autumn. */
  readonly offset: string;
  /** The instant in universal time, such as 2027-01-12T16:30:00Z. */
  readonly instant: string;
}

/** The bridge between minutes from a plan's zero and the clocks of one time zone. */
export interface PlanClock {
  readonly zone: string;
  /** The plan's zero as an instant in universal time. */
  readonly zero: string;
  /** Where nobody named a day: the date that is day 1 of the plan. Words then say `day 3, Wed 18:30`, and no date. */
  readonly firstDay?: string;
  /**
   * Minutes from zero of a local time, '2027-01-12 18:30'. A time that the clock skips in spring is taken as much later; one that it shows twice
   * in autumn is the first of the two.
   *
   * @throws ProblemError where the text is no local time
   */
  minutesAt(local: string): number;
  /** What the clock shows so many minutes after zero. */
  momentAt(minutes: number): Moment;
  /**
   * Open hours as minutes from zero, within [0, horizon].
   *
   * @throws ProblemError where the hours are of another zone
   */
  openSpans(hours: OpeningHours, horizon: number): Span[];
  /** The same as a calendar of a problem. */
  calendar(id: string, hours: OpeningHours, horizon: number): Calendar;
}

const day = 24 * 60;

/**
 * A clock for plans of one time zone. Waits count elapsed minutes; openings are clock times, so a day of the change to summer time is an hour
 * shorter between them, and one of the change back an hour longer.
 *
 * @param zone a name of the IANA time zone database
 * @param zero the plan's zero: a local time, '2027-01-11 08:00', or an instant that ends in Z
 * @throws ProblemError where zone or zero cannot be read
 */
export async function planClock(zone: string, zero: string): Promise<PlanClock> {
  const { PlainDateTime, Instant, Duration } = await dates();
  const localTime = (field: string, text: string) => {
    try {
      if (!/^\d{4}-\d\d-\d\d[ T]\d\d:\d\d$/.test(text)) throw new RangeError();
      return PlainDateTime.from(text.replace(' ', 'T'), { overflow: 'reject' });
    } catch {
      throw new ProblemError(
        `${field}: “${text}” is not allowed; a day of the calendar and a time of the clock of 24 hours is, such as 2027-01-12 18:30. Rewrite it in that form.`,
      );
    }
  };
  const instantOf = (local: Temporal.PlainDateTime) => {
    try {
      return local.toZonedDateTime(zone).toInstant();
    } catch {
      throw new ProblemError(
        `zone: “${zone}” is not allowed; a name of the IANA time zone database is, such as Europe/Helsinki. Look yours up there.`,
      );
    }
  };
  const asInstant = /Z$/.test(zero);
  const origin = asInstant ? instantAt(Instant, zero) : instantOf(localTime('zero', zero));
  instantOf(PlainDateTime.from('2000-01-01T00:00'));
  const start = origin.epochMilliseconds;
  const minutesOf = (local: Temporal.PlainDateTime) =>
    Math.round((instantOf(local).epochMilliseconds - start) / 60_000);
  const zonedAt = (minutes: number) => origin.add(Duration.from({ minutes })).toZonedDateTimeISO(zone);

  const openSpans = (hours: OpeningHours, horizon: number): Span[] => {
    if (hours.zone !== zone)
      throw new ProblemError(
        `zone: “${hours.zone}” is not allowed; the zone of the plan is, ${zone}. Give all calendars of a plan the same zone.`,
      );
    const spans: Span[] = [];
    const add = (date: Temporal.PlainDate, text: string) => {
      const [opens, closes] = text.split('-').map((clock) => {
        const minutes = minutesOfClock(clock);
        const at = date.add({ days: Math.floor(minutes / day) });
        return minutesOf(at.toPlainDateTime({ hour: Math.floor((minutes % day) / 60), minute: minutes % 60 }));
      });
      const span = { start: Math.max(0, opens as number), end: Math.min(horizon, closes as number) };
      if (span.start < span.end) spans.push(span);
    };
    const closed = new Set(hours.holidays ?? []);
    const lastDate = zonedAt(horizon).toPlainDate().add({ days: 1 });
    for (let date = zonedAt(0).toPlainDate().subtract({ days: 1 }); ; date = date.add({ days: 1 })) {
      if (lastDate.since(date).sign < 0) break;
      if (closed.has(date.toString())) continue;
      for (const text of hours.week?.[weekdays[date.dayOfWeek - 1] as (typeof weekdays)[number]] ?? []) add(date, text);
    }
    for (const text of hours.sessions ?? []) {
      const date = localTime('sessions', `${text.slice(0, 10)} 00:00`).toPlainDate();
      add(date, text.slice(11));
    }
    return joined(spans.sort((one, two) => one.start - two.start));
  };

  return {
    zone,
    zero: origin.toString(),
    minutesAt: (local) => minutesOf(localTime('time', local)),
    momentAt: (minutes) => {
      const zoned = zonedAt(minutes);
      return {
        date: zoned.toPlainDate().toString(),
        time: zoned.toPlainTime().toString().slice(0, 5),
        weekday: weekdays[zoned.dayOfWeek - 1] as (typeof weekdays)[number],
        offset: zoned.offset,
        instant: zoned.toInstant().toString(),
      };
    },
    openSpans,
    calendar: (id, hours, horizon) => ({ id, open: openSpans(hours, horizon) }),
  };
}

function instantAt(instant: Dates['Instant'], text: string): Temporal.Instant {
  try {
    return instant.from(text);
  } catch {
    throw new ProblemError(
      `zero: “${text}” is not allowed; an instant in universal time is, such as 2027-01-11T06:00:00Z. Rewrite it in that form.`,
    );
  }
}
