import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  defaultAllowances,
  piecesWithSpares,
  roughSize,
  usualAllowances,
} from '../../../src/model/stock/allowances.ts';
import { boardFeet, foot, inch, surfaceMeasure, tallyBoardFeet } from '../../../src/model/stock/lumber.ts';
import { gradeById, nominalFor, surfacingLoss } from '../../../src/model/stock/nominal.ts';
import { type OrderRequest, stockOrder } from '../../../src/model/stock/order.ts';

const tray: OrderRequest = {
  finished: { length: 2 * foot, width: 10 * inch, thickness: 0.75 * inch },
  count: 12,
  allowances: defaultAllowances,
  surfacing: 'rough',
  kerf: 3.2,
};

describe('allowances of common practice', () => {
  test('an eighth of an inch is left outside the template line before trimming', () => {
    expect(defaultAllowances.outlineClearance).toBeCloseTo(25.4 / 8, 9);
  });
  test('a two-foot blank is cut several inches longer', () => {
    const extra = roughSize(tray.finished, defaultAllowances).length - tray.finished.length;
    expect(extra / inch).toBeGreaterThanOrEqual(3);
    expect(extra / inch).toBeLessThanOrEqual(6);
  });
  test('all but planing are marked common practice, and planing is derived from surfaced thickness', () => {
    for (const { id, basis } of usualAllowances) expect(basis).toBe(id === 'planing' ? 'derived' : 'shop-practice');
    expect(2 * defaultAllowances.planing).toBeCloseTo(surfacingLoss(inch), 9);
  });
  test.each([
    [12, 0.1, 14],
    [10, 0.1, 11],
    [1, 0.1, 2],
    [3, 0, 3],
    [20, 0.25, 25],
  ])('%d pieces with a share of %d spare are %d', (count, spare, pieces) => {
    expect(piecesWithSpares(count, spare)).toBe(pieces);
  });
});

describe('lumber arithmetic', () => {
  test('stock under one inch thick counts as one inch', () => {
    expect(boardFeet(foot, foot, 0.75 * inch)).toBeCloseTo(1, 12);
    expect(tallyBoardFeet([{ length: 4 * foot, width: foot }], 0.5 * inch)).toBe(4);
  });
  test('a bundle is rounded once, after the thickness', () => {
    const boards = Array.from({ length: 3 }, () => ({ length: 8 * foot, width: 7.5 * inch }));
    expect(tallyBoardFeet(boards, 1.25 * inch)).toBe(19);
  });
  test('odd parts of a foot are dropped, whole feet are kept through millimetres', () => {
    expect(surfaceMeasure(8.5 * foot, 12 * inch)).toBe(8);
    for (let feet = 4; feet <= 20; feet += 1) expect(surfaceMeasure(feet * 304.8, 304.8)).toBe(feet);
  });
  test('the tally stays within half a square foot and a dropped foot of the true area', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 16, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        (feet, inches) => {
          const area = (feet * inches) / 12;
          const tally = surfaceMeasure(feet * foot, inches * inch);
          expect(tally).toBeLessThanOrEqual(area + 0.5 + 1e-6);
          expect(tally).toBeGreaterThanOrEqual(area - inches / 12 - 0.5 - 1e-6);
        },
      ),
    );
  });
});

describe('an order', () => {
  test('twelve trays from rough lumber', () => {
    const outcome = stockOrder(tray);
    if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
    const plan = outcome.value;
    expect(plan.pieces).toBe(14);
    expect(plan.nominal.name).toBe('4/4');
    expect(plan.thinIfShort).toBe(false);
    // 15/16 in needed of 1 in: a board 1/16 in under its name is just enough.
    expect(plan.spareThickness).toBeCloseTo(inch / 16, 9);
    expect(plan.along).toBe(3);
    expect(plan.across).toBe(1);
    expect(plan.board).toMatchObject({ length: 8 * foot, width: 11 * inch, assumed: true });
    expect(plan.boards).toBe(5);
    expect(plan.boardFeet).toBeCloseTo((5 * 8 * 11) / 12, 9);
    expect(plan.boardFeetTally).toBe(35);
  });
  test('surfaced lumber needs the next thickness where the first is too thin', () => {
    const outcome = stockOrder({ ...tray, surfacing: 's2s' });
    expect(outcome.ok && outcome.value.nominal.name).toBe('5/4');
    expect(nominalFor(0.75 * inch, 's2s')?.name).toBe('4/4');
  });
  test('a grade asks for more boards where its clear share falls short of the layout', () => {
    const grade = gradeById('2a-common');
    if (!grade) throw new Error('no grade');
    const plain = stockOrder(tray);
    const graded = stockOrder({ ...tray, grade });
    if (!plain.ok || !graded.ok) throw new Error('refused');
    expect(graded.value.boards).toBeGreaterThan(plain.value.boards);
    expect(graded.value.boardsByLayout).toBe(plain.value.boards);
  });
  test('cost follows the rate, and the two ways of counting differ', () => {
    const perFoot = stockOrder({ ...tray, price: { rate: 9.5, per: 'board-foot' } });
    const perMetre = stockOrder({ ...tray, price: { rate: 4000, per: 'cubic-metre' } });
    if (!perFoot.ok || !perMetre.ok) throw new Error('refused');
    expect(perFoot.value.cost?.sum).toBeCloseTo(9.5 * perFoot.value.boardFeet, 9);
    expect(perFoot.value.cost?.tally).toBeCloseTo(9.5 * 35, 9);
    expect(perMetre.value.cost?.sum).toBeCloseTo((4000 * perMetre.value.boardFeet) / 423.776, 1);
  });
  test('a thickness beyond the trade’s, and a board too small, are refused with a way out', () => {
    const thick = stockOrder({ ...tray, finished: { ...tray.finished, thickness: 120 } });
    expect(!thick.ok && thick.errors[0]).toMatchObject({ field: 'thickness' });
    const short = stockOrder({ ...tray, board: { length: 500, width: 300 } });
    expect(!short.ok && short.errors[0]?.field).toBe('boardLength');
    const narrow = stockOrder({ ...tray, board: { length: 2500, width: 200 } });
    expect(!narrow.ok && narrow.errors[0]?.message).toMatch(/glue/);
  });
  test('holds its own sums for any sizes', () => {
    const size = fc.record({
      length: fc.double({ min: 20, max: 5000, noNaN: true }),
      width: fc.double({ min: 5, max: 1500, noNaN: true }),
      thickness: fc.double({ min: 1, max: 120, noNaN: true }),
    });
    fc.assert(
      fc.property(
        size,
        fc.integer({ min: 1, max: 500 }),
        fc.constantFrom('rough' as const, 's2s' as const),
        (finished, count, surfacing) => {
          const outcome = stockOrder({ ...tray, finished, count, surfacing });
          if (!outcome.ok) return;
          const plan = outcome.value;
          expect(plan.boards * plan.along * plan.across).toBeGreaterThanOrEqual(plan.pieces);
          expect((plan.boards - 1) * plan.along * plan.across).toBeLessThan(plan.pieces);
          expect(plan.spareThickness).toBeGreaterThanOrEqual(-1e-6);
          expect(plan.used).toBeGreaterThan(0);
          expect(plan.used).toBeLessThan(1);
          expect(plan.boardFeet).toBeGreaterThanOrEqual(plan.boardFeetPieces - 1e-9);
        },
      ),
    );
  });
});
