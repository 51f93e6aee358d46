import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
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
const shopRecord = 'shop';

/** The YAML files of a folder of the project, in the order of their names. */
function textsIn(folder: string): MethodText[] {
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({
      id: name.replace(/\.yaml$/, ''),
      file: `${folder.split(sep).join('/')}/${name}`,
      text: readFileSync(join(root, folder, name), 'utf8'),
    }));
}

/** Every method of the house, by the names of their files. */
export const readMethodTexts = (): MethodText[] => textsIn('methods').filter(({ id }) => id !== shopRecord);

/** Every calendar that lies with the methods, such as the evenings of a class, by the names of their files. */
export const readCalendarTexts = (): MethodText[] => textsIn(join('methods', 'calendars'));
