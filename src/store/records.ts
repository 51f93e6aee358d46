import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type * as z from 'zod/mini';
import { abrasiveRecordSchema } from '../model/abrasive/record.ts';
import { DataError, type DataProblem } from '../model/data/problem.ts';
import { readYamlRecord, type YamlReading } from '../model/data/yaml.ts';
import { finishRecordSchema } from '../model/finish/record.ts';
import { resinRecordSchema } from '../model/resin/record.ts';
import { speciesRecordSchema } from '../model/species/record.ts';
import { root, shownPath } from './root.ts';

/** Records of one kind: one YAML file each in the room's folder `records`, named by the record's id. */
export interface RecordKind<Schema extends z.ZodMiniType<{ id: string }> = z.ZodMiniType<{ id: string }>> {
  /** Room of the model. */
  room: string;
  /** Name of the published schema. */
  name: string;
  title: string;
  description: string;
  schema: Schema;
}

/** The records of woods. */
export const speciesRecords = {
  room: 'species',
  name: 'species-record',
  title: 'Species record',
  description: 'What is entered for a wood: names, and the rows of the tables that are about it.',
  schema: speciesRecordSchema,
} satisfies RecordKind;

/** The records of kinds of finish. */
export const finishRecords = {
  room: 'finish',
  name: 'finish-record',
  title: 'Finish record',
  description:
    'What is entered for a generic kind of finish: coats, waits, food, look, upkeep, each figure with its basis.',
  schema: finishRecordSchema,
} satisfies RecordKind;

/** The records of kinds of resin. */
export const resinRecords = {
  room: 'resin',
  name: 'resin-record',
  title: 'Resin record',
  description: 'What is entered for a generic kind of two-part resin; what is not known is left out.',
  schema: resinRecordSchema,
} satisfies RecordKind;

/** The records of surfaces and ways to sand. */
export const abrasiveRecords = {
  room: 'abrasive',
  name: 'abrasive-record',
  title: 'Sanding record',
  description: 'What is entered for a surface that sanding starts from, a finish that it ends at, or a way to sand.',
  schema: abrasiveRecordSchema,
} satisfies RecordKind;

/** Every kind of record. */
export const recordKinds: readonly RecordKind[] = [speciesRecords, finishRecords, resinRecords, abrasiveRecords];

/** A record file as read, with everything wrong in it. */
export interface RecordReading<Data> {
  /** Path from the project folder. */
  file: string;
  record: Data | undefined;
  yaml: YamlReading;
  problems: DataProblem[];
}

/** Folder of the records of a kind. */
export function recordFolder({ room }: RecordKind): string {
  return join(root, 'src', 'model', room, 'records');
}

/** Read the text of one record and check it, its name included: a record stands in `<id>.yaml`. */
export function inspectRecord<Schema extends z.ZodMiniType<{ id: string }>>(
  text: string,
  file: string,
  { schema }: RecordKind<Schema>,
): RecordReading<z.output<Schema>> {
  const { record, reading, problems } = readYamlRecord(text, schema, file);
  const expected = basename(file, '.yaml');
  if (record && record.id !== expected) {
    problems.push({
      file,
      ...reading.positionOf(['id']),
      field: 'id',
      message: `“${record.id}” differs from the file’s name, “${expected}”. Rename one of them.`,
    });
  }
  return { file, record, yaml: reading, problems };
}

/** What tells a record's place in its list: records of different lists may bear the same order. */
function placeOf(record: object): string | undefined {
  const { order, is = '' } = record as { order?: number; is?: string };
  return order === undefined ? undefined : `${is} ${order}`;
}

/** Note each place that two records claim, at the second of them. */
function findSharedPlaces(readings: readonly RecordReading<{ id: string }>[]): void {
  const taken = new Map<string, string>();
  for (const { file, record, yaml, problems } of readings) {
    const place = record && placeOf(record);
    if (!record || place === undefined) continue;
    const other = taken.get(place);
    if (other === undefined) taken.set(place, record.id);
    else {
      const message = `“${other}” has the same place in the list. Give one of them another number.`;
      problems.push({ file, ...yaml.positionOf(['order']), field: 'order', message });
    }
  }
}

/** Every record of a kind with everything wrong in it, by the names of their files. */
export function inspectRecords<Schema extends z.ZodMiniType<{ id: string }>>(
  kind: RecordKind<Schema>,
): RecordReading<z.output<Schema>>[] {
  const folder = recordFolder(kind);
  const readings = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const file = join(folder, name);
      return inspectRecord(readFileSync(file, 'utf8'), shownPath(file), kind);
    });
  findSharedPlaces(readings);
  return readings;
}

/**
 * Read every record of a kind: in their order where they have one, else by id.
 *
 * @throws DataError that lists file:line:column of everything wrong in the files
 */
export function readRecords<Schema extends z.ZodMiniType<{ id: string }>>(
  kind: RecordKind<Schema>,
): z.output<Schema>[] {
  const readings = inspectRecords(kind);
  const problems = readings.flatMap((reading) => reading.problems);
  if (problems.length > 0) throw new DataError(problems);
  const orderOf = (record: object) => (record as { order?: number }).order ?? 0;
  return readings
    .flatMap(({ record }) => (record === undefined ? [] : [record]))
    .sort((one, other) => orderOf(one) - orderOf(other));
}
