import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { DataError, type DataProblem } from '../model/data/problem.ts';
import { readYamlRecord, type YamlReading } from '../model/data/yaml.ts';
import { type SpeciesRecord, speciesRecordSchema } from '../model/species/record.ts';
import { root, shownPath } from './root.ts';

/** A species record file as read, with everything wrong in it. */
export interface SpeciesRecordReading {
  /** Path from the project folder. */
  file: string;
  record: SpeciesRecord | undefined;
  yaml: YamlReading;
  problems: DataProblem[];
}

/** Folder of the species records, one YAML file a wood. */
export const speciesRecordFolder: string = join(root, 'src', 'model', 'species', 'records');

/** Read the text of one record and check it, its name included: a record stands in `<id>.yaml`. */
export function inspectSpeciesRecord(text: string, file: string): SpeciesRecordReading {
  const { record, reading, problems } = readYamlRecord(text, speciesRecordSchema, file);
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

/** Every species record with everything wrong in it, in the order of their ids. */
export function inspectSpeciesRecords(): SpeciesRecordReading[] {
  return readdirSync(speciesRecordFolder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const file = join(speciesRecordFolder, name);
      return inspectSpeciesRecord(readFileSync(file, 'utf8'), shownPath(file));
    });
}

/**
 * Read every species record.
 *
 * @throws DataError that lists file:line:column of everything wrong in the files
 */
export function readSpeciesRecords(): SpeciesRecord[] {
  const readings = inspectSpeciesRecords();
  const problems = readings.flatMap((reading) => reading.problems);
  if (problems.length > 0) throw new DataError(problems);
  return readings.flatMap(({ record }) => (record ? [record] : []));
}
