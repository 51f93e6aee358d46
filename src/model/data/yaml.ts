import { type Document, isNode, LineCounter, parseDocument } from 'yaml';
import type * as z from 'zod/mini';
import { issueWords } from './issue.ts';
import type { DataProblem } from './problem.ts';

/** A place in a file. */
export interface Position {
  line: number;
  column: number;
}

/** A YAML text as data, with the place of every path in it. */
export interface YamlReading {
  data: unknown;
  positionOf(path: readonly PropertyKey[]): Position;
  problems: DataProblem[];
}

function position(document: Document, counter: LineCounter, path: readonly PropertyKey[]): Position {
  // A missing field has no node of its own, so its parent's place is given.
  for (let depth = path.length; depth >= 0; depth -= 1) {
    const node = depth === 0 ? document.contents : document.getIn(path.slice(0, depth), true);
    if (isNode(node) && node.range) {
      const { line, col } = counter.linePos(node.range[0]);
      return { line, column: col };
    }
  }
  return { line: 1, column: 1 };
}

/** Read a YAML text and keep the place of each value. */
function readYaml(text: string, file: string): YamlReading {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter });
  const problems = document.errors.map((error): DataProblem => {
    const { line, col } = counter.linePos(error.pos[0]);
    const [first = ''] = error.message.split('\n');
    return {
      file,
      line,
      column: col,
      field: '',
      message: `${first.replace(/ at line \d+, column \d+:?$/, '')}. Write plain YAML: “name: value”, indented by two spaces.`,
    };
  });
  return {
    data: problems.length === 0 ? document.toJS() : undefined,
    positionOf: (path) => position(document, counter, path),
    problems,
  };
}

/**
 * Read a YAML text and check it against a schema.
 *
 * @returns the record, or undefined with everything wrong with it
 */
export function readYamlRecord<Schema extends z.ZodMiniType>(
  text: string,
  schema: Schema,
  file: string,
): { record: z.output<Schema> | undefined; reading: YamlReading; problems: DataProblem[] } {
  const reading = readYaml(text, file);
  if (reading.problems.length > 0) return { record: undefined, reading, problems: reading.problems };
  const parsed = schema.safeParse(reading.data);
  if (parsed.success) return { record: parsed.data, reading, problems: [] };
  const problems = parsed.error.issues.map((issue): DataProblem => {
    const path = issue.code === 'unrecognized_keys' ? [...issue.path, issue.keys[0] ?? ''] : issue.path;
    return { file, ...reading.positionOf(path), field: path.join('.'), message: issueWords(issue, reading.data) };
  });
  return { record: undefined, reading, problems };
}
