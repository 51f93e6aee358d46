import type { WorkedMethod } from '../case/types.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { planClock } from '../schedule/index.ts';
import type { StepBounds } from './bounds.ts';

/** When a class meets, and from when on its students are there. */
export interface StudentHours {
  hours?: OpeningHours;
  /** First day. */
  start?: string;
  /** First session of the class, where any before it is without students. */
  first?: string;
}

/**
 * Which steps need the students there: from the first that tells them what can hurt (all, where none does), in no session without them; what
 * comes before it is done by the first session of the class.
 *
 * @returns undefined where every session is of the class
 */
export async function studentBounds(
  { hours, start, first }: StudentHours,
  { steps }: Pick<WorkedMethod, 'steps'>,
): Promise<ReadonlyMap<string, StepBounds> | undefined> {
  if (!hours || start === undefined || first === undefined) return undefined;
  const clock = await planClock(hours.zone, `${start.slice(0, 10)} 00:00`);
  const begins = clock.minutesAt(first.slice(0, 16));
  const heard = steps.findIndex(({ act }) => act.id === 'brief');
  return new Map(steps.map(({ id }, at) => [id, at < heard ? { to: begins } : { from: begins }]));
}
