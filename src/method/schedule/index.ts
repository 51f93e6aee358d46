export { type Moment, type PlanClock, planClock } from './calendar.ts';
export { applyChange, type Change } from './change.ts';
export { checkSchedule } from './check.ts';
export type { CriticalLink, HeldBy } from './explain.ts';
export { type HoursFault, type OpeningHours, openingHours, readOpeningHours } from './hours.ts';
export { type Constraint, type Impossible, type Way, withWaysOut } from './impossible.ts';
export {
  type Activity,
  type Calendar,
  type Hold,
  type Lag,
  type LagKind,
  type Placement,
  type Problem,
  ProblemError,
  type Span,
} from './problem.ts';
export { type Planned, type Schedule, type ScheduleOptions, schedule, type Unplanned } from './schedule.ts';
