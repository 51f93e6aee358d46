import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyChange, checkSchedule, schedule } from '../../../src/method/schedule/index.ts';
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
    expect(Math.min(planned, impossible)).toBeGreaterThan(100);
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
    expect(tried).toBeGreaterThan(100);
    expect([...kinds].sort()).toEqual(['capacity', 'earliest', 'horizon', 'latest', 'least', 'most', 'opening']);
  });
});
