import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'kerf-tally-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Counts {
  unit?: { passed: number; failed?: number; pending?: number };
  browser?: { passed: number; failed?: number; flaky?: number; skipped?: number };
}

function tally({ unit, browser }: Counts, ...failedSteps: string[]) {
  rmSync(join(folder, 'unit.json'), { force: true });
  rmSync(join(folder, 'browser.json'), { force: true });
  if (unit) {
    const { passed, failed = 0, pending = 0 } = unit;
    writeFileSync(
      join(folder, 'unit.json'),
      JSON.stringify({ numPassedTests: passed, numFailedTests: failed, numPendingTests: pending, numTodoTests: 0 }),
    );
  }
  if (browser) {
    const { passed, failed = 0, flaky = 0, skipped = 0 } = browser;
    writeFileSync(
      join(folder, 'browser.json'),
      JSON.stringify({ stats: { expected: passed, unexpected: failed, flaky, skipped } }),
    );
  }
  const run = spawnSync(process.execPath, [join(root, 'scripts', 'tally.mjs'), folder, ...failedSteps], {
    encoding: 'utf8',
  });
  return [run.status, run.stdout.trim().split('\n').at(-1)];
}

describe('the closing line of the test run', () => {
  const green = { unit: { passed: 40 }, browser: { passed: 7 } };
  test.each<[string, Counts, string[], number, string]>([
    ['all passed', green, [], 0, '47 passed, 0 failed'],
    ['a unit test failed', { ...green, unit: { passed: 39, failed: 1 } }, ['unit'], 1, '46 passed, 1 failed'],
    ['a browser test failed', { ...green, browser: { passed: 5, failed: 2 } }, ['browser'], 1, '45 passed, 2 failed'],
    [
      'a browser test passed only at the second try',
      { ...green, browser: { passed: 6, flaky: 1 } },
      [],
      1,
      '46 passed, 1 failed',
    ],
    ['a test was skipped', { ...green, unit: { passed: 39, pending: 1 } }, [], 1, '46 passed, 1 failed'],
    ['the linter complained', green, ['lint'], 1, '47 passed, 1 failed'],
    ['the runner broke off without a failed test', green, ['unit'], 1, '47 passed, 1 failed'],
    ['the site did not build, so no browser ran', { unit: { passed: 40 } }, ['build'], 1, '40 passed, 2 failed'],
    ['nothing ran', {}, [], 1, '0 passed, 2 failed'],
  ])('%s', (_what, counts, failedSteps, code, line) => {
    expect(tally(counts, ...failedSteps)).toEqual([code, line]);
  });
});
