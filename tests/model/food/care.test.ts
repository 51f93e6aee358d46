import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src/model/evidence/index.ts';
import { type BoardForCare, careSections } from '../../../src/model/food/index.ts';

const every = (days: number): Figure => ({ label: 'Oil again', value: days, unit: 'd', basis: 'shop-practice' });
const oiled: BoardForCare = {
  wood: 'Sugar maple',
  finish: 'Mineral oil',
  upkeep: { kind: 'oil', drying: false, every: every(90) },
  resin: false,
  sensitiser: false,
};
const text = (board: BoardForCare) =>
  careSections(board)
    .flatMap(({ lines }) => lines.map((line) => line.text))
    .join(' ');

const boards: fc.Arbitrary<BoardForCare> = fc.record({
  wood: fc.constantFrom('Sugar maple', 'Black walnut'),
  finish: fc.constantFrom('Tung oil', 'Shellac'),
  upkeep: fc.oneof(
    fc.record({
      kind: fc.constant('oil' as const),
      drying: fc.boolean(),
      every: fc.option(fc.integer({ min: 1, max: 700 }).map(every)),
    }),
    fc.record({ kind: fc.constant('film' as const), every: fc.constant(null) }),
    fc.constant({ kind: 'none' as const }),
  ),
  resin: fc.boolean(),
  sensitiser: fc.boolean(),
});

describe('any board', () => {
  test('is washed, dried, kept up and warned of, in that order, without a promise', () => {
    fc.assert(
      fc.property(boards, (board) => {
        expect(careSections(board).map(({ id }) => id)).toEqual(['wash', 'dry', 'renew', 'never']);
        expect(text(board)).toContain('No dishwasher, no soaking');
        expect(text(board)).toContain('No hot pan');
        expect(text(board)).not.toMatch(/\bsafe|approved|non-toxic|undefined/i);
        for (const line of careSections(board).flatMap(({ lines }) => lines)) expect(line.text).toMatch(/\.$/);
      }),
    );
  });

  test('cloths with a drying oil go into water wherever the buyer is told to use it', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const drying = board.upkeep.kind === 'oil' && board.upkeep.drying;
        expect(text(board).includes('catch fire')).toBe(drying);
      }),
    );
  });

  test('nobody is told to sand a wood whose dust can cause allergy', () => {
    fc.assert(
      fc.property(boards, (board) => {
        if (board.sensitiser) expect(text(board)).not.toMatch(/have it planed or sanded|sand it lightly/);
      }),
    );
  });
});

test.each([
  [7, 'about every 7 days'],
  [30, 'about once a month'],
  [90, 'about every 3 months'],
])('%i days are %s', (days, words) => {
  expect(text({ ...oiled, upkeep: { kind: 'oil', drying: false, every: every(days) } })).toContain(words);
});

test('resin is named among what heat and solvents spoil, and only where there is some', () => {
  expect(text({ ...oiled, resin: true })).toContain('least of all on the resin');
  expect(text(oiled)).not.toContain('resin');
});

test('a film is not oiled', () => {
  const film = text({ ...oiled, finish: 'Varnish', upkeep: { kind: 'film', every: null } });
  expect(film).toContain('Do not oil it: varnish lies on top');
  expect(film).not.toContain('soak,');
});
