// The JSON that the model loads in place of tables and records (scripts/generate/model-files.ts) is made on the spot and is not in git.
// Whatever starts the model from its sources asks here first.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamp = join(root, '.kerf', 'model-files');

/**
 * Newest change and number of files of a folder, the folders in it included.
 *
 * @param {string} folder
 * @param {RegExp} kinds what the names of the files that count end in
 * @returns {{ newest: number, count: number }}
 */
export function stateOf(folder, kinds) {
  let newest = 0;
  let count = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      const inner = stateOf(path, kinds);
      newest = Math.max(newest, inner.newest);
      count += inner.count;
    } else if (kinds.test(entry.name)) {
      newest = Math.max(newest, statSync(path).mtimeMs);
      count += 1;
    }
  }
  return { newest, count };
}

/** What the made files are made from, as a text that differs when any of it has changed. */
function sources() {
  const parts = ['src/model', 'src/store', 'scripts/generate'].map((part) =>
    stateOf(join(root, part), /\.(ts|csv|yaml)$/),
  );
  return parts.map(({ newest, count }) => `${newest} ${count}`).join(', ');
}

/** Whether every made file is there and no source has changed since. */
function upToDate() {
  if (!existsSync(stamp)) return false;
  const [of, ...files] = readFileSync(stamp, 'utf8').trim().split('\n');
  return of === sources() && files.every((file) => existsSync(join(root, file)));
}

/**
 * Note that the files were made from the sources as they are.
 *
 * @param {Iterable<string>} files their paths from the project folder
 */
export function noteMade(files) {
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, `${[sources(), ...files].join('\n')}\n`);
}

/**
 * Make the files anew where a table, a record or the model has changed.
 *
 * @returns {string | undefined} what stands in the way, in words; undefined where the files are up to date
 */
export function makeModelFiles() {
  if (upToDate()) return undefined;
  const run = spawnSync(process.execPath, ['--import', 'tsx', join(root, 'scripts', 'generate.ts'), '--model'], {
    cwd: root,
    encoding: 'utf8',
  });
  return run.status === 0 ? undefined : run.stderr || String(run.error);
}
