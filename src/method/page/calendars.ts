import type { OpeningHours } from '../schedule/hours.ts';
import type { MethodPage, MethodQuestion } from './types.ts';

/** Hours that may be chosen for a plan, by the name that addresses have for them. */
export interface PlanCalendar {
  id: string;
  title: string;
  hours: OpeningHours;
}

/**
 * What a chosen calendar asks: its hours, from the first of its single sessions on unless a day was named; where it is the one that the method is
 * taught by, as many people as the method says, and students from the first of their evenings on.
 */
export function askedWith(
  { id, hours }: PlanCalendar,
  { taught }: Pick<MethodPage, 'taught'>,
  { start, end, people }: Pick<MethodQuestion, 'start' | 'end' | 'people'>,
): Pick<MethodQuestion, 'hours' | 'start' | 'people' | 'first'> {
  const sessions = [...(hours.sessions ?? [])].sort();
  const named = start ?? (end === undefined ? sessions[0]?.slice(0, 10) : undefined);
  const own = taught?.calendar === id ? taught : undefined;
  const hands = people ?? own?.people;
  const alone = own ? sessions.length - own.evenings : 0;
  const first = alone > 0 ? sessions[alone] : undefined;
  return {
    hours,
    ...(named === undefined ? {} : { start: named }),
    ...(hands === undefined ? {} : { people: hands }),
    ...(first === undefined ? {} : { first }),
  };
}

/**
 * The sessions of a calendar as a class writes them, a line each: students are there for the last of them, and before those the teacher prepares.
 *
 * @param evenings at how many of the sessions the students are there
 */
export function classLines({ hours }: Pick<PlanCalendar, 'hours'>, evenings: number): string[] {
  const sessions = [...(hours.sessions ?? [])].sort();
  return sessions.map((session, at) => (at < sessions.length - evenings ? `${session} teacher only` : session));
}
