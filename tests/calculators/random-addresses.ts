import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAddress, startingInputs, writeAddress } from '../../src/calculators/kit/address.ts';
import { answer, fieldsOf } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { addresses, numbersOf } from './arbitrary.ts';
import { brokenPrinciple } from './principles.ts';
import { runs } from './runs.ts';

/**
 * An answer that follows heat through a cross-section, hour by hour, takes some 60 ms; the others take 3. So that all can be tried on two
 * cores in ten minutes it is asked a quarter as often.
 */
const sharesOfRuns: Readonly<Record<string, number>> = { 'pour-heat': 1 / 4 };

/** A test a calculator: whatever its address says, it answers in numbers or says which field to mend. */
export function tryAddresses(those: readonly Calculator[]): void {
  describe.each(those.map((calculator) => [calculator.id, calculator] as const))('%s', (_, calculator) => {
    test('random addresses give an answer in finite numbers that keeps the principles, or field errors', () => {
      const numRuns = Math.ceil(runs * (sharesOfRuns[calculator.id] ?? 1));
      let answered = 0;
      fc.assert(
        fc.property(addresses(calculator), fc.boolean(), (raw, bare) => {
          const search = writeAddress(calculator, raw, defaultUnits);
          const inputs = bare ? readAddress(calculator, search) : startingInputs(calculator, {}, defaultUnits, search);
          const outcome = answer(calculator, inputs);
          if (outcome.ok) {
            answered += 1;
            const broken = brokenPrinciple(calculator.id, inputs, outcome.value.result);
            if (broken) throw new Error(`${broken}: ${search}`);
            for (const number of numbersOf(outcome.value.result))
              if (!Number.isFinite(number)) throw new Error(`not finite: ${search}`);
          } else {
            if (outcome.errors.length === 0) throw new Error(`neither answer nor error: ${search}`);
            for (const { field, message } of outcome.errors) {
              if (!Object.hasOwn(fieldsOf(calculator), field))
                throw new Error(`error at no field, “${field}”: ${search}`);
              if (!/[.?]$/.test(message) || /undefined|NaN|\[object/.test(message.replace(/“.*?”/gs, '')))
                throw new Error(`message “${message}”: ${search}`);
            }
          }
        }),
        { numRuns },
      );
      // The texts are mostly sensible: a test whose every address fails would prove nothing.
      expect(answered).toBeGreaterThan(0.01 * numRuns);
    }, 600_000);
  });
}
