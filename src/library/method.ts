/**
 * Shop methods: `readMethod` reads the text of a file, `workMethod` works it out for one case, `judge` lays the rules over it, and
 * `planOf` gives times, sessions, what to buy and what a piece costs. `readShop` reads the record of a shop.
 */
export type {
  CaseOptions,
  CaseQuantity,
  CaseValue,
  Gap,
  Path,
  WorkedCalculation,
  WorkedLink,
  WorkedMaterial,
  WorkedMethod,
  WorkedNeed,
  WorkedParameter,
  WorkedStep,
  WorkedTool,
  Working,
} from '../method/case/types.ts';
export { workMethod } from '../method/case/work.ts';
export { calendarFile } from '../method/plan/calendar-file.ts';
export {
  type AdvisedPlan,
  advised,
  assumedHours,
  type Plan,
  planOf,
  type Session,
  type Timetable,
  usualPeople,
} from '../method/plan/index.ts';
export { planReport } from '../method/plan/report.ts';
export { planText } from '../method/plan/text.ts';
export { type MethodReading, readMethod } from '../method/read.ts';
export type { MethodRecord } from '../method/record/index.ts';
export { starterMethod } from '../method/record/starter.ts';
export { rules } from '../method/rules/index.ts';
export { judge } from '../method/rules/judge.ts';
export type { Finding, Found, Rule, RuleLevel, RuleWords } from '../method/rules/rule.ts';
export { type HoursFault, type OpeningHours, readOpeningHours } from '../method/schedule/hours.ts';
export { ProblemError } from '../method/schedule/index.ts';
export { readShop, type Shop, type ShopReading } from '../method/shop/index.ts';
export { type DataProblem, problemLine } from '../model/data/problem.ts';
