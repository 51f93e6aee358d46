import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { stockOrderCalculator } from '../../src/calculators/stock-order/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { hardwoodGrades } from '../../src/model/stock/index.ts';

const tray = { length: '24 in', width: '10 in', thickness: '3/4 in', count: '12' };
const run = (raw: Record<string, unknown>) => answer(stockOrderCalculator, { ...tray, ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;

test('twelve trays by hand: 14 pieces of 28 1/4 by 10 1/4 in, three to an 8 ft board', () => {
  const result = calc({});
  expect(value(result, 'pieces')).toBe(14);
  expect(value(result, 'roughLength')).toBeCloseTo(28.25 * 25.4, 6);
  expect(value(result, 'roughWidth')).toBeCloseTo(10.25 * 25.4, 6);
  expect(value(result, 'perBoard')).toBe(3);
  expect(value(result, 'boards')).toBe(5);
  // 11 in × 8 ft ÷ 12 = 7.33 a board; the tally rounds each to 7.
  expect(value(result, 'boardFeet')).toBeCloseTo(36.6667, 3);
  expect(value(result, 'boardFeetTally')).toBe(35);
  expect(value(result, 'volume')).toBeCloseTo(36.6667 / 423.776, 6);
});

test('both ways of counting say which they are, and the price has both', () => {
  const result = calc({ rate: '9.50', ratePer: 'board-foot' });
  expect(result.figures.boardFeetTally?.label).toMatch(/grader/);
  expect(result.figures.boardFeet?.label).toMatch(/fractions/);
  expect(result.figures.cost).toMatchObject({ label: 'Cost', unit: '{money}' });
  expect(result.figures.cost?.note).toBe('Of the board feet with fractions, in the currency of the price.');
  expect(value(result, 'cost')).toBeCloseTo(348.33, 2);
  expect(value(result, 'costTally')).toBeCloseTo(332.5, 2);
});

test('a price per cubic metre gives one cost, of the true volume, since a tally counts thin stock as an inch thick', () => {
  const slats = { length: '24 in', width: '1 1/2 in', thickness: '1/4 in', count: '100', rate: '900 EUR' };
  const result = calc({ ...slats, ratePer: 'cubic-metre' });
  expect(value(result, 'cost')).toBeCloseTo(900 * value(result, 'volume'), 2);
  expect(result.figures.cost?.note).toMatch(/^Of the volume: [\d.]+ EUR\.$/);
  expect(result.figures.costTally).toBeUndefined();
  expect(calc({ ...slats, ratePer: 'board-foot' }).figures.costTally).toBeDefined();
});

test.each([
  ['a price per cubic metre', { width: '9 in', rate: '900 EUR', ratePer: 'cubic-metre' }],
  ['sizes in millimetres', { length: '450 mm', width: '230 mm', thickness: '19 mm' }],
])('%s: the order has millimetres and cubic metres beside the trade’s sizes', (_, raw) => {
  const said = inReaderUnits(calc(raw).verdict?.text ?? '', defaultUnits);
  expect(said).toMatch(/8 ft × 10 in \(2438 mm × 254 mm\), 4\/4: .* board feet \(0\.\d+ m³\)/);
});

test('an order in inches has no millimetres, and one in decimal inches neither', () => {
  for (const raw of [{}, { thickness: '0.7 in' }]) {
    expect(inReaderUnits(calc(raw).verdict?.text ?? '', defaultUnits)).not.toMatch(/mm|m³/);
  }
});

test.each([
  ['9.50', ', in the currency of the price', 'about 348 in the currency of the price.'],
  ['$9.50', ': $348.33', 'about $348'],
  ['9,50 €', ': 348.33 €', 'about 348 €'],
  ['9.50 EUR', ': 348.33 EUR', 'about 348 EUR'],
  ['US$ 9.50', ': US$348.33', 'about US$348'],
  [9.5, ', in the currency of the price', 'about 348 in the currency of the price.'],
])('a price of %s is taken, and its currency carried', (rate, sum, said) => {
  const result = calc({ rate });
  expect(value(result, 'cost')).toBeCloseTo(348.33, 2);
  expect(result.figures.cost?.note).toBe(`Of the board feet with fractions${sum}.`);
  expect(result.verdict?.text).toContain(said);
});

test('the worked case names the currency of its price', () => {
  for (const system of ['metric', 'inch'] as const) {
    const worked = answer(stockOrderCalculator, stockOrderCalculator.example[system]);
    expect(worked.ok && worked.value.result.verdict.text).toMatch(/, about \$\d+\./);
  }
});

test('what is bought is the boards, and the same boards in board feet', () => {
  expect(calc({ surfacing: 's2s', planing: '3 mm' }).uses).toMatchObject([
    { id: 'boards', what: 'Boards, 5/4 planed on two faces, 8 ft × 11 in', amount: 5, unit: '{count}' },
    { id: 'board-feet', what: 'Lumber, 5/4 planed on two faces', unit: '[bf_i]' },
  ]);
  expect(calc({}).uses?.[1]?.amount).toBeCloseTo(36.6667, 3);
});

test('ends are trimmed once: the blank says that its trim is in it', () => {
  expect(calc({}).figures.roughLength?.help).toMatch(/trims the ends of the boards no further/);
});

test('the verdict says what to buy as one says it at the counter', () => {
  expect(calc({}).verdict).toEqual({ level: 'good', text: 'Buy 5 boards, 8 ft × 11 in, 4/4: 36.7 board feet.' });
  const odd = calc({ boardLength: '10 ft 9 in', boardWidth: '10 1/4 in' });
  expect(odd.verdict?.text).toContain('10 ft 9 in × 10 1/4 in');
  expect(odd.figures.boards?.note).toContain('Each 10 ft 9 in × 10 1/4 in.');
  const metric = calc({ boardLength: '2500 mm', boardWidth: '280 mm' });
  expect(inReaderUnits(metric.verdict?.text ?? '', defaultUnits)).toContain('2500 mm × 280 mm');
});

test('narrow parts are ripped side by side from boards that a yard sells', () => {
  const slats = calc({ length: '300 mm', width: '11 mm', thickness: '9.5 mm', count: '100' });
  expect(value(slats, 'boardWidth')).toBeCloseTo(101.6, 6);
  expect(slats.figures.perBoard?.note).toBe('5 along, 5 across.');
  // 110 slats by 25 a board.
  expect(value(slats, 'boards')).toBe(5);
  expect(slats.cautions[0]).toMatchObject({ id: 'narrow-rips', level: 'danger', own: true });
});

test('a board that the grade does not have is refused, and the board taken is one that it has', () => {
  for (const grade of hardwoodGrades) {
    const taken = calc({ grade: grade.id, width: '3 in' });
    expect(value(taken, 'boardWidth')).toBeGreaterThanOrEqual(grade.leastWidth);
    expect(value(taken, 'boardLength')).toBeGreaterThanOrEqual(grade.leastLength);
  }
  const outcome = run({ grade: 'fas', width: '4 in', length: '18 in', boardLength: '4 ft', boardWidth: '5 in' });
  const [error] = outcome.ok ? [] : outcome.errors;
  expect(error?.field).toBe('boardWidth');
  expect(inReaderUnits(error?.message ?? '', { system: 'inch', inches: 'sixteenths' })).toBe(
    '5 in wide is less than FAS has: its boards are at least 6 in wide and 96 in long. Give a larger board, or ask for another grade.',
  );
});

test('more pieces never ask for fewer boards, and the boards always hold them', () => {
  const sizes = { length: fc.integer({ min: 50, max: 2000 }), width: fc.integer({ min: 10, max: 400 }) };
  fc.assert(
    fc.property(fc.record(sizes), fc.integer({ min: 1, max: 60 }), (size, count) => {
      const [few, more] = [calc({ ...size, count }), calc({ ...size, count: count + 7 })];
      expect(value(more, 'boards')).toBeGreaterThanOrEqual(value(few, 'boards'));
      expect(value(few, 'boards') * value(few, 'perBoard')).toBeGreaterThanOrEqual(value(few, 'pieces'));
      expect(value(few, 'used')).toBeLessThanOrEqual(100);
    }),
    { numRuns: 100 },
  );
});

test('planed lumber needs no planing allowance', () => {
  expect(calc({ surfacing: 's2s' }).figures.nominal?.note).toMatch(/^4\/4/);
  expect(calc({ surfacing: 's2s', planing: '3 mm' }).figures.nominal?.note).toMatch(/^5\/4/);
});

test('a thick piece that leaves nothing to spare is warned of', () => {
  expect(calc({ thickness: '13/16 in' }).cautions.map((caution) => caution.id)).toContain('thin-lumber');
});

test('a board of which one size is given is refused in words that name the other', () => {
  const outcome = run({ boardLength: '8 ft' });
  expect(outcome.ok ? [] : outcome.errors).toEqual([
    {
      field: 'boardWidth',
      message:
        'A board to order has a length and a width. Give “Width of a board” too, or leave “Length of a board” empty.',
    },
  ]);
});

describe('refusals', () => {
  test.each([
    [{ count: '2.5' }, 'count'],
    [{ boardLength: '8 ft' }, 'boardWidth'],
    [{ boardLength: '8 ft', boardWidth: '8 in' }, 'boardWidth'],
    [{ thickness: '4 in' }, 'thickness'],
    [{ surfacing: 'planed' }, 'surfacing'],
    [{ rate: 'nine' }, 'rate'],
    [{ rate: '$9 EUR' }, 'rate'],
    [{ rate: '-9' }, 'rate'],
    [{ rate: '1e99' }, 'rate'],
  ])('%j', (patch, field) => {
    const outcome = run(patch);
    expect(outcome.ok ? [] : outcome.errors.map((error) => error.field)).toEqual([field]);
  });
});

test('a saw is set by whole millimetres: the width of a blank has no tenths', () => {
  expect(calc({}).figures.roughWidth?.digits).toBe(3);
});
