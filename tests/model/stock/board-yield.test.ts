import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardYield, type YieldPlan, type YieldRequest } from '../../../src/model/stock/board-yield.ts';
import { compareScores, type Score, scoreOf, yieldProblem } from '../../../src/model/stock/yield-problem.ts';

const request: YieldRequest = {
  boards: [{ name: 'ash', length: 2000, width: 250, defects: [] }],
  blanks: [{ name: 'tray', length: 450, width: 220, count: 4 }],
  kerf: 3,
  endTrim: 25,
  snipe: 0,
  planed: 'boards',
};
const solved = (change: Partial<YieldRequest>): YieldPlan => {
  const outcome = boardYield({ ...request, ...change });
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};

/** Every way to put every blank into every span, or nowhere: the best score there is. */
function exhaustive(of: YieldRequest): Score {
  const problem = yieldProblem(of);
  const assignment = new Int32Array(problem.items.length).fill(-1);
  const room = problem.spans.map((span) => span.room);
  let best: Score = { area: 0, stock: 0, offcut: 0 };
  const place = (at: number): void => {
    const item = problem.items[at];
    if (!item) {
      const score = scoreOf(problem, assignment);
      if (compareScores(score, best) > 0) best = score;
      return;
    }
    for (let span = -1; span < room.length; span += 1) {
      if (span >= 0) {
        const { board } = problem.spans[span] as (typeof problem.spans)[number];
        if ((room[span] as number) < item.size || (problem.stock[board]?.width as number) < item.width) continue;
        room[span] = (room[span] as number) - item.size;
      }
      assignment[at] = span;
      place(at + 1);
      if (span >= 0) room[span] = (room[span] as number) + item.size;
    }
    assignment[at] = -1;
  };
  place(0);
  return best;
}

/** What must hold of any plan: blanks inside clear wood, apart by the saw, wide enough, and counted right. */
function expectSound(of: YieldRequest, plan: YieldPlan): void {
  const cut = of.blanks.map(() => 0);
  for (const { board, cuts, offcuts } of plan.boards) {
    const stock = of.boards[board] as YieldRequest['boards'][number];
    const end = Math.max(of.endTrim, of.planed === 'boards' ? of.snipe : 0);
    expect(cuts.length).toBeGreaterThan(0);
    for (const { blank, from, to } of cuts) {
      const size = of.blanks[blank] as YieldRequest['blanks'][number];
      cut[blank] = (cut[blank] as number) + 1;
      expect(size.width).toBeLessThanOrEqual(stock.width + 0.01);
      expect(to - from).toBeCloseTo(size.length + (of.planed === 'blanks' ? 2 * of.snipe : 0), 2);
      expect(from).toBeGreaterThanOrEqual(end - 0.01);
      expect(to).toBeLessThanOrEqual(stock.length - end + 0.01);
      for (const defect of stock.defects) {
        const [low, high] = [Math.min(defect.from, defect.to), Math.max(defect.from, defect.to)];
        expect(to <= low + 0.01 || from >= high - 0.01).toBe(true);
      }
    }
    const pieces = [...cuts, ...offcuts].sort((a, b) => a.from - b.from);
    for (const [at, piece] of pieces.entries()) {
      const next = pieces[at + 1];
      if (next) expect(next.from - piece.to).toBeGreaterThanOrEqual(of.kerf - 0.01);
    }
  }
  expect(plan.cut).toEqual(cut);
  for (const [at, blank] of of.blanks.entries())
    expect((plan.missing[at] as number) + (cut[at] as number)).toBe(blank.count);
}

describe('a board cut up by hand', () => {
  test('four trays, four saw cuts, the rest in one piece', () => {
    const plan = solved({});
    expect(plan.cut).toEqual([4]);
    expect(plan.proved).toBe(true);
    expect(plan.longestOffcut).toBeCloseTo(1950 - 4 * 453, 6);
  });
  test('the kerf is counted: five do not fit where five lengths would', () => {
    expect(
      solved({
        endTrim: 0,
        boards: [{ name: 'b', length: 2250, width: 250, defects: [] }],
        blanks: [{ name: 't', length: 450, width: 220, count: 5 }],
      }).cut,
    ).toEqual([4]);
    expect(
      solved({
        endTrim: 0,
        boards: [{ name: 'b', length: 2262, width: 250, defects: [] }],
        blanks: [{ name: 't', length: 450, width: 220, count: 5 }],
      }).cut,
    ).toEqual([5]);
  });
  test('inches are exact: two blanks of 24 in and one cut of 1/8 in from 48 1/8 in', () => {
    const inch = 25.4;
    const plan = solved({
      kerf: inch / 8,
      endTrim: 0,
      boards: [{ name: 'b', length: 48.125 * inch, width: 250, defects: [] }],
      blanks: [{ name: 't', length: 24 * inch, width: 200, count: 2 }],
    });
    expect(plan.cut).toEqual([2]);
  });
  test('snipe costs the ends of boards, or of every blank', () => {
    const blanks = [{ name: 't', length: 450, width: 220, count: 4 }];
    expect(solved({ snipe: 60, blanks }).cut).toEqual([4]);
    expect(solved({ snipe: 100, blanks }).cut).toEqual([3]);
    expect(solved({ snipe: 60, planed: 'blanks', blanks }).cut).toEqual([3]);
  });
  test('a knot parts the board, and a hairline check costs one saw cut', () => {
    const knot = solved({
      boards: [{ name: 'b', length: 2000, width: 250, defects: [{ from: 700, to: 760, kind: 'knot' }] }],
    });
    expect(knot.cut).toEqual([3]);
    const check = solved({
      endTrim: 0,
      boards: [{ name: 'b', length: 903, width: 250, defects: [{ from: 451.5, to: 451.5, kind: 'check' }] }],
    });
    expect(check.cut).toEqual([2]);
    const short = solved({
      endTrim: 0,
      boards: [{ name: 'b', length: 902, width: 250, defects: [{ from: 451, to: 451 }] }],
    });
    expect(short.cut).toEqual([0]);
  });
  test('a tie leaves the longest offcut: waste is gathered in one span', () => {
    const plan = solved({
      endTrim: 0,
      boards: [{ name: 'b', length: 2040, width: 250, defects: [{ from: 1000, to: 1040 }] }],
      blanks: [{ name: 't', length: 450, width: 220, count: 2 }],
    });
    expect(plan.longestOffcut).toBeCloseTo(1000, 6);
  });
  test('the smaller board is cut into where both would do', () => {
    const plan = solved({
      boards: [
        { name: 'long', length: 3000, width: 250, defects: [] },
        { name: 'short', length: 2000, width: 250, defects: [] },
      ],
    });
    expect(plan.boards.map(({ board }) => board)).toEqual([1]);
  });
  test('a blank wider than every board is missing, and said', () => {
    const plan = solved({
      blanks: [
        { name: 'wide', length: 300, width: 400, count: 2 },
        { name: 'tray', length: 450, width: 220, count: 1 },
      ],
    });
    expect(plan.missing).toEqual([2, 0]);
    expect(plan.mostYield).toBe(true);
  });
  test.each([
    ['boards', { boards: [] }],
    ['boards', { boards: [{ name: 'b', length: Number.NaN, width: 10, defects: [] }] }],
    ['blanks', { blanks: [{ name: 't', length: 100, width: 10, count: 0.5 }] }],
    ['blanks', { blanks: [{ name: 't', length: 100, width: 10, count: 1e6 }] }],
    ['blanks', { blanks: [{ name: 't', length: -1, width: 10, count: 1 }] }],
    ['kerf', { kerf: -1 }],
    ['snipe', { snipe: Number.NaN }],
  ] as const)('refuses %s that cannot be', (field, change) => {
    const outcome = boardYield({ ...request, ...(change as Partial<YieldRequest>) });
    expect(!outcome.ok && outcome.errors[0]?.field).toBe(field);
  });
});

describe('the plan against exhaustive search', () => {
  const defect = fc.record({ from: fc.integer({ min: 0, max: 1200 }), to: fc.integer({ min: 0, max: 1200 }) });
  const board = fc.record({
    name: fc.constant('b'),
    length: fc.constantFrom(600, 900, 1000, 1200, 1201.5),
    width: fc.constantFrom(150, 200, 250),
    defects: fc.array(defect, { maxLength: 2 }),
  });
  const blank = fc.record({
    name: fc.constant('t'),
    length: fc.constantFrom(150, 200, 210.3, 300, 301, 405.4, 500),
    width: fc.constantFrom(140, 150, 190, 240),
    count: fc.integer({ min: 1, max: 2 }),
  });
  const rack = fc.record({
    boards: fc.array(board, { minLength: 1, maxLength: 3 }),
    blanks: fc.array(blank, { minLength: 1, maxLength: 4 }),
    kerf: fc.constantFrom(0, 3, 3.175),
    endTrim: fc.constantFrom(0, 25),
    snipe: fc.constantFrom(0, 50),
    planed: fc.constantFrom('boards' as const, 'blanks' as const),
  });
  test('gives the same area from the same boards with the same longest offcut', () => {
    fc.assert(
      fc.property(rack, (of) => {
        fc.pre(of.blanks.reduce((sum, { count }) => sum + count, 0) <= 6);
        const plan = solved(of);
        expectSound(of, plan);
        const best = exhaustive(of);
        expect(plan.proved).toBe(true);
        expect(plan.blankArea * 320 ** 2).toBeCloseTo(best.area, 0);
        expect(plan.boardArea * 320 ** 2).toBeCloseTo(best.stock, 0);
        expect(plan.longestOffcut * 320).toBeCloseTo(Math.max(0, best.offcut), 3);
      }),
      { numRuns: 200 },
    );
  });
  test('many blanks for one board of one span: the best filling is found and proved', () => {
    const lengths = fc.array(fc.integer({ min: 120, max: 700 }), { minLength: 10, maxLength: 40 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1500, max: 3500 }), (all, length) => {
        const of = {
          ...request,
          boards: [{ name: 'b', length, width: 250, defects: [] }],
          blanks: all.map((each) => ({ name: 't', length: each, width: 200, count: 1 })),
        };
        const plan = solved(of);
        expectSound(of, plan);
        // Subset sums by a plain set of reachable lengths.
        let sums = new Map([[0, 0]]);
        for (const each of all) {
          const next = new Map(sums);
          for (const [taken, wood] of sums)
            if (taken + each + 3 <= length - 50 + 3)
              next.set(taken + each + 3, Math.max(next.get(taken + each + 3) ?? 0, wood + each));
          sums = next;
        }
        expect(plan.blankArea / 200).toBeCloseTo(Math.max(...sums.values()), 6);
        expect(plan.mostYield).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});

test('a large rack is sound, all of it is found, and it takes under a second', () => {
  let seed = 11;
  const random = () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  const of: YieldRequest = {
    ...request,
    snipe: 60,
    boards: Array.from({ length: 200 }, (_, at) => ({
      name: `b${at}`,
      length: Math.round(1200 + random() * 2400),
      width: Math.round(120 + random() * 200),
      defects: Array.from({ length: Math.floor(random() * 4) }, () => {
        const from = Math.round(random() * 3000);
        return { from, to: from + Math.round(20 + random() * 120) };
      }),
    })),
    blanks: Array.from({ length: 50 }, (_, at) => ({
      name: `t${at}`,
      length: Math.round(250 + random() * 700),
      width: Math.round(100 + random() * 150),
      count: 1,
    })),
  };
  const before = process.cpuUsage();
  const plan = solved(of);
  const { user, system } = process.cpuUsage(before);
  // Time of the processor, so that other work on the machine does not count.
  expect((user + system) / 1000).toBeLessThan(1000);
  expectSound(of, plan);
  expect(plan.mostYield).toBe(true);
  expect(plan.missing.every((count) => count === 0)).toBe(true);
  expect(plan.blankArea / plan.boardArea).toBeGreaterThan(0.8);
});
