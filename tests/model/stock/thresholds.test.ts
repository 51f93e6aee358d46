import { describe, expect, test } from 'vitest';
import { defaultAllowances } from '../../../src/model/stock/allowances.ts';
import { type BoringBit, boringBits, boringSpeed, hardnessEnds } from '../../../src/model/stock/boring.ts';
import { foot, inch } from '../../../src/model/stock/lumber.ts';
import type { HardwoodGrade } from '../../../src/model/stock/lumber-data.ts';
import { machineAdvice, pushBlockWidth } from '../../../src/model/stock/machines.ts';
import { gradeById, hardwoodGrades, nominalFor, surfacingLoss } from '../../../src/model/stock/nominal.ts';
import { type OrderRequest, stockOrder } from '../../../src/model/stock/order.ts';

// Each limit of this room that decides something, with an input just below it and one just above.

describe('an order', () => {
  const nothing = Object.fromEntries(Object.keys(defaultAllowances).map((name) => [name, 0]));
  /** Pieces of 1 ft by 4 in with no allowance at all, out of boards of 8 ft by 8 in, so that shares can be worked out by hand. */
  const request: OrderRequest = {
    finished: { length: foot, width: 4 * inch, thickness: 0.75 * inch },
    count: 32,
    allowances: { ...defaultAllowances, ...nothing },
    surfacing: 'rough',
    kerf: 0,
    board: { length: 8 * foot, width: 8 * inch },
  };
  const order = (change: Partial<OrderRequest>) => {
    const outcome = stockOrder({ ...request, ...change });
    if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
    return outcome.value;
  };
  /** A grade whose faces differ: 5/6 of the better one clear, and half of the poorer. */
  const grade: HardwoodGrade = {
    ...(gradeById('1-common') as HardwoodGrade),
    leastLength: 4 * foot,
    leastWidth: 4 * inch,
    clearBetter: 5 / 6,
    clearPoorer: 1 / 2,
  };

  test('counts by the clear share of the better face where one face must be clear, else by the poorer’s', () => {
    // 32 pieces of 48 in² are two whole boards of 768 in²: 2.4 boards by five sixths, 4 by a half.
    expect(order({ grade, clearFaces: 'one' }).boardsByGrade).toBe(3);
    expect(order({ grade, clearFaces: 'both' }).boardsByGrade).toBe(4);
    expect(order({ grade }).boardsByGrade).toBe(4);
  });

  test('of a printed grade never needs more boards for one clear face than for two', () => {
    const differing = hardwoodGrades.filter((each) => each.clearBetter > each.clearPoorer);
    expect(differing.length).toBeGreaterThan(0);
    for (const printed of differing) {
      const boards = (clearFaces: 'one' | 'both') =>
        order({ count: 3200, grade: printed, clearFaces }).boardsByGrade as number;
      expect(boards('one'), printed.id).toBeLessThan(boards('both'));
      expect(boards('one') / boards('both')).toBeCloseTo(printed.clearPoorer / printed.clearBetter, 1);
    }
  });

  test('takes boards of 8 ft by 4 in where none is given, and longer or wider ones in whole feet and inches', () => {
    const { board: _, ...open } = request;
    const assumed = (length: number, width: number) => {
      const outcome = stockOrder({ ...open, finished: { length, width, thickness: 0.75 * inch } });
      return outcome.ok ? [outcome.value.board.length / foot, outcome.value.board.width / inch] : [];
    };
    expect(assumed(7.9 * foot, 3.9 * inch)).toEqual([8, 4]);
    expect(assumed(8.1 * foot, 4.1 * inch)).toEqual([9, 5]);
  });

  test('refuses a board more than half a millimetre under what the grade has', () => {
    const taken = (under: number) =>
      stockOrder({ ...request, grade, board: { length: 4 * foot, width: 4 * inch - under } });
    const short = (under: number) =>
      stockOrder({ ...request, grade, board: { length: 4 * foot - under, width: 8 * inch } });
    // Pieces of just under 4 in fit both.
    const finished = { ...request.finished, width: 3.5 * inch };
    expect(stockOrder({ ...request, finished, grade, board: { length: 4 * foot, width: 4 * inch - 0.4 } }).ok).toBe(
      true,
    );
    expect(taken(0.6)).toMatchObject({ ok: false, errors: [{ field: 'boardWidth' }] });
    expect(short(0.4).ok).toBe(true);
    expect(short(0.6)).toMatchObject({ ok: false, errors: [{ field: 'boardLength' }] });
  });
});

test('surfacing takes 3/16 in off up to 1 1/2 in, and 1/4 in above', () => {
  expect(surfacingLoss(1.5 * inch) / inch).toBeCloseTo(3 / 16, 9);
  expect(surfacingLoss(1.51 * inch) / inch).toBeCloseTo(1 / 4, 9);
});

test('a nominal thickness is taken up to all of it', () => {
  expect(nominalFor(inch, 'rough')?.name).toBe('4/4');
  expect(nominalFor(inch + 0.01, 'rough')?.name).toBe('5/4');
});

describe('a boring speed', () => {
  const bit: BoringBit = { ...(boringBits[0] as BoringBit), soft: 1, hard: 0.5, mostTurns: 100_000 };
  const rim = (hardness: number) => {
    const { turns } = boringSpeed(bit, 1, hardness);
    return (Math.PI * turns) / 60_000;
  };

  test('ranges by half as much again either way', () => {
    const { turns, low, high } = boringSpeed(bit, 1, hardnessEnds.hard);
    expect(high / turns).toBeCloseTo(1.5, 2);
    expect(turns / low).toBeCloseTo(1.5, 2);
  });

  test('is that of soft wood up to 2500 N and that of hard wood from 5500 N on', () => {
    expect(rim(2400)).toBeCloseTo(1, 2);
    expect(rim(2500)).toBeCloseTo(1, 2);
    expect(rim(2700)).toBeLessThan(0.97);
    expect(rim(5300)).toBeGreaterThan(0.515);
    expect(rim(5500)).toBeCloseTo(0.5, 2);
    expect(rim(5600)).toBeCloseTo(0.5, 2);
  });

  test('knows the diameters that a bit is made in', () => {
    const [least, most] = bit.diameters;
    const usual = [least - 0.1, least, most, most + 0.1].map((diameter) => boringSpeed(bit, diameter).usualDiameter);
    expect(usual).toEqual([false, true, true, false]);
  });
});

test('boards under 3 in are held by push blocks', () => {
  const asks = (width: number) =>
    machineAdvice({ length: 600, width, thickness: 25, finished: 20 }, { jointerWidth: 150, planerWidth: 300 }).some(
      ({ id }) => id === 'push-blocks',
    );
  expect(pushBlockWidth).toBe(3 * inch);
  expect([asks(76), asks(76.4)]).toEqual([true, false]);
});
