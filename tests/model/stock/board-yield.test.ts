import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardYield, type YieldPlan, type YieldRequest } from '../../../src/model/stock/board-yield.ts';

const request: YieldRequest = {
  boards: [{ name: 'ash', length: 2000, width: 250, defects: [] }],
  blanks: [{ name: 'tray', length: 450, width: 220, count: 4 }],
  kerf: 3,
  endTrim: 25,
  edgeTrim: 0,
  snipe: 0,
  planed: 'boards',
  first: 'crosscut',
};
const solved = (change: Partial<YieldRequest>): YieldPlan => {
  const outcome = boardYield({ ...request, ...change });
  if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
  return outcome.value;
};

const sizeOf = (of: YieldRequest, blank: number) => of.blanks[blank] as YieldRequest['blanks'][number];

/**
 * Every set of blanks that one board gives, found by trying every place of a grid for every section and every piece, and keeping
 * all sets, not only the best. It shares nothing with the search but the rules: sections right across, pieces right through a
 * section, a piece anywhere within its section's length.
 */
function everySet(of: YieldRequest, board: YieldRequest['boards'][number], grid: number): Set<string> {
  const rip = of.first === 'rip';
  const [along, across] = rip ? [board.width, board.length] : [board.length, board.width];
  const [startTrim, sideTrim] = rip ? [of.edgeTrim, of.endTrim] : [of.endTrim, of.edgeTrim];
  const faults = board.defects.map(({ from, to, acrossFrom = 0, acrossTo = board.width }) =>
    rip ? { from: acrossFrom, to: acrossTo, low: from, high: to } : { from, to, low: acrossFrom, high: acrossTo },
  );
  const kinds = of.blanks.map(({ length, width, count }) =>
    rip ? { long: width, wide: length, count } : { long: length, wide: width, count },
  );
  const clear = (from: number, to: number, low: number, high: number) =>
    !faults.some((fault) => fault.from < to && fault.to > from && fault.low < high && fault.high > low);
  const sum = (a: string, b: string) => {
    const right = b.split(',').map(Number);
    return a
      .split(',')
      .map((count, at) => Math.min((kinds[at] as { count: number }).count, Number(count) + (right[at] as number)))
      .join();
  };
  const none = kinds.map(() => 0).join();
  const inSection = (from: number, to: number): Set<string> => {
    const known = new Map<number, Set<string>>();
    const above = (low: number): Set<string> => {
      const before = known.get(low);
      if (before) return before;
      const sets = new Set([none]);
      if (low < across - sideTrim) {
        for (const set of above(low + grid)) sets.add(set);
        for (const [index, { long, wide }] of kinds.entries()) {
          if (low + wide > across - sideTrim) continue;
          let fits = false;
          for (let at = from; at + long <= to; at += grid) fits ||= clear(at, at + long, low, low + wide);
          if (!fits) continue;
          const one = kinds.map((_, at) => (at === index ? 1 : 0)).join();
          for (const set of above(low + wide + of.kerf)) sets.add(sum(one, set));
        }
      }
      known.set(low, sets);
      return sets;
    };
    return above(sideTrim);
  };
  const known = new Map<number, Set<string>>();
  const after = (at: number): Set<string> => {
    const before = known.get(at);
    if (before) return before;
    const sets = new Set([none]);
    if (at < along - startTrim) {
      for (const set of after(at + grid)) sets.add(set);
      for (let to = at + grid; to <= along - startTrim; to += grid) {
        const rest = after(to + of.kerf);
        for (const here of inSection(at, to)) for (const set of rest) sets.add(sum(here, set));
      }
    }
    known.set(at, sets);
    return sets;
  };
  return after(startTrim);
}

/** The most blank area that a rack gives, and the least area of board that gives it, over every set of every board. */
function exhaustive(of: YieldRequest, grid: number): { area: number; stock: number } {
  let sets = new Map<string, number>([[of.blanks.map(() => 0).join(), 0]]);
  for (const board of of.boards) {
    const next = new Map(sets);
    const gives = everySet(of, board, grid);
    for (const [have, stock] of sets) {
      for (const give of gives) {
        const counts = give
          .split(',')
          .map((count, at) => Math.min(sizeOf(of, at).count, Number(count) + Number(have.split(',')[at])));
        const used = stock + board.length * board.width;
        const key = counts.join();
        if (key !== have && used < (next.get(key) ?? Number.POSITIVE_INFINITY)) next.set(key, used);
      }
    }
    sets = next;
  }
  const areaOf = (key: string) =>
    key.split(',').reduce((sum, count, at) => sum + Number(count) * sizeOf(of, at).length * sizeOf(of, at).width, 0);
  const area = Math.max(...[...sets.keys()].map(areaOf));
  return { area, stock: Math.min(...[...sets].filter(([key]) => areaOf(key) === area).map(([, stock]) => stock)) };
}

/** What must hold of any plan: blanks inside clear wood, cut by saws that go right through, a kerf apart, and counted right. */
function expectSound(of: YieldRequest, plan: YieldPlan): void {
  const hair = 0.01;
  const cut = of.blanks.map(() => 0);
  for (const { board, cuts, offcuts } of plan.boards) {
    const stock = of.boards[board] as YieldRequest['boards'][number];
    const end = Math.max(of.endTrim, of.planed === 'boards' ? of.snipe : 0);
    expect(cuts.length).toBeGreaterThan(0);
    for (const { blank, from, to, low, high } of cuts) {
      const size = sizeOf(of, blank);
      cut[blank] = (cut[blank] as number) + 1;
      expect(to - from).toBeCloseTo(size.length + (of.planed === 'blanks' ? 2 * of.snipe : 0), 2);
      expect(high - low).toBeCloseTo(size.width, 2);
    }
    for (const { from, to, low, high } of [...cuts, ...offcuts]) {
      expect(from).toBeGreaterThanOrEqual(end - hair);
      expect(to).toBeLessThanOrEqual(stock.length - end + hair);
      expect(low).toBeGreaterThanOrEqual(of.edgeTrim - hair);
      expect(high).toBeLessThanOrEqual(stock.width - of.edgeTrim + hair);
      for (const defect of stock.defects) {
        const [start, stop] = [Math.min(defect.from, defect.to), Math.max(defect.from, defect.to)];
        const [near, far] = [defect.acrossFrom ?? 0, defect.acrossTo ?? stock.width];
        const apart = to <= start + hair || from >= stop - hair || high <= near + hair || low >= far - hair;
        expect(apart).toBe(true);
      }
    }
    // The first cuts go right across the board, the second right through their section.
    const first = (piece: (typeof cuts)[number]) =>
      of.first === 'rip' ? ([piece.low, piece.high] as const) : ([piece.from, piece.to] as const);
    const second = (piece: (typeof cuts)[number]) =>
      of.first === 'rip' ? ([piece.from, piece.to] as const) : ([piece.low, piece.high] as const);
    const sections = new Map<number, { from: number; to: number }>();
    for (const piece of cuts) {
      const [from, to] = first(piece);
      const known = sections.get(piece.section);
      sections.set(piece.section, { from: Math.min(from, known?.from ?? from), to: Math.max(to, known?.to ?? to) });
    }
    const inOrder = [...sections.values()].sort((a, b) => a.from - b.from);
    for (const [at, section] of inOrder.entries()) {
      const next = inOrder[at + 1];
      if (next) expect(next.from - section.to).toBeGreaterThanOrEqual(of.kerf - hair);
    }
    for (const section of sections.keys()) {
      const pieces = cuts
        .filter((piece) => piece.section === section)
        .map(second)
        .sort((a, b) => a[0] - b[0]);
      for (const [at, piece] of pieces.entries()) {
        const next = pieces[at + 1];
        if (next) expect(next[0] - piece[1]).toBeGreaterThanOrEqual(of.kerf - hair);
      }
    }
    // Nothing that is left over lies in a blank.
    for (const left of offcuts) {
      for (const piece of cuts) {
        const apart =
          left.to <= piece.from + hair ||
          left.from >= piece.to - hair ||
          left.high <= piece.low + hair ||
          left.low >= piece.high - hair;
        expect(apart).toBe(true);
      }
    }
  }
  expect(plan.cut).toEqual(cut);
  for (const [at, blank] of of.blanks.entries())
    expect((plan.missing[at] as number) + (cut[at] as number)).toBe(blank.count);
  // A bound is no bound if the plan is beyond it.
  expect(plan.leastBoardArea).toBeLessThanOrEqual(plan.boardArea + 1);
  expect(plan.mostBlankArea).toBeGreaterThanOrEqual(plan.blankArea - 1);
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
    expect(short.cut).toEqual([1]);
  });
  test('two across from one wide board, and the saw cut between them is counted', () => {
    const boards = [{ name: 'A', length: 1000, width: 300, defects: [] }];
    const blanks = [{ name: 'x', length: 400, width: 140, count: 4 }];
    for (const first of ['crosscut', 'rip'] as const) {
      expect(solved({ boards, blanks, endTrim: 0, first }).cut).toEqual([4]);
      expect(solved({ boards, blanks, endTrim: 0, edgeTrim: 8.5, first }).cut).toEqual([4]);
      expect(solved({ boards, blanks, endTrim: 0, edgeTrim: 8.6, first }).cut).toEqual([2]);
    }
  });
  test('what is not wanted stays whole: one blank of a long board leaves the rest in one piece', () => {
    const boards = [{ name: 'A', length: 2438.4, width: 254, defects: [] }];
    const blanks = [{ name: 'x', length: 609.6, width: 228.6, count: 1 }];
    const plan = solved({ boards, blanks, endTrim: 25, kerf: 3.175 });
    expect(plan.longestOffcut).toBeCloseTo(2438.4 - 25 - (25 + 609.6 + 3.175), 2);
    const ripped = solved({ boards, blanks, endTrim: 25, kerf: 3.175, first: 'rip' });
    expect(ripped.longestOffcut).toBeCloseTo(2438.4 - 25 - (25 + 609.6 + 3.175), 2);
  });
  test('a knot at one edge leaves the wood beside it', () => {
    const boards = [
      {
        name: 'A',
        length: 1000,
        width: 300,
        defects: [{ from: 100, to: 180, acrossFrom: 0, acrossTo: 60, kind: 'knot' }],
      },
    ];
    const blanks = [{ name: 'x', length: 900, width: 140, count: 2 }];
    expect(solved({ boards, blanks, endTrim: 0 }).cut).toEqual([1]);
    const right = [{ ...(boards[0] as (typeof boards)[number]), defects: [{ from: 100, to: 180 }] }];
    expect(solved({ boards: right, blanks, endTrim: 0 }).cut).toEqual([0]);
  });
  test('which cut is first matters: strips of two widths crosscut at different places need the rip first', () => {
    const boards = [{ name: 'A', length: 1000, width: 203, defects: [] }];
    const blanks = [
      { name: 'long', length: 497, width: 100, count: 2 },
      { name: 'short', length: 331, width: 100, count: 3 },
    ];
    expect(solved({ boards, blanks, endTrim: 0, first: 'rip' }).cut).toEqual([2, 3]);
    const crosscut = solved({ boards, blanks, endTrim: 0, first: 'crosscut' });
    expect(crosscut.cut).not.toEqual([2, 3]);
    expect(crosscut.proved).toBe(true);
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
  const grid = 10;
  const whole = (min: number, max: number) => fc.integer({ min, max }).map((tens) => tens * grid);
  const ordered = (max: number) =>
    fc.tuple(whole(0, max), whole(0, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  const boardOf = fc.tuple(whole(6, 14), whole(3, 8)).chain(([length, width]) =>
    fc.record({
      name: fc.constant('b'),
      length: fc.constant(length),
      width: fc.constant(width),
      defects: fc.array(
        fc
          .tuple(ordered(length / grid), ordered(width / grid), fc.boolean())
          .map(([[from, to], [acrossFrom, acrossTo], across]) =>
            across ? { from, to, acrossFrom, acrossTo } : { from, to },
          ),
        { maxLength: 2 },
      ),
    }),
  );
  const blank = fc.record({
    name: fc.constant('t'),
    length: whole(2, 7),
    width: whole(2, 5),
    count: fc.integer({ min: 1, max: 3 }),
  });
  const rack = fc.record({
    boards: fc.array(boardOf, { minLength: 1, maxLength: 3 }),
    blanks: fc.array(blank, { minLength: 1, maxLength: 3 }),
    kerf: fc.constantFrom(0, 10),
    endTrim: fc.constantFrom(0, 10),
    edgeTrim: fc.constantFrom(0, 10),
    snipe: fc.constant(0),
    planed: fc.constant('boards' as const),
    first: fc.constantFrom('crosscut' as const, 'rip' as const),
  });
  test('gives the same area from the same area of board', () => {
    fc.assert(
      fc.property(rack, (of) => {
        const plan = solved(of);
        expectSound(of, plan);
        const best = exhaustive(of, grid);
        expect(plan.proved).toBe(true);
        expect(plan.blankArea).toBeCloseTo(best.area, 3);
        expect(plan.boardArea).toBeCloseTo(best.stock, 3);
      }),
      { numRuns: 200 },
    );
  });
  test('many blanks for one board, one across: the best filling is found to within two in a hundred', () => {
    const lengths = fc.array(fc.integer({ min: 120, max: 700 }), { minLength: 4, maxLength: 12 });
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
        const best = Math.max(...sums.values());
        expect(plan.blankArea / 200).toBeLessThanOrEqual(best + 0.001);
        expect(plan.blankArea / 200).toBeGreaterThanOrEqual((plan.proved ? 1 : 0.98) * best - 0.001);
      }),
      { numRuns: 40 },
    );
  });
});

test('a large rack is sound, and all of it is found', () => {
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
        const from = Math.round(random() * 1000);
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
  const plan = solved(of);
  expectSound(of, plan);
  expect(plan.mostYield).toBe(true);
  expect(plan.missing.every((count) => count === 0)).toBe(true);
  expect(plan.blankArea / plan.boardArea).toBeGreaterThan(0.8);
  expect(plan.proved).toBe(false);
  expect(plan.leastBoardArea / plan.boardArea).toBeGreaterThan(0.8);
});
