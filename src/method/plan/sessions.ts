import type { Span } from '../schedule/index.ts';
import type { Timetable, Work } from './timetable.ts';

/** A stretch of open hours in which something is done. */
export interface Session {
  /** Minutes from the plan's zero: of the opening, not of the work. */
  start: number;
  end: number;
  /** In the order in which it is begun. */
  work: readonly Work[];
}

/** What to do in each session, in order. */
export function sessionsOf({ steps, open }: Pick<Timetable, 'steps' | 'open'>): Session[] {
  const all = steps.flatMap(({ work }) => work).filter(({ start, end }) => end > start);
  const within = (span: Span) =>
    all.filter(({ start, end }) => start >= span.start && end <= span.end).sort((one, two) => one.start - two.start);
  return open.flatMap((span) => {
    const work = within(span);
    return work.length === 0 ? [] : [{ start: span.start, end: span.end, work }];
  });
}
