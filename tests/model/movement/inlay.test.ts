import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardThroughYear, type InlaidBoard, inlayMovement } from '../../../src/model/movement/index.ts';
import { sugarMaple } from './arbitrary.ts';

/** 300 mm of flatsawn hard maple, set at 8 %, from 6 to 11 %. */
function maple(moistures = [6, 11]): InlaidBoard {
  const outcome = boardThroughYear({
    width: 300,
    thickness: 20,
    geometry: { cut: 'flatsawn' },
    moistureNow: 8,
    moistures: moistures.map((moisture) => ({ label: `${moisture} %`, moisture })),
    properties: sugarMaple,
  });
  if (!outcome.ok) throw new Error('refused');
  return { width: 300, ...outcome.value };
}

function over(inlayWidth?: number, board = maple()) {
  const outcome = inlayMovement(board, inlayWidth);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value;
}

describe('wood over a rigid inlay', () => {
  test('30 mm across flatsawn hard maple, by hand', () => {
    const { swing, percent, closing, opening } = over(30);
    expect(swing.value).toBeCloseTo(30 * 0.00353 * 5, 9);
    expect(percent.value).toBeCloseTo(0.353 * 5, 9);
    expect(closing.value).toBeCloseTo(-30 * 0.00353 * 2, 9);
    expect(opening.value).toBeCloseTo(30 * 0.00353 * 3, 9);
  });

  test('the whole board where no width is given', () => {
    expect(over().inlayWidth).toBe(300);
    expect(over().swing.value).toBeCloseTo(maple().swing.value, 12);
  });

  test('a board that only dries never opens, one that only takes up moisture never closes', () => {
    expect(over(30, maple([6, 7])).opening).toEqual({ value: 0, low: 0, high: 0 });
    expect(over(30, maple([9, 11])).closing).toEqual({ value: 0, low: 0, high: 0 });
  });

  test('always carries the caution', () => {
    expect(over(1).cautions.map(({ id }) => id)).toEqual(['rigid-inlay']);
  });

  test('goes with the width of the inlay, the share of it does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 300, noNaN: true }), (inlayWidth) => {
        expect(over(inlayWidth).swing.value / inlayWidth).toBeCloseTo(over(300).swing.value / 300, 9);
        expect(over(inlayWidth).percent).toEqual(over(300).percent);
      }),
    );
  });

  test.each([0, -5, 301, Number.NaN])('%d mm is refused on inlayWidth', (inlayWidth) => {
    const outcome = inlayMovement(maple(), inlayWidth);
    expect(outcome.ok ? [] : outcome.errors.map(({ field }) => field)).toEqual(['inlayWidth']);
  });
});
