import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type OpeningHours, readOpeningHours } from '../method/schedule/hours.ts';
import { DataError } from '../model/data/problem.ts';
import { readYaml } from '../model/data/yaml.ts';
import { root } from './root.ts';

/** A method as it stands in its file; nothing of it is read yet. */
export interface MethodText {
  /** Name of the file without its ending: it is part of addresses. */
  id: string;
  /** Path from the project folder. */
  file: string;
  text: string;
}

/** The shop record lies in the same folder and is no method. */
const shopRecord = 'shop.yaml';

/** Every method of the house, by the names of their files. */
export function readMethodTexts(): MethodText[] {
  return readdirSync(join(root, 'methods'))
    .filter((name) => name.endsWith('.yaml') && name !== shopRecord)
    .sort()
    .map((name) => ({
      id: name.replace(/\.yaml$/, ''),
      file: `methods/${name}`,
      text: readFileSync(join(root, 'methods', name), 'utf8'),
    }));
}

/** Hours for a plan that lie with the methods, such as those of a class. */
export interface Calendar {
  /** Name of the file without its ending: it is part of addresses. */
  id: string;
  title: string;
  hours: OpeningHours;
}

/**
 * Every calendar of the house, by the names of their files.
 *
 * @throws DataError where one cannot be read
 */
export function readCalendars(): Calendar[] {
  const folder = join(root, 'methods', 'calendars');
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const id = name.replace(/\.yaml$/, '');
      const file = `methods/calendars/${name}`;
      const { data, problems } = readYaml(readFileSync(join(folder, name), 'utf8'), file);
      if (problems.length > 0) throw new DataError(problems);
      const read = readOpeningHours({ zone: 'UTC', ...(data as object) });
      if (!read.ok)
        throw new DataError(
          read.faults.map(({ field, text: message }) => ({ file, line: 1, column: 1, field, message })),
        );
      const title = id.replace(
        /(^|-)(\w)/g,
        (_, gap: string, letter: string) => `${gap && ' '}${letter.toUpperCase()}`,
      );
      return { id, title, hours: read.hours };
    });
}
