import { writeFileSync } from 'node:fs';
import type { TakenAnswer } from '../calculators/kit/take-away.ts';
import { byteOrderMark, csvOf, spreadsheetOf, takenTables } from '../calculators/kit/taken.ts';
import { nearest } from '../model/quantity/index.ts';
import { unitsOf } from './method-files.ts';
import { type Output, UsageError } from './usage.ts';

/** The options by which an answer is taken away as tables. */
export const takeOptions = {
  table: { type: 'string' },
  out: { type: 'string', short: 'o' },
  units: { type: 'string' },
} as const;

export const takeUsage = `[--table answer | -o answer.csv | -o answer.xlsx] [--units metric|inch]

--table   prints one table as CSV: answer (what was asked, figures, cautions), or one of the further tables
-o        writes it as a file: with --table that table as .csv; .xlsx has a sheet for each
--units   units of those numbers; metric unless told`;

interface TakeTexts {
  table?: string | undefined;
  out?: string | undefined;
  units?: string | undefined;
}

/** Whether an answer is asked for as tables. */
export const isTaken = ({ table, out }: TakeTexts): boolean => table !== undefined || out !== undefined;

/**
 * Print or write an answer as tables.
 *
 * @throws UsageError where there is no such table, or the file cannot be written or is of no kind known here
 */
export async function takeAway(
  answered: Pick<TakenAnswer, 'calculator' | 'inputs' | 'result'>,
  { table, out: file, units }: TakeTexts,
  output: Output,
): Promise<void> {
  const day = new Date().toISOString().slice(0, 10);
  const tables = takenTables({ ...answered, units: unitsOf(units, 'calc'), day });
  const one = tables.find(({ id }) => id === (table ?? 'answer'));
  if (!one) {
    const known = tables.map(({ id }) => id);
    const near = nearest(table ?? '', known);
    throw new UsageError(
      `calc: --table “${table}”: this answer has no such table; it has ${known.join(', ')}. ${near ? `Did you mean ${near}?` : 'Pick one of them.'}`,
    );
  }
  if (file === undefined) {
    output.out(csvOf(one));
    return;
  }
  if (/\.xlsx$/i.test(file)) write(file, await spreadsheetOf(table === undefined ? tables : [one]));
  else if (/\.csv$/i.test(file)) write(file, byteOrderMark + csvOf(one));
  else
    throw new UsageError(
      `calc: -o ${file} does not end in .csv or .xlsx. Write, for example, -o ${answered.calculator.id}.xlsx.`,
    );
  output.out(`${file}: ${one.title}\n`);
}

function write(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch (error) {
    throw new UsageError(`calc: ${file} cannot be written: ${(error as Error).message}. Name another file with -o.`);
  }
}
