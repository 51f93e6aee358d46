import type { Outcome } from '../../model/evidence/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import type { Bill } from '../cost/index.ts';
import { judge } from '../rules/judge.ts';
import type { Finding } from '../rules/rule.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { type OneMore, oneMoreOf } from './advice.ts';
import { anotherDay } from './another-day.ts';
import { billOfCase } from './bill.ts';
import { peopleNames } from './duties.ts';
import { fewerOrMore } from './fewer.ts';
import { timeFindings } from './findings.ts';
import { nearMisses } from './near-miss.ts';
import { type CaseCost, costOfCase } from './price.ts';
import { type Session, sessionsOf } from './sessions.ts';
import { type NoTimetable, type Timetable, type TimetableOptions, timetableOf } from './timetable.ts';
import { type ChainLink, chainOf, impossibleWords, type Limits, limitsOf } from './words.ts';

export { momentWords, resourceWords, timeWords } from './words.ts';
export type { ChainLink, Limits, NoTimetable, Session, Timetable, TimetableOptions };
export { timetableOf };

/** Hours that stand where nobody told any: said wherever the plan is shown. */
export const assumedHours = (zone: string): OpeningHours => ({
  zone,
  week: Object.fromEntries(['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, ['09:00-17:00']])),
});

/** A method as planned for one case. */
export interface Plan {
  worked: WorkedMethod;
  findings: readonly Finding[];
  timetable: Timetable | NoTimetable;
  /** Who works, as the sessions name them. */
  people: readonly string[];
  /** Empty where there is no timetable. */
  sessions: readonly Session[];
  critical: readonly ChainLink[];
  limits?: Limits;
  /** What one more pair of hands or tool would do, of those that hold the plan up. */
  advice: readonly OneMore[];
  /** Why there is no timetable, and the smallest changes that would make one. */
  impossible?: { why: string; changes: readonly string[] };
  bill: Outcome<Bill>;
  cost: Outcome<CaseCost>;
}

/** Why there is no plan and what would make one: a later end or one more day is planned with before it is offered. */
async function impossibleOf(
  worked: WorkedMethod,
  options: TimetableOptions,
  none: NoTimetable,
): Promise<NonNullable<Plan['impossible']>> {
  const { end, ...endless } = options;
  const later = end === undefined ? undefined : await timetableOf(worked, endless);
  const told = impossibleWords(worked, none, later?.ok ? later : undefined);
  const eased = none.closed ? [] : await fewerOrMore(worked, options, none);
  if (eased.length > 0 || told.changes.length > 0 || none.closed)
    return { ...told, changes: [...eased, ...told.changes] };
  const day = await anotherDay(worked, options);
  return day === undefined ? told : { ...told, changes: [day] };
}

/** Plan a worked method: its findings, its timetable with sessions and the chain that makes it long, its bill. */
export async function planOf(worked: WorkedMethod, options: TimetableOptions): Promise<Plan> {
  const timetable = await timetableOf(worked, options);
  const people = peopleNames(options.people, worked.shop);
  const bill = billOfCase(worked, worked.shop);
  const cost = bill.ok ? costOfCase(worked, bill.value) : bill;
  const critical = timetable.ok ? chainOf(worked, timetable.made, timetable.planned.critical) : [];
  const limits = timetable.ok ? limitsOf(critical) : undefined;
  return {
    worked,
    findings: [
      ...judge(worked),
      ...timeFindings(worked, timetable),
      ...(timetable.ok ? await nearMisses(worked, options, timetable) : []),
    ],
    timetable,
    people,
    sessions: timetable.ok ? sessionsOf(timetable, people) : [],
    critical,
    advice:
      timetable.ok && limits
        ? await oneMoreOf(worked, options, timetable, limits, cost.ok ? cost.value : undefined)
        : [],
    ...(limits ? { limits } : {}),
    ...(timetable.ok ? {} : { impossible: await impossibleOf(worked, options, timetable) }),
    bill,
    cost,
  };
}
