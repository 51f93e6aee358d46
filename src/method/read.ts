import type { DataProblem } from '../model/data/problem.ts';
import { readYamlRecord, type Span } from '../model/data/yaml.ts';
import { type Fault, namedFaults } from './case/named.ts';
import type { Path } from './case/types.ts';
import { type MethodRecord, methodRecord } from './record/index.ts';

/** A method as read: its record where nothing is wrong with it, and the place of every path. */
export interface MethodReading {
  file: string;
  record: MethodRecord | undefined;
  problems: readonly DataProblem[];
  /** Where the value of a path stands, or its name. */
  spanOf(path: Path, part?: 'key' | 'value'): Span;
}

/** Faults of a method as problems of its file. */
export function problemsAt(file: string, spanOf: MethodReading['spanOf'], faults: readonly Fault[]): DataProblem[] {
  return faults.map(({ path, message, key }) => {
    const { line, column, endLine, endColumn } = spanOf(path, key ? 'key' : 'value');
    return { file, line, column, endLine, endColumn, field: path.join('.'), message };
  });
}

/**
 * Read the text of a method: YAML, then the schema, then whether its names lead somewhere. What its references lead to is
 * checked where the method is worked out, since that asks the calculators.
 *
 * @param text the whole file, whoever wrote it
 * @param file path shown in problems
 */
export function readMethod(text: string, file: string): MethodReading {
  const { record, reading, problems } = readYamlRecord(text, methodRecord, file);
  const { spanOf } = reading.places;
  if (!record) return { file, record: undefined, problems, spanOf };
  const faults = problemsAt(file, spanOf, namedFaults(record));
  return { file, record: faults.length > 0 ? undefined : record, problems: faults, spanOf };
}
