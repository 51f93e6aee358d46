import { existsSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

function findRoot(): string {
  // The same code runs from its source folder and from the bundle under node_modules, so the root is sought upwards.
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'src', 'model')) || !existsSync(join(folder, 'package.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`No project folder (package.json and src/model) above ${import.meta.url}`);
    folder = parent;
  }
  return folder;
}

/** Folder of the project. */
export const root: string = findRoot();

/** A path as messages show it: from the project folder, with forward slashes. */
export function shownPath(file: string): string {
  return relative(root, file).replaceAll('\\', '/');
}
