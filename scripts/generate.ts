// Writes every file that is made from the tables, the records and the calculators. Files that are up to date are left alone.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from '../src/store/index.ts';
import { modelFiles } from './generate/model-files.ts';

function read(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

let written = 0;
function write(files: ReadonlyMap<string, string>): void {
  for (const [path, text] of files) {
    const file = join(root, path);
    if (read(file) === text) continue;
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
    console.log(`wrote ${path}`);
    written += 1;
  }
}

/** Remove files of a folder that nothing makes any more. */
function sweep(folder: string, keep: ReadonlyMap<string, string>): void {
  mkdirSync(join(root, folder), { recursive: true });
  for (const name of readdirSync(join(root, folder))) {
    if (keep.has(`${folder}/${name}`)) continue;
    rmSync(join(root, folder, name));
    console.log(`removed ${folder}/${name}`);
  }
}

write(modelFiles());
// The calculators load the files just written, so they are read only now.
const { publishedFiles } = await import('./generate/published-files.ts');
const files = publishedFiles();
write(files);
for (const folder of ['schemas', '.kerf/static/schemas', '.kerf/static/data']) sweep(folder, files);
console.log(written === 0 ? 'generated files are up to date' : `${written} generated files written`);
