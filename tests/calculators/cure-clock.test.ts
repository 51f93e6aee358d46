import { describe, expect, test } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';

const run = (raw: Record<string, unknown>) => answer(cureClockCalculator, { resin: 'fast-coating-1-1', ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const hours = (result: Result, name: string) => (result.figures[name]?.value ?? Number.NaN) / 3600;
const ids = (result: Result) => result.cautions.map(({ id }) => id);
const row = (result: Result, start: string) =>
  result.tables?.[0]?.rows.find(([what]) => String(what).startsWith(start)) ?? [];

test('work and gel are those of the clock of a thin layer', () => {
  // Another program: 63.6 and 133.2 minutes for the fast class at 25 °C.
  const result = calc({ shopTemperature: '25 °C' });
  expect(Math.abs((hours(result, 'work') * 60) / 63.6 - 1)).toBeLessThan(0.01);
  expect(Math.abs((hours(result, 'gel') * 60) / 133.2 - 1)).toBeLessThan(0.01);
});

test('about 24 hours to the next stage at room temperature, as common practice', () => {
  const result = calc({ shopTemperature: '72 °F' });
  expect(hours(result, 'sandable')).toBeGreaterThan(22);
  expect(hours(result, 'sandable')).toBeLessThan(26);
  expect(result.figures.sandable?.basis).toBe('shop-practice');
});

describe('with a sheet', () => {
  const sheet = (more: object = {}) =>
    JSON.stringify({
      name: 'Ours',
      potLife: '40 min',
      recoatOpens: '5 h',
      recoatCloses: '10 h',
      cure: '6 d',
      cureTemperature: '23 °C',
      ...more,
    });

  test('its lines are its own, and every line says where it comes from', () => {
    const result = calc({ resin: sheet(), shopTemperature: '23 °C' });
    expect(hours(result, 'recoatOpens')).toBeCloseTo(5, 6);
    expect(result.figures.recoatOpens?.basis).toBe('supplier-sheet');
    expect(row(result, 'Coat from')[3]).toBe('data sheet');
    expect(row(result, 'Gel')[3]).toBe('clock');
    for (const [, , , origin] of result.tables?.[0]?.rows ?? []) expect(origin).toBeTruthy();
  });

  test('a colder shop carries them over and says so', () => {
    const result = calc({ resin: sheet(), shopTemperature: '15 °C' });
    expect(hours(result, 'recoatOpens')).toBeGreaterThan(7);
    expect(result.figures.recoatOpens?.note).toContain('carried over');
  });

  test('food: the maker is to be asked where the sheet is silent, and wins where it speaks', () => {
    const silent = calc({ resin: sheet(), shopTemperature: '23 °C' });
    expect(ids(silent)).toContain('ask-maker-food');
    expect(silent.figures.foodService?.note).toContain('ask the maker');
    expect(silent.figures.foodService?.basis).toBe('shop-practice');
    expect(hours(silent, 'foodService')).toBeCloseTo(144, 6);
    const spoken = calc({ resin: sheet({ foodService: '30 d' }), shopTemperature: '23 °C' });
    expect(ids(spoken)).not.toContain('ask-maker-food');
    expect(hours(spoken, 'foodService')).toBeCloseTo(720, 6);
  });
});

describe('temperature', () => {
  const at = (raw: Record<string, unknown>) => hours(calc(raw), 'fullCure');
  test('a log of one temperature, and a day like its night, are an even shop', () => {
    const even = at({ shopTemperature: '18 °C' });
    expect(at({ log: '0 h, 18 °C; 9 h, 18 °C' }) / even).toBeCloseTo(1, 3);
    expect(at({ dayTemperature: '18 °C', nightTemperature: '18 °C' }) / even).toBeCloseTo(1, 3);
  });
  test('a cold night counts', () => {
    expect(at({ dayTemperature: '20 °C', nightTemperature: '12 °C' })).toBeGreaterThan(
      1.3 * at({ shopTemperature: '20 °C' }),
    );
  });
  test('a cold shop ends softer and is warned of; the shop of the sheet is not', () => {
    const cold = calc({ shopTemperature: '12 °C' });
    expect(ids(cold)).toContain('stays-softer');
    expect(ids(cold)).toContain('cold-shop');
    const room = ids(calc({ shopTemperature: '22 °C' }));
    expect(room).not.toContain('stays-softer');
    expect(room).not.toContain('cold-shop');
  });
  test('so cold that it never comes is said, not left out in silence', () => {
    const slow = JSON.stringify({
      name: 'Slow',
      potLife: '15 d',
      potLifeMass: '1 kg',
      cure: '100 d',
      cureTemperature: '40 °C',
    });
    const result = calc({ resin: slow, shopTemperature: '0 °C' });
    expect(result.figures.fullCure).toBeUndefined();
    expect(ids(result)).toContain('too-far-off');
  });
});

test('hours of day need no unit', () => {
  const swing = { dayTemperature: '20 °C', nightTemperature: '8 °C' };
  expect(calc({ ...swing, warmHours: '10', warmHoursLeft: '3' }).figures).toEqual(
    calc({ ...swing, warmHours: '10 h', warmHoursLeft: '3 h' }).figures,
  );
});

describe('what is refused', () => {
  test.each([
    [{}, 'shopTemperature'],
    [{ shopTemperature: '20 °C', log: '0 h, 20 °C' }, 'log'],
    [{ shopTemperature: '20 °C', dayTemperature: '20 °C', nightTemperature: '10 °C' }, 'dayTemperature'],
    [{ dayTemperature: '20 °C' }, 'nightTemperature'],
    [{ nightTemperature: '20 °C' }, 'dayTemperature'],
    [{ dayTemperature: '20 °C', nightTemperature: '10 °C', warmHours: '6 h', warmHoursLeft: '8 h' }, 'warmHoursLeft'],
  ])('%j', (raw, field) => {
    const outcome = run(raw);
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.errors[0]?.field).toBe(field);
  });
});

test('the charts show the cure within its band, growing', () => {
  const [conversion, glass] = calc({ shopTemperature: '15 °C' }).series ?? [];
  const line = conversion?.lines[0];
  for (const [at, value] of (line?.values ?? []).entries()) {
    expect(line?.low?.[at] ?? 101).toBeLessThanOrEqual(value + 0.2);
    expect(line?.high?.[at] ?? -1).toBeGreaterThanOrEqual(value - 0.2);
    if (at > 0) expect(value).toBeGreaterThanOrEqual(line?.values[at - 1] ?? 0);
  }
  expect(glass?.lines[1]?.values.every((value) => value === 15)).toBe(true);
});
