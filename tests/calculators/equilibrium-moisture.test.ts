import { expect, test } from 'vitest';
import { equilibriumMoistureCalculator } from '../../src/calculators/equilibrium-moisture/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';

const ask = (raw: Record<string, unknown>) => {
  const outcome = answer(equilibriumMoistureCalculator, raw);
  return outcome.ok ? outcome.value.result : outcome.errors;
};

test('air gives moisture, and that moisture gives the air back', () => {
  const there = ask({ temperature: '68 °F', relativeHumidity: '42 %' });
  if (Array.isArray(there) || !('figures' in there)) throw new Error('no answer');
  const moistureContent = there.figures.moistureContent?.value;
  const back = ask({ temperature: '20 °C', moistureContent });
  if (Array.isArray(back) || !('figures' in back)) throw new Error('no answer');
  expect(back.figures.relativeHumidity?.value).toBeCloseTo(42, 6);
  expect(back.figures.moistureContent).toBeUndefined();
});

test.each([
  [{ temperature: 20, relativeHumidity: 50, moistureContent: 9 }, 'moistureContent', 'Leave one of them empty.'],
  [
    { temperature: 20 },
    'relativeHumidity',
    'Give the relative humidity, such as 50 %, or the moisture content of the wood, such as 8 %.',
  ],
  [{ temperature: 20, moistureContent: 29.9 }, 'moistureContent', 'Give a lower moisture content.'],
  [{ temperature: 'warm', relativeHumidity: 50 }, 'temperature', '68 °F'],
])('%j is refused at %s', (raw, field, wayOut) => {
  const errors = ask(raw);
  expect(errors).toMatchObject([{ field }]);
  expect(JSON.stringify(errors)).toContain(wayOut);
});

test('air beyond the handbook’s table is answered with a warning', () => {
  const result = ask({ temperature: '-10 °C', relativeHumidity: '97 %' });
  if (!('figures' in result)) throw new Error('no answer');
  expect(result.cautions.map((caution) => caution.id)).toContain('sorption-outside');
});
