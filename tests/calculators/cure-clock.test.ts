import { describe, expect, test } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, formatQuantity, inReaderUnits } from '../../src/model/quantity/index.ts';

const run = (raw: Record<string, unknown>) => answer(cureClockCalculator, { resin: 'fast-coating-1-1', ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const hours = (result: Result, name: string) => (result.figures[name]?.value ?? Number.NaN) / 3600;
const ids = (result: Result) => result.cautions.map(({ id }) => id);
const said = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
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
  test('a shop too cold for the sheet’s cure has no day for oil, food and hand-over, and says so first', () => {
    for (const raw of [
      { shopTemperature: '8 °C' },
      { shopTemperature: '12 °C' },
      { dayTemperature: '14 °C', nightTemperature: '6 °C' },
      { log: '0 h, 10 °C; 12 h, 14 °C; 24 h, 10 °C' },
    ]) {
      const cold = calc(raw);
      for (const name of ['lightUse', 'fullCure', 'oil', 'foodService', 'conversion'])
        expect(cold.figures[name], name).toBeUndefined();
      expect(cold.verdict?.level).toBe('stop');
      expect(said(cold.verdict?.text)).toMatch(/never cures as far as its sheet means.*Warm it first/);
      expect(cold.cautions[0]).toMatchObject({ id: 'never-cured', own: true, level: 'danger' });
      for (const line of ['Full cure', 'Machine, oil', 'Food', 'Light use'])
        expect(row(cold, line)[1], line).toBe('not at this temperature');
    }
    expect(said(calc({ shopTemperature: '8 °C' }).verdict?.text)).toContain('Not at 8 °C');
  });
  test('the shop of the sheet is warned of nothing of the kind', () => {
    const room = calc({ shopTemperature: '22 °C' });
    for (const id of ['never-cured', 'cures-late', 'cold-shop', 'too-far-off', 'log-goes-on', 'no-window'])
      expect(ids(room)).not.toContain(id);
  });
  test('a cool shop waits until the cure is there, and says why it is longer than by age', () => {
    const cool = calc({ shopTemperature: '17 °C' });
    expect(ids(cool)).toContain('cures-late');
    expect(hours(cool, 'fullCure')).toBeGreaterThan(24 * 18);
    expect(said(cool.figures.fullCure?.note)).toContain('by age alone it would come sooner');
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
    expect(result.verdict?.level).toBe('stop');
  });
});

test('hours of day need no unit', () => {
  const swing = { dayTemperature: '20 °C', nightTemperature: '8 °C' };
  expect(calc({ ...swing, warmHours: '10', warmHoursLeft: '3' }).figures).toEqual(
    calc({ ...swing, warmHours: '10 h', warmHoursLeft: '3 h' }).figures,
  );
});

describe('a log', () => {
  test('of a day is taken to come again, not to stay at its last warm reading', () => {
    // 21 to 14 and back to 21 °C: an even 21 °C would be cured after 7.6 days.
    const result = calc({ log: '0 h, 21 °C; 8 h, 20 °C; 12 h, 14 °C; 20 h, 14 °C; 24 h, 21 °C' });
    expect(hours(result, 'fullCure')).toBeGreaterThan(10 * 24);
    const caution = result.cautions.find(({ id }) => id === 'log-goes-on');
    expect(said(caution?.text)).toContain('its last 24 hours are taken to come again every day');
    expect(said(result.verdict?.text)).toContain('By your log');
  });
  test('of part of a day is taken to go on at its coldest', () => {
    const result = calc({ log: '0 h, 14 °C; 6 h, 21 °C' });
    expect(result.figures.fullCure).toBeUndefined();
    expect(said(result.cautions.find(({ id }) => id === 'log-goes-on')?.text)).toContain('its coldest reading, 14 °C');
  });
});

describe('a sheet that leaves something out or contradicts itself', () => {
  const laid = (more: object) => JSON.stringify({ name: 'Ours', potLife: '40 min', ...more });

  test('times without a temperature are said to be assumed, in the sentence and as a caution', () => {
    const result = calc({ resin: laid({ cure: '14 d' }), shopTemperature: '24 °C' });
    expect(ids(result)).toContain('times-temperature-assumed');
    expect(said(result.figures.fullCure?.note)).toContain('14 d at 25 °C, which is assumed');
    expect(hours(result, 'fullCure')).toBeGreaterThan(14 * 24);
    expect(result.verdict?.level).toBe('care');
  });

  test('the reason beside a figure is that of the figure', () => {
    const early = laid({ cure: '7 d', foodService: '3 d', cureTemperature: '22 °C' });
    const result = calc({ resin: early, shopTemperature: '22 °C' });
    expect(hours(result, 'foodService')).toBeCloseTo(168, 6);
    expect(said(result.figures.foodService?.note)).toBe(
      'The sheet says 3 d at 22 °C. Shown is the full cure: its sheet’s day for food, 3 d, comes before its own full cure, 7 d: the later one is kept.',
    );
    expect(said(result.verdict?.text)).toContain(
      'For food its sheet’s day for food, 3 d, comes before its own full cure, 7 d: the later one is kept.',
    );
    const odd = calc({
      resin: laid({ cure: '7 d', sandable: '9 d', cureTemperature: '22 °C' }),
      shopTemperature: '22 °C',
    });
    for (const name of ['sandable', 'lightUse', 'fullCure', 'oil', 'foodService'])
      expect(hours(odd, name), name).toBeCloseTo(9 * 24, 6);
    expect(said(odd.figures.fullCure?.note)).toContain('Shown is the time to the next stage');
  });

  test('pot life and depth that stand for two speeds leave no window: sand first', () => {
    const result = calc({
      resin: laid({
        potLife: '90 min',
        cure: '7 d',
        cureTemperature: '24 °C',
        greatestDepth: '11 mm',
        greatestDepthTemperature: '24 °C',
      }),
      shopTemperature: '20 °C',
    });
    expect(ids(result)).toContain('no-window');
    expect(result.figures.recoatCloses).toBeUndefined();
    expect(hours(result, 'recoatOpens')).toBe(hours(result, 'sandable'));
    expect(said(result.verdict?.text)).toContain('sand first');
  });
  test.each([
    // Opens for 25 °C and shuts for 20 °C, both assumed: of two hours some minutes are left, in a shop of any temperature.
    [{ recoatOpens: '4 h', recoatCloses: '6 h' }, '25 °C'],
    [{ recoatOpens: '4 h', recoatCloses: '6 h' }, '20 °C'],
    [{ recoatOpens: '4 h', recoatCloses: '6 h' }, '15 °C'],
    // The sheet's own words, in its own shop, and shorter than anyone keeps to.
    [{ recoatOpens: '4 h', recoatCloses: '4 h 10 min', cureTemperature: '22 °C' }, '22 °C'],
    [{ recoatOpens: '40 h', recoatCloses: '41 h', cureTemperature: '22 °C' }, '22 °C'],
  ])('a window of some minutes is no sure window: %j at %s', (window, shopTemperature) => {
    for (const more of [{}, { potLife: '', cure: '7 d' }]) {
      const result = calc({ resin: laid({ ...window, ...more }), shopTemperature });
      expect(said(result.verdict?.text)).toContain('no sure window: sand first');
      expect(said(result.verdict?.text)).not.toMatch(/next coat from|gives no window/);
      expect(ids(result)).toContain('no-window');
      expect(result.figures.recoatCloses).toBeUndefined();
      expect(row(result, 'Coat until')).toEqual([]);
      if (row(result, 'Coat').length > 0) expect(row(result, 'Coat')[1]).toBe('no sure window: sand first');
      if (result.figures.recoatOpens) expect(result.figures.recoatOpens.label).toContain('sanded first');
    }
  });
  test('a window of hours stays one', () => {
    for (const celsius of [10, 15, 22, 30]) {
      const shopTemperature = `${celsius} °C`;
      for (const resin of [
        'fast-coating-1-1',
        laid({ recoatOpens: '4 h', recoatCloses: '6 h', cureTemperature: '22 °C' }),
        laid({}),
      ])
        expect(said(calc({ resin, shopTemperature }).verdict?.text)).not.toContain('no sure window');
    }
  });
  test('pot life and depth that cannot both be right leave no time at all', () => {
    const result = calc({
      resin: laid({
        potLife: '45 min',
        potLifeMass: '454 g',
        greatestDepth: '12.7 mm',
        greatestDepthTemperature: '24 °C',
      }),
      shopTemperature: '17 °C',
    });
    expect(result.verdict?.level).toBe('unknown');
    expect([result.figures, result.tables, result.series]).toEqual([{}, undefined, undefined]);
    expect(result.cautions[0]).toMatchObject({ id: 'depth-against-pot-life', level: 'danger' });
  });
});

describe('the verdict', () => {
  test('says when to coat, sand, oil and serve, with the temperatures', () => {
    const { verdict } = calc({ dayTemperature: '20 °C', nightTemperature: '12 °C', warmHours: '10 h' });
    expect(verdict?.level).toBe('care');
    expect(said(verdict?.text)).toMatch(
      /^At 20 °C by day and 12 °C by night: next coat from 4\.7 h to 18 h; sand by hand for a coat after 36 h; machine and oil after 18 d, food then too, if its maker declares it for food\. Times of a kind/,
    );
  });
  test('is good only by a sheet that says all of it, in a shop that suits it', () => {
    const all = {
      name: 'Ours',
      potLife: '40 min',
      recoatOpens: '5 h',
      recoatCloses: '10 h',
      sandable: '24 h',
      cure: '6 d',
    };
    const whole = { ...all, foodService: '14 d', cureTemperature: '22 °C' };
    const level = (sheet: object, shopTemperature: string) =>
      calc({ resin: JSON.stringify(sheet), shopTemperature }).verdict?.level;
    expect(level(whole, '22 °C')).toBe('good');
    expect(level(whole, '17 °C')).toBe('care');
    expect(level(whole, '5 °C')).toBe('stop');
    expect(level({ ...whole, cureTemperature: '' }, '24 °C')).toBe('care');
    expect(level({ ...whole, foodService: '' }, '22 °C')).toBe('care');
    expect(calc({ shopTemperature: '22 °C' }).verdict?.level).toBe('care');
  });
});

test('a band that is written as its own figure is none', () => {
  const { figures } = calc({ shopTemperature: '21.9 °C' });
  for (const [name, { low, high, value }] of Object.entries(figures)) {
    if (low === undefined || high === undefined) continue;
    const written = [low, value, high].map((each) =>
      formatQuantity(each, figures[name]?.unit ?? '', undefined, { digits: 2 }),
    );
    expect(new Set(written).size, name).toBeGreaterThan(1);
  }
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

test('a log may be a list of readings, which says the same as its text', () => {
  const text = calc({ log: '0 h, 21 °C; 8 h, 15 °C; 24 h, 21 °C' });
  const readings = [
    { time: 0, temperature: 21 },
    { time: '8 h', temperature: '59 °F' },
    { time: 86_400, temperature: '21 °C' },
  ];
  expect(calc({ log: readings }).figures).toEqual(text.figures);
  const bad = run({ log: [{ time: 0, temperature: 90 }] });
  expect(bad.ok ? '' : bad.errors[0]?.message).toMatch(/^Row 1: “90 °C” is outside/);
});
