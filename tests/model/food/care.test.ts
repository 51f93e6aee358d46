import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src/model/evidence/index.ts';
import { type BoardForCare, careSections } from '../../../src/model/food/index.ts';

const day = 86_400;
const figure = (value: number, low: number, high: number): Figure => ({
  label: 'A time',
  value,
  low,
  high,
  unit: 's',
  basis: 'shop-practice',
});
const renew = {
  kind: 'renew' as const,
  words: 'When a drop of water darkens the wood: wash, dry, one coat, soak, wipe.',
  selfHeating: false,
  soak: figure(2400, 1800, 2700),
  every: figure(56 * day, 28 * day, 182 * day),
};
const oiled: BoardForCare = {
  wood: 'Sugar maple',
  finish: 'Mineral oil',
  upkeep: renew,
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
      kind: fc.constant('renew' as const),
      words: fc.constant(renew.words),
      selfHeating: fc.boolean(),
      soak: fc.constantFrom(null, renew.soak),
      every: fc.option(fc.integer({ min: 1, max: 700 }).map((days) => figure(days * day, days * day, 2 * days * day))),
    }),
    fc.constant({ kind: 'film' as const }),
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
        const drying = board.upkeep.kind === 'renew' && board.upkeep.selfHeating;
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
  [7, 7, 'every week in a home'],
  [14, 42, 'every 2 to 6 weeks in a home'],
  [28, 182, 'every 1 to 6 months in a home'],
  [90, 92, 'every 3 months in a home'],
])('%i to %i days: %s', (low, high, words) => {
  const every = figure(low * day, low * day, high * day);
  expect(text({ ...oiled, upkeep: { ...renew, every } })).toContain(words);
});

test('the oil soaks as long as its record says', () => {
  expect(text(oiled)).toContain('Use mineral oil: soak 30 to 45 minutes; every 1 to 6 months in a home.');
});

test('resin is named among what heat and solvents spoil, and only where there is some', () => {
  expect(text({ ...oiled, resin: true })).toContain('least of all on the resin');
  expect(text(oiled)).not.toContain('resin');
});

test('a film is not oiled', () => {
  const film = text({ ...oiled, finish: 'Varnish', upkeep: { kind: 'film' } });
  expect(film).toContain('Do not oil it: varnish lies on top');
  expect(film).not.toContain('soak,');
});
