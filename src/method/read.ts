import type { DataProblem } from '../model/data/problem.ts';
import { readYamlRecord, type Span } from '../model/data/yaml.ts';
import { type Fault, namedFaults } from './case/named.ts';
import { textFaults } from './case/texts.ts';
import type { Path } from './case/types.ts';
import { type MethodRecord, methodRecord } from './record/index.ts';

/** A method as read: its record where nothing is wrong with it, and the place of every path. */
export interface MethodReading {
  file: string;
  record: MethodRecord | undefined;
  problems: readonly DataProblem[];
  /** Where the value of a path stands, or its name. */
  spanOf(path: Path, part?: 'key' | 'value'): Span;
  /** Where a stretch of a text value stands, by offsets in it. */
  spanWithin(path: Path, from: number, to: number): Span;
}

/** A method may teach fifty steps; the guard of the reader is as quick on it. Characters. */
const longestMethod = 131_072;

/** Faults of a method as problems of its file. */
export function problemsAt(
  { file, spanOf, spanWithin }: Pick<MethodReading, 'file' | 'spanOf' | 'spanWithin'>,
  faults: readonly Fault[],
): DataProblem[] {
  return faults.map(({ path, message, key, within }) => {
    const { line, column, endLine, endColumn } = within
      ? spanWithin(path, ...within)
      : spanOf(path, key ? 'key' : 'value');
    return { file, line, column, endLine, endColumn, field: path.join('.'), message };
  });
}

/**
 * Read the text of a method: YAML, then the schema, then whether its texts can be shown and its names lead somewhere. What its
 * references lead to is checked where the method is worked out, since that asks the calculators.
 *
 * @param text the whole file, whoever wrote it
 * @param file path shown in problems
 */
export function readMethod(text: string, file: string): MethodReading {
  const { record, reading, problems } = readYamlRecord(text, methodRecord, file, longestMethod);
  const { spanOf, spanWithin } = reading.places;
  const read = { file, record: undefined, problems, spanOf, spanWithin };
  if (!record) return read;
  const faults = problemsAt(read, [...namedFaults(record), ...textFaults(record)]);
  return { ...read, record: faults.length > 0 ? undefined : record, problems: faults };
}
