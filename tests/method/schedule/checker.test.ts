import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSchedule, type Placement, type Problem, schedule } from '../../../src/method/schedule/index.ts';
import { everyPlan } from './exhaustive.ts';
import { randomProblem } from './random-problem.ts';

const problem: Problem = {
  activities: [
    { id: 'a', duration: 4, uses: { saw: 1 }, calendar: 'shop', splittable: true },
    { id: 'b', duration: 2, uses: { saw: 1 }, splittable: false },
    { id: 'c', duration: 0, uses: {}, calendar: 'shop', splittable: false },
  ],
  lags: [{ from: 'a', to: 'b', kind: 'end-start', least: 1, most: 3 }],
  holds: [{ resource: 'mould', units: 1, from: 'a', to: 'b' }],
  resources: { saw: 1, mould: 1 },
  calendars: [
    {
      id: 'shop',
      open: [
        { start: 0, end: 3 },
        { start: 5, end: 9 },
      ],
    },
  ],
  horizon: 20,
  earliest: { a: 1 },
  latest: { b: 12 },
};
const good: Placement[] = [
  {
    id: 'a',
    pieces: [
      { start: 1, end: 3 },
      { start: 5, end: 7 },
    ],
  },
  { id: 'b', pieces: [{ start: 8, end: 10 }] },
  { id: 'c', pieces: [{ start: 3, end: 3 }] },
];
/** The good plan with one activity placed otherwise. */
const but = (id: string, ...pieces: [number, number][]): Placement[] =>
  good.map((each) => (each.id === id ? { id, pieces: pieces.map(([start, end]) => ({ start, end })) } : each));

describe('the checker', () => {
  test('has nothing to say of a plan', () => {
    expect(checkSchedule(problem, good)).toEqual([]);
  });

  test.each<[string, Placement[], RegExp]>([
    ['one left out', good.slice(0, 2), /c is not placed/],
    ['one too many', [...good, { id: 'd', pieces: [{ start: 0, end: 0 }] }], /d is no activity/],
    ['one twice', [...good, ...good.slice(0, 1)], /a is placed twice/],
    ['too little work', but('a', [1, 3], [5, 6]), /worked on for 3 min, not 4/],
    ['before its time', but('a', [0, 3], [5, 6]), /a starts too early/],
    ['after its time', but('b', [11, 13]), /b ends too late/],
    ['work while closed', but('a', [1, 5]), /while shop is closed/],
    ['a rest in open hours', but('a', [1, 2], [5, 8]), /rests in open hours/],
    ['an interruption of what may not be', but('b', [8, 9], [10, 11]), /b is interrupted/],
    ['a moment while closed', but('c', [4, 4]), /c falls at 4/],
    ['too short a wait', but('b', [7, 9]), /at least 1/],
    ['too long a wait', but('b', [11, 12]), /at most 3/],
    ['one saw for two', but('b', [5, 7]), /2 of saw are in use at 5/],
    ['half a minute', but('b', [8.5, 10.5]), /whole minutes/],
    ['no piece', but('b'), /b has no piece/],
  ])('%s', (_, placements, fault) => {
    expect(checkSchedule(problem, placements).join('; ')).toMatch(fault);
  });

  test('a hold beside a hold', () => {
    const holds = [...problem.holds, { resource: 'mould', units: 1, from: 'c', to: 'b' }];
    expect(checkSchedule({ ...problem, holds }, good).join()).toMatch(/^2 of mould are in use at 5, there are 1$/);
  });
});

const problems = fc.nat(1_000_000).map(randomProblem);

test('with every activity as late as its slack allows there still is a plan with the same end', () => {
  let slipped = 0;
  fc.assert(
    fc.property(problems, (random) => {
      const plan = schedule(random, { nodes: 2000 });
      if (!plan.ok) return;
      const earliest = Object.fromEntries(
        plan.placements.map(({ id, pieces }) => [id, (pieces[0]?.start as number) + (plan.slack[id] as number)]),
      );
      if (Object.values(plan.slack).some((slack) => slack > 0)) slipped += 1;
      expect(everyPlan({ ...random, earliest, horizon: plan.makespan })).toBe(plan.makespan);
    }),
    { numRuns: 150 },
  );
  expect(slipped).toBeGreaterThan(30);
});

test('the chain leads from the end to zero, each link bound by the next', () => {
  let [chains, rounds] = [0, 0];
  fc.assert(
    fc.property(problems, (random) => {
      const plan = schedule(random, { nodes: 2000 });
      if (!plan.ok) return;
      chains += 1;
      expect(plan.critical[0]?.end ?? 0).toBe(plan.makespan);
      for (const [at, { heldBy, activity, start, end, opening }] of plan.critical.entries()) {
        const before = plan.critical[at + 1];
        const by = 'by' in heldBy ? heldBy.by : undefined;
        const round = before === undefined && plan.critical.some((link) => link.activity === by);
        if (round) rounds += 1;
        else expect(by).toBe(before?.activity);
        const { pieces: own } = plan.placements.find(({ id }) => id === activity) as Placement;
        expect([own[0]?.start, own.at(-1)?.end]).toEqual([start, end]);
        if (round) continue;
        if (before === undefined) {
          expect(['start', 'earliest']).toContain(heldBy.kind);
          expect(start - (opening?.wait ?? 0)).toBe(random.earliest?.[activity] ?? 0);
        } else if (heldBy.kind === 'resource') {
          const { pieces } = plan.placements.find(({ id }) => id === before.activity) as Placement;
          expect(pieces.map((piece) => piece.end)).toContain(start - (opening?.wait ?? 0));
        } else if (heldBy.kind === 'lag') {
          const { from, kind, least, most } = heldBy.lag;
          const [first, second] = heldBy.part === 'least' ? [before, { start, end }] : [{ start, end }, before];
          expect(from).toBe(heldBy.part === 'least' ? before.activity : activity);
          const wait =
            (kind.endsWith('start') ? second.start : second.end) - (kind.startsWith('end') ? first.end : first.start);
          // Of a wait for an end, or with an opening between, the least that the calendar allows is more than was asked.
          if (opening === undefined && random.activities.every(({ calendar }) => calendar === undefined))
            expect(wait).toBe(heldBy.part === 'least' ? (least ?? 0) : most);
        }
      }
    }),
    { numRuns: 150 },
  );
  // Few are bound to each other both ways, as by holds that end before they begin.
  expect(rounds).toBeLessThan(chains / 10);
});
