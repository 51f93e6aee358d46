/** How finely a clock time is worth saying, by how far it is off, s. */
const steps = [
  { within: 2 * 3600, minutes: 5 },
  { within: 12 * 3600, minutes: 15 },
  { within: Number.POSITIVE_INFINITY, minutes: 60 },
] as const;

/** s: farther off than this a day of the week alone could be either of two. */
const weekOf = 6 * 24 * 3600;

/** Add seconds to a moment; what the clock then shows where summer time begins or ends is left to the browser. */
const later = (moment: Date, seconds: number): Date => new Date(moment.getTime() + seconds * 1000);

/** The nearest clock time on whole steps of so many minutes. */
const onSteps = (moment: Date, minutes: number): Date => {
  const over = moment.getMinutes() + moment.getSeconds() / 60;
  return later(moment, (Math.round(over / minutes) * minutes - over) * 60);
};

type HourCycle = NonNullable<Intl.DateTimeFormatOptions['hourCycle']>;

// To make a format takes a phone longer than to write fifty times by it. They write what the reader's clock shows as if it were UTC, so that none
// holds on to a time zone that its reader has left.
const formats = new Map<string, Intl.DateTimeFormat>();
const hourCycles = new Map<string | undefined, HourCycle>();

function formatOf(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = JSON.stringify(options);
  const made = formats.get(key) ?? new Intl.DateTimeFormat('en-GB', options);
  formats.set(key, made);
  return made;
}

/** Whether a locale counts 12 or 24 hours, and from which. */
function hourCycleOf(locale: string | undefined): HourCycle {
  const known =
    hourCycles.get(locale) ?? new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions().hourCycle;
  hourCycles.set(locale, known ?? 'h23');
  return known ?? 'h23';
}

/**
 * The clock time of something that happens a while after a start: `Sat 6 pm`, with the date where it is a week off or more.
 *
 * @param start when the clock of the timeline began
 * @param after s from there
 * @param locale whose clock, 12 or 24 hours, and whose order of day and month; the browser's own unless told
 */
export function clockTime(start: Date, after: number, locale?: string): string {
  const minutes = steps.find(({ within }) => after <= within)?.minutes ?? 60;
  const at = onSteps(later(start, after), minutes);
  const hourCycle = hourCycleOf(locale);
  const clock = formatOf({
    weekday: 'short',
    ...(after > weekOf ? { day: 'numeric', month: 'short' } : {}),
    hour: 'numeric',
    ...(at.getMinutes() === 0 && hourCycle.startsWith('h1') ? {} : { minute: '2-digit' }),
    hourCycle,
    timeZone: 'UTC',
  });
  const shown = Date.UTC(at.getFullYear(), at.getMonth(), at.getDate(), at.getHours(), at.getMinutes());
  const part = Object.fromEntries(clock.formatToParts(shown).map(({ type, value }) => [type, value]));
  const { weekday, day, month, hour, minute, dayPeriod } = part;
  const time = [minute === undefined ? hour : `${hour}:${minute}`, dayPeriod].filter(Boolean).join(' ');
  return [weekday, day, month, time].filter(Boolean).join(' ');
}

const two = (number: number) => String(number).padStart(2, '0');

/** A day at the reader's own clock: 2026-11-29. */
export const localDay = (at: Date = new Date()): string =>
  `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;

/** The text of a `datetime-local` field for a moment, in the browser's own time, on the nearest quarter of an hour. */
export function fieldText(moment: Date): string {
  const at = onSteps(moment, 15);
  return `${localDay(at)}T${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** The moment that such a field holds, or undefined where it is empty or half typed. */
export function momentOf(text: string): Date | undefined {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text)) return undefined;
  const moment = new Date(text);
  return Number.isNaN(moment.getTime()) ? undefined : moment;
}
