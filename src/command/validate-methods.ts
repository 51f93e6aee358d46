import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readOpeningHours } from '../method/schedule/hours.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { readYaml } from '../model/data/yaml.ts';
import { longestYaml } from '../model/data/yaml-guard.ts';
import { defaultUnits, inReaderUnits } from '../model/quantity/index.ts';
import { calendarMissing, calendarsIn, yamlIn } from './calendars-beside.ts';
import { readThrough } from './checked.ts';
import { isShopRecord, type NamedText } from './method-files.ts';

/** What the files of methods hold that cannot be used, and how many of each kind there are. */
export interface MethodsRead {
  methods: number;
  shops: number;
  calendars: number;
  problems: DataProblem[];
}

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
  const known = calendarsIn(join(folder, 'calendars'));
  for (const file of files) {
    const gone = await readThrough(file, { memo });
    problems.push(...gone.problems, ...(gone.read ? calendarMissing(gone.read, known) : []));
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
