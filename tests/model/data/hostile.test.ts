import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readYamlRecord } from '../../../src/model/data/yaml.ts';
import { finishRecordSchema } from '../../../src/model/finish/record.ts';
import { speciesRecordSchema } from '../../../src/model/species/record.ts';
import { root } from '../../../src/store/index.ts';
import { type HostileText, heavyTexts, hostileTexts } from './hostile.ts';

const textOf = (room: string, id: string) =>
  readFileSync(join(root, 'src/model', room, 'records', `${id}.yaml`), 'utf8');

/** Every name that all objects have, which no reading may add to. */
const names = () => [Object.prototype, Array.prototype, Function.prototype].map((each) => Reflect.ownKeys(each).length);

describe.each([
  ['species', 'sugar-maple', speciesRecordSchema],
  ['finish', 'film-epoxy', finishRecordSchema],
] as const)('a record of the room %s, %s, spoilt in many ways', (room, id, schema) => {
  const good = textOf(room, id);
  const { record } = readYamlRecord(good, schema, 'good.yaml');
  const texts = hostileTexts(good, 20261129);

  test('the good one is read, and many ways are tried', () => {
    expect(record).toBeDefined();
    expect(texts.length).toBeGreaterThan(150);
  });

  test('each is refused with its place and a way out, or read honestly', () => {
    const before = names();
    const wrong = texts.flatMap(({ name, text, expects }: HostileText): string[] => {
      const reading = readYamlRecord(text, schema, 'bad.yaml');
      const found: string[] = [];
      const refused = reading.record === undefined;
      if (refused !== reading.problems.length > 0) found.push(`${name}: neither a record nor a problem`);
      if (expects === 'refused' && !refused) found.push(`${name}: read as if nothing were wrong`);
      if (expects === 'same' && JSON.stringify(reading.record) !== JSON.stringify(record))
        found.push(`${name}: read as something else`);
      const lines = text.split('\n');
      for (const { line, column, endLine = 0, endColumn = 0, message } of reading.problems) {
        const length = lines[line - 1]?.length ?? -1;
        if (line < 1 || column < 1 || column > length + 1)
          found.push(`${name}: ${line}:${column} is no place of the text`);
        if (endLine < line || (endLine === line && endColumn < column)) found.push(`${name}: ends before it begins`);
        if (!/[.?]$/.test(message)) found.push(`${name}: no sentence: ${message}`);
        if (
          /zod|invalid|is expected,|but expects|undefined|NaN|\[object|mapping|scalar|implicit|token/i.test(
            message.replace(/“[^”]*”/g, ''),
          )
        )
          found.push(`${name}: not a maker’s words: ${message}`);
      }
      if (reading.problems.length > 20) found.push(`${name}: ${reading.problems.length} problems at once`);
      return found;
    });
    expect(wrong).toEqual([]);
    expect(names()).toEqual(before);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  test('the same seed spoils it in the same ways, another in others', () => {
    expect(hostileTexts(good, 20261129)).toEqual(texts);
    expect(hostileTexts(good, 1).map(({ text }) => text)).not.toEqual(texts.map(({ text }) => text));
  });
});

test('every record that is here is read with its line ends and its byte order mark changed', () => {
  const folder = join(root, 'src/model/species/records');
  const wrong = readdirSync(folder).filter((name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const { record } = readYamlRecord(`\ufeff${text.replaceAll('\n', '\r\n')}`, speciesRecordSchema, name);
    return JSON.stringify(record) !== JSON.stringify(readYamlRecord(text, speciesRecordSchema, name).record);
  });
  expect(wrong).toEqual([]);
});

test('no long text hangs the reader or ends its process', () => {
  // The limit only ends what never ends: all of it takes some seconds.
  const run = spawnSync(
    process.execPath,
    ['--import', 'tsx', fileURLToPath(new URL('heavy-run.ts', import.meta.url))],
    { cwd: root, encoding: 'utf8', timeout: 100_000, killSignal: 'SIGKILL' },
  );
  expect(run.stderr).toBe('');
  expect(run.status).toBe(0);
  const read = run.stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { name: string; length: number; problems: number });
  expect(read.map(({ name }) => name)).toEqual(Object.keys(heavyTexts).flatMap((name) => [name, name]));
  expect(read.filter(({ length, problems }) => length > 65_536 && problems !== 1)).toEqual([]);
});
