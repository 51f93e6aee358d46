import type { CalculatorId } from '../../calculators/registry.ts';
import { calculatorsOf, promisedAt } from '../case/fit.ts';
import { lookUp } from '../case/look-up.ts';
import { orThese } from '../case/or-these.ts';
import type { WorkedMethod } from '../case/types.ts';
import { pointerOf, stepsOfPointer } from '../pointer.ts';
import { wholeCase } from './inputs.ts';
import type { ShownValue } from './types.ts';
import { shownValue } from './values.ts';

// What a page outside of a method quotes of it: a figure in a sentence, the inputs of a calculation.

/** What is quoted, or why there is nothing to quote, with the names there are. */
export type Quoted<T> = { ok: true; value: T } | { ok: false; why: string };

const none = (why: string): Quoted<never> => ({ ok: false, why });

/** The pointer that a text of the method would write: a calculation may also be reached through its step. */
function withoutStep({ record }: WorkedMethod, pointer: string): Quoted<string> {
  const [branch, id = '', ...rest] = stepsOfPointer(pointer);
  if (branch !== 'steps') return { ok: true, value: pointer };
  const step = Object.hasOwn(record.steps, id) ? record.steps[id] : undefined;
  if (!step) return none(`“${id}” is not a step of this method. ${orThese(id, Object.keys(record.steps), 'step')}`);
  const [part, name = '', ...more] = rest;
  const names = Object.keys(step.calculations ?? {});
  if (part !== 'calculations') return none(`of a step only its calculations are quoted: /steps/${id}/calculations/…`);
  if (!names.includes(name))
    return none(`the step “${id}” has no calculation “${name}”. ${orThese(name, names, 'calculation')}`);
  return { ok: true, value: pointerOf(['calculations', name, ...more]) };
}

/**
 * A figure, a parameter or a verdict of a worked method, by the JSON Pointer that its own texts would write; a calculation may also be
 * reached through its step, `/steps/mix/calculations/dose/figures/massA`.
 */
export async function quotedValue(worked: WorkedMethod, at: string): Promise<Quoted<ShownValue>> {
  const pointer = withoutStep(worked, at);
  if (!pointer.ok) return pointer;
  const promised = promisedAt(worked.record, await calculatorsOf(worked.record), pointer.value);
  if (!promised.ok) return none(promised.message);
  const there = lookUp(worked, pointer.value);
  return there.ok ? { ok: true, value: shownValue(worked, pointer.value) } : none(there.why);
}

/** Which calculator a calculation asks, and with what. */
export interface QuotedCalculation {
  use: CalculatorId;
  /** As a calculator's page takes them (`wholeCase`). */
  inputs: Readonly<Record<string, string>>;
}

/** The inputs that a calculation of a worked method gives to its calculator, named by its step and its own name: `mix/dose`. */
export async function quotedCalculation(worked: WorkedMethod, name: string): Promise<Quoted<QuotedCalculation>> {
  const [step = '', calculation = ''] = name.split('/');
  const pointer = withoutStep(worked, pointerOf(['steps', step, 'calculations', calculation]));
  if (!pointer.ok) return pointer;
  const found = worked.calculations[calculation];
  const calculator = found && (await calculatorsOf(worked.record)).get(found.use);
  if (!found || !calculator) return none(`the step “${step}” asks no calculator by “${calculation}”.`);
  return { ok: true, value: { use: found.use, inputs: wholeCase(found.raw, calculator) } };
}
