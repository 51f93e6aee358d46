import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculatorById } from '../../src/calculators/index.ts';
import { answer, readInputs } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { holdsAmount, type ReaderUnits, wordsInReaderUnits } from '../../src/model/quantity/index.ts';
import { bearingContact, usualContact } from '../../src/model/stock/index.ts';
import { addresses } from './arbitrary.ts';
import { runs } from './runs.ts';

/** The calculators of the machine room and the yard, which all answer with a verdict. */
const shop = ['cutter-speed', 'flatten-plan', 'grit-sequence', 'stock-order', 'template-fit'] as const;
const readers: readonly ReaderUnits[] = [
  { system: 'metric', inches: 'thirty-seconds' },
  { system: 'inch', inches: 'thirty-seconds' },
];
/** No caution says more in the open than a glance takes in; its reason stands behind it. */
const oneLine = 190;

const calculatorOf = (id: string) => calculatorById(id) as Calculator;

/** Every answer to random addresses. */
function answers(
  id: string,
  check: (result: Result, inputs: Record<string, unknown>) => void,
  count = Math.min(runs, 250),
) {
  const calculator = calculatorOf(id);
  let answered = 0;
  fc.assert(
    fc.property(addresses(calculator), (raw) => {
      const outcome = answer(calculator, raw);
      if (!outcome.ok) return;
      answered += 1;
      const inputs = readInputs(calculator, raw);
      check(outcome.value.result, inputs.ok ? (inputs.value as Record<string, unknown>) : {});
    }),
    { numRuns: count },
  );
  // Lists with a word or a number changed are often refused; some of each kind must answer.
  expect(answered).toBeGreaterThan(count / 100);
}

describe.each(shop)('%s, whatever it is asked', (id) => {
  test('says first what a maker would say, and never good beside a danger of the case’s own', () => {
    answers(id, ({ verdict, cautions }) => {
      expect(verdict?.text).toMatch(/^[A-Z0-9].*\.$/s);
      const own = cautions.filter((caution) => caution.own);
      if (verdict?.level === 'good') expect(own.filter(({ level }) => level === 'danger')).toEqual([]);
      for (const { id: caution, text } of cautions) {
        if (!caution.startsWith('drawing-') && own.some((one) => one.id === caution))
          expect(text.length, caution).toBeLessThan(oneLine);
      }
    });
  }, 120_000);

  test('no sentence keeps a marked quantity, or a number that is none, for either reader', () => {
    answers(
      id,
      (result) => {
        for (const reader of readers) {
          const text = JSON.stringify(wordsInReaderUnits(result, reader));
          expect(holdsAmount(text)).toBe(false);
          expect(text).not.toMatch(/NaN|undefined|not known/);
        }
      },
      100,
    );
  }, 120_000);
});

test('cutter-speed names no pass at which the bearing is off the template, whatever it is asked', () => {
  answers('cutter-speed', ({ figures, verdict }, { work, bearing, cuttingLength, template, stock }) => {
    if (work === 'boring' || figures.passes === undefined) return;
    expect(['good', 'care', 'stop']).toContain(verdict?.level);
    if (bearing === 'tip') {
      expect(template as number).toBeGreaterThanOrEqual(usualContact - 1e-9);
      return;
    }
    const first = figures.leastFirstPass?.value ?? Number.NaN;
    const sizes = { cuttingLength: cuttingLength as number, template: template as number };
    expect(bearingContact(sizes, Math.max(first, 0))).toBeGreaterThanOrEqual(usualContact - 1e-6);
    expect(first).toBeLessThanOrEqual((stock as number) + 1 + 1e-6);
  });
});

test('an answer that knows no safe speed names no pass either', () => {
  answers('cutter-speed', ({ figures, verdict }) => {
    if (verdict?.level !== 'unknown') return;
    expect(Object.keys(figures)).not.toEqual(expect.arrayContaining(['passes']));
    expect(figures.usualTurns).toBeUndefined();
  });
});
