import { workMethod } from '../method/case/work.ts';
import { type Plan, planOf } from '../method/plan/index.ts';
import { readMethod } from '../method/read.ts';
import { ProblemError } from '../method/schedule/index.ts';
import { peopleOf, type TypedCase } from './method-case.ts';
import { shownProblem, textOf } from './method-files.ts';
import { type Output, UsageError } from './usage.ts';

/**
 * Plan the case that somebody typed; from today, where no day was.
 *
 * @returns undefined where the method cannot be worked out: what is wrong has been written
 * @throws UsageError where it cannot be planned as asked
 */
export async function planOfCase(command: string, asked: TypedCase, output: Output): Promise<Plan | undefined> {
  const { file, units, shop, pieces, people = peopleOf(shop), end, hours, set } = asked;
  const { start = new Date().toISOString().slice(0, 10) } = asked;
  const working = await workMethod(readMethod(textOf(file, command), file), {
    ...(pieces === undefined ? {} : { pieces }),
    ...(set ? { set } : {}),
    ...(shop ? { shop } : {}),
  });
  if (!working.ok) {
    for (const problem of working.problems) output.err(`${shownProblem(problem, units)}\n`);
    return undefined;
  }
  try {
    return await planOf(working.worked, { start, ...(end === undefined ? {} : { end }), hours, people });
  } catch (error) {
    if (error instanceof ProblemError) throw new UsageError(`${command}: ${error.message}`);
    throw error;
  }
}
