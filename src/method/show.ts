import { basisWords } from '../model/evidence/index.ts';
import { formatBand, formatQuantity, inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import type { CaseValue, WorkedMethod } from './case/types.ts';
import { readText } from './text.ts';
import { plainText } from './text-plain.ts';

/** Digits of a quantity of which nothing says how finely it is known. */
const usualDigits = 3;

/** `8 h to 14 h` as it is said: `8 to 14 h`. */
const unitOnce = (ends: string) => ends.replace(/^([^;]+?) (\S+) to (.+) \2$/, '$1 to $3 $2');

/**
 * A value of a case as it stands in a sentence, in the reader's units: with its band where it has one, and the basis where that is weaker than
 * published or derived.
 *
 * @param again true where band and basis stand already where it was first named
 */
export function valueWords(value: CaseValue, units: ReaderUnits, again = false): string {
  if (value.kind === 'text') return inReaderUnits(value.text, units);
  if (value.kind === 'data') return value.text ?? value.label;
  const { value: number, unit, digits = usualDigits, low, high, basis } = value;
  const shown = formatQuantity(number, unit, units, { digits });
  if (again) return shown;
  const ends =
    low === undefined || high === undefined ? '' : formatBand(number, { low, high }, unit, units, { digits });
  const weak = basis === undefined || basis === 'published' || basis === 'derived' ? '' : basisWords[basis];
  const behind = [ends && unitOnce(ends), weak].filter(Boolean).join('; ');
  return behind ? `${shown} (${behind})` : shown;
}

/** What stands where a figure has no value in this case. */
const none = 'none here';

/**
 * A text of a method for a terminal: without marks, every reference as its value in the reader's units.
 *
 * @param said pointers whose band and basis the reader has been told in texts before this one; those of this one are added. A figure is told in full
 *   once, and plainly after that, so that a sentence can be read aloud
 */
export function textWords(
  worked: Pick<WorkedMethod, 'at'>,
  source: string,
  units: ReaderUnits,
  said: Set<string> = new Set(),
): string {
  const { blocks } = readText(source);
  const plain = plainText(blocks, (pointer) => {
    const value = worked.at(pointer);
    const again = said.has(pointer);
    said.add(pointer);
    return value ? valueWords(value, units, again) : none;
  });
  return inReaderUnits(plain, units);
}
