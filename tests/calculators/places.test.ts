import { describe, expect, test } from 'vitest';
import { acclimatiseCalculator } from '../../src/calculators/acclimatise/calculator.ts';
import { equilibriumMoistureCalculator } from '../../src/calculators/equilibrium-moisture/calculator.ts';
import { finishAndMoistureCalculator } from '../../src/calculators/finish-and-moisture/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { seasonalMovementCalculator } from '../../src/calculators/seasonal-movement/calculator.ts';
import type { Figure, Outcome, Result } from '../../src/model/evidence/index.ts';
import { climates } from '../../src/model/moisture/climates.ts';
import { outdoorAir } from '../../src/model/moisture/index.ts';

const good = (outcome: Outcome<{ result: Result }>, what: string): Result => {
  if (!outcome.ok) throw new Error(`${what}: ${outcome.errors.map(({ message }) => message).join(' ')}`);
  return outcome.value.result;
};
const finite = (result: Result, what: string) => {
  for (const [name, figure] of Object.entries(result.figures as Record<string, Figure>)) {
    expect(Number.isFinite(figure.value), `${what} ${name}`).toBe(true);
  }
};

describe('every place', () => {
  test('is taken by the seasonal movement of a board, in a heated house and in a shed', () => {
    for (const { id, remark } of climates) {
      for (const indoors of ['heated', 'unheated']) {
        const asked = { ...seasonalMovementCalculator.example.metric, place: id, indoors };
        const result = good(answer(seasonalMovementCalculator, asked), id);
        finite(result, id);
        const ids = result.cautions.map((caution) => caution.id);
        expect(ids.includes('figures-of-place'), id).toBe(remark !== undefined);
      }
    }
  });

  test('is taken by the board under a finish', () => {
    for (const [at, { id }] of climates.entries()) {
      if (at % 24 !== 0) continue;
      const asked = { ...finishAndMoistureCalculator.example.metric, place: id };
      finite(good(answer(finishAndMoistureCalculator, asked), id), id);
    }
  });

  test('has air in which wood comes to a sensible moisture content and a board settles', () => {
    for (const climate of climates) {
      for (const { label, temperature, humidity } of outdoorAir(climate)) {
        const what = `${climate.id} ${label}`;
        const air = { temperature: `${temperature} °C`, relativeHumidity: `${humidity} %` };
        const balance = good(answer(equilibriumMoistureCalculator, air), what).figures.moistureContent as Figure;
        expect(balance.value, what).toBeGreaterThan(2);
        expect(balance.value, what).toBeLessThan(26.1);
        if (label !== 'Jan' || temperature < -10) continue;
        const board = { ...acclimatiseCalculator.example.metric, ...air };
        finite(good(answer(acclimatiseCalculator, board), what), what);
      }
    }
  });
});

test('a place of the weather service’s reports credits it in the answer, as its terms ask', () => {
  const asked = { ...seasonalMovementCalculator.example.metric, place: 'oslo-no' };
  const { evidence, cautions } = good(answer(seasonalMovementCalculator, asked), 'oslo-no');
  expect(evidence.map(({ text }) => text).join(' ')).toContain(
    'Datenbasis: Deutscher Wetterdienst, eigene Bearbeitung',
  );
  expect(cautions.find(({ id }) => id === 'average-year')?.text).toMatch(/the mean of many years/);
});
