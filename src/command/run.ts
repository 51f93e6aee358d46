import { nearest } from '../model/quantity/index.ts';
import type { Command, Output } from './usage.ts';
import { UsageError } from './usage.ts';

/** Commands by name. Each is loaded when asked for, so that none waits for what another needs. */
const commands: Readonly<Record<string, { about: string; load: () => Promise<Command> }>> = {
  calc: {
    about: "calc <calculator> --json '<inputs>'  answer a calculation as JSON",
    load: async () => (await import('./calc.ts')).calc,
  },
  check: {
    about: 'check <files…>                       check methods against the rules',
    load: async () => (await import('./check.ts')).check,
  },
  new: {
    about: 'new <file>                           write a small method to begin from',
    load: async () => (await import('./new.ts')).newMethod,
  },
  plan: {
    about: 'plan <file>                          plan a method: times, sessions, what to buy',
    load: async () => (await import('./plan.ts')).plan,
  },
  sheet: {
    about: 'sheet <file> -o packet.pdf           write what is printed of a method',
    load: async () => (await import('./sheet.ts')).sheet,
  },
  species: {
    about: 'species [query] [--json]             list woods and their figures',
    load: async () => (await import('./species.ts')).species,
  },
  validate: {
    about: 'validate                             check records and tables against the schemas, read methods',
    load: async () => (await import('./validate.ts')).validate,
  },
  checks: {
    about: 'checks                               compare our figures with published ones',
    load: async () => (await import('./checks.ts')).checks,
  },
};

function help(): string {
  const lines = Object.values(commands).map(({ about }) => `  kerf ${about}`);
  return `Kerf & Cure on the command line.\n\n${lines.join('\n')}\n\nEach takes --help. In the project folder: npm run -s kerf -- <command>.\n`;
}

/**
 * Run the command line.
 *
 * @param args what was typed after `kerf`
 * @returns the exit code: 0 done; 1 something checked is wrong; 2 what was typed cannot be used
 */
export async function run(args: readonly string[], output: Output): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    output.out(help());
    return 0;
  }
  try {
    const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
    if (!command) {
      const known = Object.keys(commands);
      const near = nearest(name, known);
      throw new UsageError(
        `kerf: “${name}” is not a command; there are ${known.join(', ')}. ${near ? `Did you mean ${near}?` : 'Write kerf --help.'}`,
      );
    }
    return await (await command.load())(rest, output);
  } catch (error) {
    if (error instanceof UsageError) output.err(`${error.message}\n`);
    else throw error;
    return 2;
  }
}
