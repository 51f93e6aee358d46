import { describe, expect, test } from 'vitest';
import { finishAndMoistureCalculator } from '../../src/calculators/finish-and-moisture/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { seasonalMovementCalculator } from '../../src/calculators/seasonal-movement/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const board = {
  species: 'white-ash',
  width: '300 mm',
  thickness: '20 mm',
  cut: 'flatsawn',
  place: 'duluth-mn',
  indoors: 'heated',
};
const ask = (raw: Record<string, unknown>) => answer(finishAndMoistureCalculator, raw);
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = ask({ ...board, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;
const days = (result: Result, name: string) => value(result, name) / 86_400;
const ids = (result: Result) => result.cautions.map(({ id }) => id);

const oils = [
  'mineral-oil',
  'oil-wax-paste',
  'linseed-oil',
  'tung-oil',
  'walnut-oil',
  'polymerised-oil',
  'oil-with-driers',
  'hard-wax-oil',
];

describe('oils hardly slow a board', () => {
  test.each(oils)('%s: more than 98 %% of the swing is left, a lag of days, and the answer says so', (finish) => {
    const result = calc({ finish });
    expect(value(result, 'swingLeft')).toBeGreaterThan(98);
    expect(days(result, 'lagFinished') - days(result, 'lagBare')).toBeLessThan(3);
    expect(ids(result)).toContain('finish-hardly-slows');
  });
  test('their delay is under two days for a board of 16 mm (handbook’s table, one resistance to a row)', () => {
    for (const finish of ['linseed-oil', 'tung-oil'])
      expect(days(calc({ finish, thickness: '15.88 mm', coats: '2' }), 'delay')).toBeLessThan(2);
  });
});

describe('the verdict', () => {
  const said = (raw: Record<string, unknown>) => {
    const { level, text } = calc(raw).verdict ?? {};
    return { level, text: inReaderUnits(text ?? '', defaultUnits) };
  };
  test('names both swings, and is never good: a finish only slows', () => {
    for (const finish of [...oils, 'shellac', 'varnish', 'film-epoxy']) {
      const { level, text } = said({ finish });
      expect(level, finish).toBe('care');
      expect(text, finish).toMatch(/[\d.]+ mm over the year bare, [\d.]+ mm with /);
    }
    expect(said({ finish: 'mineral-oil' }).text).toContain('Build as if it were bare');
  });
  test('one bare face is not to be done', () => {
    expect(said({ finish: 'film-epoxy', faces: 'one' })).toMatchObject({
      level: 'stop',
      text: expect.stringContaining('Finish both faces alike'),
    });
  });
});

describe('two coats of epoxy do', () => {
  test('105 days of delay for a board of 16 mm', () => {
    expect(
      Math.abs(days(calc({ finish: 'film-epoxy', thickness: '15.88 mm', coats: '2' }), 'delay') - 105),
    ).toBeLessThan(1);
  });
  test('less than half of the swing is left, a lag of two months, and the film must be whole', () => {
    const result = calc({ finish: 'film-epoxy', coats: '2' });
    expect(value(result, 'swingLeft')).toBeLessThan(50);
    expect(days(result, 'lagFinished')).toBeGreaterThan(60);
    expect(ids(result)).toContain('film-must-be-whole');
    expect(ids(result)).not.toContain('finish-hardly-slows');
  });
  test('on one face alone they hardly help, and the faces part', () => {
    const result = calc({ finish: 'film-epoxy', coats: '2', faces: 'one' });
    expect(value(result, 'swingLeft')).toBeGreaterThan(80);
    expect(value(result, 'faceDifference')).toBeGreaterThan(2);
    expect(ids(result)).toContain('one-face-coated');
    expect(result.figures.weekBare).toBeUndefined();
  });
});

test('a thin bare board swings as the calculator of the year says at balance', () => {
  const thin = calc({ finish: 'mineral-oil', thickness: '3 mm' });
  const year = answer(seasonalMovementCalculator, { ...board, moistureNow: '7.88 %', thickness: '3 mm' });
  if (!year.ok) throw new Error(JSON.stringify(year.errors));
  const balance = year.value.result.figures.swing?.value ?? Number.NaN;
  expect(value(thin, 'widthSwingBare') / balance).toBeGreaterThan(0.98);
  expect(value(thin, 'widthSwingBare') / balance).toBeLessThan(1.005);
});

test('more coats, a thicker board: more delay', () => {
  const swings = ['1', '2', '3', '4', '6'].map((coats) => value(calc({ finish: 'varnish', coats }), 'swingLeft'));
  for (const [at, swing] of swings.slice(1).entries()) expect(swing).toBeLessThan(swings[at] as number);
  expect(days(calc({ finish: 'varnish', thickness: '40 mm' }), 'lagBare')).toBeGreaterThan(
    2 * days(calc({ finish: 'varnish' }), 'lagBare'),
  );
});

test('the finish changes the pace and not the middle: the lines of the year keep one mean', () => {
  const [moisture] = calc({ finish: 'film-epoxy' }).series ?? [];
  const means = (moisture?.lines ?? []).map(
    ({ values }) => values.reduce((sum, each) => sum + each, 0) / values.length,
  );
  expect(Math.max(...means) - Math.min(...means)).toBeLessThan(0.05);
});

test('the reader’s own resistance stands in place of the finish', () => {
  const own = calc({ finish: 'mineral-oil', coating: '1.143e9' });
  const epoxy = calc({ finish: 'film-epoxy', coats: '2' });
  expect(value(own, 'swingLeft')).toBeCloseTo(value(epoxy, 'swingLeft'), 6);
  expect(own.figures.resistance?.basis).toBe('supplier-sheet');
  expect(value(calc({ finish: 'film-epoxy', coating: '0' }), 'swingLeft')).toBe(100);
});

test('every finish is compared on the board that was asked about', () => {
  const table = calc({ finish: 'varnish' }).tables?.find(({ id }) => id === 'finishes');
  const row = table?.rows.find(([name]) => name === 'Oil-based varnish');
  expect(row?.[2]).toBeCloseTo(value(calc({ finish: 'varnish' }), 'swingLeft'), 9);
  expect(table?.rows).toHaveLength(11);
});

describe('other air', () => {
  test('two seasons are the ends of a sine', () => {
    const { place: _place, indoors: _indoors, ...alone } = board;
    const seasons = { dryTemperature: '20 °C', dryHumidity: '25 %', wetTemperature: '24 °C', wetHumidity: '60 %' };
    const outcome = ask({ ...alone, ...seasons, finish: 'varnish' });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    const [moisture] = outcome.value.result.series ?? [];
    expect(moisture?.axis.values).toHaveLength(12);
    const balance = moisture?.lines.find(({ id }) => id === 'balance')?.values ?? [];
    expect(Math.min(...balance)).toBe(balance[0]);
    expect(Math.max(...balance)).toBe(balance[6]);
  });
  test('air that never changes moves nothing', () => {
    const { place: _place, indoors: _indoors, ...alone } = board;
    const outcome = ask({
      ...alone,
      readings: 'Jan, 20 °C, 40 %; Apr, 20 °C, 40 %; Jul, 20 °C, 40 %',
      finish: 'varnish',
    });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    expect(outcome.value.result.figures.moistureSwingBare?.value).toBeCloseTo(0, 9);
    expect(outcome.value.result.figures.swingLeft?.value).toBe(100);
  });
});

test.each([
  [{ finish: 'varnish', coats: '2.5' }, 'coats'],
  [{ finish: 'paint' }, 'finish'],
  [{ finish: 'varnish', place: '' }, 'place'],
  [{ finish: 'varnish', readings: 'Jan, 20 °C, 40 %' }, 'readings'],
] as const)('%j is refused at its field', (raw, field) => {
  const outcome = ask({ ...board, ...raw });
  expect(outcome.ok).toBe(false);
  if (!outcome.ok) expect(outcome.errors.map((error) => error.field)).toContain(field);
});

test('every figure lies in its band, the resistance in millions too', () => {
  for (const finish of ['varnish', 'film-epoxy', 'mineral-oil']) {
    for (const [name, figure] of Object.entries(calc({ finish }).figures)) {
      expect(figure.low ?? figure.value, name).toBeLessThanOrEqual(figure.value);
      expect(figure.high ?? figure.value, name).toBeGreaterThanOrEqual(figure.value);
    }
  }
  expect(calc({ finish: 'film-epoxy', coats: '2' }).figures.resistance).toMatchObject({ value: 1143, unit: 'Ms/m' });
});

test('a finish that holds nothing back has no band of one number, and no resistance', () => {
  const { swingLeft, resistance } = calc({ finish: 'mineral-oil' }).figures;
  expect(swingLeft).toMatchObject({ value: 100 });
  expect(swingLeft?.band).toBeUndefined();
  expect(resistance).toMatchObject({ value: 0, unit: 'Ms/m' });
});
