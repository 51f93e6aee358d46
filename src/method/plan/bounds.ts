import type { ProblemOfMethod } from './activities.ts';

/** Between which minutes of the plan a step is done, whatever else is asked of it. */
export interface StepBounds {
  from?: number;
  to?: number;
}

/** A problem in which some steps are kept between minutes of their own; what was bound before stays bound. */
export function bounded(made: ProblemOfMethod, within: ReadonlyMap<string, StepBounds>): ProblemOfMethod {
  const earliest: Record<string, number> = { ...made.problem.earliest };
  const latest: Record<string, number> = { ...made.problem.latest };
  for (const { id, step } of made.sittings) {
    const { from, to } = within.get(step) ?? {};
    if (from !== undefined) earliest[id] = Math.max(from, earliest[id] ?? from);
    if (to !== undefined) latest[id] = Math.min(to, latest[id] ?? to);
  }
  return { ...made, problem: { ...made.problem, earliest, latest } };
}
