/** One thing wrong in a data file, with the place where it stands. */
export interface DataProblem {
  /** Path from the project folder. */
  file: string;
  /** Both count from 1. */
  line: number;
  column: number;
  /** The place just behind what is wrong, where that is known. */
  endLine?: number;
  endColumn?: number;
  /** Name of the field, or of the column of a table; empty where the file as a whole is meant. */
  field: string;
  /** What was read, what is allowed, and a way out. */
  message: string;
}

/** A problem on one line: `src/…/file.csv:12:5 radial_pct: “x” is not a number. Write …`. */
export function problemLine(problem: DataProblem): string {
  const field = problem.field ? ` ${problem.field}:` : '';
  return `${problem.file}:${problem.line}:${problem.column}${field} ${problem.message}`;
}

/** Data files that cannot be used; the message lists every problem, one a line. */
export class DataError extends Error {
  readonly problems: readonly DataProblem[];

  constructor(problems: readonly DataProblem[]) {
    super(problems.map(problemLine).join('\n'));
    this.name = 'DataError';
    this.problems = problems;
  }
}
