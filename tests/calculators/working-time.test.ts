import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { layResinSheet } from '../../src/model/resin/resin.ts';

const given = { resin: 'fast-coating-1-1', mass: '100 g', shopTemperature: '25 °C' };
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = answer(workingTimeCalculator, { ...given, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const minutes = (result: Result, name: string) => (result.figures[name]?.value ?? Number.NaN) / 60;
const words = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
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

test('warmed resin is the same in headline, tables and notes', () => {
  // The case that once gave 20 min above, 1.1 h in the table, and a time 'divided by 0.73'.
  const result = calc({ mass: '200 g', shopTemperature: '15 °C', resinTemperature: '30 °C' });
  const row = (table: string, first: number) =>
    result.tables?.find(({ id }) => id === table)?.rows.find((one) => one[0] === first) ?? [];
  expect(row('masses', 200)[1]).toBeCloseTo(result.figures.cupWork?.value ?? 0, 6);
  expect(row('temperatures', 15)[1]).toBeCloseTo(result.figures.cupWork?.value ?? 0, 6);
  expect(words(result.tables?.[0]?.title)).toContain('the resin mixed at 30 °C');
  expect(words(result.tables?.[1]?.title)).toBe('This mass in other shops, the resin mixed at 30 °C');
  const note = result.cautions.find(({ id }) => id === 'ten-degrees')?.text ?? '';
  for (const [, factor] of note.matchAll(/by ([\d.]+)/g)) expect(Number(factor)).toBeGreaterThan(1);
  expect(words(result.verdict?.text)).toContain('200 g at 15 °C, mixed at 30 °C');
});

test.each([
  ['fast-coating-1-1', 5, 30],
  ['slow-casting-2-1', 12, 30],
  ['slow-casting-2-1', 30, 10],
])('%s: ten degrees more never lengthen a time, whatever the resin was mixed at', (resin, shop, mixed) => {
  for (const mass of ['25 g', '200 g', '2 kg']) {
    const note = calc({ resin, mass, shopTemperature: `${shop} °C`, resinTemperature: `${mixed} °C` }).cautions.find(
      ({ id }) => id === 'ten-degrees',
    )?.text;
    for (const [, factor] of (note ?? '').matchAll(/by ([\d.]+)/g)) expect(Number(factor)).toBeGreaterThan(1);
  }
});

describe('what it comes to', () => {
  test('is the time, the half of it to plan by, and what spreading gains', () => {
    const result = calc({ mass: '150 g', shopTemperature: '22 °C' });
    expect(words(result.verdict?.text)).toBe(
      'About 36 min for 150 g at 22 °C: be done in 18 min; spread thin at once it stays workable for 1.3 h.',
    );
    expect(result.verdict?.level).toBe('care');
    expect(ids(result)).toContain('clock-of-a-kind');
  });

  test('a small cup of a slow resin of one’s own sheet has nothing in its way', () => {
    const sheet = { name: 'Ours', potLife: '6 h', potLifeMass: '100 g', potLifeTemperature: '25 °C' };
    const result = calc({ resin: JSON.stringify(sheet), mass: '25 g', shopTemperature: '20 °C' });
    expect(result.verdict?.level).toBe('good');
  });

  test('a cup that has gelled before it is spread is not to be poured', () => {
    expect(calc({ spreadAfter: '45 min' }).verdict?.level).toBe('stop');
    expect(calc({ spreadAfter: '29.5 min' }).verdict?.level).toBe('care');
  });

  test.each([
    ['no pot life', { volumeRatio: 0.5 }, /^Your sheet names no pot life/],
    // Five seconds: no entry of a sheet takes it, but whoever calls the model may.
    ['one of no epoxy', { potLife: 5 }, /that of no epoxy/],
  ])('is not known of a sheet with %s: no time at all', (_, figures, text) => {
    const resin = layResinSheet({ name: 'Ours', figures });
    const outcome = workingTimeCalculator.compute({ resin, mass: 100, shopTemperature: 25 });
    if (!outcome.ok) throw new Error('no answer');
    const result = outcome.value;
    expect(result.verdict).toEqual({ level: 'unknown', text: expect.stringMatching(text) });
    expect(result.figures).toEqual({});
    expect([result.tables, result.series]).toEqual([undefined, undefined]);
    expect(result.cautions.map(({ id }) => id)).toContain('resin-cup-heat');
  });
});

test('warmed resin is workable for less time', () => {
  expect(minutes(calc({ resinTemperature: '35 °C' }), 'cupWork')).toBeLessThan(minutes(calc(), 'cupWork'));
});

test('no figure of the answer is a temperature: a peak is never promised', () => {
  for (const { unit } of Object.values(calc().figures)) expect(unit).not.toBe('Cel');
});

test('the lines of the chart grow, and each ends at its own gel: no cup is drawn as if it stopped curing', () => {
  const result = calc();
  const series = result.series?.[0];
  const axis = (series?.axis.values ?? []) as number[];
  for (const { values } of series?.lines ?? []) {
    for (const [at, value] of values.entries()) if (at > 0) expect(value).toBeGreaterThan(values[at - 1] ?? 0);
    expect(values.at(-1)).toBeCloseTo(57.7, 1);
  }
  const [inCup, thin] = series?.lines ?? [];
  expect(axis[(inCup?.values.length ?? 0) - 1]).toBeCloseTo(minutes(result, 'cupGel'), 1);
  expect(thin?.values.length).toBe(axis.length);
  expect(inCup?.label).toContain('runs away');
});
