import { readInputs } from '../../calculators/kit/answer.ts';
import { fetchOnce } from '../case/fit.ts';
import type { ReadableInput } from './measured.ts';

/**
 * What is wrong with a reading as it was typed, in the words of the field that takes it; undefined where it is taken. Asked before it is written down,
 * so that no log holds what nothing can be worked out from.
 *
 * @param value with its unit
 * @returns a sentence with marked quantities
 */
export async function readingFault(
  { use, input }: Pick<ReadableInput, 'use' | 'input'>,
  value: string,
): Promise<string | undefined> {
  const read = readInputs(await fetchOnce(use), { [input]: value });
  return read.ok ? undefined : read.errors.find(({ field }) => field === input)?.message;
}
