import { documentsAt, tablesAt } from '../case/seal-coat.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import { judge } from '../rules/judge.ts';
import { mixTooSmall } from '../rules/mix-too-small.ts';
import { mixedTooMuch } from '../rules/mixed-too-much.ts';
import type { Finding } from '../rules/rule.ts';
import type { ClassCase } from './places.ts';
import { askedTogether, type Together, withNames } from './together.ts';
import type { ClassFinding, ClassMix } from './types.ts';

/** Rules that look at how much is mixed: held against what a class mixes at once, not against a place by itself. */
const mixingRules = [mixTooSmall, mixedTooMuch];
export const mixingRuleIds: readonly string[] = mixingRules.map(({ id }) => id);

/** The text of the parameter that an input of a dose refers to, else the first words of what the method says. */
function inputText(worked: WorkedMethod, { refers, raw }: WorkedCalculation, input: string): string | undefined {
  const name = refers[input]?.split('/')[2];
  const value = name === undefined ? undefined : worked.parameters[name]?.value;
  if (value && 'text' in value && value.text) return value.text;
  const entry = raw[input];
  if (typeof entry === 'string') return entry.split(/[,;\n]/)[0]?.trim() || undefined;
  return undefined;
}

export function asClassFinding(worked: WorkedMethod, finding: Finding, places: readonly string[]): ClassFinding {
  const { rule, level, step, message, wayOut } = finding;
  const title = step === undefined ? undefined : worked.record.steps[step]?.title;
  return { rule, level, message, wayOut, places, ...(title === undefined ? {} : { step: title }) };
}

async function mixOf(group: Together): Promise<ClassMix | undefined> {
  const { worked, places } = group;
  const calculation = await withNames(group);
  if (!calculation) return undefined;
  const number = worked.steps.findIndex(({ id }) => id === calculation.step) + 1;
  const ids = places.map(({ id }) => id);
  const { result, errors = [] } = calculation;
  const colour = inputText(worked, calculation, 'colours');
  const found = judge({ ...worked, exceptions: [] }, mixingRules).filter(
    ({ path, step }) =>
      path.includes(group.calculation) || step === calculation.step || pouredFrom(worked, step, group),
  );
  return {
    calculation: group.calculation,
    step: { id: calculation.step, number, title: worked.record.steps[calculation.step]?.title ?? calculation.step },
    resin: inputText(worked, calculation, 'resin') ?? 'resin',
    ...(colour === undefined ? {} : { colour }),
    places: ids,
    asked: group.asked,
    ...(result ? { verdict: result.verdict } : {}),
    figures: result?.figures ?? {},
    tables: tablesAt(worked.steps[number - 1], result),
    documents: documentsAt(worked.steps[number - 1], result),
    errors: errors.map(({ message }) => message),
    findings: found.map((finding) => asClassFinding(worked, finding, ids)),
  };
}

/** Whether a step lays what this dose has mixed: it waits for it by the dose's own time. */
function pouredFrom(worked: WorkedMethod, step: string | undefined, { calculation }: Together): boolean {
  const after = step === undefined ? undefined : worked.record.steps[step]?.after;
  return (after ?? []).some(
    (link) => typeof link === 'object' && typeof link.most === 'object' && link.most.from.split('/')[2] === calculation,
  );
}

/** What a class mixes at once: for each dose of the method, its places by resin and colour. */
export async function mixesOf(one: ClassCase): Promise<ClassMix[]> {
  const [first] = one.places;
  if (!first) return [];
  const doses = Object.values(first.worked.calculations).filter(({ use }) => use === 'resin-dose');
  const order = new Map(first.worked.steps.map(({ id }, at) => [id, at]));
  doses.sort((a, b) => (order.get(a.step) ?? 0) - (order.get(b.step) ?? 0));
  const mixes: ClassMix[] = [];
  for (const { name } of doses)
    for (const group of await askedTogether(one, name)) {
      const mix = await mixOf(group);
      if (mix) mixes.push(mix);
    }
  return mixes;
}
