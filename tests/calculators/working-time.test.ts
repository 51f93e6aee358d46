import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const given = { resin: 'fast-coating-1-1', mass: '100 g', shopTemperature: '25 °C' };
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = answer(workingTimeCalculator, { ...given, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const minutes = (result: Result, name: string) => (result.figures[name]?.value ?? Number.NaN) / 60;
const ids = (result: Result) => result.cautions.map(({ id }) => id);

// Another program's runs of the same two classes: a cup of 100 g at 25 °C, and the clock of a thin layer in closed form.
describe.each([
  ['fast-coating-1-1', 28.9, 30, 63.6, 133.2],
  ['slow-casting-2-1', 277.8, 360, 405.6, 849.4],
])('%s', (resin, cupWork, cupGel, filmWork, filmGel) => {
  test('works and gels as in the runs of another program', () => {
    const result = calc({ resin });
    for (const [name, expected] of Object.entries({ cupWork, cupGel, filmWork, filmGel }))
      expect(Math.abs(minutes(result, name) / expected - 1), name).toBeLessThan(0.02);
  });
});

test('a sheet’s own pot life comes back for its own cup, with its own basis', () => {
  const sheet = { name: 'Ours', potLife: '40 min', potLifeMass: '150 g', potLifeTemperature: '22 °C' };
  const result = calc({ resin: JSON.stringify(sheet), mass: '150 g', shopTemperature: '22 °C' });
  expect(minutes(result, 'cupGel')).toBeCloseTo(40, 1);
  expect(result.figures.cupGel?.basis).toBe('supplier-sheet');
  expect(result.figures.cupWork?.basis).toBe('memory');
  const usable = calc({
    resin: JSON.stringify({ ...sheet, potLifeMeans: 'usable' }),
    mass: '150 g',
    shopTemperature: '22 °C',
  });
  expect(minutes(usable, 'cupWork')).toBeCloseTo(40, 1);
});

test('the band is a quarter either way', () => {
  const { value, low, high } = calc().figures.filmWork ?? { value: 0 };
  expect(low).toBeCloseTo(0.75 * value, 9);
  expect(high).toBeCloseTo(1.25 * value, 9);
});

describe('spreading a cup thin', () => {
  const left = (spreadAfter: string) => minutes(calc({ spreadAfter }), 'leftAfterSpreading');
  test('at once leaves the whole time of a thin layer', () => {
    expect(left('0 min')).toBeCloseTo(minutes(calc(), 'filmWork'), 6);
  });
  test('leaves less the longer it stood, and nothing past its working time', () => {
    expect(left('20 min')).toBeLessThan(left('10 min'));
    expect(left('29.5 min')).toBe(0);
    expect(ids(calc({ spreadAfter: '29.5 min' }))).toContain('too-late-to-spread');
    expect(ids(calc({ spreadAfter: '45 min' }))).toContain('gelled-in-cup');
  });
  test('at once a fast resin gels four times later than in the cup', () => {
    expect(minutes(calc(), 'filmGel') / minutes(calc(), 'cupGel')).toBeGreaterThan(4);
  });
});

describe('the tables', () => {
  const column = (result: Result, table: string, at: number) =>
    (result.tables?.find(({ id }) => id === table)?.rows ?? []).map((row) => Number(row[at]));
  test.each(['fast-coating-1-1', 'slow-casting-2-1'])(
    '%s: more mass and more warmth only shorten every time',
    (resin) => {
      const result = calc({ resin });
      for (const [table, at] of [
        ['masses', 1],
        ['masses', 2],
        ['temperatures', 1],
        ['temperatures', 2],
        ['temperatures', 3],
        ['temperatures', 4],
      ] as const) {
        const times = column(result, table, at);
        for (const [index, time] of times.entries()) if (index > 0) expect(time).toBeLessThan(times[index - 1] ?? 0);
      }
    },
  );
  test('ten degrees divide a slow cup’s time by nearly four and its thin layer’s by little more than two', () => {
    const [gel, film] = [2, 4].map((at) => column(calc({ resin: 'slow-casting-2-1' }), 'temperatures', at));
    // Rows stand at 10, 15, 20, 25 °C …
    expect((gel?.[1] ?? 0) / (gel?.[3] ?? 1)).toBeCloseTo(3.8, 1);
    expect((film?.[1] ?? 0) / (film?.[3] ?? 1)).toBeCloseTo(2.27, 1);
  });
});

test('a cup that runs away is a danger, a small slow one is not', () => {
  expect(ids(calc())).toContain('cup-runs-away');
  const small = ids(calc({ resin: 'slow-casting-2-1', mass: '25 g' }));
  expect(small).not.toContain('cup-runs-away');
  expect(small).not.toContain('cup-grows-hot');
  expect(small).toContain('resin-cup-heat');
});

test('warmed resin is workable for less time', () => {
  expect(minutes(calc({ resinTemperature: '35 °C' }), 'cupWork')).toBeLessThan(minutes(calc(), 'cupWork'));
});

test('no figure of the answer is a temperature: a peak is never promised', () => {
  for (const { unit } of Object.values(calc().figures)) expect(unit).not.toBe('Cel');
});

test('the lines of the chart grow and end at the gel', () => {
  const series = calc().series?.[0];
  for (const { values } of series?.lines ?? []) {
    for (const [at, value] of values.entries()) if (at > 0) expect(value).toBeGreaterThanOrEqual(values[at - 1] ?? 0);
    expect(values.at(-1)).toBeCloseTo(57.7, 1);
  }
});
