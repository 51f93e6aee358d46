import { workMethod } from '../method/case/work.ts';
import { readMethod } from '../method/read.ts';
import { readable } from '../method/rules/besides.ts';
import { judge } from '../method/rules/judge.ts';
import type { SarifFinding } from '../method/sarif.ts';
import { readShop, type Shop } from '../method/shop/index.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import { isShopRecord, type NamedText } from './method-files.ts';

/** How files are checked: the same for all of them. */
export interface Checking {
  shop?: Shop | undefined;
  units: ReaderUnits;
  /** Answers of calculators by what they were asked, kept from file to file. */
  memo: Map<string, unknown>;
}

/** A problem of a file as a finding: it cannot be read, and so must not be followed. */
const asFinding = (problem: DataProblem, units: ReaderUnits): SarifFinding => ({
  file: problem.file,
  line: problem.line,
  column: problem.column,
  ...(problem.endLine === undefined ? {} : { endLine: problem.endLine }),
  ...(problem.endColumn === undefined ? {} : { endColumn: problem.endColumn }),
  rule: readable,
  level: 'stop',
  message: inReaderUnits(`${problem.field ? `${problem.field}: ` : ''}${problem.message}`, units),
});

/** What a check tells of one file, a method or a shop record, in the order of its lines. */
export async function checked({ file, text }: NamedText, { shop, units, memo }: Checking): Promise<SarifFinding[]> {
  if (isShopRecord(text)) return readShop(text, file).problems.map((problem) => asFinding(problem, units));
  const working = await workMethod(readMethod(text, file), { memo, ...(shop ? { shop } : {}) });
  if (!working.ok) return working.problems.map((problem) => asFinding(problem, units));
  const { spanOf } = working.worked;
  const found = judge(working.worked).map(({ rule, level, path, message, wayOut, excepted }): SarifFinding => {
    const { line, column, endLine, endColumn } = spanOf(path);
    return {
      file,
      line,
      column,
      endLine,
      endColumn,
      rule,
      level,
      message: inReaderUnits(`${message} ${wayOut}`, units),
      ...(excepted === undefined ? {} : { excepted }),
    };
  });
  return found.sort((one, two) => one.line - two.line || one.column - two.column);
}
