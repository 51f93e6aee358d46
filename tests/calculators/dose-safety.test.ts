import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, holdsAmount, wordsInReaderUnits } from '../../src/model/quantity/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';
import { addresses } from './arbitrary.ts';
import { runs } from './runs.ts';

/** Fewer than of an address alone: these cases reach an answer nearly every time. */
const numRuns = Math.ceil(runs / 4);

const between = (min: number, max: number, unit: string) =>
  fc.double({ min, max, noNaN: true }).map((value) => `${Number(value.toPrecision(4))} ${unit}`);
const maybe = <T>(one: fc.Arbitrary<T>, freq = 2) => fc.option(one, { nil: undefined, freq });

/** Sheets that say much or little, agree with themselves or not. */
const sheets = fc
  .record({
    name: fc.constant('Bench'),
    mixByVolume: maybe(fc.constantFrom('1:1', '2:1', '2:1', '2:1', '3:1', '1:2'), 8),
    mixByWeight: fc.constantFrom(undefined, undefined, undefined, undefined, '100:43', '100:60'),
    densityA: maybe(fc.constant('1.16 g/ml'), 6),
    densityB: maybe(fc.constantFrom('1.00 g/ml', '1.00 g/ml', '0.96 g/ml'), 6),
    potLife: maybe(fc.constantFrom('20 min', '90 min', '6 h', '20 h'), 8),
    greatestDepth: maybe(between(1, 80, 'mm'), 3),
  })
  .chain((sheet) =>
    fc
      .record({
        potLifeMass: sheet.potLife ? maybe(between(50, 500, 'g')) : fc.constant(undefined),
        potLifeTemperature: sheet.potLife ? maybe(between(18, 28, '°C')) : fc.constant(undefined),
        greatestDepthTemperature: sheet.greatestDepth ? maybe(between(18, 28, '°C')) : fc.constant(undefined),
      })
      .map((more) => ({ ...sheet, ...more })),
  );
const resins = fc.oneof(
  fc.constantFrom(...resinKindIds),
  sheets.map((sheet) => JSON.stringify(sheet)),
);

const doseInputs = fc.record({
  resin: resins,
  shapes: fc.constantFrom('channel, 480 mm, 22 mm, 12', 'rectangle, 300 mm, 200 mm', 'ring, 200 mm, 160 mm'),
  depth: between(0.5, 90, 'mm'),
  // Seldom given, so that a sheet's silence counts.
  greatestDepth: fc.oneof(
    { weight: 4, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: between(1, 60, 'mm') },
  ),
  shopTemperature: maybe(between(2, 40, '°C')),
  layers: fc.constantFrom(undefined, '1', '2'),
  sealCoat: maybe(fc.constant('150 g/m²')),
  cupMass: maybe(between(20, 8000, 'g')),
  timeFor100g: maybe(fc.constantFrom('1 min', '8 min', '25 min'), 3),
  mixRatio: fc.constantFrom(undefined, undefined, undefined, undefined, '2:1', '1:2'),
  mixRatioBy: fc.constantFrom('weight', 'volume', undefined),
  measureBy: fc.constantFrom('weight', 'weight', 'weight', 'volume'),
  scaleDivision: fc.constantFrom('0.01 g', '0.01 g', '0.1 g', '1 g', undefined),
  volumeDivision: maybe(fc.constantFrom('1 ml', '5 ml')),
});

/** Answers of a calculator to inputs that it can read; what it refuses is another test's. */
function answered(calculator: unknown, raw: Readonly<Record<string, unknown>>): Result | undefined {
  const given = Object.fromEntries(Object.entries(raw).filter(([, value]) => value !== undefined));
  const outcome = answer(calculator as Calculator, given);
  return outcome.ok ? outcome.value.result : undefined;
}

const silent = (result: Result) => result.verdict?.level === 'unknown' || result.verdict?.level === 'stop';
const amounts = [
  'mass',
  'massA',
  'massB',
  'volumeA',
  'volumeB',
  'cups',
  'largestCup',
  'layers',
  'pieceMass',
  'pigment',
];

describe('a dose', () => {
  /** What a reader may rely on, whatever was asked. */
  function holds(result: Result, raw: Readonly<Record<string, unknown>>): void {
    expect(result.verdict?.text.length ?? 0).toBeGreaterThan(10);
    if (silent(result)) {
      expect(amounts.filter((name) => result.figures[name])).toEqual([]);
      expect(result.tables ?? []).toEqual([]);
      expect(result.verdict?.text).not.toMatch(/^Mix /);
      return;
    }
    for (const name of ['mass', 'massA', 'massB', 'cups']) expect(result.figures[name], name).toBeDefined();
    const grave = result.cautions.filter(({ own, level }) => own && level !== 'note');
    // Good says that nothing stands in the way, and whatever does is said.
    expect(result.verdict?.level).toBe(grave.length > 0 ? 'care' : 'good');
    if (result.verdict?.level === 'good') {
      expect(String(raw.resin)).toContain('{');
      expect(raw.shopTemperature).toBeDefined();
    }
  }

  test('is given only where nothing that decides is unknown or denied, and is good only where nothing is assumed', () => {
    let given = 0;
    let none = 0;
    fc.assert(
      fc.property(doseInputs, (raw) => {
        const result = answered(resinDoseCalculator, raw);
        if (!result) return;
        if (silent(result)) none += 1;
        else given += 1;
        holds(result, { ...raw, shopTemperature: parse(raw.depth) <= 3.2 ? 20 : raw.shopTemperature });
      }),
      { numRuns },
    );
    // The cases are worth something: both kinds came up.
    expect(given).toBeGreaterThan(numRuns / 20);
    expect(none).toBeGreaterThan(numRuns / 20);
  });

  test('never has a layer deeper than the sheet or the reader allows, nor one of a depth that nobody stated', () => {
    fc.assert(
      fc.property(doseInputs, (raw) => {
        const result = answered(resinDoseCalculator, raw);
        if (!result || silent(result)) return;
        const thickness = result.figures.layerThickness?.value ?? 0;
        const sheet = raw.resin.startsWith('{') ? JSON.parse(raw.resin) : undefined;
        const stated = [sheet?.greatestDepth, raw.greatestDepth].filter((text) => text !== undefined).map(parse);
        for (const most of stated) expect(thickness).toBeLessThanOrEqual(most * 1.0001);
        if (sheet && stated.length === 0) expect(thickness).toBeLessThanOrEqual(3.2);
      }),
      { numRuns },
    );
  });

  test('never has a cup beyond its limit, and is never good with one beyond the pot life’s mass', () => {
    fc.assert(
      fc.property(doseInputs, (raw) => {
        const result = answered(resinDoseCalculator, raw);
        if (!result || silent(result)) return;
        const sheet = raw.resin.startsWith('{') ? JSON.parse(raw.resin) : { potLife: '', potLifeMass: '100 g' };
        const stated = sheet.potLife === undefined ? undefined : parse(sheet.potLifeMass ?? '100 g');
        const most = raw.cupMass === undefined ? stated : parse(raw.cupMass);
        expect(most).toBeDefined();
        const largest = result.figures.largestCup?.value ?? 0;
        expect(largest).toBeLessThanOrEqual((most ?? 0) * 1.0051);
        if (stated === undefined || largest > stated * 1.0051) {
          expect(result.verdict?.level).toBe('care');
          const ids = result.cautions.map(({ id }) => id);
          expect(ids.some((id) => id === 'cup-beyond-pot-life' || id === 'cup-unchecked')).toBe(true);
        }
      }),
      { numRuns },
    );
  });

  test('has no ratio that nobody stated, and none that another denies by more than a twentieth', () => {
    fc.assert(
      fc.property(doseInputs, (raw) => {
        const result = answered(resinDoseCalculator, raw);
        const sheet = raw.resin.startsWith('{') ? JSON.parse(raw.resin) : undefined;
        if (!result || !sheet || raw.mixRatio !== undefined) return;
        const stated = [sheet.mixByVolume, sheet.mixByWeight].filter((text) => text !== undefined);
        if (stated.length === 0) expect(silent(result)).toBe(true);
        if (stated.length === 2 && sheet.densityA && sheet.densityB) {
          const share = (text: string) => Number(text.split(':')[1]) / Number(text.split(':')[0]);
          const byWeight = (share(sheet.mixByVolume) * parse(sheet.densityB)) / parse(sheet.densityA);
          if (Math.abs(byWeight / share(sheet.mixByWeight) - 1) > 0.051) expect(silent(result)).toBe(true);
        }
      }),
      { numRuns },
    );
  });

  test('is never further off its ratio than may be poured', () => {
    fc.assert(
      fc.property(doseInputs, (raw) => {
        const result = answered(resinDoseCalculator, raw);
        if (!result) return;
        const off = (result.figures.dosingError?.value ?? 0) + (result.figures.roundingError?.value ?? 0);
        if (off > 3) expect(result.verdict?.level).toBe('stop');
        if (off > 2) expect(result.verdict?.level).not.toBe('good');
      }),
      { numRuns },
    );
  });
});

describe('a cup’s time', () => {
  test('is given by no pot life that a sheet does not state, and is never good where the cup runs away', () => {
    const inputs = fc.record({
      resin: resins,
      mass: between(5, 5000, 'g'),
      shopTemperature: between(2, 40, '°C'),
      resinTemperature: maybe(between(5, 45, '°C')),
      spreadAfter: maybe(fc.constantFrom('1 min', '20 min', '3 h', '2 d')),
    });
    fc.assert(
      fc.property(inputs, (raw) => {
        const result = answered(workingTimeCalculator, raw);
        if (!result) return;
        const sheet = raw.resin.startsWith('{') ? JSON.parse(raw.resin) : undefined;
        if (sheet && sheet.potLife === undefined) expect(result.verdict?.level).toBe('unknown');
        if (result.verdict?.level === 'unknown') {
          expect([result.figures, result.tables, result.series]).toEqual([{}, undefined, undefined]);
          return;
        }
        if (!sheet) expect(result.verdict?.level).not.toBe('good');
        if (result.cautions.some(({ id }) => id === 'cup-runs-away')) expect(result.verdict?.level).not.toBe('good');
        // More warmth never lengthens a time.
        const note = result.cautions.find(({ id }) => id === 'ten-degrees')?.text ?? '';
        for (const [, factor] of note.matchAll(/by ([\d.]+)/g)) expect(Number(factor)).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  });
});

describe('a coat', () => {
  test('has no amount and no dam where it is deeper than stated, or nothing is', () => {
    const inputs = fc.record({
      resin: maybe(resins, 4),
      wantedThickness: between(0.2, 40, 'mm'),
      area: maybe(fc.constant('1800 cm²'), 4),
      shopTemperature: maybe(between(2, 40, '°C')),
    });
    fc.assert(
      fc.property(inputs, (raw) => {
        const result = answered(floodCoatCalculator, raw);
        if (!result) return;
        const wanted = parse(raw.wantedThickness);
        const sheet = raw.resin?.startsWith('{') ? JSON.parse(raw.resin) : undefined;
        if (sheet?.greatestDepth && wanted > parse(sheet.greatestDepth) * 1.0001) expect(silent(result)).toBe(true);
        // Deeper than a coat it is not known, and stopped where the pot life of the sheet makes it too hot; without one nothing is known of a coat either.
        if (sheet && !sheet.greatestDepth && wanted > 3.2) expect(silent(result)).toBe(true);
        if (sheet && !sheet.greatestDepth && !sheet.potLife) expect(result.verdict?.level).toBe('unknown');
        if (!raw.resin && wanted > 3.2) expect(result.verdict?.level).toBe('stop');
        if (!silent(result)) return;
        expect(['amountAtRest', 'amountWanted', 'overEdge'].filter((name) => result.figures[name])).toEqual([]);
        expect(JSON.stringify(result)).not.toMatch(/[Bb]uild a dam|with a dam/);
      }),
      { numRuns },
    );
  });
});

test.each([resinDoseCalculator, workingTimeCalculator, floodCoatCalculator].map((one) => [one.id, one] as const))(
  '%s: of any address, no mark of a quantity is left in what a reader sees, and every answer has a verdict',
  (_, calculator) => {
    fc.assert(
      fc.property(addresses(calculator), (raw) => {
        const result = answered(calculator, raw);
        if (!result) return;
        expect(result.verdict).toBeDefined();
        expect(holdsAmount(JSON.stringify(wordsInReaderUnits(result, defaultUnits)))).toBe(false);
        expect(new Set(result.cautions.map(({ id }) => id)).size).toBe(result.cautions.length);
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  },
);

/** The number before the unit. */
function parse(text: string): number {
  return Number(text.split(' ')[0]);
}
