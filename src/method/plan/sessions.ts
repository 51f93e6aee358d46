import type { Span } from '../schedule/index.ts';
import { type Duty, dutiesOf, type Free, freeOf } from './duties.ts';
import type { Timetable } from './timetable.ts';

/** A stretch of open hours in which something is done. */
export interface Session {
  /** Minutes from the plan's zero: of the opening, not of the work. */
  start: number;
  end: number;
  /** In the order in which it is begun, each with who does it. */
  work: readonly Duty[];
  /** Who has nothing to do for a while, and when; of two and more people. */
  free: readonly Free[];
}

/**
 * What to do in each session, in order.
 *
 * @param names of the people of the plan
 */
export function sessionsOf({ steps, open }: Pick<Timetable, 'steps' | 'open'>, names: readonly string[]): Session[] {
  const all = dutiesOf(
    steps.flatMap(({ work }) => work),
    names,
  );
  const within = (span: Span) => all.filter(({ start, end }) => start >= span.start && end <= span.end);
  return open.flatMap((span) => {
    const work = within(span);
    if (work.length === 0) return [];
    return [{ start: span.start, end: span.end, work, free: names.length > 1 ? freeOf(work, names) : [] }];
  });
}
