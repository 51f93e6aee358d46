import type { DataProblem } from '../model/data/problem.ts';
import { type Position, readYamlRecord } from '../model/data/yaml.ts';
import { namedFaults } from './case/named.ts';
import type { Path } from './case/types.ts';
import { type MethodRecord, methodRecord } from './record/index.ts';

/** A method as read: its record where nothing is wrong with it, and the place of every path. */
export interface MethodReading {
  file: string;
  record: MethodRecord | undefined;
  problems: readonly DataProblem[];
  positionOf(path: Path, key?: boolean): Position;
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
  const positionOf = (path: Path) => reading.positionOf(path);
  if (!record) return { file, record: undefined, problems, positionOf };
  const faults = namedFaults(record).map(
    ({ path, message }): DataProblem => ({
      file,
      ...positionOf(path),
      field: path.join('.'),
      message,
    }),
  );
  return { file, record: faults.length > 0 ? undefined : record, problems: faults, positionOf };
}
