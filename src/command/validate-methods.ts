import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readMethod } from '../method/read.ts';
import { readOpeningHours } from '../method/schedule/hours.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { readYaml } from '../model/data/yaml.ts';
import { longestYaml } from '../model/data/yaml-guard.ts';
import { defaultUnits, inReaderUnits, nearest } from '../model/quantity/index.ts';
import { readThrough } from './checked.ts';
import { isShopRecord, type NamedText } from './method-files.ts';

/** What the files of methods hold that cannot be used, and how many of each kind there are. */
export interface MethodsRead {
  methods: number;
  shops: number;
  calendars: number;
  problems: DataProblem[];
}

const yamlIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith('.yaml'))
        .sort()
    : [];

/** What is wrong with hours that are given for a plan. A calendar may leave its time zone to the shop; UTC stands in for it here. */
function calendarProblems({ file, text }: NamedText): readonly DataProblem[] {
  const { problems, data, places } = readYaml(text, file, longestYaml);
  if (problems.length > 0) return problems;
  const read = readOpeningHours({ zone: 'UTC', ...(data as object) });
  if (read.ok) return [];
  return read.faults.map(({ field, text: message }): DataProblem => {
    const path = field.split('.').filter(Boolean);
    const { line, column, endLine, endColumn } = places.spanOf(path);
    return { file, line, column, endLine, endColumn, field, message };
  });
}

/** A method that names a calendar which is not there. */
function calendarMissing({ file, text }: NamedText, known: readonly string[]): DataProblem[] {
  if (isShopRecord(text)) return [];
  const { record, spanOf } = readMethod(text, file);
  const named = record?.taught?.calendar;
  if (named === undefined || known.includes(named)) return [];
  const near = nearest(named, known) ?? known[0];
  const wayOut = near === undefined ? 'Write it there, or take “taught” out.' : `Did you mean ${near}?`;
  return [
    {
      file,
      ...spanOf(['taught', 'calendar']),
      field: 'taught.calendar',
      message: `“${named}” is no calendar: there is no calendars/${named}.yaml beside the methods. ${wayOut}`,
    },
  ];
}

/**
 * Read every method, shop record and calendar of a folder: what `kerf check` says before its rules are asked, and `kerf plan` of its hours.
 *
 * @param folder methods lie in it, calendars in calendars/ below it
 * @param shown how the folder is named in problems
 */
export async function readMethods(folder: string, shown: string): Promise<MethodsRead> {
  const named = (...names: string[]): NamedText => ({
    file: [shown, ...names].join('/'),
    text: readFileSync(join(folder, ...names), 'utf8'),
  });
  const files = yamlIn(folder).map((name) => named(name));
  const calendars = yamlIn(join(folder, 'calendars')).map((name) => named('calendars', name));
  const memo = new Map<string, unknown>();
  const problems: DataProblem[] = [];
  const known = calendars.map(
    ({ file }) =>
      file
        .split('/')
        .at(-1)
        ?.replace(/\.yaml$/, '') ?? '',
  );
  for (const file of files) {
    problems.push(...(await readThrough(file, { memo })).problems);
    problems.push(...calendarMissing(file, known));
  }
  problems.push(...calendars.flatMap(calendarProblems));
  const shops = files.filter(({ text }) => isShopRecord(text)).length;
  return {
    methods: files.length - shops,
    shops,
    calendars: calendars.length,
    problems: problems.map((problem) => ({ ...problem, message: inReaderUnits(problem.message, defaultUnits) })),
  };
}
