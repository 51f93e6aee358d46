import { describe, expect, test } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { floodCoatCalculator } from '../../src/calculators/flood-coat/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';

// A shop that is too cold or too hot for resin is called so by whoever asks for its temperature.

const resin = 'slow-casting-2-1';
const air = ['cold-shop', 'hot-shop', 'night-warmer'];
function said(calculator: unknown, raw: Record<string, unknown>) {
  const outcome = answer(calculator as Calculator, { resin, ...raw });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  const { cautions, verdict } = outcome.value.result;
  const own = cautions.filter(({ id }) => air.includes(id));
  for (const caution of own) expect(caution).toMatchObject({ own: true, level: 'warning' });
  if (own.length > 0) expect(verdict?.level).not.toBe('good');
  return own.map(({ id }) => id);
}

const asked: readonly (readonly [name: string, calculator: unknown, raw: Record<string, unknown>])[] = [
  ['resin-dose', resinDoseCalculator, { mass: '300 g', depth: '5 mm' }],
  ['working-time', workingTimeCalculator, { mass: '100 g' }],
  ['flood-coat', floodCoatCalculator, { wantedThickness: '1 mm' }],
  ['pour-heat', pourHeatCalculator, { depth: '5 mm' }],
  ['cure-clock', cureClockCalculator, {}],
];

describe.each(asked)('%s', (_, calculator, raw) => {
  test.each([
    [8, ['cold-shop']],
    [20, []],
    [38, ['hot-shop']],
  ])('at %d °C says %j', (celsius, ids) => {
    expect(said(calculator, { ...raw, shopTemperature: `${celsius} °C` })).toEqual(ids);
  });
});

describe.each(asked.slice(3))('%s, by day and night', (_, calculator, raw) => {
  test.each([
    [38, 4, ['cold-shop', 'hot-shop']],
    [38, 20, ['hot-shop']],
    [18, 22, ['night-warmer']],
    [22, 18, []],
  ])('%d and %d °C says %j', (day, night, ids) => {
    expect(said(calculator, { ...raw, dayTemperature: `${day} °C`, nightTemperature: `${night} °C` })).toEqual(ids);
  });
});
