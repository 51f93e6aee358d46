import { describe, expect, test } from 'vitest';
import {
  type Activity,
  applyChange,
  checkSchedule,
  type Lag,
  type Planned,
  type Problem,
  ProblemError,
  schedule,
  type Unplanned,
} from '../../../src/method/schedule/index.ts';

const act = (id: string, duration: number, more: Partial<Activity> = {}): Activity => ({
  id,
  duration,
  uses: {},
  splittable: false,
  ...more,
});
const wait = (from: string, to: string, more: Partial<Lag> = {}): Lag => ({ from, to, kind: 'end-start', ...more });
const make = (activities: Activity[], more: Partial<Problem> = {}): Problem => ({
  activities,
  lags: [],
  holds: [],
  resources: {},
  calendars: [],
  horizon: 1000,
  ...more,
});
const hours = (...open: [number, number][]) => open.map(([start, end]) => ({ start, end }));

function planned(problem: Problem, options: { anchor?: 'start' | 'end'; at?: number } = {}): Planned {
  const plan = schedule(problem, { nodes: 2000, ...options });
  if (!plan.ok) throw new Error(JSON.stringify(plan.why));
  expect(checkSchedule(problem, plan.placements)).toEqual([]);
  return plan;
}
const starts = (plan: Planned) => Object.fromEntries(plan.placements.map(({ id, pieces }) => [id, pieces[0]?.start]));

function refused(problem: Problem): Unplanned['why'] {
  const plan = schedule(problem, { nodes: 2000 });
  if (plan.ok) throw new Error('There is a plan.');
  return plan.why;
}

describe('a network of seven events with published starts and slack', () => {
  // Worked example 'Draw the network for the events in Table 1', studylib.net document 8378728, Table 2; hours taken as minutes.
  const problem = make([act('A', 6), act('B', 2), act('C', 2), act('D', 3), act('E', 4), act('F', 2), act('G', 1)], {
    lags: ['AB', 'AC', 'BD', 'CF', 'DE', 'FE', 'EG'].map(([from = '', to = '']) => wait(from, to)),
  });

  test('earliest starts, slack and the critical path A B D E G of 16', () => {
    const plan = planned(problem);
    expect([plan.makespan, plan.lowerBound, plan.proved]).toEqual([16, 16, true]);
    expect(starts(plan)).toEqual({ A: 0, B: 6, D: 8, E: 11, G: 15, C: 6, F: 8 });
    expect(plan.slack).toEqual({ A: 0, B: 0, D: 0, E: 0, G: 0, C: 1, F: 1 });
    expect(plan.critical.map(({ activity }) => activity).reverse()).toEqual(['A', 'B', 'D', 'E', 'G']);
    expect(plan.critical.map(({ heldBy }) => heldBy.kind)).toEqual(['lag', 'lag', 'lag', 'lag', 'start']);
  });

  test('planned backwards from 16, the latest starts', () => {
    const plan = planned(problem, { anchor: 'end', at: 16 });
    expect(starts(plan)).toEqual({ A: 0, B: 6, D: 8, E: 11, G: 15, C: 7, F: 9 });
  });
});

describe('worked by hand', () => {
  test('one saw for two cuts: the second waits for the first, and the chain says so', () => {
    const plan = planned(
      make([act('one', 10, { uses: { saw: 1 } }), act('two', 20, { uses: { saw: 1 } })], { resources: { saw: 1 } }),
    );
    expect(plan.makespan).toBe(30);
    const [last, first] = plan.critical;
    expect(last?.heldBy).toEqual({ kind: 'resource', resource: 'saw', by: first?.activity });
    expect(first?.heldBy).toEqual({ kind: 'start' });
    expect(plan.slack).toEqual({ one: 0, two: 0 });
  });

  test('of two things that both take, the chain names the one of which there is too little', () => {
    const uses = { hands: 2, extractors: 2 };
    const plan = planned(
      make([act('one', 10, { uses }), act('two', 20, { uses })], { resources: { hands: 4, extractors: 2 } }),
    );
    expect(plan.critical[0]?.heldBy).toMatchObject({ kind: 'resource', resource: 'extractors' });
  });

  test('work stops at closing time and goes on at the next opening; the chain names the opening', () => {
    const shop = { id: 'shop', open: hours([60, 120], [180, 300]) };
    const plan = planned(
      make([act('sand', 90, { calendar: 'shop', splittable: true }), act('oil', 80, { calendar: 'shop' })], {
        lags: [wait('sand', 'oil')],
        calendars: [shop],
        horizon: 300,
      }),
    );
    expect(plan.placements[0]?.pieces).toEqual(hours([60, 120], [180, 210]));
    expect(plan.placements[1]?.pieces).toEqual(hours([210, 290]));
    expect(plan.critical[1]).toMatchObject({ heldBy: { kind: 'start' }, opening: { calendar: 'shop', wait: 60 } });
    expect(plan.slack).toEqual({ sand: 0, oil: 0 });
  });

  test('what may not be split waits for an opening that is long enough', () => {
    const calendars = [{ id: 'shop', open: hours([0, 60], [100, 200]) }];
    const plan = planned(make([act('pour', 70, { calendar: 'shop' })], { calendars, horizon: 200 }));
    expect(starts(plan)).toEqual({ pour: 100 });
    expect(plan.critical[0]?.opening).toEqual({ calendar: 'shop', wait: 100 });
  });

  test('openings that touch are one', () => {
    const calendars = [{ id: 'shop', open: hours([0, 60], [60, 100]) }];
    const plan = planned(make([act('pour', 70, { calendar: 'shop' })], { calendars, horizon: 200 }));
    expect(starts(plan)).toEqual({ pour: 0 });
  });

  test('a longest wait makes the first come later: resin mixed no earlier than it can be poured', () => {
    const plan = planned(
      make([act('mix', 5), act('pour', 10, { calendar: 'shop' })], {
        lags: [wait('mix', 'pour', { most: 20 })],
        calendars: [{ id: 'shop', open: hours([100, 160]) }],
      }),
    );
    expect(starts(plan)).toEqual({ mix: 75, pour: 100 });
    expect(plan.critical.map(({ activity }) => activity)).toEqual(['pour', 'mix'].slice(0, plan.critical.length));
  });

  test('a mould is held through the night, a splittable job gives its bench back', () => {
    const calendars = [{ id: 'day', open: hours([0, 60], [100, 160]) }];
    const problem = make(
      [
        act('pour', 10),
        act('demould', 10, { calendar: 'day' }),
        act('pour-2', 10),
        act('sand', 80, { calendar: 'day', splittable: true, uses: { bench: 1 } }),
        act('talk', 30, { uses: { bench: 1 } }),
      ],
      {
        lags: [wait('pour', 'demould', { least: 80 })],
        holds: [
          { resource: 'mould', units: 1, from: 'pour', to: 'demould' },
          { resource: 'mould', units: 1, from: 'pour-2', to: 'pour-2' },
        ],
        resources: { mould: 1, bench: 1 },
        calendars,
        earliest: { 'pour-2': 1 },
      },
    );
    const plan = planned(problem);
    expect(plan.makespan).toBe(120);
    expect(starts(plan)).toMatchObject({ pour: 0, demould: 100, 'pour-2': 110, sand: 0, talk: 60 });
    expect(plan.critical[0]).toMatchObject({
      activity: 'pour-2',
      heldBy: { kind: 'resource', resource: 'mould', by: 'demould' },
    });
  });

  test.each([
    ['end-start', 5, 15],
    ['start-start', 5, 5],
    ['end-end', 5, 8],
    ['start-end', 5, 0],
    ['end-end', -20, 0],
  ] as const)('a wait %s of at least %i', (kind, least, start) => {
    const plan = planned(make([act('a', 10), act('b', 7)], { lags: [{ from: 'a', to: 'b', kind, least }] }));
    expect(starts(plan)).toEqual({ a: 0, b: start });
  });

  test('nothing to do is a plan without time', () => {
    expect(planned(make([]))).toMatchObject({ placements: [], makespan: 0, lowerBound: 0, proved: true, critical: [] });
  });

  test('a limit that is too low for a proof says so, and gives a bound', () => {
    const jobs = [7, 6, 5, 5, 4, 4, 3, 3, 2, 2].map((duration, at) =>
      act(`job-${at}`, duration, { uses: { bench: 1 } }),
    );
    const problem = make(jobs, {
      resources: { bench: 3 },
      lags: [wait('job-9', 'job-0'), wait('job-8', 'job-1')],
    });
    const quick = schedule(problem, { nodes: 1 }) as Planned;
    const long = planned(problem);
    expect(long.proved).toBe(true);
    expect(quick.lowerBound).toBeLessThanOrEqual(long.makespan);
    expect(quick.makespan).toBeGreaterThanOrEqual(long.makespan);
    expect(schedule(problem, { nodes: 300 })).toEqual(schedule(problem, { nodes: 300 }));
  });
});

describe('why there is no plan, and the smallest way out', () => {
  test('a cure longer than the longest wait after it', () => {
    const problem = make([act('pour', 10), act('cure', 100), act('coat', 10)], {
      lags: [wait('pour', 'cure'), wait('cure', 'coat'), wait('pour', 'coat', { most: 60 })],
    });
    const why = refused(problem);
    expect(why.proved).toBe(true);
    expect(why.constraints).toEqual([
      { kind: 'least', lag: 0 },
      { kind: 'least', lag: 1 },
      { kind: 'most', lag: 2 },
    ]);
    expect(why.changes).toEqual([{ kind: 'most', lag: 2, by: 40, whole: true, smallest: true }]);
    planned(applyChange(problem, { kind: 'most', lag: 2, by: 40 }));
  });

  test('a job longer than any opening', () => {
    const calendars = [{ id: 'evening', open: hours([0, 150], [1000, 1150]) }];
    const why = refused(make([act('pour', 165, { calendar: 'evening' })], { calendars, horizon: 2000 }));
    expect(why.constraints).toEqual([{ kind: 'calendar', activity: 'pour', calendar: 'evening' }]);
    expect(why.changes).toEqual([
      { kind: 'opening', calendar: 'evening', opens: 0, by: 15, whole: true, smallest: true },
    ]);
  });

  test('more clamps than there are', () => {
    const why = refused(make([act('glue', 10, { uses: { clamps: 6 } })], { resources: { clamps: 4 } }));
    expect(why.constraints).toEqual([{ kind: 'use', activity: 'glue', resource: 'clamps' }]);
    expect(why.changes).toEqual([{ kind: 'capacity', resource: 'clamps', by: 2, whole: true, smallest: true }]);
  });

  test('a window that closes before the next opening', () => {
    const problem = make([act('coat', 10), act('next', 10, { calendar: 'shop' })], {
      lags: [wait('coat', 'next', { least: 60, most: 90 })],
      calendars: [{ id: 'shop', open: hours([0, 60], [300, 360]) }],
      latest: { coat: 20 },
      horizon: 400,
    });
    const why = refused(problem);
    expect(why.constraints).toContainEqual({ kind: 'most', lag: 0 });
    expect(why.constraints).toContainEqual({ kind: 'latest', activity: 'coat' });
    expect(why.changes).toEqual([
      { kind: 'opening', calendar: 'shop', opens: 0, by: 20, whole: true, smallest: true },
      { kind: 'latest', activity: 'coat', by: 190, whole: true, smallest: true },
      { kind: 'most', lag: 0, by: 190, whole: true, smallest: true },
    ]);
  });

  test('an earliest start that is too late for what comes after it', () => {
    const problem = make([act('a', 10), act('b', 10)], {
      lags: [wait('a', 'b')],
      earliest: { a: 15 },
      latest: { b: 30 },
    });
    expect(refused(problem).changes).toEqual([
      { kind: 'earliest', activity: 'a', by: 5, whole: true, smallest: true },
      { kind: 'latest', activity: 'b', by: 5, whole: true, smallest: true },
    ]);
  });

  test('each evening too short for one of two jobs: one evening much longer, or both a little', () => {
    const calendars = [{ id: 'evening', open: hours([0, 100], [1000, 1100]) }];
    const jobs = ['a', 'b'].map((id) => act(id, 110, { calendar: 'evening', uses: { pot: 1 } }));
    expect(refused(make(jobs, { calendars, resources: { pot: 1 }, horizon: 1200 })).changes).toEqual([
      { kind: 'hours', calendar: 'evening', by: 10, whole: true, smallest: true },
      { kind: 'opening', calendar: 'evening', opens: 0, by: 120, whole: true, smallest: true },
    ]);
  });

  test('too little time in all: a longer horizon or one more saw', () => {
    const jobs = ['a', 'b', 'c'].map((id) => act(id, 10, { uses: { saw: 1 } }));
    const why = refused(make(jobs, { resources: { saw: 1 }, horizon: 25 }));
    expect(why.changes).toEqual([
      { kind: 'horizon', by: 5, whole: true, smallest: true },
      { kind: 'capacity', resource: 'saw', by: 1, whole: true, smallest: true },
    ]);
  });

  test('waits that go round in a circle: only then is a shorter least wait offered', () => {
    const why = refused(make([act('a', 10), act('b', 10)], { lags: [wait('a', 'b'), wait('b', 'a')] }));
    expect(why.constraints).toHaveLength(2);
    expect(why.changes.map(({ kind, by }) => [kind, by])).toEqual([
      ['least', 20],
      ['least', 20],
    ]);
  });

  test('two conflicts: the ways out of one say that another is left', () => {
    const problem = make([act('a', 10, { uses: { saw: 2 } }), act('b', 10), act('c', 10)], {
      resources: { saw: 1 },
      lags: [wait('b', 'c', { least: 20, most: 10 })],
    });
    const why = refused(problem);
    expect(why.changes.length).toBeGreaterThan(0);
    expect(why.changes.every(({ whole }) => !whole)).toBe(true);
  });

  test('of two conflicts the one that is named may be a hold that stands after others', () => {
    const problem = make([act('a', 10), act('b', 10), act('c', 10)], {
      resources: { bench: 5, mould: 1, clamps: 1 },
      holds: ['bench', 'mould', 'clamps'].map((resource, at) => ({
        resource,
        units: at + 1,
        from: 'abc'[at] as string,
        to: 'abc'[at] as string,
      })),
    });
    const why = refused(problem);
    const ways = [
      { kind: 'capacity', resource: 'mould', by: 1, smallest: true },
      { kind: 'capacity', resource: 'clamps', by: 2, smallest: true },
    ];
    const [one] = why.changes;
    expect(why.changes).toHaveLength(1);
    expect(ways.map((way) => ({ ...way, whole: false }))).toContainEqual(one);
    const rest = refused(applyChange(problem, one as (typeof why.changes)[number]));
    expect(rest.changes).toHaveLength(1);
    expect(ways.map((way) => ({ ...way, whole: true }))).toContainEqual(rest.changes[0]);
  });

  test('no plan before the wanted end', () => {
    const plan = schedule(make([act('a', 30)]), { nodes: 100, anchor: 'end', at: 20 });
    expect(plan.ok ? undefined : plan.why.changes).toEqual([{ kind: 'horizon', by: 10, whole: true, smallest: true }]);
  });

  test('where nobody asks why, only the proof is told', () => {
    const problem = make([act('glue', 10, { uses: { clamps: 6 } })], { resources: { clamps: 4 } });
    expect(schedule(problem, { nodes: 100, explain: false })).toEqual({
      ok: false,
      why: { proved: true, constraints: [], minimal: false, changes: [] },
    });
  });

  test('without a proof nothing is called impossible', () => {
    const jobs = Array.from({ length: 5 }, (_, at) => act(`job-${at}`, 5, { uses: { bench: 1 } }));
    const plan = schedule(make(jobs, { resources: { bench: 2 }, horizon: 14 }), { nodes: 0 });
    expect(plan.ok ? undefined : plan.why).toEqual({ proved: false, constraints: [], minimal: false, changes: [] });
  });
});

describe('a problem that contradicts itself is refused with the field, the value and a way out', () => {
  const good = make([act('a', 10, { uses: { saw: 1 } }), act('b', 5)], { resources: { saw: 1 } });
  test.each<[string, Problem, RegExp]>([
    ['a fraction of a minute', { ...good, activities: [act('a', 1.5)] }, /activities\.a\.duration: 1\.5 .*whole/],
    ['an id twice', { ...good, activities: [act('a', 1), act('a', 2)] }, /activities: "a" .*once/],
    ['an unknown resource', make([act('a', 1, { uses: { lathe: 1 } })]), /activities\.a\.uses: "lathe"/],
    ['an unknown calendar', make([act('a', 1, { calendar: 'night' })]), /activities\.a\.calendar: "night"/],
    ['a wait to nobody', { ...good, lags: [wait('a', 'z')] }, /lags\.0\.to: "z" .*: a, b/],
    [
      'a hold of nothing',
      { ...good, holds: [{ resource: 'x', units: 1, from: 'a', to: 'b' }] },
      /holds\.0\.resource: "x"/,
    ],
    [
      'hours out of order',
      { ...good, calendars: [{ id: 'c', open: hours([50, 60], [0, 10]) }] },
      /calendars\.c\.open\.1/,
    ],
    ['a window of nobody', { ...good, earliest: { z: 3 } }, /earliest: "z"/],
    ['no horizon', { ...good, horizon: Number.NaN }, /horizon/],
  ])('%s', (_, problem, text) => {
    expect(() => schedule(problem, { nodes: 10 })).toThrow(ProblemError);
    expect(() => schedule(problem, { nodes: 10 })).toThrow(text);
  });

  test('a wanted end after the horizon', () => {
    expect(() => schedule(good, { nodes: 10, anchor: 'end', at: 2000 })).toThrow(/at: 2000 .*horizon, 1000/);
  });
});
