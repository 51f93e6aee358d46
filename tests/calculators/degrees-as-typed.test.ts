import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { foodContactCalculator } from '../../src/calculators/food-contact/calculator.ts';
import { withUnits } from '../../src/calculators/kit/address.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import { amount, defaultUnits, formatQuantity, inReaderUnits, parseQuantity } from '../../src/model/quantity/index.ts';

// A degree that was typed goes through °C and comes back as it was typed.

const inch = { ...defaultUnits, system: 'inch' as const };
const halves = (from: number, to: number) => fc.integer({ min: 2 * from, max: 2 * to }).map((twice) => twice / 2);
const read = (text: string) => {
  const parsed = parseQuantity(text, { dimension: 'temperature', bareUnit: '[degF]' });
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
};
const written = (degrees: number) => `${String(degrees).replace('-', '\u2212')} °F`;

test('62 °F come back as 62 °F, in a sentence and as a figure', () => {
  expect(inReaderUnits(amount(read('62 °F'), 'Cel'), inch)).toBe('62 °F');
  expect(formatQuantity(read('62 °F'), 'Cel', inch)).toBe('62 °F');
});

test('any whole or half degree comes back as it was typed', () => {
  fc.assert(
    // No field takes more than 60 °C, 140 °F; the cure of an oven may be hotter, and is told in whole degrees.
    fc.property(halves(-40, 140), (degrees) => {
      const celsius = read(`${degrees} °F`);
      expect(inReaderUnits(amount(celsius, 'Cel'), inch)).toBe(written(degrees));
      expect(formatQuantity(celsius, 'Cel', inch)).toBe(written(degrees));
      if (degrees > 60) return;
      const own = inReaderUnits(amount(degrees, 'Cel'), defaultUnits);
      expect(own).toBe(written(degrees).replace('°F', '°C'));
    }),
    { numRuns: 500 },
  );
});

test('the answers echo it so', () => {
  fc.assert(
    fc.property(halves(60, 86), (degrees) => {
      const shopTemperature = `${degrees} °F`;
      const resin = 'slow-casting-2-1';
      const board = { market: 'us', species: 'sugar-maple', finish: 'mineral-oil', resinPlace: 'beside-food', resin };
      for (const [calculator, raw] of [
        [cureClockCalculator, { resin, shopTemperature }],
        [workingTimeCalculator, { resin, shopTemperature, mass: '200 g' }],
        [pourHeatCalculator, { resin, shopTemperature, depth: '5 mm', base: 'hardwood' }],
        [foodContactCalculator, { ...board, food: 'dry', roomTemperature: shopTemperature, daysSincePour: '1' }],
      ] as const) {
        const asked: Calculator = calculator;
        const outcome = answer(asked, raw);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
        const said = inReaderUnits(JSON.stringify(outcome.value.result), inch);
        expect(said, calculator.id).toContain(` ${degrees} °F`);
      }
    }),
    { numRuns: 15 },
  );
}, 60_000);

// A degree sign that names no scale is a bare number: the reader's own unit on a page; in a file °C, where it cannot be °F.

const clockAt = (text: string) => answer(cureClockCalculator, { resin: 'slow-casting-2-1', shopTemperature: text });
const messageOf = (text: string) => {
  const outcome = clockAt(text);
  return outcome.ok ? undefined : inReaderUnits(outcome.errors[0]?.message ?? '', defaultUnits);
};

test.each([
  ['62°', 'inch', '62 °F'],
  ['17°', 'metric', '17 °C'],
  ['62', 'inch', '62 °F'],
] as const)('%s of a reader in %s is %s', (text, system, read) => {
  const explicit = withUnits(cureClockCalculator as Calculator, { shopTemperature: text }, { ...defaultUnits, system });
  expect(explicit.shopTemperature).toBe(read);
  expect(clockAt(read).ok).toBe(true);
});

test('in a file it is °C where °F would be no shop, and refused with both written out where either may be meant', () => {
  const bare = clockAt('20°');
  expect(bare.ok && bare.value.inputs.shopTemperature).toBe(20);
  expect(messageOf('40°')).toBe('“40°” does not say whether it is °C or °F. Write 40 °C or 40 °F.');
  expect(messageOf('62°')).toBe(
    '“62°” does not say whether it is °C or °F. Write 62 °F, since 62 °C is not taken here.',
  );
});

test('a temperature out of range is shown in the other scale, where that is one of a shop', () => {
  expect(messageOf('62 °C')).toMatch(
    /^62 °C is more than this takes: 0 °C to 45 °C\. .*Or write 62 °F, if that is meant\.$/,
  );
  expect(messageOf('20 °F')).toMatch(/Or write 20 °C, if that is meant\.$/);
  expect(messageOf('200 °C')).not.toMatch(/Or write/);
});
