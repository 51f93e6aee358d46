import { describe, expect, test } from 'vitest';
import { finishCoatsCalculator } from '../../src/calculators/finish-coats/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { finishes } from '../../src/model/finish/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const tray = {
  shape: 'rounded-rectangle',
  length: '400 mm',
  width: '250 mm',
  cornerRadius: '0 mm',
  thickness: '20 mm',
};
const ask = (raw: Record<string, unknown>) => answer(finishCoatsCalculator, raw);
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = ask({ ...tray, finish: 'mineral-oil', ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const value = (result: Result, name: string) => result.figures[name]?.value ?? Number.NaN;
const ids = (result: Result) => result.cautions.map(({ id }) => id);
const fieldsAtFault = (raw: Record<string, unknown>) => {
  const outcome = ask(raw);
  return outcome.ok ? [] : outcome.errors.map(({ field }) => field);
};

describe('by hand', () => {
  test('faces and edges of a square tray, and of twelve', () => {
    expect(value(calc({}), 'area')).toBe(2 * 400 * 250 + 2 * 650 * 20);
    expect(value(calc({ sides: 'face' }), 'area')).toBe(100_000);
    expect(value(calc({ boards: '12' }), 'area')).toBe(12 * 226_000);
  });
  test('an outline and its own area give the same amounts', () => {
    const drawn = calc({});
    const outcome = ask({ finish: 'mineral-oil', area: '226000 mm2' });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    expect(value(outcome.value.result, 'volume')).toBeCloseTo(value(drawn, 'volume'), 9);
  });
  test('half a square metre at 10 and 20 m² from a litre, a tenth spare: 55 and 27.5 ml', () => {
    const result = calc({
      shape: '',
      length: '',
      width: '',
      cornerRadius: '',
      thickness: '',
      area: '0.5 m2',
      coats: '3',
      spreadingFirst: '10',
      spreadingNext: '20',
      spare: '10 %',
    });
    expect(value(result, 'firstCoat')).toBeCloseTo(55, 9);
    expect(value(result, 'nextCoat')).toBeCloseTo(27.5, 9);
    expect(value(result, 'volume')).toBeCloseTo(110, 9);
    expect(value(result, 'mass')).toBeCloseTo(110 * 0.86, 9);
    expect(result.figures.volume?.low).toBeUndefined();
  });
  test('the rows of the coats add up to the whole', () => {
    const result = calc({ coats: '3' });
    const rows = result.tables?.find(({ id }) => id === 'coats')?.rows ?? [];
    expect(rows).toHaveLength(3);
    expect(rows.reduce((sum, row) => sum + Number(row[3]), 0)).toBeCloseTo(value(result, 'volume'), 9);
    expect(rows.map(([, start, soak]) => [start, soak])).toEqual([
      [0, 2400],
      [12 * 3600, 2400],
      [24 * 3600, 2400],
    ]);
  });
});

test('an oil is two to three coats unless told, each soaking 30 to 45 minutes (common practice)', () => {
  const result = calc({ finish: 'linseed-oil' });
  expect(result.tables?.find(({ id }) => id === 'coats')?.rows).toHaveLength(3);
  expect(result.figures.soak).toMatchObject({ low: 1800, high: 2700, basis: 'shop-practice' });
  const steps = result.tables?.find(({ id }) => id === 'soak')?.rows.map(([at]) => at);
  expect(steps).toContain(1800);
  expect(steps).toContain(2700);
  expect(ids(result)).not.toContain('coats-unusual');
  expect(ids(calc({ finish: 'linseed-oil', coats: '5' }))).toContain('coats-unusual');
});

describe('cautions', () => {
  test.each(finishes.map((finish) => [finish.id, finish] as const))(
    '%s: its own, gravest concern of rags first',
    (id, finish) => {
      const found = ids(calc({ finish: id }));
      for (const caution of finish.cautions) expect(found).toContain(caution);
      if (finish.wiped) expect(found).toContain('oily-rags');
      if (finish.cautions.includes('alcohol-flash')) expect(found).toContain('solvent-use');
      expect(found).toContain('finish-and-food');
    },
  );
  test('oil that is not known to heat says so beside the rule for rags', () => {
    expect(ids(calc({ finish: 'mineral-oil' }))).toContain('rags-of-this-finish');
    expect(ids(calc({ finish: 'tung-oil' }))).not.toContain('rags-of-this-finish');
  });
  test('an inlay brings what the finish does on resin', () => {
    const over = (finish: string) =>
      calc({ finish, resin: 'inlay' }).cautions.find(({ id }) => id === 'finish-over-resin');
    expect(over('mineral-oil')?.level).toBe('note');
    expect(over('varnish')?.level).toBe('warning');
    expect(ids(calc({ resin: 'none' }))).not.toContain('finish-over-resin');
  });
});

describe('the verdict', () => {
  const said = (raw: Record<string, unknown>) => {
    const { level, text } = calc(raw).verdict ?? {};
    return { level, text: inReaderUnits(text ?? '', defaultUnits) };
  };
  test('says coats, amount and when to use it', () => {
    expect(said({ resin: 'none', coats: '3' })).toMatchObject({
      level: 'good',
      text: expect.stringMatching(
        /^Three coats of mineral oil: [\d.]+ ml to have at hand, handled after .+, use after /,
      ),
    });
  });
  test('an inlay waits for its own cure, whatever the finish needs', () => {
    const one = said({ resin: 'inlay', coats: '1' });
    expect(one.level).toBe('care');
    // The resin first: ‘use after 36 h’ reads as leave to use it.
    expect(one.text).toMatch(/, use not before the resin’s own full cure, nor within .+ of the first coat\./);
    expect(one.text).not.toMatch(/use after/);
    const result = calc({ resin: 'inlay', coats: '1' });
    expect(result.cautions[0]).toMatchObject({ id: 'resin-cure-first', own: true });
    expect(result.figures.use?.label).toBe('Until the finish is ready for food and water');
    expect(result.figures.use?.note).toContain('Of the finish alone');
  });
  test('is good of no board whose resin was not told, and of no finish that heats or asks its maker', () => {
    expect(said({}).level).toBe('care');
    for (const finish of finishes.filter(({ food, rags }) => food.level !== 'listed' || rags.hazard !== 'none-known'))
      expect(said({ finish: finish.id, resin: 'none' }).level, finish.id).toBe('care');
  });
  test('every drying oil brings the caution on rags', () => {
    for (const { id } of finishes.filter(({ sets }) => sets === 'by-oxygen'))
      expect(ids(calc({ finish: id })), id).toContain('oily-rags');
  });
  test('a film of epoxy says how it is mixed, and what a mass of it does', () => {
    const film = calc({ finish: 'film-epoxy', boards: '12' });
    expect(film.cautions[0]).toMatchObject({ id: 'mix-in-small-cups', level: 'danger', own: true });
    expect(film.cautions[0]?.text).toContain('no coat thicker than its sheet allows');
    expect(ids(film)).toContain('resin-cup-heat');
  });
});

test('a band is kept of amounts, and time to use counts the waits', () => {
  const result = calc({ finish: 'varnish', coats: '3' });
  const { value: amount, low, high } = result.figures.volume ?? { value: 0 };
  expect(low).toBeLessThan(amount);
  expect(high).toBeGreaterThan(amount);
  expect(value(result, 'use') / 86_400).toBe(2 + 28);
  expect(result.tables?.some(({ id }) => id === 'soak')).toBe(false);
});

describe('what happens when', () => {
  const events = (raw: Record<string, unknown>) =>
    new Map((calc(raw).timeline?.events ?? []).map((event) => [event.id, event]));

  test('coats wait for one another, and food for the last of them', () => {
    const result = calc({ finish: 'varnish', coats: '3', resin: 'none' });
    expect(result.timeline?.zero).toBe('the first coat');
    const of = events({ finish: 'varnish', coats: '3', resin: 'none' });
    expect([...of.keys()]).toEqual(['coat-1', 'coat-2', 'coat-3', 'handle', 'food', 'hand-over']);
    expect(of.get('coat-3')).toMatchObject({ at: 2 * 86_400, after: 'coat-2' });
    expect(of.get('handle')?.at).toBe(value(result, 'light'));
    for (const id of ['food', 'hand-over'])
      expect(of.get(id)).toMatchObject({ at: value(result, 'use'), high: result.figures.use?.high, after: 'coat-3' });
  });
  test('what is wiped says when, and every event has its turn', () => {
    const of = events({ finish: 'linseed-oil', resin: 'none' });
    expect(of.get('wipe-2')).toMatchObject({ at: 2400 + (of.get('coat-2')?.at ?? 0), after: 'coat-2' });
    const times = [...of.values()].map(({ at }) => at);
    expect(times).toEqual([...times].sort((one, other) => one - other));
  });
  test('an inlay leaves no day for food: its own cure is not known here', () => {
    const of = events({ resin: 'inlay' });
    expect(of.has('food')).toBe(false);
    expect(of.has('hand-over')).toBe(false);
    expect(of.get('finish-ready')?.note).toContain('Of the finish alone');
  });
});

test('what is used up is the finish, its weight beside it', () => {
  const result = calc({ coats: '3' });
  expect(result.uses).toHaveLength(1);
  expect(result.uses?.[0]).toMatchObject({ what: 'Mineral oil', amount: value(result, 'volume'), unit: 'mL' });
  expect(inReaderUnits(result.uses?.[0]?.note ?? '', defaultUnits)).toMatch(/[\d.]+ g by weight/);
});

test('a finish is renewed after so many months', () => {
  // 26 weeks, 13 to 52 (common practice).
  expect(calc({ finish: 'tung-oil' }).figures.upkeep).toMatchObject({ value: 6, low: 3, high: 12, unit: 'mo' });
});

describe('errors at their fields', () => {
  test.each([
    [{ finish: 'mineral-oil' }, 'shape'],
    [{ ...tray, finish: 'mineral-oil', area: '100 cm2' }, 'area'],
    [{ ...tray, thickness: '', finish: 'mineral-oil' }, 'thickness'],
    [{ ...tray, finish: 'mineral-oil', coats: '2.5' }, 'coats'],
    [{ ...tray, finish: 'mineral-oil', boards: '1.5' }, 'boards'],
    [{ ...tray, finish: 'snake-oil' }, 'finish'],
    [{ shape: 'drawing', thickness: '20 mm', finish: 'mineral-oil' }, 'drawing'],
  ] as const)('%j', (raw, field) => {
    expect(fieldsAtFault(raw)).toContain(field);
  });
  test('faces alone need no thickness', () => {
    expect(fieldsAtFault({ ...tray, thickness: '', sides: 'faces', finish: 'mineral-oil' })).toEqual([]);
  });
});

test('the weight has the band of the volume that it is the weight of', () => {
  const { volume, mass } = calc({ finish: 'mineral-oil' }).figures;
  const density = (mass?.value ?? 0) / (volume?.value ?? 1);
  expect(mass?.low).toBeCloseTo((volume?.low ?? 0) * density, 9);
  expect(mass?.high).toBeCloseTo((volume?.high ?? 0) * density, 9);
});
