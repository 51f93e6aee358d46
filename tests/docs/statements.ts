import { describe, expect, test } from 'vitest';
import { calculatorById } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import type { Figure, Outcome, Result } from '../../src/model/evidence/index.ts';
import { howTo, workedCases } from './how-to.ts';

/** What a page must say, by the page's name: what the sentence is about, and its text with the numbers worked out again. */
export type Statements = Readonly<Record<string, readonly (readonly [says: string, text: () => string])[]>>;

/** Hold every page to its statements: where the model changes, the sentence must too. */
export function hold(statements: Statements): void {
  for (const [name, held] of Object.entries(statements)) {
    describe(name, () => {
      test.each(held)('%s', (_, text) => {
        const said = text();
        // The sentence is enough of a message; the whole page would bury it.
        expect(howTo(name).text.includes(said), `docs/${name}.mdx should say: ${said}`).toBe(true);
      });
    });
  }
}

/** What a calculator answers, asked as a page would ask it. */
export function result(calculator: string, inputs: RawInputs): Result {
  const asked = calculatorById(calculator);
  if (!asked) throw new Error(`no calculator ${calculator}`);
  const outcome = answer(asked, inputs);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  return outcome.value.result;
}

/** A figure of a calculator, asked as a page would ask it. */
export function figure(calculator: string, inputs: RawInputs, name: string): Figure {
  const found = result(calculator, inputs).figures[name];
  if (!found) throw new Error(`${calculator} gave no ${name}`);
  return found;
}

/** The case that a page embeds: its only one, or the one whose inputs include these. */
export function workedCase(page: string, like: RawInputs = {}): { calculator: string; inputs: RawInputs } {
  const found = workedCases.filter(
    (one) => one.page === page && Object.entries(like).every(([field, text]) => one.inputs[field] === text),
  );
  const [only] = found;
  if (!only || found.length > 1) throw new Error(`${page} embeds ${found.length} cases like ${JSON.stringify(like)}`);
  return only;
}

/** A figure of a case that a page embeds. */
export function worked(page: string, name: string, like: RawInputs = {}): Figure {
  const { calculator, inputs } = workedCase(page, like);
  return figure(calculator, inputs, name);
}

/** A number without decimals. */
export const whole = (value: number) => value.toFixed(0);

/** All of some values lie between two. */
export function allBetween(values: readonly number[], low: number, high: number): void {
  expect(Math.min(...values)).toBeGreaterThanOrEqual(low);
  expect(Math.max(...values)).toBeLessThanOrEqual(high);
}

/** Digits of a size in mm, without its sign. */
export const mm = (value: number | undefined) => Math.abs(value ?? Number.NaN).toFixed(1);

/** The value of an outcome that must be there. */
export function settled<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
  return outcome.value;
}
