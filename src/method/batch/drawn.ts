import { waitsOf } from '../page/timetable.ts';
import type { ShownMoment, ShownTimetable } from '../page/types.ts';
import { dayOfPlan } from '../plan/closed.ts';
import { sessionsOf } from '../plan/sessions.ts';
import { instantOf } from './changes.ts';
import type { WorkedBatch } from './state.ts';

/** The timetable of a batch as it is drawn: what was done where it was, what is left where the plan lays it. Times are minutes from the zero of the plan. */
export interface DrawnBatch {
  steps: readonly { id: string; number: number }[];
  timetable: Pick<
    ShownTimetable,
    'start' | 'end' | 'open' | 'moments' | 'sessions' | 'waits' | 'relative' | 'critical'
  >;
  /** The moment at which it is looked at, where it lies within the plan. */
  now?: number;
}

/** The timetable of a batch as plain data; undefined where there is none. */
export function drawnBatch({ timetable, measured: { worked }, state }: WorkedBatch): DrawnBatch | undefined {
  if (!timetable) return undefined;
  const { start, end, open, momentAt } = timetable;
  const firstDay = momentAt(start).date;
  const sessions = sessionsOf(timetable, []).map((session) => ({
    start: session.start,
    end: session.end,
    work: session.work.map(({ step, pieces, start: from, end: to }) => ({
      step,
      pieces,
      start: from,
      end: to,
      critical: false,
      tools: [],
      people: 1,
    })),
  }));
  const named = new Set([start, end, ...sessions.flatMap(({ work }) => work.map((each) => each.start))]);
  const moments = Object.fromEntries(
    [...named].map((minute): [number, ShownMoment] => {
      const { date, weekday, time } = momentAt(minute);
      return [minute, { date, weekday, time, day: dayOfPlan(firstDay, date) }];
    }),
  );
  const now = (Date.parse(state.now) - instantOf(timetable, 0)) / 60_000;
  return {
    steps: worked.steps.map(({ id }, at) => ({ id, number: at + 1 })),
    timetable: {
      start,
      end,
      open: open
        .filter((span) => span.end > start && span.start < end)
        .map((span) => ({ start: span.start, end: span.end })),
      moments,
      sessions,
      waits: waitsOf({ worked, timetable }),
      relative: false,
      critical: [],
    },
    ...(now > start && now < end ? { now } : {}),
  };
}
