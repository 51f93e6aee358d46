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

/** Replace a text that a file of the clone must hold, and say on which line and column it stands. */
function spoil(file: string, from: string, to: string): { line: number; column: number } {
  const text = readFileSync(join(clone, file), 'utf8');
  const at = text.indexOf(from);
  if (at < 0) throw new Error(`${file} does not hold ${from}`);
  writeFileSync(join(clone, file), text.replace(from, to));
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}

const table = 'src/model/species/tables/shrinkage-domestic.csv';

// One story in one clone: to make a copy and a bundle of it takes seconds.
test('a command on a fresh clone makes what it needs, again after a table has changed, and names all that is wrong in them', () => {
  expect(existsSync(join(clone, 'src', 'model', 'species', 'resolved.json'))).toBe(false);
  expect(shrinkage()).toBe(4.8);
  spoil(table, 'hardwood,Maple: Sugar,4.8,', 'hardwood,Maple: Sugar,4.9,');
  expect(shrinkage()).toBe(4.9);

  const record = 'src/model/species/records/red-maple.yaml';
  const cell = spoil(table, 'Ash: Black,5.0,', 'Ash: Black,five,');
  const label = spoil(record, 'pores-and-tyloses: [Maple]', 'pores-and-tyloses: [Mable]');
  const kind = spoil('src/model/species/records/apple.yaml', 'kind: hardwood', 'kind: fruitwood');
  const coat = spoil('src/model/finish/records/tung-oil.yaml', 'lightUse: { value: 7 d', 'lightUse: { value: 7 days');
  const pace = spoil('src/model/resin/records/medium-2-1.yaml', 'kinetics: fast', 'kinetics: quick');
  const place = spoil('src/model/abrasive/records/planed.yaml', 'order: 3', 'order: 2');
  const source = spoil(
    'src/model/evidence/sources/food.ts',
    "id: 'eu-1169-2011',\n    type: 'legislation'",
    "id: 'eu-1169-2011',\n    type: 'law'",
  );
  // The published schema alone is stricter here: ajv must find what zod allows.
  spoil('schemas/table-hardness-domestic.json', '"type": "object"', '"maxProperties": 3, "type": "object"');

  // What cannot be used stops every command, and `validate` names all of it; what that one got by with is not taken for good.
  const refused = kerf('species', 'sugar-maple');
  const run = kerf('validate');
  const refusedAgain = kerf('species', 'sugar-maple');
  for (const { status, stderr } of [refused, refusedAgain]) {
    expect(status).toBe(1);
    expect(stderr).toContain(
      `${table}:${cell.line}:${cell.column + 'Ash: Black,'.length} radial_pct: “five” is not a number.`,
    );
  }
  const lines = run.stderr.trim().split('\n');
  expect(run.status).toBe(1);
  expect(lines).toContain(
    `${table}:${cell.line}:${cell.column + 'Ash: Black,'.length} radial_pct: “five” is not a number. Write digits with a decimal point, or leave the cell empty where nothing is published.`,
  );
  expect(lines).toContain(
    `${record}:${label.line}:${label.column + 'pores-and-tyloses: ['.length} groupRows.pores-and-tyloses: no row of the table is labelled “Mable”. Did you mean “Maple”?`,
  );
  expect(lines).toContain(
    `src/model/species/records/apple.yaml:${kind.line}:${kind.column + 'kind: '.length} kind: “fruitwood” is not one of hardwood, softwood. Pick one of them.`,
  );
  expect(lines).toContain(
    `src/model/finish/records/tung-oil.yaml:${coat.line}:${coat.column + 'lightUse: { value: '.length} figures.lightUse.value: “7 days” cannot be used. Write a number and its unit: min, h, d or wk, such as 12 h.`,
  );
  expect(lines).toContain(
    `src/model/resin/records/medium-2-1.yaml:${pace.line}:${pace.column + 'kinetics: '.length} kinetics: “quick” is not one of fast, slow. Pick one of them.`,
  );
  expect(lines).toContain(
    `src/model/abrasive/records/router-flattened.yaml:${place.line}:${place.column + 'order: '.length} order: “planed” has the same place in the list. Give one of them another number.`,
  );
  expect(
    lines.find((line) => line.startsWith(`src/model/evidence/sources/food.ts:${source.line}:1 eu-1169-2011.type`)),
  ).toMatch(/allowed values \(schemas\/sources\.json\)/);
  expect(lines.find((line) => line.startsWith('src/model/species/tables/hardness-domestic.csv:2:1 '))).toMatch(
    /must NOT have more than 3 properties \(schemas\/table-hardness-domestic\.json\)/,
  );
  expect(run.stdout).toMatch(
    /^\d+ tables, \d+ species records, \d+ finish records, \d+ resin records, \d+ sanding records, \d+ methods, \d+ shop records, \d+ calendars and \d+ sources: \d+ problems\n$/,
  );
});
