import { amount, defaultUnits, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';

/** Every way in which a reader of inches may have a limit shown. */
const inInches: readonly ReaderUnits[] = (['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const).map(
  (inches) => ({ system: 'inch', inches }),
);

/** A text in the units of those who measure in inches. */
const imperial = /["″”'′’]|(?<![a-z])(in|inch|inches|ft|foot|feet|yd|lb|lbs|oz|gal|qt|pt|f|degf)\b/i;

/**
 * Whether a value that lies beyond a limit is the limit as the reader sees it: 480 mm stands on the page as 18 29/32 in, which is a little more.
 * Nobody who types what the page says is refused; the limit itself is then taken.
 *
 * @param typed as typed
 * @param value and `limit` in `unit`, a UCUM code
 */
export function limitWrittenAs(typed: string | number, value: number, limit: number, unit: string): boolean {
  const readers = imperial.test(String(typed)) ? inInches : [defaultUnits];
  return readers.some((reader) => {
    const [one, other] = [value, limit].map((each) => inReaderUnits(amount(each, unit), reader));
    return one === other;
  });
}

/** A range in a sentence: `320 mm to 600 mm`. */
export const rangeWords = (low: number, high: number, unit: string): string =>
  `${amount(low, unit)} to ${amount(high, unit)}`;
