import { describe, expect, test } from 'vitest';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { panelDrawing } from '../../src/calculators/seasonal-movement/drawing.ts';
import type { Verdict } from '../../src/model/evidence/index.ts';
import { resinPartOf } from '../../src/model/finish/food-board.ts';
import { densityOf } from '../../src/model/moisture/wood-density.ts';
import { assumedSection } from '../../src/model/movement/cuts.ts';
import type { PanelYear } from '../../src/model/movement/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { layResinSheet } from '../../src/model/resin/resin.ts';
import { allSpecies } from '../../src/model/species/all.ts';

// Limits that calculators share, with an input just below and one just above.

const hour = 3600;

describe('days of cure before food', () => {
  const daysOf = (figures: Parameters<typeof layResinSheet>[0]['figures']) =>
    resinPartOf(layResinSheet({ name: 'Invented', figures }), 'under-food', { declared: false }).cure.fullCureDays;

  test.each([
    // A cure of a day ends before the resin may be sanded by common practice, and food never comes before that.
    [24, 2],
    [36, 2],
    [48, 2],
    [48.1, 3],
    [72, 3],
    [72.1, 4],
  ])('%d h of a sheet are %d whole days, never fewer', (hours, days) => {
    expect(daysOf({ cure: hours * hour })).toBe(days);
    expect(daysOf({ cure: hours * hour, foodService: hours * hour })).toBe(days);
  });
});

describe('the drawing of a year', () => {
  /** A panel of one stave 100 mm wide that grows by so many mm. */
  const drawn = (growth: number) => {
    const now = { label: 'Jan', change: { value: 0 } };
    const wet = { label: 'Jul', change: { value: growth } };
    const year = {
      staves: [{ section: assumedSection(100, 20, 90) }],
      states: [now, wet],
      narrowest: now,
      widest: wet,
    };
    return panelDrawing(year as unknown as PanelYear).exaggeration;
  };

  test.each([
    [5.1, 1],
    [2.55, 1],
    [2.45, 2],
    [1.7, 2],
    [1.65, 3],
    [1.05, 3],
    [0.95, 5],
    [0.52, 5],
    [0.48, 10],
    [0.26, 10],
    [0.24, 20],
  ])('of %d %% is enlarged %d times: never beyond a twentieth of the width', (growth, factor) => {
    expect(drawn(growth)).toBe(factor);
  });
});

test('woods outside 350 to 1000 kg/m³ lie outside what diffusion is known for', () => {
  const known = allSpecies.map((species) => densityOf(species));
  for (const { density, outside } of known) expect(outside, String(density)).toBe(density < 350 || density > 1000);
  // There are woods on both sides of both ends, so that neither end is out of reach.
  expect(known.some(({ density }) => density < 350)).toBe(true);
  expect(known.some(({ density }) => density > 1000)).toBe(true);
  expect(known.some(({ density }) => density >= 350 && density < 400)).toBe(true);
  expect(known.some(({ density }) => density > 950 && density <= 1000)).toBe(true);
});

describe('a depth that a reader of inches sees as the depth allowed', () => {
  const inches = { ...defaultUnits, system: 'inch' as const };
  const own = JSON.stringify({
    name: 'Invented',
    mixByVolume: '1:1',
    potLife: '40 min',
    potLifeMass: '100 g',
    potLifeTemperature: '25 °C',
    greatestDepth: '3 mm',
    greatestDepthTemperature: '22 °C',
  });
  const asked: readonly [string, (resin: string, depth: string) => Verdict][] = [
    [
      'pour-heat',
      (resin, depth) => verdict(pourHeatCalculator, { resin, depth, shopTemperature: '20 °C', base: 'hardwood' }),
    ],
    [
      'flood-coat',
      (resin, wantedThickness) =>
        verdict(floodCoatCalculator, { resin, wantedThickness, shopTemperature: '20 °C', area: '600 cm²' }),
    ],
    [
      'resin-dose',
      (resin, depth) =>
        verdict(resinDoseCalculator, {
          resin,
          depth,
          shopTemperature: '20 °C',
          volume: '150 ml',
          layers: '1',
          scaleDivision: '0.1 g',
        }),
    ],
  ];
  function verdict(calculator: unknown, raw: Record<string, string>): Verdict {
    const outcome = answer(calculator as Calculator, raw);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    return outcome.value.result.verdict;
  }

  test.each(asked)('%s: 1/8 in of a kind that says 3 mm is such a coat, and in a warm shop it is not', (id, of) => {
    for (const depth of ['3 mm', '1/8 in', '3.2 mm']) expect(of('fast-coating-1-1', depth).level, depth).toBe('care');
    expect(of('fast-coating-1-1', '3.4 mm').level).toBe('stop');
    if (id !== 'pour-heat') return;
    const warm = { resin: 'fast-coating-1-1', depth: '1/8 in', shopTemperature: '28 °C', base: 'hardwood' };
    expect(verdict(pourHeatCalculator, warm).level).toBe('stop');
  });

  test.each(asked)('%s: a sheet that says 3 mm means 3 mm, and the sentence shows why 1/8 in is more', (_, of) => {
    expect(of(own, '3 mm').level).not.toBe('stop');
    const { level, text } = of(own, '1/8 in');
    expect(level).toBe('stop');
    expect(inReaderUnits(text, inches)).toMatch(/\b0\.125 in.*\b0\.118 in/);
  });
});
