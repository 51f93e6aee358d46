import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { resinKindIds, resinOf } from '../../src/model/resin/kinds.ts';
import { tooManyLayers, wrongForDepth } from '../../src/model/resin/pour-plan.ts';

// A resin that a place takes six layers of or more is the wrong one: plainly said, by the dose and by the heat of the pour.

const run = (calculator: unknown, raw: Record<string, unknown>): Result => {
  const outcome = answer(calculator as Calculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify([raw, outcome.errors]));
  return outcome.value.result;
};
const dose = (resin: string, depth: number, more: object = {}) =>
  run(resinDoseCalculator, {
    resin,
    volume: '5 l',
    depth: `${depth} mm`,
    shopTemperature: '20 °C',
    scaleDivision: '0.01 g',
    ...more,
  });
const pour = (resin: string, depth: number) =>
  run(pourHeatCalculator, { resin, depth: `${depth} mm`, shopTemperature: '20 °C', base: 'hardwood' });
const wrong = /This resin is wrong for so deep a place: pick a slow casting resin\./;
const layersOf = (result: Result) => result.figures.layers?.value ?? 1;

test('the sentence stands from six layers on, and names what to pick', () => {
  const [fast, slow] = [resinOf('fast-coating-1-1'), resinOf('slow-casting-2-1')];
  expect(wrongForDepth(tooManyLayers - 1, fast)).toBeUndefined();
  expect(wrongForDepth(tooManyLayers, fast)).toMatch(wrong);
  expect(wrongForDepth(tooManyLayers, undefined)).toMatch(wrong);
  expect(wrongForDepth(tooManyLayers, slow)).toContain('pick a casting resin that is poured deeper');
});

test('50 mm of a coating resin', () => {
  for (const result of [dose('fast-coating-1-1', 50), pour('fast-coating-1-1', 50)]) {
    expect(layersOf(result)).toBeGreaterThanOrEqual(tooManyLayers);
    expect(result.verdict?.text).toMatch(wrong);
    expect(result.verdict?.text.match(/wrong for so deep/g)).toHaveLength(1);
    expect(result.verdict?.level).not.toBe('good');
    expect(result.cautions.find(({ id }) => id === 'wrong-for-depth')).toMatchObject({ level: 'warning', own: true });
  }
});

test('whoever asks for fewer layers is told so too, and more layers than are needed make no resin wrong', () => {
  expect(dose('fast-coating-1-1', 50, { layers: 2 }).verdict?.text).toMatch(wrong);
  const many = dose('slow-casting-2-1', 10, { layers: 8 });
  expect(layersOf(many)).toBe(8);
  expect(many.verdict?.text).not.toContain('wrong for so deep');
});

test('dose and heat say it exactly where depth asks for six layers or more', () => {
  fc.assert(
    fc.property(fc.constantFrom(...resinKindIds), fc.integer({ min: 2, max: 120 }), (resin, depth) => {
      for (const result of [dose(resin, depth), pour(resin, depth)]) {
        const said = result.cautions.some(({ id }) => id === 'wrong-for-depth');
        expect(said).toBe(layersOf(result) >= tooManyLayers);
        expect(/wrong for so deep a place/.test(result.verdict?.text ?? '')).toBe(said);
      }
    }),
    { numRuns: 40 },
  );
}, 60_000);
