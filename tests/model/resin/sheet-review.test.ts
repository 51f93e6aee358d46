import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cureClockCalculator } from '../../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { readResinSheet } from '../../../src/calculators/kit/resin-sheet.ts';
import { pourHeatCalculator } from '../../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../../src/calculators/working-time/calculator.ts';
import { resinKinds } from '../../../src/model/resin/kinds.ts';
import { layResinSheet } from '../../../src/model/resin/resin.ts';
import { reviewSheet } from '../../../src/model/resin/sheet-review.ts';

const reviewed = (raw: Record<string, string>) => {
  const read = readResinSheet(raw);
  if (!read.ok) throw new Error(JSON.stringify(read.errors));
  return reviewSheet(layResinSheet(read.value));
};
const level = (calculator: unknown, raw: Record<string, unknown>) => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result.verdict?.level;
};
const whole = {
  name: 'Ours',
  mixByWeight: '100:43',
  mixByVolume: '2:1',
  densityA: '1.16 g/ml',
  densityB: '1.00 g/ml',
  potLife: '6 h',
  greatestDepth: '20 mm',
  recoatOpens: '20 h',
  recoatCloses: '48 h',
  cure: '7 d',
  foodService: '14 d',
};

test('a sheet that says everything and agrees with itself is told nothing, nor is a generic kind', () => {
  for (const review of [reviewed(whole), ...resinKinds.map(reviewSheet)])
    expect(review).toEqual({ war: undefined, clashes: [], missing: [] });
});

test('an empty sheet is told all that it lacks', () => {
  expect(reviewed({ name: 'Ours' }).missing.map(({ id }) => id)).toEqual([
    'ratio',
    'potLife',
    'greatestDepth',
    'recoat',
    'cure',
    'foodService',
  ]);
});

test('what clashes names both figures and how far they are apart', () => {
  const { clashes, war } = reviewed({ ...whole, mixByWeight: '100:60', foodService: '3 d', sandable: '9 d' });
  expect(clashes.map(({ id }) => id).sort()).toEqual(['food-before-cure', 'ratios-disagree', 'sandable-after-cure']);
  expect(clashes.find(({ id }) => id === 'ratios-disagree')?.text).toMatch(/differ by 28\.2 %/);
  expect(war).toMatch(/ratios by volume and by weight differ by 28 %/);
  const fast = reviewed({ ...whole, potLife: '20 min', greatestDepth: '50 mm' });
  expect(fast.clashes.map(({ id }) => id)).toContain('depth-against-pot-life');
  expect(fast.war).toMatch(/pot life and its greatest depth/);
});

test('what is said to be blocked is what the calculators refuse to tell', () => {
  const names = ['mixByWeight', 'mixByVolume', 'potLife', 'greatestDepth', 'cure'] as const;
  fc.assert(
    fc.property(fc.subarray([...names]), (left) => {
      const sheet: Record<string, string> = { ...whole };
      for (const name of left) delete sheet[name];
      const missing = new Set(reviewed(sheet).missing.map(({ id }) => id));
      const resin = JSON.stringify(sheet);
      const room = { resin, shopTemperature: '20 °C' };
      const unknown = (calculator: unknown, raw: object) => level(calculator, { ...room, ...raw }) === 'unknown';
      // Without a depth it may still be known that a pour runs away: no more than that.
      const poured = level(pourHeatCalculator, { ...room, depth: '10 mm', base: 'hardwood' });
      expect(poured === 'good' || poured === 'care').toBe(!missing.has('greatestDepth'));
      expect(unknown(workingTimeCalculator, { mass: '200 g' })).toBe(missing.has('potLife'));
      expect(unknown(cureClockCalculator, {})).toBe(missing.has('cure'));
      const dosed = unknown(resinDoseCalculator, { volume: '500 ml', depth: '10 mm', scaleDivision: '0.1 g' });
      expect(dosed).toBe(['ratio', 'potLife', 'greatestDepth'].some((id) => missing.has(id as 'ratio')));
    }),
    { numRuns: 32 },
  );
}, 60_000);
