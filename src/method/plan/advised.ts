import type { WorkedMethod } from '../case/types.ts';
import { type OneMore, oneMoreOf } from './advice.ts';
import { anotherDay } from './another-day.ts';
import { fewerOrMore } from './fewer.ts';
import type { Plan } from './index.ts';
import { nearMisses } from './near-miss.ts';
import { type NoTimetable, type TimetableOptions, timetableOf, withWays } from './timetable.ts';
import { fewPeople, impossibleWords } from './words.ts';

/** A plan with what further plannings say of it: sessions that are nearly met, what one more of something does, ways to a plan. */
export interface AdvisedPlan extends Plan {
  /** What one more pair of hands or tool would do, of those that hold the plan up. */
  advice: readonly OneMore[];
}

/** What as many people do as the step takes that takes most: planned with, not promised. */
async function withEnough(worked: WorkedMethod, options: TimetableOptions, needed: number): Promise<string> {
  const { ok } = await timetableOf(worked, { ...options, people: needed });
  return ok
    ? `${needed} people instead of ${options.people}: with them there is a plan`
    : `${needed} people instead of ${options.people}; with them there is still no plan in these hours, and the page then says what else it takes`;
}

/** Why there is no plan and what would make one: a later end or one more day is planned with before it is offered. */
async function impossibleOf(
  { worked, options }: Plan,
  none: NoTimetable,
): Promise<NonNullable<AdvisedPlan['impossible']>> {
  const few = none.closed ? undefined : fewPeople(worked, none);
  if (few) return { ...impossibleWords(worked, none), changes: [await withEnough(worked, options, few.needed)] };
  const { end, ...endless } = options;
  const later = end === undefined ? undefined : await timetableOf(worked, endless);
  const told = impossibleWords(worked, withWays(none), later?.ok ? later : undefined);
  const eased = none.closed ? [] : await fewerOrMore(worked, options, none);
  if (eased.length > 0 || told.changes.length > 0 || none.closed)
    return { ...told, changes: [...eased, ...told.changes] };
  const day = await anotherDay(worked, options);
  return day === undefined ? told : { ...told, changes: [day] };
}

/** The same plan with its advice. It takes several times as long as the plan, so that a reader is shown the plan first. */
export async function advised(plan: Plan): Promise<AdvisedPlan> {
  const { worked, options, timetable, limits, cost } = plan;
  if (!timetable.ok) return { ...plan, advice: [], impossible: await impossibleOf(plan, timetable) };
  return {
    ...plan,
    findings: [...plan.findings, ...(await nearMisses(worked, options, timetable))],
    advice: limits ? await oneMoreOf(worked, options, timetable, limits, cost.ok ? cost.value : undefined) : [],
  };
}
