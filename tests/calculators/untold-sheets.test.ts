import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { inReaderUnits } from '../../src/model/quantity/index.ts';

// Of a sheet that is silent, or at war with itself, no rise, hour, curve or gram is told: what is missing, and where it stands, is.

const run = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify([raw, outcome.errors]));
  return outcome.value.result;
};
const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
const words = (text: string | undefined) => inReaderUnits(text ?? '', inch);
const resinOf = (sheet: object) => JSON.stringify({ name: 'Lakeside', ...sheet });
const heatOf = (sheet: object, more: Record<string, unknown> = {}) =>
  run(pourHeatCalculator, { resin: resinOf(sheet), depth: '1/4 in', shopTemperature: '75 °F', ...more });
const coatOf = (sheet: object, more: Record<string, unknown> = {}) =>
  run(floodCoatCalculator, { resin: resinOf(sheet), wantedThickness: '1/8 in', area: '279 in²', ...more });

/** All of an answer that somebody could pour by. */
const told = ({ figures, series, tables, timeline, uses, documents }: Result) => ({
  figures: Object.keys(figures),
  series: (series ?? []).map(({ id }) => id),
  tables: (tables ?? []).map(({ id }) => id),
  events: (timeline?.events ?? []).map(({ id }) => id),
  uses: (uses ?? []).map(({ id }) => id),
  documents: (documents ?? []).map(({ id }) => id),
});
const nothing = { figures: [], series: [], tables: [], events: [], uses: [], documents: [] };
/** A rise or a time in any sentence of an answer that is not one that the sheet itself states. */
const said = (result: Result) => words(JSON.stringify([result.verdict, result.cautions, result.evidence]));

const whole = {
  mixByVolume: '2:1',
  potLife: '6 h',
  potLifeMass: '100 g',
  potLifeTemperature: '25 °C',
  greatestDepth: '18 mm',
  greatestDepthTemperature: '22 °C',
};
const atWar: readonly (readonly [string, object])[] = [
  ['two ratios', { ...whole, mixByVolume: '2:1', mixByWeight: '1:1' }],
  ['a recoat window that closes before it opens', { ...whole, recoatOpens: '10 h', recoatCloses: '5 h' }],
  ['two pot lives the wrong way round', { ...whole, secondPotLife: '8 h', secondPotLifeTemperature: '30 °C' }],
  ['two pot lives too far apart', { ...whole, secondPotLife: '30 h', secondPotLifeTemperature: '20 °C' }],
  ['depth and pot life', { ...whole, potLife: '30 min', greatestDepth: '50 mm' }],
];

describe('the heat of a pour', () => {
  test.each([
    ['1/4 in', {}],
    ['1/4 in', { mixByVolume: '2:1', densityA: '1.1 g/ml', densityB: '1 g/ml' }],
    ['3/4 in', { cure: '7 d' }],
    ['1/4 in', { kind: 'slow-casting-2-1' }],
  ])('%s by a sheet without pot life and depth, %j, is not known, and nothing of it is told', (depth, sheet) => {
    for (const more of [{}, { width: '12 mm' }, { area: '279 in²' }, { resinTemperature: '95 °F' }]) {
      const found = heatOf(sheet, { depth, ...more });
      expect(told(found)).toEqual(nothing);
      expect(said(found)).not.toMatch(/\d ?(?:h|min|d)\b|above the air|rises? by/);
      if (found.verdict?.level === 'stop') continue;
      expect(found.verdict?.level).toBe('unknown');
      expect(found.verdict?.text).toMatch(/Lakeside names neither a pot life nor a greatest depth.*data sheet/);
      expect(found.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['no-sheet-depth', 'deep-pour']));
      expect(found.cautions.map(({ id }) => id)).not.toContain('pour-estimate');
    }
  });

  test('that is hot even by a generic kind is stopped, and says that the kind stands in', () => {
    const found = heatOf({}, { depth: '2 in' });
    expect(told(found)).toEqual(nothing);
    expect(found.verdict?.level).toBe('stop');
    expect(words(found.verdict?.text)).toMatch(
      /^Do not pour 2 in\.? in one go|^Do not pour 2 inch in one go|^Do not pour 2 in/,
    );
    expect(found.verdict?.text).toMatch(/names no pot life.*of a generic kind/);
    expect(found.cautions[0]).toMatchObject({ id: 'pour-hot', level: 'danger', own: true });
    expect(said(found)).not.toMatch(/\d ?(?:h|min|d)\b/);
  });

  test.each(atWar)('by a sheet at war in %s tells nothing, at any depth', (_, sheet) => {
    for (const depth of ['1/16 in', '1/4 in', '3/4 in', '2 in']) {
      const found = heatOf(sheet, { depth });
      expect(['unknown', 'stop']).toContain(found.verdict?.level);
      expect(told(found)).toEqual(nothing);
      expect(found.cautions.map(({ id }) => id)).not.toContain('pour-estimate');
    }
    expect(heatOf(sheet, { depth: '1/16 in' }).verdict?.level).toBe('unknown');
  });

  test('by a sheet of which the pot life is sound keeps what it says of this pour', () => {
    const { greatestDepth: _, greatestDepthTemperature: __, ...silent } = whole;
    expect(heatOf(silent).figures.peakRise).toBeDefined();
    expect(heatOf(whole).timeline?.events.length).toBeGreaterThan(3);
  });

  test('that is too much at once, and cool, is not said to grow too hot', () => {
    const { greatestDepth: _, greatestDepthTemperature: __, ...silent } = whole;
    const found = heatOf({ ...silent, greatestVolume: '100 ml' }, { area: '3000 cm²' });
    expect(found.verdict?.level).toBe('stop');
    expect(found.verdict?.text).not.toContain('too hot');
    expect(found.verdict?.text).toContain('more at once than the sheet allows');
  });
});

describe('a sheet that names its depth and no pot life', () => {
  const depthOnly = { mixByVolume: '2:1', greatestDepth: '18 mm', greatestDepthTemperature: '22 °C' };
  const at = (depth: string, shopTemperature: string, more: object = {}) =>
    heatOf({ ...depthOnly, ...more }, { depth, shopTemperature });
  const figuresOf = ({ figures }: Result) =>
    Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, figure.value]));
  const hour = /\d ?(?:h|min|d)\b|above the air|rises? by|heat index/i;

  test.each([{}, { kind: 'slow-casting-2-1' }, { recoatOpens: '8 h', recoatCloses: '20 h', cure: '7 d' }])(
    'within it, %j: no rise, hour or wait, but what the sheet allows',
    (more) => {
      const found = at('10 mm', '20 °C', more);
      expect(found.verdict?.level).toBe('unknown');
      expect(words(found.verdict?.text)).toMatch(/^The sheet of Lakeside allows .* but names no pot life/);
      expect(told(found)).toEqual({ ...nothing, figures: ['sheetDepth'] });
      expect(figuresOf(found)).toEqual({ sheetDepth: 18 });
      expect(said(found)).not.toMatch(hour);
      expect(found.cautions.map(({ id }) => id)).toContain('no-sheet-pot-life');
    },
  );

  test('beyond it: stop, with as many layers as the sheet makes of it, and no wait between them', () => {
    const found = at('30 mm', '20 °C');
    expect(found.verdict?.level).toBe('stop');
    expect(inReaderUnits(found.verdict?.text ?? '', { system: 'metric', inches: 'decimal' })).toBe(
      'Do not pour 30 mm in one go: the sheet of Lakeside allows 18 mm at 22 °C, so two layers of 15 mm at least. How long a layer must wait for the next nobody can say: the sheet names no pot life.',
    );
    expect(figuresOf(found)).toEqual({ layers: 2, layerDepth: 15, sheetDepth: 18 });
    expect(told(found)).toEqual({ ...nothing, figures: ['layers', 'layerDepth', 'sheetDepth'] });
    expect(said(found)).not.toMatch(hour);
  });

  test('in a warmer shop, or with warmer resin, it makes no layers either', () => {
    for (const found of [
      at('30 mm', '23 °C'),
      heatOf(depthOnly, { depth: '30 mm', shopTemperature: '20 °C', resinTemperature: '30 °C' }),
    ]) {
      expect(found.verdict?.level).toBe('stop');
      expect(found.verdict?.text).toContain('less where it is warmer, as here');
      expect(figuresOf(found)).toEqual({ sheetDepth: 18 });
    }
    expect(at('10 mm', '23 °C').verdict?.text).toMatch(/it is warmer here, so less/);
  });

  test('as many layers as its greatest volume at once makes', () => {
    const found = heatOf(
      { ...depthOnly, greatestVolume: '200 ml' },
      { depth: '10 mm', shopTemperature: '20 °C', area: '500 cm²' },
    );
    expect(found.verdict?.level).toBe('stop');
    expect(found.verdict?.text).toContain('more at once than the sheet allows, so three layers of');
    expect(figuresOf(found)).toMatchObject({ layers: 3, pourVolume: 500 });
  });

  test('gives everything again once a rate of the reader’s own is known, or the pot life', () => {
    expect(at('10 mm', '20 °C', { potLife: '6 h' }).figures.peakRise).toBeDefined();
    expect(heatOf(depthOnly, { depth: '10 mm', k2At25C: '0.00003' }).figures.peakRise).toBeDefined();
  });

  test('in a warmer shop has no dose in layers and no coat, and a dose in layers no hours', () => {
    const dose = (shopTemperature: string) =>
      run(resinDoseCalculator, {
        resin: resinOf(depthOnly),
        shapes: 'rectangle, 400 mm, 60 mm',
        depth: '30 mm',
        cupMass: '400 g',
        scaleDivision: '0.1 g',
        shopTemperature,
      });
    expect(dose('26 °C').verdict).toMatchObject({ level: 'unknown' });
    expect(dose('26 °C').verdict?.text).toMatch(/nobody can say how much less/);
    expect(dose('26 °C').uses ?? []).toEqual([]);
    expect(dose('20 °C').figures.layers?.value).toBe(2);
    expect(dose('20 °C').timeline?.events ?? []).toEqual([]);
    const coat = (shopTemperature: string) => coatOf(depthOnly, { shopTemperature });
    expect(coat('26 °C').verdict).toMatchObject({ level: 'unknown' });
    expect(coat('26 °C').uses ?? []).toEqual([]);
    expect(coat('20 °C').verdict?.level).toBe('care');
  });
});

describe('a flood coat', () => {
  const amounts = (result: Result) =>
    Object.keys(result.figures).filter((name) => !/^(thickness|capillaryLength)$/.test(name));

  test.each(['1/32 in', '1/8 in', '1/2 in', undefined])('of %s by a sheet with only a name is not known', (wanted) => {
    const found = coatOf({}, { wantedThickness: wanted });
    expect(found.verdict?.level).toBe('unknown');
    expect(found.verdict?.text).not.toMatch(/One coat/);
    expect(found.verdict?.text).toMatch(/data sheet|maker/i);
    expect(amounts(found)).toEqual([]);
    expect(found.uses ?? []).toEqual([]);
    expect(JSON.stringify(found.cautions)).not.toMatch(/Build a dam|cups, one after another/);
  });

  test.each(atWar)('by a sheet at war in %s is not known either, with a thickness or without', (_, sheet) => {
    for (const wantedThickness of ['1/8 in', undefined]) {
      const found = coatOf(sheet, { wantedThickness });
      expect(found.verdict?.level).toBe('unknown');
      expect(amounts(found)).toEqual([]);
      expect(found.uses ?? []).toEqual([]);
    }
  });

  const fast = { mixByVolume: '1:1', potLife: '20 min', potLifeMass: '100 g', potLifeTemperature: '77 °F' };

  test('that the heat of a pour stops is stopped here too, and by the dose', () => {
    const more = { shopTemperature: '75 °F' };
    expect(heatOf(fast, { depth: '1/8 in' }).verdict?.level).toBe('stop');
    const found = coatOf(fast, more);
    expect(found.verdict?.level).toBe('stop');
    expect(found.verdict?.text).toContain('too hot');
    expect(amounts(found)).toEqual([]);
    const dose = run(resinDoseCalculator, {
      resin: resinOf(fast),
      shapes: 'rectangle, 400 mm, 450 mm',
      depth: '1/8 in',
      ...more,
    });
    expect(dose.verdict?.level).toBe('stop');
    expect(dose.uses ?? []).toEqual([]);
  });

  test('of a shop that was not given is judged at the temperature of the pot life, and says so', () => {
    const found = coatOf(fast);
    expect(found.verdict?.level).toBe('stop');
    expect(words(found.verdict?.text)).toContain('77 °F');
  });

  test('is never more than the heat of a pour allows', () => {
    const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
    const sheets = fc.record({
      mixByVolume: fc.constant('1:1'),
      potLife: optional(fc.integer({ min: 8, max: 300 }).map((minutes) => `${minutes} min`)),
      greatestDepth: optional(fc.integer({ min: 1, max: 12 }).map((mm) => `${mm} mm`)),
      greatestDepthTemperature: optional(fc.integer({ min: 18, max: 28 }).map((celsius) => `${celsius} °C`)),
    });
    const levels = { stop: 0, unknown: 0, other: 0 };
    fc.assert(
      fc.property(sheets, fc.integer({ min: 5, max: 40 }), fc.integer({ min: 15, max: 32 }), (sheet, tenths, shop) => {
        const depth = `${tenths / 10} mm`;
        const at = { shopTemperature: `${shop} °C` };
        const { greatestDepthTemperature: _, ...rest } = sheet;
        const given = sheet.greatestDepth ? sheet : rest;
        const heat = heatOf(given, { depth, ...at }).verdict?.level;
        const coat = coatOf(given, { wantedThickness: depth, ...at });
        if (heat === 'stop') expect(['stop', 'unknown']).toContain(coat.verdict?.level);
        if (coat.verdict?.level === 'stop' || coat.verdict?.level === 'unknown') expect(amounts(coat)).toEqual([]);
        levels[heat === 'stop' || heat === 'unknown' ? heat : 'other'] += 1;
      }),
      { numRuns: 150 },
    );
    for (const count of Object.values(levels)) expect(count).toBeGreaterThan(5);
  });
});

describe('what a sheet does not say is not blamed, nor passed off as said', () => {
  const dose = (sheet: object, more: Record<string, unknown> = {}) =>
    run(resinDoseCalculator, { resin: resinOf(sheet), shapes: 'rectangle, 400 mm, 20 mm', depth: '1/4 in', ...more });

  test.each([{}, { mixByVolume: '2:1' }, { mixByVolume: '2:1', cure: '7 d' }])(
    'a depth of the reader’s own beside %j is held against no pot life of that sheet',
    (sheet) => {
      const found = dose(sheet, { greatestDepth: '2 in', cupMass: '100 g', mixRatio: '2:1', mixRatioBy: 'volume' });
      const text = JSON.stringify([found.verdict, found.cautions]);
      expect(text).not.toMatch(/cannot both be right/);
      expect(text).toMatch(/Lakeside names no pot life, and the greatest depth that you give does not go with/);
      expect(found.verdict?.level).toBe('unknown');
    },
  );

  test('a depth of the sheet’s own without a pot life is told so by a flood coat', () => {
    const found = coatOf({ kind: 'fast-coating-1-1', mixByVolume: '1:1', greatestDepth: '50 mm' });
    expect(found.verdict?.text).not.toMatch(/cannot both be right/);
    expect(found.verdict?.text).toMatch(/names no pot life/);
  });

  test.each([
    [{}, /30 min for 100 g at 77 °F \(both assumed: the sheet does not say\)/],
    [{ potLifeMass: '150 g' }, /30 min for 150 g at 77 °F \(assumed: the sheet does not say\)/],
    [{ potLifeTemperature: '25 °C' }, /30 min for 100 g \(assumed: the sheet does not say\) at 77 °F,/],
    [{ potLifeMass: '100 g', potLifeTemperature: '25 °C' }, /30 min for 100 g at 77 °F,/],
  ])('the cup of a pot life with %j is called assumed, and stays in grams', (more, expected) => {
    const found = heatOf({ mixByVolume: '1:1', potLife: '30 min', greatestDepth: '50 mm', ...more });
    expect(words(found.cautions.find(({ id }) => id === 'depth-against-pot-life')?.text)).toMatch(expected);
    expect(said(found)).not.toMatch(/\boz\b/);
  });

  test('without a shop the cups are timed in the warmer one, and each danger says for which', () => {
    const asked = { resin: 'fast-coating-1-1', shapes: 'rectangle, 400 mm, 400 mm', depth: '3 mm', cupMass: '500 g' };
    const found = run(resinDoseCalculator, asked);
    const heat = found.cautions.find(({ id }) => id === 'cup-runs-away');
    expect(words(heat?.text)).toMatch(/at 77 °F \(assumed\)/);
    const told = run(resinDoseCalculator, { ...asked, shopTemperature: '25 °C' });
    expect(told.cautions.find(({ id }) => id === 'cup-runs-away')?.text).not.toContain('assumed');
    // The warmer of the two, whichever is stated for it.
    const warmDepth = { ...whole, potLifeTemperature: '20 °C', greatestDepthTemperature: '30 °C' };
    expect(words(dose(warmDepth, { scaleDivision: '0.1 g' }).figures.emptyWithin?.note)).toContain('86 °F (assumed');
    const both = run(resinDoseCalculator, {
      resin: 'slow-casting-2-1',
      shapes: 'rectangle, 400 mm, 100 mm',
      depth: '10 mm',
    });
    const taken = both.cautions.filter(({ text }) => text.startsWith('Taken: a shop'));
    expect(taken).toHaveLength(1);
    expect(words(taken[0]?.text)).toMatch(/of 68 °F, which the depth is stated for, and of 77 °F.*for the cups/);
    expect(words(JSON.stringify(both.documents))).toContain('shop 77 °F (assumed)');
  });
});
