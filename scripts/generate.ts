// Writes every file that is made from the tables, the records and the calculators. Files that are up to date are left alone.
// With --model only those that the model loads. With --check the committed ones, the schemas, are only compared, and a difference ends
// with exit code 1; what is not committed is written all the same.
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DataError, root } from '../src/store/index.ts';
import { modelFiles } from './generate/model-files.ts';
import { noteMade } from './made.mjs';

function read(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

const check = process.argv.includes('--check');
let written = 0;
let stale = 0;

/** In a check nothing that is committed may be touched. */
const mayWrite = (path: string) => !check || !path.startsWith('schemas/');

function write(files: ReadonlyMap<string, string>): void {
  for (const [path, text] of files) {
    const file = join(root, path);
    if (read(file) === text) continue;
    if (!mayWrite(path)) {
      console.error(`${path} is not what its sources give. Run npm run generate, read the difference and commit it.`);
      stale += 1;
      continue;
    }
    mkdirSync(dirname(file), { recursive: true });
    // Another program may be reading the file: it finds the old text or the new one, whole.
    writeFileSync(`${file}.${process.pid}`, text);
    renameSync(`${file}.${process.pid}`, file);
    if (!check) console.log(`wrote ${path}`);
    written += 1;
  }
}

/** Remove files of a folder that nothing makes any more. */
function sweep(folder: string, keep: ReadonlyMap<string, string>): void {
  mkdirSync(join(root, folder), { recursive: true });
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    // A folder within is swept by itself.
    if (keep.has(path) || entry.isDirectory()) continue;
    if (mayWrite(path)) {
      rmSync(join(root, path));
      console.log(`removed ${path}`);
    } else {
      console.error(`${path} is made by nothing any more. Run npm run generate, which removes it.`);
      stale += 1;
    }
  }
}

/** The files that the model loads; with problems in a table or record nothing can be made. */
function makeModel(): ReadonlyMap<string, string> {
  try {
    return modelFiles();
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    console.error(error.message);
    process.exit(1);
  }
}

const model = makeModel();
write(model);
noteMade(model.keys());
if (!process.argv.includes('--model')) {
  // The calculators load the files just written, so they are read only now.
  const { publishedFiles } = await import('./generate/published-files.ts');
  const files = publishedFiles();
  write(files);
  for (const folder of ['schemas', '.kerf/static/schemas', '.kerf/static/data', '.kerf/static/data/methods'])
    sweep(folder, files);
}
if (stale > 0) process.exitCode = 1;
else console.log(written === 0 || check ? 'generated files are up to date' : `${written} generated files written`);
