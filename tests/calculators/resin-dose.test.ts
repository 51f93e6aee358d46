import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { resinSheetForm } from '../../src/calculators/kit/resin-sheet.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';

type Raw = Readonly<Record<string, unknown>>;

function result(raw: Raw): Result {
  const outcome = answer(resinDoseCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}
const value = (given: Result, name: string) => given.figures[name]?.value ?? Number.NaN;
const ids = (given: Result) => given.cautions.map(({ id }) => id);
const column = (given: Result, id: string) => {
  const table = given.tables?.[0];
  const at = table?.columns.findIndex((one) => one.id === id) ?? -1;
  return table?.rows.map((row) => row[at]) ?? [];
};
/** Working time of a cup, s, as its own calculator gives it. */
function workingTime(raw: Raw): number {
  const outcome = answer(workingTimeCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result.figures.cupWork?.value ?? Number.NaN;
}
function refused(raw: Raw): { field: string; message: string } {
  const outcome = answer(resinDoseCalculator, raw);
  if (outcome.ok) throw new Error('it has an answer');
  return outcome.errors[0] as { field: string; message: string };
}

/** A ratio, densities and a cup of the reader's own, and a scale fine enough for any of these cups. */
const own = {
  mixRatio: '2:1',
  mixRatioBy: 'volume',
  densityA: '1.16',
  densityB: '1.00',
  cupMass: '20 kg',
  scaleDivision: '0.01 g',
};
/** How deep it is and may be. */
const deep = { depth: '10 mm', greatestDepth: '50 mm' };
const metric = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
const verdict = (given: Result) => ({ level: given.verdict?.level, text: metric(given.verdict?.text) });
const caution = (given: Result, id: string) => {
  const found = given.cautions.find((one) => one.id === id);
  return found && { ...found, text: metric(found.text) };
};
/** Whether an answer tells anybody to mix anything. */
const doses = (given: Result) =>
  ['mass', 'massA', 'massB', 'volumeA', 'volumeB', 'cups', 'layers', 'pieceMass'].some((name) => given.figures[name]) ||
  (given.tables ?? []).length > 0;

describe('an amount of mix and a ratio, without a resin', () => {
  // By hand: 100 / (1 + 1/2.32) = 69.88 of A; 100 − 69.88 = 30.12 of B.
  test('100 g at 2:1 by volume', () => {
    const given = result({ mass: '100 g', ...own });
    expect(value(given, 'massA')).toBeCloseTo(69.88, 2);
    expect(value(given, 'massB')).toBeCloseTo(30.12, 2);
    expect(value(given, 'volumeA')).toBeCloseTo(60.24, 2);
    expect(value(given, 'volumeB')).toBeCloseTo(30.12, 2);
    expect(value(given, 'mixedDensity')).toBeCloseTo(1.1067, 4);
    expect(given.figures.massA?.basis).toBe('supplier-sheet');
  });

  test('densities are read in g/ml and in kg/m³ alike', () => {
    expect(result({ mass: 100, ...own, densityA: '1160', densityB: 1000 })).toEqual(result({ mass: 100, ...own }));
  });

  // By hand: 1.16 g of A and 0.97 g of B in every 2 ml.
  test('1:1 by volume is equal volumes and 100 : 83.6 by weight', () => {
    const given = result({ ...own, ...deep, volume: '200 ml', mixRatio: '1:1', densityB: '0.97 g/ml' });
    expect(value(given, 'volumeA')).toBeCloseTo(100, 9);
    expect(value(given, 'volumeB')).toBeCloseTo(100, 9);
    expect(value(given, 'massA')).toBeCloseTo(116, 9);
    expect(value(given, 'massB')).toBeCloseTo(97, 9);
    expect(value(given, 'weightRatio')).toBeCloseTo(83.6, 1);
  });

  test('mass and volume always reconcile, however the want is stated', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.integer({ min: 20, max: 300 }),
        fc.constantFrom('volume', 'weight'),
        fc.double({ min: 0.8, max: 2, noNaN: true }),
        fc.double({ min: 0.8, max: 2, noNaN: true }),
        (amount, parts, mixRatioBy, densityA, densityB) => {
          const mix = { ...own, ...deep, mixRatio: `100:${parts}`, mixRatioBy, densityA, densityB };
          const byMass = result({ mass: amount, ...mix });
          const { massA, massB, volumeA, volumeB } = Object.fromEntries(
            Object.entries(byMass.figures).map(([name, figure]) => [name, figure.value]),
          ) as Record<string, number>;
          const [a, b, va, vb] = [massA, massB, volumeA, volumeB] as [number, number, number, number];
          expect((a + b) / amount).toBeCloseTo(1, 9);
          expect(a / densityA / va).toBeCloseTo(1, 9);
          expect(b / densityB / vb).toBeCloseTo(1, 9);
          expect((mixRatioBy === 'volume' ? vb / va : b / a) * 100).toBeCloseTo(parts, 6);
          const back = result({ volume: va + vb, ...mix });
          expect(value(back, 'mass') / amount).toBeCloseTo(1, 9);
          expect(value(back, 'massA') / a).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each([
    [{ mass: '100 g' }, 'resin', /No resin was named/],
    [{ mass: '100 g', mixRatio: '2:1', densityA: '1.16' }, 'densityB', /density of part B is not known/],
    [{ ...own }, 'shapes', /Nothing says what is to be filled/],
    [{ ...own, mass: '100 g', volume: '90 ml' }, 'mass', /^Both “Volume to fill” and “Mixed resin wanted” were given/],
    [{ ...own, shapes: 'oval, 90, 60' }, 'depth', /how deep/],
    [
      { ...own, shapes: 'oval, 90, 60', depth: '5 mm', depths: '4; 6' },
      'depths',
      /^Both “Depth” and “Depths” were given/,
    ],
    [{ ...own, mass: '100 g', sealCoat: '0.5 g/m²' }, 'sealCoat', /is no coat/],
    [{ ...own, mass: '50 kg', cupMass: '100 g' }, 'cupMass', /takes 500 cups, more than 120/],
    [{ resin: 'fast-coating-1-1', mass: '2 kg', timeFor100g: '10 h' }, 'timeFor100g', /Place it faster/],
    [{ ...own, mass: '100 g', layers: '1.5' }, 'layers', /not a whole number/],
    [{ ...own, mass: '100 g', mixRatio: 'equal' }, 'mixRatio', /not a mix ratio/],
    [{ ...own, drawing: 'M0 0H300V20H0Z', drawingFilled: 'holes', depth: 5 }, 'drawingFilled', /no region inside/],
    [{ ...own, shapes: 'disc, 90, 60', depth: 5 }, 'shapes', /not rectangle, oval, channel or ring/],
    [{ ...own, shapes: 'channel 420 x 38', depth: 5 }, 'shapes', /has no commas.*channel, 900 mm, 12 mm/],
    [{ ...own, shapes: 'ring, 90, 90', depth: 5 }, 'shapes', /diameters are the same/],
    [{ ...own, shapes: 'oval, 90, 60, 1.5', depth: 5 }, 'shapes', /not a whole number of pieces/],
    [{ ...own, volume: 100, colours: 'moss, 60 %; amber, 30 %' }, 'colours', /sum to 90 %/],
    [{ ...own, volume: 100, colours: 'moss, 60 %; amber' }, 'colours', /some have none/],
    [{ ...own, volume: 100, colours: 'moss, 100 %, soot 3 %' }, 'colours', /not a pigment/],
    [{ ...own, depths: '8, 60 %; 15, 30 %', volume: 100 }, 'depths', /sum to 90 %/],
    [{ ...own, water: 'a cup or so' }, 'water', /neither a volume nor a weight/],
  ])('%j is refused at %s', (raw, field, message) => {
    const error = refused(raw);
    expect(error.field).toBe(field);
    expect(error.message).toMatch(message);
  });
});

describe('a place to fill', () => {
  const plain = { ...own, ...deep, depth: undefined, residue: 0, spare: 0 };

  // By hand: 420 × 38 × 12 mm = 191.52 ml.
  test.each([
    ['shapes', { shapes: 'channel, 420 mm, 38 mm', depth: '12 mm' }, 191.52],
    ['two of a shape', { shapes: 'rectangle, 10 cm, 2 cm, 2', depth: '10 mm' }, 40],
    ['several depths', { shapes: 'rectangle, 100, 20', depths: '10; 20; 30' }, 40],
    ['depths with shares', { shapes: 'rectangle, 100, 20', depths: '10, 75 %; 30, 25 %' }, 30],
    ['a drawing', { drawing: 'M0 0H300V20H0Z', depth: 5 }, 30],
    ['regions of a drawing', { drawing: 'M0 0H400V180H0ZM60 40H340V70H60ZM60 110H340V140H60Z', depth: 10 }, 168],
    [
      'a drawing without its regions',
      { drawing: 'M0 0H400V180H0ZM60 40H340V70H60Z', drawingFilled: 'inside', depth: 10 },
      636,
    ],
    ['a volume', { volume: '8 fl oz', depth: 10 }, 236.6],
    ['measured water', { water: '240 ml', depth: 10 }, 240],
    ['weighed water', { water: '240 g', depth: 10 }, 240.5],
    ['water less the stones in it', { water: '240 ml', depth: 10, displaced: '40 ml' }, 200],
    ['a shape less what is set into it', { shapes: 'rectangle, 100, 20', depth: 10, displaced: '5 ml' }, 15],
  ])('as %s', (_, want, millilitres) => {
    const given = result({ ...plain, ...want });
    expect(value(given, 'fillVolume')).toBeCloseTo(millilitres, 1);
    expect(value(given, 'mass')).toBeCloseTo(value(given, 'fillVolume') * (3.32 / 3), 6);
  });

  // By hand: 168 ml · 3.32/3 = 185.9 g; 5 % spare and 4 % left in the cups: 185.9 · 1.05 / 0.96 = 203.4 g.
  test('loses 4 % in the cups and takes 5 % spare unless told otherwise; an amount that is wanted does not', () => {
    const drawing = { drawing: 'M0 0H400V180H0ZM60 40H340V70H60ZM60 110H340V140H60Z', depth: 10 };
    expect(value(result({ ...own, ...deep, ...drawing }), 'mass')).toBeCloseTo(203.35, 1);
    expect(value(result({ ...own, ...deep, volume: 168 }), 'mass')).toBeCloseTo(185.92, 1);
  });

  // By hand: floor 0.1 m · 0.02 m and walls 2 · 0.12 m · 0.01 m make 0.0044 m²; at 150 g/m² 0.66 g.
  test('soaks up a seal coat on floor and walls, as a cup of its own, clear', () => {
    const given = result({
      ...plain,
      shapes: 'rectangle, 100, 20',
      depth: 10,
      sealCoat: 150,
      colours: 'moss green, 100 %, paste 3 %',
      scaleDivision: '0.001 g',
    });
    expect(value(given, 'sealMass')).toBeCloseTo(0.66, 6);
    expect(column(given, 'stage')).toEqual(['Seal coat', 'Fill', '']);
    expect(column(given, 'colour')).toEqual(['clear', 'moss green', '']);
  });
});

test('a seal coat on nobody knows how much wood is left out, and said', () => {
  const given = result({ ...own, mass: '100 g', sealCoat: '150 g/m²' });
  expect(value(given, 'mass')).toBe(100);
  expect(ids(given)).toContain('no-seal-coat');
  const known = result({ ...own, mass: '100 g', sealCoat: '150 g/m²', bareArea: '400 cm²' });
  expect(value(known, 'mass')).toBeCloseTo(106, 9);
  expect(ids(known)).not.toContain('no-seal-coat');
});

describe('cups, layers and colours', () => {
  test('a pour deeper than the sheet allows is split into layers, and cups hold what the pot life is stated for', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 600, 80', depth: '30 mm', scaleDivision: 0.1 });
    expect(value(given, 'layers')).toBe(2);
    expect(value(given, 'layerThickness')).toBe(15);
    expect(value(given, 'largestCup')).toBeLessThanOrEqual(100.5);
    expect(new Set(column(given, 'stage'))).toEqual(new Set(['Layer 1', 'Layer 2', '']));
    expect(ids(given)).toContain('layers-wait');
    expect(ids(given)).not.toContain('layer-too-deep');
  });

  test('fewer layers than that are not planned, and the answer says how many it takes', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 600, 80', depth: '30 mm', layers: 1 });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: 'A layer of 30 mm is deeper than the 19 mm that this resin bears in one pour: it can overheat, crack, smoke or burn. Pour 2 layers of 15 mm.',
    });
    expect(doses(given)).toBe(false);
    expect(value(given, 'fillVolume')).toBe(1440);
  });

  test('the cups sum to the row of all of them, and that is the parts to a division a colour', () => {
    const given = result({
      ...own,
      mass: '1234 g',
      cupMass: '150 g',
      colours: 'moss, 60 %; amber, 40 %',
      scaleDivision: '1 g',
    });
    for (const [part, figure] of [
      ['massA_g', 'massA'],
      ['massB_g', 'massB'],
    ] as const) {
      const cells = column(given, part) as number[];
      const total = cells[cells.length - 1] as number;
      expect(cells.slice(0, -1).reduce((sum, cell) => sum + cell, 0)).toBeCloseTo(total, 9);
      expect(Math.abs(total - value(given, figure))).toBeLessThanOrEqual(2 * 3.32);
    }
  });

  test('time limits a cup to what is placed in half of the time that just that cup can be worked', () => {
    const resin = 'fast-coating-1-1';
    const by = (more: Raw) => result({ resin, mass: '300 g', depth: 3, scaleDivision: 0.1, ...more });
    const slow = by({ timeFor100g: '25 min' });
    const limit = Number(/above ([\d.]+) g/.exec(metric(slow.figures.cups?.note))?.[1]);
    const work = (mass: number, shopTemperature = '25 °C') =>
      workingTime({ resin, mass: `${mass} g`, shopTemperature });
    expect((25 * 60 * limit) / 100 / (work(limit) / 2)).toBeCloseTo(1, 1);
    expect(value(by({ timeFor100g: '5 min' }), 'cups')).toBe(3);
    // 35 °C leave half the time, so cups half as large or less.
    const hot = by({ timeFor100g: '25 min', depth: 1, shopTemperature: '35 °C' });
    const hotLimit = Number(/above ([\d.]+) g/.exec(metric(hot.figures.cups?.note))?.[1]);
    expect(hotLimit).toBeLessThan(0.55 * limit);
    expect((25 * 60 * hotLimit) / 100 / (work(hotLimit, '35 °C') / 2)).toBeCloseTo(1, 1);
  });

  test('a pot life that means usable does not let a cup of three times its mass take the whole of it', () => {
    const sheet = {
      name: 'Ours',
      mixByVolume: '2:1',
      densityA: '1.1',
      densityB: '1',
      potLife: '30 min',
      potLifeMass: '100 g',
    };
    const resin = JSON.stringify({
      ...sheet,
      potLifeTemperature: '25 °C',
      potLifeMeans: 'usable',
      greatestDepth: '3 mm',
    });
    const given = result({
      resin,
      mass: '600 g',
      depth: 3,
      cupMass: '300 g',
      timeFor100g: '10 min',
      scaleDivision: 0.1,
    });
    expect(value(given, 'largestCup')).toBeLessThan(151);
  });

  test('the largest cup is looked at, not the average', () => {
    // A seal coat and small colours pull the average far below the one large cup.
    const given = result({
      resin: 'fast-coating-1-1',
      shapes: 'channel, 400, 38, 4',
      depth: '3 mm',
      sealCoat: '100 g/m²',
      colours: 'moss, 90 %, paste 2 %; amber, 10 %, ink 1 %',
      cupMass: '500 g',
      scaleDivision: '0.01 g',
    });
    expect(value(given, 'largestCup')).toBeGreaterThan(150);
    expect(value(given, 'mass') / value(given, 'cups')).toBeLessThan(100);
    expect(caution(given, 'cup-beyond-pot-life')?.text).toMatch(/^A cup of 1\d\d g heats itself more than the 100 g/);
    expect(given.verdict?.level).toBe('care');
  });

  test.each([
    ['5 kg of a fast resin', { resin: 'fast-coating-1-1', mass: '5 kg', cupMass: '5 kg' }],
    ['1 kg of it', { resin: 'fast-coating-1-1', mass: '1 kg', cupMass: '1 kg' }],
    ['500 g of it in a hot shop', { resin: 'fast-coating-1-1', mass: '500 g', cupMass: '500 g', shopTemperature: 35 }],
  ])('%s in one cup is no dose: nobody empties it in half of its time', (_, raw) => {
    const given = result({ ...raw, depth: 1 });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: expect.stringMatching(
        /in one cup is too thick to work after .* the 100 g that the pot life is stated for\.$/,
      ),
    });
    expect(doses(given)).toBe(false);
  });

  test('300 g of it, poured at once, are a cup to be minded; 1 kg of a slow resin too', () => {
    for (const raw of [
      { resin: 'fast-coating-1-1', mass: '300 g', cupMass: '300 g' },
      { resin: 'slow-casting-2-1', mass: '1 kg', cupMass: '1 kg' },
    ]) {
      const given = result({ ...raw, depth: 3 });
      expect(value(given, 'cups')).toBe(1);
      expect(caution(given, 'cup-beyond-pot-life')?.text).toContain('Have it empty within');
      expect(given.verdict?.level).toBe('care');
    }
  });

  test('pigment is added on top, by the mass of the mix', () => {
    const colours = 'moss green, 75 %, paste 4 %; amber, 25 %, ink 1 %';
    const given = result({ ...own, mass: '200 g', colours });
    expect(value(given, 'pigment')).toBeCloseTo(0.04 * 150 + 0.01 * 50, 2);
    expect(value(given, 'massA') + value(given, 'massB')).toBeCloseTo(200, 9);
  });

  test.each([
    ['paste 6 %', false],
    ['paste 7 %', true],
    ['powder 5 %', false],
    ['mica powder 6 %', true],
    ['alcohol ink 2 %', false],
    ['ink 3 %', true],
  ])('%s goes beyond practice: %s', (pigment, warned) => {
    const given = result({ ...own, mass: '200 g', colours: `moss, 100 %, ${pigment}` });
    expect(ids(given).includes('pigment-beyond-limit')).toBe(warned);
    // Only what is dry hangs in the air.
    expect(ids(given).includes('pigment-dust')).toBe(pigment.includes('powder'));
  });

  test('several colours with too much pigment are one caution', () => {
    const given = result({ ...own, mass: '200 g', colours: 'moss, 50 %, paste 9 %; amber, 50 %, ink 4 %' });
    expect(ids(given).filter((id) => id.startsWith('pigment'))).toEqual(['pigment-beyond-limit']);
    expect(caution(given, 'pigment-beyond-limit')?.text).toMatch(/moss, 9 % .*; amber, 4 %/);
  });

  test('the maker’s limit outranks practice', () => {
    const resin = { name: 'Bench', mixByVolume: '2:1', pigmentLimit: '2 %' };
    const given = result({ resin, mass: '200 g', cupMass: '300 g', colours: 'moss, 100 %, paste 3 %' });
    expect(caution(given, 'pigment-beyond-limit')).toMatchObject({
      basis: 'supplier-sheet',
      text: expect.stringContaining('the sheet: 2 %'),
    });
  });
});

describe('what the scale allows', () => {
  test('1 g on 20 g of hardener leaves 2.5 % open, and the answer says what would do', () => {
    // 2:1 by weight: 60 g are 40 of A and 20 of B.
    const mix = { ...own, mixRatio: '2:1', mixRatioBy: 'weight' };
    const given = result({ mass: '60 g', ...mix, scaleDivision: '1 g' });
    expect(value(given, 'dosingError')).toBeCloseTo(2.5, 9);
    expect(value(given, 'roundingError')).toBeCloseTo(0, 9);
    expect(caution(given, 'dosing-error')?.text).toContain('Measure to 0.2 g');
    expect(given.verdict?.level).toBe('care');
    expect(ids(result({ mass: '60 g', ...mix, scaleDivision: '0.1 g' }))).not.toContain('dosing-error');
  });

  test('measured by volume it is the marks of the cup that count', () => {
    const given = result({ ...own, mass: '400 g', measureBy: 'volume', volumeDivision: '5 ml' });
    expect(column(given, 'volumeA_ml')).toEqual([240, 240]);
    expect(column(given, 'volumeB_ml')).toEqual([120, 120]);
    // 400 g are 120.5 ml of hardener.
    expect(value(given, 'dosingError')).toBeCloseTo(100 * (2.5 / 120.48), 2);
    expect(ids(given)).toContain('dosing-error');
  });

  test.each([
    [
      { mass: '100 g', measureBy: 'volume', volumeDivision: '5 ml' },
      /With marks of 5 ml the ratio .* 8\.3 %, too far to pour/,
    ],
    [{ mass: '100 g', measureBy: 'volume' }, /With marks of 5 ml \(taken: say yours\)/],
    [{ mass: '2 g', scaleDivision: '1 g' }, /needs 0\.6 g of one part, and a scale of 1 g cannot measure that/],
  ])('%j is too far off to pour, and no plan of it is given', (raw, text) => {
    const given = result({ ...own, ...raw });
    expect(verdict(given)).toEqual({ level: 'stop', text: expect.stringMatching(text) });
    expect(doses(given)).toBe(false);
    expect(value(given, 'dosingError')).toBeGreaterThan(3);
  });

  test('a scale marked in ounces gets its own columns, and nobody else does', () => {
    const given = result({ ...own, mass: '30 oz', scaleDivision: '0.05 oz' });
    for (const cell of column(given, 'massA_oz') as number[]) expect((cell / 0.05) % 1).toBeCloseTo(0, 6);
    for (const id of ['massA_oz', 'volumeA_floz'])
      expect(column(result({ ...own, mass: '10 oz' }), id)).toEqual([undefined, undefined]);
  });

  test('resin is in grams and millilitres for every reader', () => {
    const given = result(resinDoseCalculator.example.inch);
    for (const [name, figure] of Object.entries(given.figures))
      if (['g', 'mL', 'g/mL'].includes(figure.unit)) expect(figure.kept, name).toBe(true);
    const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
    const said = inReaderUnits(
      JSON.stringify([given.verdict, given.cautions.filter((one) => one.own), given.figures]),
      inch,
    );
    expect(said).not.toMatch(/\d (oz|lb|fl oz)\b/);
    expect(said).toMatch(/Mix [\d.]+ kg: \d+ g of A and/);
  });
});

describe('the mix ratio', () => {
  const sheet = resinSheetForm.example.metric;
  const dose = (resin: object, more: Raw = {}) =>
    result({
      resin: JSON.stringify(resin),
      mass: '300 g',
      depth: 10,
      shopTemperature: 20,
      scaleDivision: 0.1,
      ...more,
    });

  test('of a sheet carried in the address is used, and nothing stands in the way', () => {
    const given = dose(sheet);
    expect(value(given, 'weightRatio')).toBeCloseTo(43, 9);
    expect(given.figures.massA?.basis).toBe('supplier-sheet');
    expect(verdict(given)).toEqual({ level: 'good', text: 'Mix 300 g: 210 g of A and 90.2 g of B, in three cups.' });
  });

  test.each([
    ['a name only', { name: 'Nothing known' }],
    ['all but the ratio', { ...sheet, mixByVolume: undefined, mixByWeight: undefined }],
  ])('of a sheet with %s is not known: no dose', (_, resin) => {
    const given = dose(resin);
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringMatching(/^Your sheet names no mix ratio\./),
    });
    expect(doses(given)).toBe(false);
    expect(JSON.stringify(given.evidence)).not.toContain('mix ratio is that of');
    // With the ratio off the bottle there is one.
    expect(doses(dose(resin, { mixRatio: '2:1', cupMass: '100 g', greatestDepth: '15 mm' }))).toBe(true);
  });

  // By hand: 2 ml to 1 ml are 100 : 43.1 by weight. Of 100 g 43.1/1.431 = 30.1 g are hardener, and 60/1.6 = 37.5 g.
  test('stated twice, 28 % apart: no dose, and what each would give', () => {
    const given = dose({ ...sheet, mixByWeight: '100:60' });
    expect(verdict(given)).toEqual({
      level: 'stop',
      text: 'The two ratios of this sheet differ by 28 %: of 100 g of mix the one by volume makes 30.1 g hardener, the one by weight 37.5 g. Ask the maker before you mix.',
    });
    expect(doses(given)).toBe(false);
  });

  test.each([
    ['100:43', 'good', false],
    ['100:44.5', 'care', true],
    ['100:46', 'stop', true],
  ])('%s beside 2:1 by volume is %s', (mixByWeight, level, said) => {
    const given = dose({ ...sheet, mixByWeight });
    expect(given.verdict?.level).toBe(level);
    expect(ids(given).includes('ratios-disagree')).toBe(said);
    expect(doses(given)).toBe(level !== 'stop');
  });

  test('of the reader’s own may settle which of two is right, and may not be a third', () => {
    const torn = { ...sheet, mixByWeight: '100:60' };
    expect(dose(torn, { mixRatio: '2:1' }).verdict?.level).toBe('care');
    expect(dose(torn, { mixRatio: '100:60', mixRatioBy: 'weight' }).verdict?.level).toBe('care');
    const third = dose(torn, { mixRatio: '3:1' });
    expect(verdict(third)).toMatchObject({
      level: 'stop',
      text: expect.stringContaining('Your own mix ratio differs'),
    });
    expect(doses(third)).toBe(false);
  });

  test('of a generic kind is called so', () => {
    const given = result({ resin: 'slow-casting-2-1', mass: '300 g', depth: 10, shopTemperature: 20 });
    expect(verdict(given)).toMatchObject({
      level: 'care',
      text: expect.stringContaining('The ratio is that of a generic kind'),
    });
    expect(JSON.stringify(given.evidence)).toContain('a generic kind, slow casting epoxy');
    expect(ids(result({ resin: 'slow-casting-2-1', mass: '300 g', depth: 10, mixRatio: '2:1' }))).not.toContain(
      'ratio-of-a-kind',
    );
  });

  test('with more hardener than resin is a danger: bottles are lettered either way', () => {
    const given = result({ ...own, mass: '300 g', mixRatio: '1:2' });
    expect(caution(given, 'more-hardener-than-resin')).toMatchObject({ level: 'danger', own: true });
    expect(verdict(given)).toMatchObject({
      level: 'care',
      text: expect.stringContaining('lettered the other way round'),
    });
    // Equal parts by volume are a coating epoxy's, by weight there may be a little more of a heavy hardener.
    for (const mixRatio of ['1:1', '2:1'])
      expect(ids(result({ ...own, mass: '300 g', mixRatio }))).not.toContain('more-hardener-than-resin');
  });

  test('weighed by densities that nobody stated is to be minded', () => {
    const { densityA: _, densityB: __, mixByWeight: ___, ...bare } = sheet;
    expect(ids(dose(bare))).toContain('densities-assumed');
    expect(ids(dose(bare, { densityA: '1.16', densityB: '1' }))).not.toContain('densities-assumed');
    expect(ids(dose(bare, { measureBy: 'volume', volumeDivision: '0.5 ml' }))).not.toContain('densities-assumed');
  });

  // Common practice, no source: a coating epoxy of this kind is mixed in equal parts by volume.
  test('the generic 1:1 coating epoxy takes equal volumes (common practice)', () => {
    const given = result({
      resin: 'fast-coating-1-1',
      volume: '160 ml',
      depth: 3,
      measureBy: 'volume',
      volumeDivision: '1 ml',
    });
    expect(value(given, 'volumeA')).toBeCloseTo(80, 9);
    expect(value(given, 'volumeB')).toBeCloseTo(80, 9);
  });
});

describe('the depth of one pour', () => {
  const shapes = 'rectangle, 300, 200';
  const silent = {
    name: 'Silent',
    mixByVolume: '2:1',
    densityA: '1.16',
    densityB: '1',
    potLife: '6 h',
    potLifeMass: '100 g',
  };

  test.each([
    ['an own ratio', own],
    ['a sheet with a pot life and no depth', { resin: JSON.stringify(silent) }],
    [
      'a sheet with neither, over a kind that has both',
      { resin: { name: 'Silent', mixByVolume: '2:1' }, cupMass: 100 },
    ],
  ])('is not known of %s: no dose of 80 mm', (_, raw) => {
    const given = result({ ...raw, shapes, depth: '80 mm' });
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('No greatest depth of one pour is known'),
    });
    expect(doses(given)).toBe(false);
    // A coat needs no plan, and a depth from the maker gives one.
    expect(doses(result({ ...raw, shapes, depth: '3 mm', scaleDivision: 0.1 }))).toBe(true);
    const known = result({ ...raw, shapes, depth: '20 mm', greatestDepth: '10 mm', scaleDivision: 0.1 });
    expect(value(known, 'layers')).toBe(2);
  });

  test.each([['volume'], ['water']])('and how deep a %s fills must be said', (from) => {
    const given = result({ resin: 'slow-casting-2-1', [from]: '500 ml' });
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('How deep it is was not given'),
    });
    expect(doses(given)).toBe(false);
    expect(value(given, 'fillVolume')).toBe(500);
  });

  test('an amount of mix is dosed without one, and that is said', () => {
    expect(caution(result({ ...own, mass: '300 g' }), 'no-depth')?.text).toContain('up to 3 mm is a coat');
    expect(caution(result({ resin: 'slow-casting-2-1', mass: '300 g' }), 'no-depth')?.text).toContain(
      'no layer of it deeper than 19 mm',
    );
  });

  test('follows the shop where it is warmer, as the heat of a pour does, and is never more where it is colder', () => {
    const dose = (shopTemperature: string) =>
      result({
        resin: 'slow-casting-2-1',
        shapes: 'channel, 400, 80',
        depth: '19 mm',
        shopTemperature,
        scaleDivision: 0.1,
      });
    expect(value(dose('20 °C'), 'layers')).toBe(1);
    expect(value(dose('8 °C'), 'layers')).toBe(1);
    const warm = dose('30 °C');
    expect(value(warm, 'layers')).toBe(2);
    expect(caution(warm, 'hotter-shop')?.text).toBe(
      'At 30 °C this resin bears 11 mm in one pour, not the 19 mm of 20 °C.',
    );
    const pour = answer(pourHeatCalculator, {
      resin: 'slow-casting-2-1',
      depth: '19 mm',
      shopTemperature: '30 °C',
      base: 'hardwood',
    });
    if (!pour.ok) throw new Error('no answer');
    expect(pour.value.result.figures.layers?.value).toBe(2);
    expect(pour.value.result.figures.greatestDepthHere?.value).toBeCloseTo(10.89, 1);
  });

  test('too near to the greatest to tell them apart in inches is told in millimetres', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 400, 80', depth: '3/4 in', layers: 1 });
    const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
    expect(inReaderUnits(given.verdict?.text ?? '', inch)).toMatch(
      /^A layer of 19\.1 mm is deeper than the 19 mm that/,
    );
  });

  test('plans as many layers as the heat of a pour does, whatever the shop', () => {
    const sheet = { ...silent, greatestDepth: '20 mm', greatestDepthTemperature: '20 °C' };
    const resin = fc.constantFrom(...resinKindIds, JSON.stringify(sheet));
    fc.assert(
      fc.property(resin, fc.integer({ min: 5, max: 35 }), fc.integer({ min: 4, max: 40 }), (of, shop, depth) => {
        const shared = { resin: of, depth: `${depth} mm`, shopTemperature: `${shop} °C` };
        const pour = answer(pourHeatCalculator, { ...shared, base: 'hardwood', air: 'still' });
        if (!pour.ok) throw new Error('no answer');
        const dose = result({ ...shared, shapes: 'channel, 400, 80', scaleDivision: '0.01 g' });
        const layers = pour.value.result.figures.layers?.value ?? 1;
        // A depth that just fills its layers may fall to either side of the model's own grid.
        const edge = depth / (pour.value.result.figures.greatestDepthHere?.value ?? depth);
        if (Math.abs(edge - Math.round(edge)) > 0.03) expect(value(dose, 'layers')).toBe(layers);
      }),
      { numRuns: 40 },
    );
  });

  test('says what temperature was taken where none was given', () => {
    const given = result({ resin: 'slow-casting-2-1', shapes: 'channel, 400, 80', depth: '12 mm', scaleDivision: 0.1 });
    expect(caution(given, 'temperature-assumed')?.text).toMatch(/^Taken: a shop of 20 °C/);
    expect(metric(given.figures.layers?.note)).toContain('at 20 °C (assumed)');
    const sheet = JSON.stringify({ ...silent, greatestDepth: '20 mm' });
    const assumed = result({ resin: sheet, shapes: 'channel, 400, 80', depth: '12 mm', scaleDivision: 0.1 });
    expect(caution(assumed, 'temperature-assumed')?.text).toContain('(assumed: the sheet names no temperature)');
  });

  test('at war with the pot life of its sheet gives no dose', () => {
    const torn = { ...silent, potLife: '30 min', greatestDepth: '50 mm', greatestDepthTemperature: '25 °C' };
    const given = result({ resin: JSON.stringify(torn), shapes, depth: '40 mm' });
    expect(verdict(given)).toMatchObject({ level: 'unknown', text: expect.stringContaining('cannot both be right') });
    expect(ids(given)).toContain('depth-against-pot-life');
    expect(doses(given)).toBe(false);
  });

  test('is kept beside the greatest volume and mass of one pour, piece by piece', () => {
    const sheet = { ...silent, greatestDepth: '20 mm', greatestDepthTemperature: '20 °C', greatestVolume: '200 ml' };
    const dose = (list: string) =>
      value(result({ resin: JSON.stringify(sheet), shapes: list, depth: '10 mm', scaleDivision: 0.1 }), 'layers');
    // 300 × 100 × 10 mm are 300 ml; two of half that are 150 ml each.
    expect(dose('rectangle, 300, 100')).toBe(2);
    expect(dose('rectangle, 150, 100, 2')).toBe(1);
  });
});

describe('a cup', () => {
  test.each([
    ['22 kg with an own ratio', { ...own, cupMass: undefined, mass: '22 kg' }],
    ['a sheet without a pot life', { resin: { name: 'Silent', mixByVolume: '2:1' }, mass: '22 kg' }],
  ])('has no limit that anybody stated: %s', (_, raw) => {
    const given = result(raw);
    expect(verdict(given)).toMatchObject({
      level: 'unknown',
      text: expect.stringContaining('Nothing says how much may stand in one cup'),
    });
    expect(doses(given)).toBe(false);
  });

  test('of a size that the reader says and nobody’s pot life backs is to be minded', () => {
    const given = result({ ...own, mass: '300 g', cupMass: '300 g' });
    expect(caution(given, 'cup-unchecked')?.text).toContain('Nobody says how long a cup of 300 g lasts');
    expect(given.verdict?.level).toBe('care');
  });
});

describe('several pieces', () => {
  const trays = {
    ...own,
    greatestDepth: '20 mm',
    shapes: 'channel, 480 mm, 22 mm, 12',
    depth: '6 mm',
    sealCoat: '150 g/m²',
  };

  // By hand: 480 · 22 · 6 mm = 63.36 ml · 1.1067 = 70.1 g; 12 pieces over 4 cups are 3 each.
  test('alike get so many grams each, and each cup says which of them it fills', () => {
    const given = result({ ...trays, cupMass: '300 g' });
    expect(value(given, 'pieceMass')).toBeCloseTo(70.1, 1);
    expect(metric(given.figures.pieceMass?.note)).toContain('2.49 g of the seal coat');
    expect(column(given, 'pieces')).toEqual(['1 to 12', '1 to 3', '4 to 6', '7 to 9', '10 to 12', '']);
    expect(given.tables?.[1]?.rows).toEqual([
      ['1 to 12', expect.any(String), expect.closeTo(2.49, 2), expect.closeTo(70.1, 1)],
    ]);
  });

  test('that a cup does not fill whole are named as parts', () => {
    expect(column(result({ ...trays, cupMass: '500 g', sealCoat: 0 }), 'pieces')).toEqual(['1 to 6', '7 to 12', '']);
    expect(column(result({ ...trays, cupMass: '200 g', sealCoat: 0 }), 'pieces')[0]).toBe('1 to 2 and part of 3');
  });

  test('in several colours are not named: nobody says which colour lies where', () => {
    expect(column(result({ ...trays, colours: 'moss; amber' }), 'pieces')).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

test('a ring is dosed with the word that it locks the wood inside it', () => {
  const given = result({ ...own, ...deep, shapes: 'ring, 200 mm, 160 mm' });
  expect(value(given, 'area')).toBeCloseTo(11_309.7, 0);
  expect(caution(given, 'ring-around-wood')).toMatchObject({ level: 'warning', own: true });
  expect(given.verdict?.level).toBe('care');
});

test('all that keeps a dose from being given is said at once', () => {
  const given = result({ resin: { name: 'Nothing known' }, shapes: 'rectangle, 300, 200', depth: '80 mm' });
  expect(verdict(given).text).toMatch(/^Your sheet names no mix ratio/);
  expect(ids(given)).toEqual(
    expect.arrayContaining(['no-greatest-depth', 'no-cup-limit', 'resin-skin', 'resin-cup-heat']),
  );
});

test('skin and heat are always spoken of', () => {
  expect(ids(result({ mass: '100 g', ...own }))).toEqual(expect.arrayContaining(['resin-skin', 'resin-cup-heat']));
});

describe('lists of a file', () => {
  const text = {
    ...own,
    shapes: 'channel, 480 mm, 22 mm, 12; ring, 90 mm, 60 mm',
    depths: '8 mm, 60 %; 12 mm, 40 %',
    colours: 'moss green, 70 %, paste 3 %; amber, 30 %',
    greatestDepth: '30 mm',
    cupMass: '300 g',
  };
  const objects = {
    ...text,
    shapes: [
      { kind: 'channel', length: 480, width: '22 mm', count: 12 },
      { kind: 'ring', length: '9 cm', width: 60 },
    ],
    depths: [
      { depth: 8, share: 60 },
      { depth: '12 mm', share: '40 %' },
    ],
    colours: [
      { name: 'moss green', share: 70, pigment: 'paste 3 %' },
      { name: 'amber', share: '30 %' },
    ],
  };

  test('may be objects, which say the same as the texts', () => {
    expect(result(objects)).toEqual(result(text));
  });

  test('a colour without a share may have a pigment, as a text and as an object', () => {
    const one = { ...own, mass: '200 g', colours: 'moss green, paste 3 %' };
    const other = { ...one, colours: [{ name: 'moss green', pigment: 'paste 3 %' }] };
    expect(value(result(one), 'pigment')).toBeCloseTo(6, 1);
    expect(result(other)).toEqual(result(one));
  });

  test.each([
    [{ shapes: [{ kind: 'channel', width: 22 }] }, 'shapes', /^Shape 1 has no length/],
    [{ shapes: [{ kind: 'channel', length: 480, width: 22, many: 12 }] }, 'shapes', /“many”, which is not known/],
    [{ depths: [{ depth: 8, share: 60 }, { depth: 12 }] }, 'depths', /some have none/],
    [{ colours: [{ share: 60 }] }, 'colours', /^Colour 1 has no name/],
  ])('%j names the entry', (raw, field, message) => {
    const error = refused({ ...text, ...raw });
    expect(error.field).toBe(field);
    expect(error.message).toMatch(message);
  });
});
