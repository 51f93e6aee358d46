import type { CaseOptions, WorkedMethod } from '../../src/method/case/types.ts';
import { workMethod } from '../../src/method/case/work.ts';
import { readMethod } from '../../src/method/read.ts';
import { readMethodTexts } from '../../src/store/index.ts';

/** A method of this site as it is worked at its defaults, or as it is asked. */
export async function methodOf(id: string, options: CaseOptions = {}): Promise<WorkedMethod> {
  const found = readMethodTexts().find((one) => one.id === id);
  if (!found) throw new Error(`no method ${id}`);
  const working = await workMethod(readMethod(found.text, found.file), options);
  if (!working.ok) throw new Error(working.problems.map(({ message }) => message).join('\n'));
  return working.worked;
}

/**
 * A number of a method by its pointer: a size of its parameters, a figure of its calculations, in the method's own units;
 * `high` is the far end of its band.
 */
export function numberAt(method: WorkedMethod, pointer: string, end: 'value' | 'high' = 'value'): number {
  const found = method.at(pointer);
  if (found?.kind !== 'quantity') throw new Error(`${method.file} has no quantity at ${pointer}`);
  return found[end] ?? found.value;
}
