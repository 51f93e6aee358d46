import { expect, test } from 'vitest';
import type { ProblemOfMethod, Sitting } from '../../../src/method/plan/activities.ts';
import { bundled } from '../../../src/method/plan/bundle.ts';
import { checkSchedule, type Planned, type Problem } from '../../../src/method/schedule/index.ts';

const sitting = (step: string, at: number): Sitting => ({
  id: `${step} ${at}`,
  step,
  pieces: [at, at],
  setUp: 0,
  each: 10,
  lanes: 1,
});

/** Level two boards and sand two, ten minutes each, with some pairs of hands. */
function levelAndSand(change: Partial<Problem> = {}): ProblemOfMethod {
  const sittings = [sitting('level', 1), sitting('level', 2), sitting('sand', 1), sitting('sand', 2)];
  const lags = [
    { from: 'level 1', to: 'level 2', kind: 'start-start' as const, least: 0 },
    { from: 'sand 1', to: 'sand 2', kind: 'start-start' as const, least: 0 },
    { from: 'level 1', to: 'sand 1', kind: 'end-start' as const, least: 0 },
    { from: 'level 2', to: 'sand 2', kind: 'end-start' as const, least: 0 },
  ];
  const problem: Problem = {
    activities: sittings.map(({ id }) => ({ id, duration: 10, splittable: false, uses: { hands: 1 } })),
    lags,
    holds: [],
    resources: { hands: 1 },
    calendars: [],
    horizon: 1000,
    ...change,
  };
  return { problem, sittings, lags };
}

/** A plan that is found, by the starts of its sittings. */
const found = (starts: Readonly<Record<string, number>>): Planned => {
  const placements = Object.entries(starts).map(([id, start]) => ({ id, pieces: [{ start, end: start + 10 }] }));
  const last = Math.max(...placements.map(({ pieces }) => pieces[0]?.end ?? 0));
  return {
    ok: true,
    placements,
    makespan: last,
    lowerBound: last,
    proved: true,
    slack: {},
    critical: [],
    first: 0,
    last,
    nodes: 1,
  };
};
const startsOf = ({ placements }: Planned) =>
  Object.fromEntries(placements.map(({ id, pieces }) => [id, pieces[0]?.start]));

test('of two plans as short the one stands that does a step to all pieces before the next', () => {
  const made = levelAndSand();
  const turns = found({ 'level 1': 0, 'level 2': 20, 'sand 1': 10, 'sand 2': 30 });
  const { made: told, planned } = bundled(made, turns, { nodes: 500 });
  expect(startsOf(planned)).toEqual({ 'level 1': 0, 'level 2': 10, 'sand 1': 20, 'sand 2': 30 });
  expect(checkSchedule(made.problem, planned.placements)).toEqual([]);
  expect([planned.makespan, planned.proved, planned.lowerBound]).toEqual([40, true, 40]);
  expect(told.lags).toEqual(told.problem.lags);
});

test('turns that make a plan shorter stay', () => {
  // The second board comes only after twenty minutes.
  const made = levelAndSand({ earliest: { 'level 2': 20 } });
  const turns = found({ 'level 1': 0, 'level 2': 20, 'sand 1': 10, 'sand 2': 30 });
  expect(bundled(made, turns, { nodes: 500 })).toEqual({ made, planned: turns });
});

test('two people side by side are not in turns', () => {
  const made = levelAndSand({ resources: { hands: 2 } });
  const plan = found({ 'level 1': 0, 'level 2': 10, 'sand 1': 10, 'sand 2': 20 });
  expect(bundled(made, plan, { nodes: 500 })).toEqual({ made, planned: plan });
});
