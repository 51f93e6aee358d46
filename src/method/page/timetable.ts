import { dayOfPlan } from '../plan/closed.ts';
import type { AdvisedPlan, Plan, Session, Timetable } from '../plan/index.ts';
import { timeWords } from '../plan/index.ts';
import { stamp } from '../plan/report.ts';
import type { ShownBound, ShownMoment, ShownTimetable, ShownWait, ShownWork } from './types.ts';

/** A wait shorter than this is a pause in the work: nobody leaves the shop for it. min. */
const leastWait = 5;

/** Waits of the method that nobody stands by: from the end of a step, or its start, to the earliest moment at which the next may follow. */
export function waitsOf({
  worked,
  timetable,
}: {
  worked: Pick<Plan['worked'], 'steps'>;
  timetable: Pick<Timetable, 'steps'>;
}): ShownWait[] {
  const steps = new Map(timetable.steps.map((step) => [step.id, step]));
  return worked.steps.flatMap(({ id, after }) =>
    after.flatMap(({ step, counts, least = 0 }): ShownWait[] => {
      const earlier = steps.get(step);
      if (least < leastWait || !earlier) return [];
      const start = counts === 'start' ? earlier.start : earlier.end;
      return [{ step, until: id, start, end: start + least }];
    }),
  );
}

/**
 * From when and until when each piece of a step may be begun, after the step before it as it is planned: one bound for each run of pieces that were done together.
 */
function boundsOf({ worked, timetable }: Plan & { timetable: Timetable }): ShownBound[] {
  const works = new Map(timetable.steps.map(({ id, work }) => [id, work]));
  const each = new Map(worked.steps.map(({ id, hands }) => [id, hands.each]));
  return worked.steps.flatMap(({ id, after }) =>
    after.flatMap(({ step, counts, least, most }): ShownBound[] => {
      const earlier = works.get(step) ?? [];
      if ((!least && most === undefined) || earlier.length === 0) return [];
      const runs = new Map<string, { pieces: readonly [number, number]; first: number; last: number }>();
      for (const { pieces, start, end } of earlier) {
        const known = runs.get(`${pieces}`);
        const [first, last] = [Math.min(start, known?.first ?? start), Math.max(end, known?.last ?? end)];
        runs.set(`${pieces}`, { pieces, first, last });
      }
      return [...runs.values()].map(({ pieces, first, last }) => {
        // As it is planned: a wait counts from the last of the pieces, a window from the first of them.
        const from = counts === 'start' ? first : last;
        const firstDone = pieces[0] === pieces[1] ? last : Math.min(last, first + (each.get(step) ?? 0));
        return {
          step,
          until: id,
          pieces,
          counts,
          ...(least ? { least, earliest: from + least } : {}),
          ...(most === undefined ? {} : { most, latest: (counts === 'start' ? first : firstDone) + most }),
        };
      });
    }),
  );
}

function workOf(plan: Plan, sessions: readonly Session[]): ShownTimetable['sessions'] {
  const { worked, critical } = plan;
  const held = new Set(worked.steps.flatMap(({ record }) => record.holds?.map(({ tool }) => tool) ?? []));
  const byId = new Map(worked.steps.map((step) => [step.id, step]));
  // Of one person alone nobody need be told apart.
  const several = plan.people.length > 1;
  return sessions.map(({ start, end, work, free }) => ({
    start,
    end,
    ...(free.length > 0 ? { free } : {}),
    work: work.map(({ step, pieces, start: from, end: to, by, goesOn }): ShownWork => {
      const { record, people = 1 } = byId.get(step) ?? {};
      return {
        step,
        pieces,
        start: from,
        end: to,
        critical: critical.some((link) => link.step === step && link.start <= from && link.end >= to),
        tools: [
          ...(record?.tools ?? []).filter((name) => !held.has(name)),
          ...(record?.holds ?? []).map(({ tool }) => tool),
        ],
        people,
        ...(several ? { by } : {}),
        ...(goesOn ? { goesOn } : {}),
      };
    }),
  }));
}

/** The timetable of a plan as plain data. */
export function shownTimetable(
  plan: (Plan | AdvisedPlan) & { timetable: Timetable },
  told: Pick<ShownTimetable, 'zone' | 'relative' | 'assumedHours' | 'assumedPeople'>,
): ShownTimetable {
  const { timetable, critical, limits, sessions } = plan;
  const advice = 'advice' in plan ? plan.advice : [];
  const { start, end, open, proved, lowerBound, secondWays } = timetable;
  const shown = workOf(plan, sessions);
  const waits = waitsOf(plan);
  const bounds = boundsOf(plan);
  const within = open.filter((span) => span.end > start && span.start < end);
  const firstDay = timetable.momentAt(start).date;
  const named = new Set([
    start,
    end,
    ...shown.flatMap((session) => [
      session.start,
      session.end,
      ...session.work.flatMap((work) => [work.start, work.end]),
    ]),
    ...waits.flatMap((wait) => [wait.start, wait.end]),
    ...bounds.flatMap(({ earliest, latest }) => [earliest, latest].flatMap((minute) => minute ?? [])),
    ...shown.flatMap(({ free = [] }) => free.flatMap((idle) => [idle.start, idle.end])),
    ...within.flatMap((span) => [span.start, span.end]),
    ...timetable.steps.flatMap((step) => [step.start, step.end]),
    ...critical.flatMap((link) => [link.start, link.end]),
  ]);
  const moments = Object.fromEntries(
    [...named].map((minute): [number, ShownMoment] => {
      const { date, weekday, time } = timetable.momentAt(minute);
      return [minute, { date, weekday, time, day: dayOfPlan(firstDay, date) }];
    }),
  );
  return {
    ...told,
    start,
    end,
    zero: stamp(timetable, 0),
    moments,
    steps: timetable.steps.map(({ id, start: from, end: to, hands, slack }) => ({
      id,
      start: from,
      end: to,
      hands,
      slack,
    })),
    sessions: shown,
    waits,
    bounds,
    people: plan.people,
    open: within.map((span) => ({ start: span.start, end: span.end })),
    critical,
    ...(limits ? { limits } : {}),
    advice: advice.map(({ words }) => words),
    secondWays: secondWays.map(({ step, after, do: way }) => ({ step, after, do: way })),
    proved,
    ...(proved
      ? {}
      : {
          known: `Best found, not proved: no plan is shorter than ${timeWords(lowerBound)}, this one takes ${timeWords(end - start)}.`,
        }),
  };
}
