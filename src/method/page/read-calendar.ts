import { DataError } from '../../model/data/problem.ts';
import { readYaml } from '../../model/data/yaml.ts';
import { readOpeningHours } from '../schedule/hours.ts';
import type { PlanCalendar } from './calendars.ts';

/**
 * A calendar as its file writes it, under a title made of the file's name.
 *
 * @param id name of the file without its ending
 * @param file path shown in problems
 * @throws DataError where it cannot be read
 */
export function readCalendar({ id, file, text }: { id: string; file: string; text: string }): PlanCalendar {
  const { data, problems } = readYaml(text, file);
  if (problems.length > 0) throw new DataError(problems);
  const read = readOpeningHours({ zone: 'UTC', ...(data as object) });
  if (!read.ok)
    throw new DataError(read.faults.map(({ field, text: message }) => ({ file, line: 1, column: 1, field, message })));
  const title = id.replace(/(^|-)(\w)/g, (_, gap: string, letter: string) => `${gap && ' '}${letter.toUpperCase()}`);
  return { id, title, hours: read.hours };
}
