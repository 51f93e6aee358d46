import { nearest } from '../model/quantity/index.ts';
import type { Commands } from './commands.ts';
import type { Output } from './usage.ts';
import { UsageError } from './usage.ts';

/** The commands of one place, and how they are called there. */
export interface Offer {
  commands: Commands;
  /** The last line of the help. */
  how: string;
}

function help({ commands, how }: Offer): string {
  const lines = Object.values(commands).map(({ about }) => `  kerf ${about}`);
  return `Kerf & Cure on the command line.\n\n${lines.join('\n')}\n\nEach takes --help. ${how}\n`;
}

/**
 * Run the command line.
 *
 * @param args what was typed after `kerf`
 * @param offer the commands that there are
 * @returns the exit code: 0 done; 1 something checked is wrong; 2 what was typed cannot be used
 */
export async function run(args: readonly string[], output: Output, offer: Offer): Promise<number> {
  const { commands } = offer;
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    output.out(help(offer));
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
