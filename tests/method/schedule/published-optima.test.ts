import { describe, expect, test } from 'vitest';
import { checkSchedule, type Planned, schedule } from '../../../src/method/schedule/index.ts';
import { optima, readInstance } from './psplib.ts';

/** Instances that the search does not prove within the limit of this test; what it finds is held between its bound and a margin. */
const open: Readonly<Record<string, number>> = { j3013_1: 61 };

describe('eleven instances of PSPLIB (Kolisch and Sprecher 1996)', () => {
  test.each(Object.entries(optima))('%s has its published optimum, %i', (name, optimum) => {
    const problem = readInstance(name);
    const plan = schedule(problem, { nodes: name in open ? 2000 : 8000 }) as Planned;
    expect(plan.ok).toBe(true);
    expect(checkSchedule(problem, plan.placements)).toEqual([]);
    expect(plan.makespan).toBeGreaterThanOrEqual(optimum);
    expect(plan.lowerBound).toBeLessThanOrEqual(optimum);
    expect(plan.proved).toBe(!(name in open));
    expect(plan.makespan).toBeLessThanOrEqual(open[name] ?? optimum);
  });

  test('seen backwards from a wanted end the optimum is the same', () => {
    const problem = readInstance('j305_1');
    const plan = schedule(problem, { nodes: 8000, anchor: 'end', at: 150 }) as Planned;
    expect(checkSchedule(problem, plan.placements)).toEqual([]);
    expect([plan.makespan, plan.first, plan.last, plan.proved]).toEqual([53, 97, 150, true]);
  });
});
