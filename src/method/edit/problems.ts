import type { DataProblem } from '../../model/data/problem.ts';
import type { Span } from '../../model/data/yaml.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import type { CaseOptions, Path, WorkedMethod } from '../case/types.ts';
import { workMethod } from '../case/work.ts';
import { readMethod } from '../read.ts';
import { judge } from '../rules/judge.ts';
import { readShop, type Shop } from '../shop/index.ts';
import { fixesOf } from './fixes.ts';
import { kindOfRecord } from './outline.ts';
import type { EditProblem, NameLoaders } from './types.ts';

/** The case that a method is looked over with, and for whom. */
export interface LookOptions extends CaseOptions {
  /** Of whoever reads the problems. */
  units?: ReaderUnits;
  /** From which the nearest name is picked. */
  names?: NameLoaders;
}

/** What was found in a text, and what it came to. */
export interface LookedOver {
  problems: readonly EditProblem[];
  /** The case, where a method could be worked out. */
  worked?: WorkedMethod;
  /** The shop, where a shop record could be read. */
  shop?: Shop;
}

/** Offsets of a problem, whose lines and columns count from 1. */
function offsetsOf(text: string, starts: readonly number[], problem: DataProblem): { from: number; to: number } {
  const at = (line: number, column: number) => Math.min(text.length, (starts[line - 1] ?? text.length) + column - 1);
  const { line, column, endLine, endColumn } = problem;
  const from = at(line, column);
  if (endLine !== undefined && endColumn !== undefined) return { from, to: Math.max(from, at(endLine, endColumn)) };
  const word = /^[^\s,\]}]+/.exec(text.slice(from))?.[0] ?? '';
  return { from, to: from + word.length };
}

function lineStarts(text: string): number[] {
  const starts = [text.startsWith('\ufeff') ? 1 : 0];
  for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) starts.push(end + 1);
  return starts;
}

const stepsOf = (field: string): (string | number)[] =>
  field === '' ? [] : field.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** Where to point for something that is said of a whole step: its name, not its twenty lines. */
function shortSpan(text: string, { spanOf }: Pick<WorkedMethod, 'spanOf'>, path: Path): Span {
  const long = ({ from, to }: Span) => text.slice(from, to).includes('\n');
  const value = spanOf(path);
  if (!long(value)) return value;
  const name = spanOf(path, 'key');
  const span = long(name) ? value : name;
  const end = text.indexOf('\n', span.from);
  return long(span) ? { ...span, to: text.slice(0, end).trimEnd().length } : span;
}

async function inText(
  text: string,
  problems: readonly DataProblem[],
  { units = defaultUnits, names, shop }: LookOptions,
): Promise<EditProblem[]> {
  const starts = lineStarts(text);
  const context = { ...(names ? { names } : {}), ...(shop ? { shop } : {}), units };
  const found: EditProblem[] = [];
  for (const problem of problems) {
    const { line, column, field, message } = problem;
    const offsets = offsetsOf(text, starts, problem);
    const path = stepsOf(field);
    const fixes = await fixesOf(text, { ...offsets, path, first: found.length < 3 }, context);
    found.push({ ...offsets, line, column, level: 'error', path, message: inReaderUnits(message, units), fixes });
  }
  return found;
}

/**
 * Look over the text of a method or shop record: whether it can be read and worked out, and what the rules find in the case.
 *
 * @param text the whole file, whoever wrote it
 * @param file name under which it is known
 * @param options the case; `memo` kept from one look to the next, no calculation is done twice
 */
export async function lookOver(text: string, file: string, options: LookOptions = {}): Promise<LookedOver> {
  const { units = defaultUnits } = options;
  if (kindOfRecord(text) === 'shop') {
    const { shop, problems } = readShop(text, file, units);
    return { problems: await inText(text, problems, options), ...(shop ? { shop } : {}) };
  }
  const working = await workMethod(readMethod(text, file), options);
  if (!working.ok) return { problems: await inText(text, working.problems, options) };
  const { worked } = working;
  const problems = judge(worked).map(({ rule, level, path, message, wayOut, excepted }): EditProblem => {
    const { from, to, line, column } = shortSpan(text, worked, path);
    return {
      ...{ from, to, line, column, level, path, rule, fixes: [] },
      message: inReaderUnits(`${message} ${wayOut}`, units),
      ...(excepted === undefined ? {} : { excepted }),
    };
  });
  return { problems: problems.sort((one, other) => one.from - other.from), worked };
}

/** What is wrong with a text, and what the rules find in it, in the order of the text. */
export async function problemsOf(
  text: string,
  file: string,
  options: LookOptions = {},
): Promise<readonly EditProblem[]> {
  return (await lookOver(text, file, options)).problems;
}
