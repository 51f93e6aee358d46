/** Something typed on the command line that cannot be used; the command ends with exit code 2. */
export class UsageError extends Error {
  /** @param lines what was read, what is allowed and a way out, one problem a line */
  constructor(...lines: string[]) {
    super(lines.join('\n'));
    this.name = 'UsageError';
  }
}

/** Where a command writes; tests pass their own. */
export interface Output {
  out(text: string): void;
  err(text: string): void;
}

/** A command: takes the arguments after its name and gives the exit code. */
export type Command = (args: readonly string[], output: Output) => number | Promise<number>;

/** Writes where the terminal shows it. */
export const toTheTerminal: Output = {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
};
