// Prints what failed and `N passed, N failed` over the reports of the test runners, and fails where anything did.
// Usage: node scripts/tally.mjs <folder of reports> [names of failed steps]
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

const [folder = '', ...failedSteps] = process.argv.slice(2);
const read = (name) => {
  const file = join(folder, name);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
};

/** What a report of either runner counts, in one form. A test that passed only when tried again has not passed. */
function count(report) {
  if (!report) return { passed: 0, failed: 0, skipped: 0 };
  if (report.stats) {
    const { expected, unexpected, flaky, skipped } = report.stats;
    return { passed: expected, failed: unexpected + flaky, skipped };
  }
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** What failed in a report of either runner: where it stands and the first lines of why, so that the end of a long run tells it. */
function failures(report) {
  const units = (report?.testResults ?? []).flatMap(({ name, message, assertionResults = [] }) => {
    const failed = assertionResults.filter(({ status }) => status === 'failed');
    if (failed.length === 0 && message) return [{ title: name, why: message }];
    return failed.map(({ fullName, failureMessages }) => ({
      title: `${name} › ${fullName}`,
      why: failureMessages?.[0],
    }));
  });
  const inSuite = ({ suites = [], specs = [] }) => [
    ...specs
      .filter(({ tests = [] }) => tests.some(({ status }) => status !== 'expected' && status !== 'skipped'))
      .map(({ file, line, title, tests = [] }) => ({
        title: `${file}:${line} › ${title}`,
        why: tests.flatMap(({ results }) => results).find(({ error }) => error)?.error.message,
      })),
    ...suites.flatMap(inSuite),
  ];
  return [...units, ...(report?.suites ?? []).flatMap(inSuite)];
}

const runs = ['unit', 'addresses', 'browser'].map((name) => {
  const report = read(`${name}.json`);
  return { name, report, ...count(report) };
});
const sum = (what) => runs.reduce((total, run) => total + run[what], 0);
const passed = sum('passed');
let failed = sum('failed');
const skipped = sum('skipped');

// Steps that are no test runner, or whose runner failed without a failed test, count as one failure each.
for (const step of failedSteps) if (!runs.some((run) => run.name === step && run.failed > 0)) failed += 1;

// A step that never ran is not a step that passed.
for (const { name, report } of runs) {
  if (report || failedSteps.includes(name)) continue;
  console.log(`The ${name} tests did not run.`);
  failed += 1;
}
for (const { title, why = '' } of runs.flatMap(({ report }) => failures(report))) {
  const lines = stripVTControlCharacters(why).split('\n').slice(0, 12);
  console.log(`\nFailed: ${title}\n  ${lines.join('\n  ')}`);
}
// Whatever no test of a report answers for: an error outside of any test, a program that was ended, a linter's complaint.
for (const step of failedSteps) {
  const log = join(folder, `${step}.log`);
  if (runs.some(({ name, report }) => name === step && failures(report).length > 0) || !existsSync(log)) continue;
  const lines = stripVTControlCharacters(readFileSync(log, 'utf8')).trimEnd().split('\n').slice(-60);
  console.log(`\nThe last lines of ${step}:\n  ${lines.join('\n  ')}`);
}
if (failedSteps.length > 0) console.log(`\nFailed steps: ${failedSteps.join(', ')}`);
if (skipped > 0) {
  console.log(`${skipped} tests were skipped; none may be.`);
  failed += skipped;
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
