import type { WorkedMethod } from '../method/case/types.ts';
import { workMethod } from '../method/case/work.ts';
import { type MethodReading, readMethod } from '../method/read.ts';
import { readable } from '../method/rules/besides.ts';
import { judge } from '../method/rules/judge.ts';
import type { SarifFinding } from '../method/sarif.ts';
import { readShop, type Shop } from '../method/shop/index.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import { calendarMissing } from './calendars-beside.ts';
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

/** What comes of reading a file: a method as read and worked out, a shop record (no method), or everything that keeps it from being either. */
export type Gone = { problems: readonly DataProblem[]; read?: MethodReading; worked?: WorkedMethod };

/** Read a file and, where it is a method, work it out at its own defaults. */
export async function readThrough(
  { file, text }: NamedText,
  { shop, memo }: Pick<Checking, 'shop' | 'memo'>,
): Promise<Gone> {
  if (isShopRecord(text)) return { problems: readShop(text, file).problems };
  const read = readMethod(text, file);
  const working = await workMethod(read, { memo, ...(shop ? { shop } : {}) });
  return working.ok ? { problems: [], read, worked: working.worked } : { problems: working.problems, read };
}

/** What a check tells of one file, a method or a shop record, in the order of its lines. */
export async function checked(named: NamedText, { shop, units, memo }: Checking): Promise<SarifFinding[]> {
  const { problems, read, worked } = await readThrough(named, { shop, memo });
  const hours = read && named.calendars ? calendarMissing(read, named.calendars) : [];
  const unread = [...problems, ...hours].map((problem) => asFinding(problem, units));
  if (!worked) return unread;
  const found = judge(worked).map(({ rule, level, path, message, wayOut, excepted }): SarifFinding => {
    const { line, column, endLine, endColumn } = worked.spanOf(path);
    return {
      file: named.file,
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
  return [...unread, ...found].sort((one, two) => one.line - two.line || one.column - two.column);
}
