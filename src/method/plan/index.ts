import type { Outcome } from '../../model/evidence/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import type { Bill } from '../cost/index.ts';
import { judge } from '../rules/judge.ts';
import type { Finding } from '../rules/rule.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { billOfCase } from './bill.ts';
import { peopleNames } from './duties.ts';
import { timeFindings } from './findings.ts';
import { type CaseCost, costOfCase } from './price.ts';
import { type Session, sessionsOf } from './sessions.ts';
import { type NoTimetable, type Timetable, type TimetableOptions, timetableOf, withWays } from './timetable.ts';
import { type ChainLink, chainOf, impossibleWords, type Limits, limitsOf } from './words.ts';

export { type AdvisedPlan, advised } from './advised.ts';
export { momentWords, resourceWords, timeWords } from './words.ts';
export type { ChainLink, Limits, NoTimetable, Session, Timetable, TimetableOptions };
export { timetableOf, withWays };

/** Hours that stand where nobody told any: said wherever the plan is shown. */
export const assumedHours = (zone: string): OpeningHours => ({
  zone,
  week: Object.fromEntries(['mon', 'tue', 'wed', 'thu', 'fri'].map((day) => [day, ['09:00-17:00']])),
});

/** A method as planned for one case. What only further plannings can say of it, `advised` adds. */
export interface Plan {
  worked: WorkedMethod;
  options: TimetableOptions;
  findings: readonly Finding[];
  timetable: Timetable | NoTimetable;
  /** Who works, as the sessions name them. */
  people: readonly string[];
  /** Empty where there is no timetable. */
  sessions: readonly Session[];
  critical: readonly ChainLink[];
  limits?: Limits;
  /** Why there is no timetable, and the smallest changes that would make one: none before they were planned with. */
  impossible?: { why: string; changes: readonly string[] };
  bill: Outcome<Bill>;
  cost: Outcome<CaseCost>;
}

/** Bill and cost of a case, which do not depend on its times. */
export interface CaseMoney {
  bill: Outcome<Bill>;
  cost: Outcome<CaseCost>;
}

/** What a case needs, and what its pieces cost. */
export function moneyOf(worked: WorkedMethod): CaseMoney {
  const bill = billOfCase(worked, worked.shop);
  return { bill, cost: bill.ok ? costOfCase(worked, bill.value) : bill };
}

/**
 * Plan a worked method: its findings, its timetable with sessions and the chain that makes it long, its bill.
 *
 * @param money where bill and cost of the same case were worked out before
 * @param judged what the rules found in it, where it was judged before
 */
export async function planOf(
  worked: WorkedMethod,
  options: TimetableOptions,
  money: CaseMoney = moneyOf(worked),
  judged: readonly Finding[] = judge(worked),
): Promise<Plan> {
  const timetable = await timetableOf(worked, options);
  const people = peopleNames(options.people, worked.shop);
  const critical = timetable.ok ? chainOf(worked, timetable.made, timetable.planned.critical) : [];
  return {
    worked,
    options,
    findings: [...judged, ...timeFindings(worked, timetable)],
    timetable,
    people,
    sessions: timetable.ok ? sessionsOf(timetable, people) : [],
    critical,
    ...(timetable.ok
      ? { limits: limitsOf(critical) }
      : { impossible: { why: impossibleWords(worked, timetable).why, changes: [] } }),
    ...money,
  };
}

/** Hands that stand where nobody told any: a pour, a flood coat or a glue-up wants more than one pair at once. Said wherever the plan is shown. */
export const usualPeople = 3;
