import { formatBand, formatQuantity, inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import type { CaseValue, WorkedMethod } from './case/types.ts';
import { readText } from './text.ts';
import { plainText } from './text-plain.ts';

/** Digits of a quantity of which nothing says how finely it is known. */
const usualDigits = 3;

/**
 * A value of a case as it stands in a sentence, in the reader's units: with its band where it has one, and the basis where that is weaker than
 * published or derived.
 */
export function valueWords(value: CaseValue, units: ReaderUnits): string {
  if (value.kind === 'text') return inReaderUnits(value.text, units);
  if (value.kind === 'data') return value.text ?? value.label;
  const { value: number, unit, digits = usualDigits, low, high, basis } = value;
  const shown = formatQuantity(number, unit, units, { digits });
  const ends =
    low === undefined || high === undefined ? '' : formatBand(number, { low, high }, unit, units, { digits });
  const weak = basis === undefined || basis === 'published' || basis === 'derived' ? '' : basis.replace('-', ' ');
  const behind = [ends, weak].filter(Boolean).join('; ');
  return behind ? `${shown} (${behind})` : shown;
}

/** What stands where a figure has no value in this case. */
const none = 'none here';

/** A text of a method for a terminal: without marks, every reference as its value in the reader's units. */
export function textWords(worked: Pick<WorkedMethod, 'at'>, source: string, units: ReaderUnits): string {
  const { blocks } = readText(source);
  const plain = plainText(blocks, (pointer) => {
    const value = worked.at(pointer);
    return value ? valueWords(value, units) : none;
  });
  return inReaderUnits(plain, units);
}
