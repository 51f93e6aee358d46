import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { amount, defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { resinKindIds } from '../../src/model/resin/kinds.ts';

// One cup of one resin in one room has one danger, whether it is dosed or timed.

const run = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify([raw, outcome.errors]));
  return outcome.value.result;
};
const heatOf = ({ cautions }: Result) =>
  cautions.filter(({ id }) => ['cup-runs-away', 'cup-grows-hot'].includes(id)).map(({ id, level }) => [id, level]);

/** The same mass dosed into one cup and timed in it. Weighed so finely that no division moves it. */
const both = (resin: string, grams: number, celsius: number) => {
  const shopTemperature = `${celsius} °C`;
  const mass = `${grams} g`;
  return {
    dose: run(resinDoseCalculator, {
      resin,
      mass,
      cupMass: `${Math.ceil(1.02 * grams)} g`,
      shopTemperature,
      scaleDivision: '0.01 g',
      measureBy: 'weight',
    }),
    timed: run(workingTimeCalculator, { resin, mass, shopTemperature }),
  };
};

test('626 g of a fast resin at 35 °C run away, by the dose too', () => {
  const { dose, timed } = both('fast-coating-1-1', 626, 35);
  expect(heatOf(timed)).toEqual([['cup-runs-away', 'danger']]);
  expect(heatOf(dose)).toEqual([['cup-runs-away', 'danger']]);
  expect(dose.verdict?.text).toMatch(/runs away/);
  // The time to have it empty leads, half of the working time, and no longer one stands beside it.
  const empty = inReaderUnits(amount((timed.figures.cupWork?.value ?? 0) / 2, 's', 2), defaultUnits);
  for (const result of [dose, timed])
    expect(inReaderUnits(result.cautions.find(({ id }) => id === 'cup-runs-away')?.text ?? '', defaultUnits)).toMatch(
      new RegExp(`have it out and spread within ${empty}\\.$`),
    );
});

test('whatever the cup, dose and working time tell the same of its heat', () => {
  const seen = new Set<string>();
  const sheets = fc
    .integer({ min: 20, max: 900 })
    .map((minutes) =>
      JSON.stringify({ name: 'Ours', mixByVolume: '2:1', potLife: `${minutes} min`, potLifeMass: '200 g' }),
    );
  fc.assert(
    fc.property(
      fc.oneof(fc.constantFrom(...resinKindIds), sheets),
      fc.integer({ min: 20, max: 3000 }),
      fc.integer({ min: 5, max: 40 }),
      (resin, grams, celsius) => {
        const { dose, timed } = both(resin, grams, celsius);
        // A sheet of which no clock is told has neither.
        if (timed.verdict?.level === 'unknown') return;
        expect(heatOf(dose)).toEqual(heatOf(timed));
        seen.add(heatOf(timed)[0]?.[0] ?? 'cool');
      },
    ),
    { numRuns: 80 },
  );
  expect([...seen].sort()).toEqual(['cool', 'cup-grows-hot', 'cup-runs-away']);
}, 60_000);
