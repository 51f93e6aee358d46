import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

// A copy of what git holds of the program: without the JSON that the model loads.
const clone = mkdtempSync(join(tmpdir(), 'kerf-clone-'));
afterAll(() => rmSync(clone, { recursive: true, force: true }));
const made = /src\/model\/[a-z]+\/[a-z-]+\.json$/;
for (const part of ['src', 'schemas', 'scripts', 'package.json', 'package-lock.json']) {
  cpSync(join(root, part), join(clone, part), {
    recursive: true,
    filter: (from) => !made.test(from.replaceAll('\\', '/')),
  });
}
mkdirSync(join(clone, 'node_modules'));
for (const name of readdirSync(join(root, 'node_modules')).filter((each) => !each.startsWith('.'))) {
  symlinkSync(join(root, 'node_modules', name), join(clone, 'node_modules', name));
}

const kerf = (...args: string[]) =>
  spawnSync(process.execPath, [join(clone, 'scripts', 'kerf.mjs'), ...args], { encoding: 'utf8' });
const shrinkage = () => JSON.parse(kerf('species', 'sugar-maple', '--json').stdout)[0].figures.radialShrinkage.value;

test('a command on a fresh clone makes what it needs, again after a table has changed, and names what is wrong in one', () => {
  const file = join(clone, 'src', 'model', 'species', 'tables', 'shrinkage-domestic.csv');
  const table = readFileSync(file, 'utf8');
  const cell = 'hardwood,Maple: Sugar,4.8,';
  expect(existsSync(join(clone, 'src', 'model', 'species', 'resolved.json'))).toBe(false);
  expect(table).toContain(cell);
  expect(shrinkage()).toBe(4.8);
  writeFileSync(file, table.replace(cell, cell.replace('4.8', '4.9')));
  expect(shrinkage()).toBe(4.9);
  writeFileSync(file, table.replace(cell, cell.replace('4.8', 'four')));
  for (const args of [['species', 'sugar-maple'], ['validate'], ['species', 'sugar-maple']]) {
    const { status, stderr } = kerf(...args);
    expect(status, args[0]).toBe(1);
    expect(stderr).toMatch(
      /^src\/model\/species\/tables\/shrinkage-domestic\.csv:\d+:\d+ radial_pct: “four” is not a number\./,
    );
  }
});
