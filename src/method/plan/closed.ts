import { amount, listed } from '../../model/quantity/index.ts';
import type { PlanClock } from '../schedule/calendar.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { weekdays } from '../schedule/hours.ts';

/** A stretch of time in which nobody is ever there. */
export interface Closed {
  /** Why, in a sentence. */
  why: string;
}

const day = 24 * 60;

/** The first few days and how many more. */
function daysWords(days: readonly string[]): string {
  const shown = days.slice(0, 4);
  if (days.length > shown.length) return `${shown.join(', ')} and ${days.length - shown.length} more`;
  return listed(shown);
}

/** Whether a day of the calendar has hours by its day of the week. */
function hasHours({ week }: OpeningHours, date: string): boolean {
  const name = weekdays[(new Date(`${date}T00:00:00Z`).getUTCDay() + 6) % 7];
  return name !== undefined && (week?.[name]?.length ?? 0) > 0;
}

/** Day of a plan that a date is, from 1 for its first. */
export const dayOfPlan = (firstDay: string, date: string): number =>
  Math.round((Date.parse(date) - Date.parse(firstDay)) / 86_400_000) + 1;

/** `Tue 2027-01-12 18:30` of a minute of a clock; `day 2, Tue 18:30` where nobody named a day to begin on. */
export function momentText(clock: PlanClock, minutes: number): string {
  const { weekday, date, time } = clock.momentAt(minutes);
  const named = `${weekday.charAt(0).toUpperCase()}${weekday.slice(1)}`;
  const { firstDay } = clock;
  return firstDay === undefined ? `${named} ${date} ${time}` : `day ${dayOfPlan(firstDay, date)}, ${named} ${time}`;
}

/**
 * Why a shop is never open from the plan's zero to its horizon: holidays on each of its days, sessions before or behind, or no day of its week.
 *
 * @param horizon minutes from zero
 */
export function closedThroughout(clock: PlanClock, hours: OpeningHours, horizon: number): Closed {
  const [from, to] = [clock.momentAt(0).date, clock.momentAt(horizon).date];
  const holidays = [...(hours.holidays ?? [])]
    .sort()
    .filter((date) => date >= from && date <= to && hasHours(hours, date));
  const sessions = [...(hours.sessions ?? [])].map((text) => text.slice(0, 10)).sort();
  const last = sessions.filter((date) => date < from).at(-1);
  const next = sessions.find((date) => date > to);
  const reasons = [
    ...(holidays.length > 0
      ? [`${daysWords(holidays)} ${holidays.length === 1 ? 'is a holiday' : 'are holidays'} of the calendar`]
      : []),
    ...(last === undefined ? [] : [`its last session was on ${last}`]),
    ...(next === undefined ? [] : [`its next session is on ${next}`]),
  ];
  const reason =
    reasons.length > 0 ? reasons.join('; ') : `none of its days comes in these ${amount(horizon / day, 'd', 2)}`;
  return {
    why: `The shop is never open between ${momentText(clock, 0)} and ${momentText(clock, horizon)}: ${reason}.`,
  };
}
