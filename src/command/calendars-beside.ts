import { existsSync, readdirSync } from 'node:fs';
import type { MethodReading } from '../method/read.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { nearest } from '../model/quantity/index.ts';

/** Names of the YAML files of a folder, in order; none where there is no such folder. */
export const yamlIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith('.yaml'))
        .sort()
    : [];

/** Names by which a method may call the calendars of a folder. */
export const calendarsIn = (folder: string): string[] => yamlIn(folder).map((name) => name.replace(/\.yaml$/, ''));

/** A method, as it was read, that names a calendar which does not lie in the folder beside it. */
export function calendarMissing({ file, record, spanOf }: MethodReading, known: readonly string[]): DataProblem[] {
  const named = record?.taught?.calendar;
  if (named === undefined || known.includes(named)) return [];
  const near = nearest(named, known) ?? (known.length === 1 ? known[0] : undefined);
  const there = known.length === 0 ? 'There is none there.' : `Those that are: ${known.join(', ')}.`;
  const wayOut = near === undefined ? 'Write it there, or take “taught” out.' : `Did you mean ${near}?`;
  return [
    {
      file,
      ...spanOf(['taught', 'calendar']),
      field: 'taught.calendar',
      message: `“${named}” is no calendar: there is no calendars/${named}.yaml beside the methods. ${there} ${wayOut}`,
    },
  ];
}
