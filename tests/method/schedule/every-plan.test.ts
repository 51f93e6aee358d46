import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  applyChange,
  type Constraint,
  checkSchedule,
  type Problem,
  schedule,
} from '../../../src/method/schedule/index.ts';
import { everyPlan } from './exhaustive.ts';
import { randomProblem } from './random-problem.ts';

const nodes = 4000;
const problems = fc.nat(1_000_000).map(randomProblem);

describe('against trying every start of every activity', () => {
  test('the shortest plan is as short, or neither finds one', () => {
    let [planned, impossible] = [0, 0];
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = schedule(problem, { nodes });
        const shortest = everyPlan(problem);
        if (!plan.ok) {
          impossible += 1;
          expect([plan.why.proved, shortest]).toEqual([true, undefined]);
          return;
        }
        planned += 1;
        expect(checkSchedule(problem, plan.placements)).toEqual([]);
        expect([plan.makespan, plan.lowerBound, plan.proved]).toEqual([shortest, shortest, true]);
      }),
      { numRuns: 600 },
    );
    expect(Math.min(planned, impossible)).toBeGreaterThan(80);
  });

  test('planned backwards, the first start is as late', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = schedule(problem, { nodes, anchor: 'end' });
        const latest = everyPlan(problem, true);
        expect(plan.ok ? plan.first : undefined).toBe(latest);
        if (plan.ok) expect(checkSchedule(problem, plan.placements)).toEqual([]);
      }),
      { numRuns: 250 },
    );
  });

  test('a smallest change makes it possible, and a minute or unit less does not', () => {
    let tried = 0;
    const kinds = new Set<string>();
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = schedule(problem, { nodes });
        if (plan.ok) return;
        for (const change of plan.why.changes) {
          if (!change.whole) continue;
          tried += 1;
          kinds.add(change.kind);
          expect(change.smallest).toBe(true);
          expect(everyPlan(applyChange(problem, change))).toBeDefined();
          const less = { ...change, by: change.by - 1 };
          expect(less.by === 0 ? undefined : everyPlan(applyChange(problem, less))).toBeUndefined();
        }
      }),
      { numRuns: 250 },
    );
    expect(tried).toBeGreaterThan(50);
    expect(kinds.size).toBeGreaterThan(4);
  });
});

/** The problem with nothing asked but what is named, and nobody in it but those whom that concerns. */
function only(problem: Problem, named: readonly Constraint[]): Problem {
  const has = (test: (each: Constraint) => boolean) => named.some(test);
  const lags = problem.lags.flatMap((lag, at) => {
    const least = has((each) => each.kind === 'least' && each.lag === at) ? (lag.least ?? 0) : Number.NEGATIVE_INFINITY;
    const most = has((each) => each.kind === 'most' && each.lag === at) ? lag.most : undefined;
    if (least === Number.NEGATIVE_INFINITY && most === undefined) return [];
    return [{ from: lag.from, to: lag.to, kind: lag.kind, least, ...(most === undefined ? {} : { most }) }];
  });
  const holds = problem.holds.filter((_, at) => has((each) => each.kind === 'hold' && each.hold === at));
  const table = (kind: 'earliest' | 'latest') =>
    Object.fromEntries(
      Object.entries(problem[kind] ?? {}).filter(([id]) => has((each) => each.kind === kind && each.activity === id)),
    );
  const concerned = new Set([
    ...lags.flatMap(({ from, to }) => [from, to]),
    ...holds.flatMap(({ from, to }) => [from, to]),
    ...named.flatMap((each) => ('activity' in each ? [each.activity] : [])),
  ]);
  // Where the horizon is not named anybody may be the one who has not enough of it.
  const bounded = has(({ kind }) => kind === 'horizon');
  return {
    ...problem,
    activities: problem.activities
      .filter(({ id }) => bounded || concerned.has(id))
      .map(({ id, duration, splittable, uses, calendar }) => ({
        id,
        duration,
        splittable,
        uses: Object.fromEntries(
          Object.entries(uses).filter(([name]) =>
            has((each) => each.kind === 'use' && each.activity === id && each.resource === name),
          ),
        ),
        ...(calendar !== undefined && has((each) => each.kind === 'calendar' && each.activity === id)
          ? { calendar }
          : {}),
      })),
    lags,
    holds,
    horizon: bounded ? problem.horizon : problem.horizon + 12,
    earliest: table('earliest'),
    latest: table('latest'),
  };
}

test('what is named as the cause cannot be kept, and without any one of it can', () => {
  let tried = 0;
  fc.assert(
    fc.property(problems, (problem) => {
      const plan = schedule(problem, { nodes });
      if (plan.ok) return;
      const { constraints } = plan.why;
      expect(constraints.length).toBeGreaterThan(0);
      expect(plan.why.minimal).toBe(true);
      const asked = only(problem, constraints);
      if (asked.activities.length > 4 && asked.horizon > problem.horizon) return;
      tried += 1;
      expect(everyPlan(asked)).toBeUndefined();
      for (const left of constraints) {
        const rest = {
          ...only(
            problem,
            constraints.filter((each) => each !== left),
          ),
          horizon: 60,
        };
        const kept = left.kind === 'horizon' ? rest : { ...rest, horizon: asked.horizon };
        expect(schedule(kept, { nodes }).ok).toBe(true);
      }
    }),
    { numRuns: 250 },
  );
  expect(tried).toBeGreaterThan(25);
});
