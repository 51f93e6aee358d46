import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

/** Milliseconds of the processor that one case may take; the longest takes a tenth of it. */
const most = 2000;

test('texts full of braces and quantities of 100,000 characters are read, worked out and judged in time', () => {
  const { stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join(root, 'tests/method/heavy-texts-run.ts')],
    { cwd: root, encoding: 'utf8', timeout: 120_000 },
  );
  const cases = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { name: string; ms: number; told: string });
  expect(stderr).toBe('');
  expect(cases).toHaveLength(152);
  expect(cases.filter(({ ms }) => ms > most)).toEqual([]);
  // Nobody’s 100,000 characters are thrown back at them, none is taken for a quantity, and none of the methods was only too long.
  expect(cases.filter(({ name, told }) => told.length > 300 || (name.includes(', as ') && told !== 'short'))).toEqual(
    [],
  );
  expect(cases.filter(({ told }) => told === 'read')).toEqual([]);
  const full = cases.filter(({ name }) => name.startsWith('a method full'));
  expect(full.filter(({ told }) => told.startsWith('found')).length).toBeGreaterThan(7);
  expect(full.filter(({ told }) => told === 'refused 1')).toEqual([]);
});
