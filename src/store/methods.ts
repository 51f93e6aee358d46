import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
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
