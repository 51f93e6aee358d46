import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string) => readFileSync(join(root, file), 'utf8');
const { version } = JSON.parse(read('package.json')) as { version: string };

test('one version stands wherever the project says its own', () => {
  const lock = JSON.parse(read('package-lock.json')) as { version: string; packages: Record<string, unknown> };
  expect(lock).toMatchObject({ version, packages: { '': { version } } });
  expect(parse(read('CITATION.cff'))).toMatchObject({ version });
});

test('the change log begins with it, newest first', () => {
  const heads = [...read('CHANGELOG.md').matchAll(/^## (\d+\.\d+\.\d+)\b/gm)].map(([, head]) => head);
  expect(heads[0]).toBe(version);
  const order = (head = '') => head.split('.').reduce((sum, part) => sum * 1000 + Number(part), 0);
  expect(heads).toEqual([...heads].sort((one, other) => order(other) - order(one)));
});
