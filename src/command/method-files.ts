import { readFileSync, statSync } from 'node:fs';
import { type DataProblem, problemLine } from '../model/data/problem.ts';
import { longestYaml } from '../model/data/yaml-guard.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import { UsageError } from './usage.ts';

/** A file as read: the name that it was given by, and its text. */
export interface NamedText {
  file: string;
  text: string;
  /** Names of the calendars in the folder beside it, where it was looked for. */
  calendars?: readonly string[];
}

/** The text of a file that somebody named. */
export function textOf(file: string, command: string, example = 'methods/first-tray.yaml'): string {
  try {
    const { size } = statSync(file);
    // Four bytes a character at most; what is longer is refused unread.
    if (size > 4 * longestYaml)
      throw new UsageError(
        `${command}: ${file} has ${size} bytes, and ${longestYaml} characters are read at most. A method of forty steps has some 15,000: take out what is not part of it.`,
      );
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (error instanceof UsageError) throw error;
    const { code } = error as { code?: string };
    const why =
      code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'it is a folder' : (error as Error).message;
    throw new UsageError(`${command}: ${file} cannot be read: ${why}. Name a file, such as ${example}.`);
  }
}

/** Whether a text is a shop record: its first field says so. */
export const isShopRecord = (text: string): boolean => /^(?:\ufeff)?(?:\s*#[^\n]*\n|\s*\n)*shop:/.test(text);

/** A problem on one line, in the reader's units. */
export const shownProblem = (problem: DataProblem, units: ReaderUnits = defaultUnits): string =>
  inReaderUnits(problemLine(problem), units);

/** The shop record that a command was given, as a text. */
export const shopTextOf = (file: string | undefined, command: string): NamedText | undefined =>
  file === undefined ? undefined : { file, text: textOf(file, command, 'methods/shop.yaml') };

/** The units that a command writes in. */
export function unitsOf(text: string | undefined, command: string): ReaderUnits {
  if (text === undefined || text === 'metric') return defaultUnits;
  if (text === 'inch') return { ...defaultUnits, system: 'inch' };
  throw new UsageError(`${command}: “${text}” is not a system of units; there are metric and inch.`);
}
