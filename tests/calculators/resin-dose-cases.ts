import { answer } from '../../src/calculators/kit/answer.ts';
import { resinDoseCalculator } from '../../src/calculators/resin-dose/calculator.ts';
import { workingTimeCalculator } from '../../src/calculators/working-time/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

/** What the tests of the dose ask, and how they read an answer. */

export type Raw = Readonly<Record<string, unknown>>;

/** The answer to these inputs; throws where there is none. */
export function result(raw: Raw): Result {
  const outcome = answer(resinDoseCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}
/** Value of a figure, NaN where it is not given. */
export const value = (given: Result, name: string) => given.figures[name]?.value ?? Number.NaN;
/** Ids of the cautions, in their order. */
export const ids = (given: Result) => given.cautions.map(({ id }) => id);
/** Cells of a column of the first table. */
export const column = (given: Result, id: string) => {
  const table = given.tables?.[0];
  const at = table?.columns.findIndex((one) => one.id === id) ?? -1;
  return table?.rows.map((row) => row[at]) ?? [];
};
/** Working time of a cup, s, as its own calculator gives it. */
export function workingTime(raw: Raw): number {
  const outcome = answer(workingTimeCalculator, raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result.figures.cupWork?.value ?? Number.NaN;
}
/** The first field error; throws where there is an answer. */
export function refused(raw: Raw): { field: string; message: string } {
  const outcome = answer(resinDoseCalculator, raw);
  if (outcome.ok) throw new Error('it has an answer');
  return outcome.errors[0] as { field: string; message: string };
}

/** A ratio, densities and a cup of the reader's own, and a scale fine enough for any of these cups. */
export const own = {
  mixRatio: '2:1',
  mixRatioBy: 'volume',
  densityA: '1.16',
  densityB: '1.00',
  cupMass: '20 kg',
  scaleDivision: '0.01 g',
};
/** How deep it is and may be. */
export const deep = { depth: '10 mm', greatestDepth: '50 mm' };
/** A sentence as a reader in millimetres gets it. */
export const metric = (text: string | undefined) => inReaderUnits(text ?? '', defaultUnits);
/** The verdict as a reader in millimetres gets it. */
export const verdict = (given: Result) => ({ level: given.verdict?.level, text: metric(given.verdict?.text) });
/** The caution with this id, as a reader in millimetres gets it. */
export const caution = (given: Result, id: string) => {
  const found = given.cautions.find((one) => one.id === id);
  return found && { ...found, text: metric(found.text) };
};
/** Whether an answer tells anybody to mix anything. */
export const doses = (given: Result) =>
  ['mass', 'massA', 'massB', 'volumeA', 'volumeB', 'cups', 'layers', 'pieceMass'].some((name) => given.figures[name]) ||
  (given.tables ?? []).length > 0;
