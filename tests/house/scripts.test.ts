import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
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

/** A folder of reports of its own, taken away when the test is over. */
function reportsFolder(): string {
  const reports = mkdtempSync(join(tmpdir(), 'kerf-reports-'));
  onTestFinished(() => rmSync(reports, { recursive: true, force: true }));
  return reports;
}

test('the end of a run names what failed and why, of both runners', () => {
  const reports = reportsFolder();
  const unit = {
    numPassedTests: 1,
    numFailedTests: 1,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults: [
      {
        name: 'tests/model/a.test.ts',
        message: '',
        assertionResults: [
          {
            fullName: 'a thing holds',
            status: 'failed',
            failureMessages: ['\u001b[31mexpected 2 to be 3\u001b[39m\n  at a.test.ts:4'],
          },
          { fullName: 'another holds', status: 'passed', failureMessages: [] },
        ],
      },
      { name: 'tests/model/broken.test.ts', message: 'Cannot find module', assertionResults: [] },
    ],
  };
  const browser = {
    stats: { expected: 1, unexpected: 1, flaky: 0, skipped: 0 },
    suites: [
      {
        suites: [
          {
            specs: [
              {
                // A soft expectation that failed leaves a specification “ok”.
                ok: true,
                file: 'pages.spec.ts',
                line: 62,
                title: 'a page opens',
                tests: [{ status: 'unexpected', results: [{ error: { message: 'Timed out' } }] }],
              },
            ],
          },
        ],
        specs: [
          { ok: true, file: 'pages.spec.ts', line: 9, title: 'good', tests: [{ status: 'expected', results: [{}] }] },
        ],
      },
    ],
  };
  writeFileSync(join(reports, 'unit.json'), JSON.stringify(unit));
  writeFileSync(join(reports, 'browser.json'), JSON.stringify(browser));
  const { stdout } = spawnSync(process.execPath, [join(root, 'scripts', 'tally.mjs'), reports], { encoding: 'utf8' });
  expect(stdout).toContain(
    [
      'Failed: tests/model/a.test.ts › a thing holds\n  expected 2 to be 3\n    at a.test.ts:4\n',
      'Failed: tests/model/broken.test.ts\n  Cannot find module\n',
      'Failed: pages.spec.ts:62 › a page opens\n  Timed out\n',
    ].join('\n'),
  );
  expect(stdout).not.toContain('another holds');
  expect(stdout).not.toContain('good');
});

test('the end of a run shows the last lines of a step that failed without a failed test', () => {
  const reports = reportsFolder();
  const green = { numPassedTests: 1, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
  writeFileSync(join(reports, 'unit.json'), JSON.stringify(green));
  writeFileSync(
    join(reports, 'unit.log'),
    `${'a test passed\n'.repeat(100)}Unhandled error: \u001b[31mtoo late\u001b[39m\n`,
  );
  writeFileSync(join(reports, 'build.log'), 'built\n');
  const { stdout } = spawnSync(process.execPath, [join(root, 'scripts', 'tally.mjs'), reports, 'unit'], {
    encoding: 'utf8',
  });
  expect(stdout).toContain('The last lines of unit:\n  a test passed\n');
  expect(stdout).toContain('  Unhandled error: too late\n');
  expect(stdout.match(/a test passed/g)?.length).toBeLessThan(100);
  expect(stdout).not.toContain('built');
});

test('a step passes by the exit code of its command alone, whatever that sets, and what it prints is kept', () => {
  const reports = reportsFolder();
  const script = [
    `reports='${reports}'`,
    '. scripts/step.sh',
    'sets() { name=other; echo "sets $1"; return "$2"; }',
    'step good sets a 0 && step bad sets b 3',
    'step bad2 false || echo "failed:$failed"',
  ].join('\n');
  const { stdout } = spawnSync('sh', ['-c', script], { cwd: root, encoding: 'utf8' });
  expect(stdout.match(/^(sets|failed).*$/gm)).toEqual(['sets a', 'sets b', 'failed: bad bad2']);
  expect(readFileSync(join(reports, 'bad.log'), 'utf8')).toBe('sets b\n');
});
