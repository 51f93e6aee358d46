import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { lookedAt } from '../../../src/site/access/statement.ts';

const packages = JSON.parse(readFileSync(fileURLToPath(new URL('../../../package-lock.json', import.meta.url)), 'utf8'))
  .packages as Record<string, { version: string }>;

test('the statement names the releases of the tools that the tests use', () => {
  expect(packages['node_modules/axe-core']?.version).toBe(lookedAt.axe);
  expect(packages['node_modules/@playwright/test']?.version).toBe(lookedAt.playwright);
});

test('the day of the last look is a day that has been', () => {
  expect(lookedAt.day).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  expect(Date.parse(lookedAt.day)).toBeLessThanOrEqual(Date.now());
});
