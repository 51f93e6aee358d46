import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'kerf-tally-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Unit {
  passed: number;
  failed?: number;
  pending?: number;
}
interface Counts {
  unit?: Unit;
  addresses?: Unit;
  browser?: { passed: number; failed?: number; flaky?: number; skipped?: number };
}

function tally({ unit, addresses, browser }: Counts, ...failedSteps: string[]) {
  for (const name of ['unit', 'addresses', 'browser']) rmSync(join(folder, `${name}.json`), { force: true });
  for (const [name, counts] of Object.entries({ unit, addresses })) {
    if (!counts) continue;
    const { passed, failed = 0, pending = 0 } = counts;
    writeFileSync(
      join(folder, `${name}.json`),
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
  const green = { unit: { passed: 40 }, addresses: { passed: 3 }, browser: { passed: 7 } };
  test.each<[string, Counts, string[], number, string]>([
    ['all passed', green, [], 0, '50 passed, 0 failed'],
    ['a unit test failed', { ...green, unit: { passed: 39, failed: 1 } }, ['unit'], 1, '49 passed, 1 failed'],
    ['a browser test failed', { ...green, browser: { passed: 5, failed: 2 } }, ['browser'], 1, '48 passed, 2 failed'],
    [
      'a random address failed',
      { ...green, addresses: { passed: 2, failed: 1 } },
      ['addresses'],
      1,
      '49 passed, 1 failed',
    ],
    [
      'a browser test passed only at the second try',
      { ...green, browser: { passed: 6, flaky: 1 } },
      [],
      1,
      '49 passed, 1 failed',
    ],
    ['a test was skipped', { ...green, unit: { passed: 39, pending: 1 } }, [], 1, '49 passed, 1 failed'],
    ['the linter complained', green, ['lint'], 1, '50 passed, 1 failed'],
    ['the runner broke off without a failed test', green, ['unit'], 1, '50 passed, 1 failed'],
    [
      'the site did not build, so no browser ran',
      { unit: { passed: 40 }, addresses: { passed: 3 } },
      ['build'],
      1,
      '43 passed, 2 failed',
    ],
    ['nothing ran', {}, [], 1, '0 passed, 3 failed'],
  ])('%s', (_what, counts, failedSteps, code, line) => {
    expect(tally(counts, ...failedSteps)).toEqual([code, line]);
  });
});
