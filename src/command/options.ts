import { type ParseArgsConfig, parseArgs } from 'node:util';
import { likeliest } from '../model/quantity/index.ts';
import { UsageError } from './usage.ts';

/** What stands between the marks '…' of Node's message, without its value: `-s, --shop <value>` is --shop. */
function optionIn(message: string): string {
  const quoted = /'([^']*)'/.exec(message)?.[1] ?? '';
  return /--?[^\s,<=]+(?=[^,]*$)/.exec(quoted)?.[0] ?? quoted;
}

/** What was typed that is no option, or lacks or has a value that it should not, in a maker's words. */
function optionWords(command: string, error: Error & { code?: string }, config: ParseArgsConfig): string {
  const option = optionIn(error.message);
  const known = Object.keys(config.options ?? {}).map((name) => `--${name}`);
  switch (error.code) {
    case 'ERR_PARSE_ARGS_UNKNOWN_OPTION': {
      const near = option.length > 3 ? likeliest(option, known) : undefined;
      return `${command}: ${option} is not an option; there ${known.length === 1 ? 'is' : 'are'} ${known.join(', ')}. ${near ? `Did you mean ${near}?` : `Write kerf ${command} --help.`}`;
    }
    case 'ERR_PARSE_ARGS_UNEXPECTED_POSITIONAL':
      return `${command}: “${option}” was not expected. Leave it out, or write kerf ${command} --help.`;
    default:
      return config.options?.[option.replace(/^-+/, '')]?.type === 'boolean'
        ? `${command}: ${option} takes no value. Write ${option} alone.`
        : `${command}: ${option} has no value. Write it behind: ${option} value, or ${option}=value where it begins with a dash.`;
  }
}

/**
 * Read the options of a command, as Node reads them.
 *
 * @throws UsageError where one is unknown, lacks its value or has one too many
 */
export function readOptions<Config extends ParseArgsConfig>(
  command: string,
  config: Config,
): ReturnType<typeof parseArgs<Config>> {
  try {
    return parseArgs(config);
  } catch (error) {
    if (!(error as { code?: string }).code?.startsWith('ERR_PARSE_ARGS')) throw error;
    throw new UsageError(optionWords(command, error as Error, config));
  }
}
