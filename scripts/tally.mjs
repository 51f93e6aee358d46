// Prints `N passed, N failed` over the reports of the test runners, and fails where anything failed.
// Usage: node scripts/tally.mjs <folder of reports> [names of failed steps]
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const [folder = '', ...failedSteps] = process.argv.slice(2);
const read = (name) => {
  const file = join(folder, name);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
};

const unit = read('unit.json');
const browser = read('browser.json');
const passed = (unit?.numPassedTests ?? 0) + (browser?.stats.expected ?? 0);
// A test that passed only when tried again has not passed.
let failed = (unit?.numFailedTests ?? 0) + (browser ? browser.stats.unexpected + browser.stats.flaky : 0);
const skipped = (unit?.numPendingTests ?? 0) + (unit?.numTodoTests ?? 0) + (browser?.stats.skipped ?? 0);

const said = { unit: (unit?.numFailedTests ?? 0) > 0, browser: browser ? browser.stats.unexpected > 0 : false };
// Steps that are no test runner, or whose runner failed without a failed test, count as one failure each.
for (const step of failedSteps) if (!said[step]) failed += 1;

// A step that never ran is not a step that passed.
for (const [name, report] of [
  ['unit', unit],
  ['browser', browser],
]) {
  if (report || failedSteps.includes(name)) continue;
  console.log(`The ${name} tests did not run.`);
  failed += 1;
}
if (failedSteps.length > 0) console.log(`\nFailed steps: ${failedSteps.join(', ')}`);
if (skipped > 0) {
  console.log(`${skipped} tests were skipped; none may be.`);
  failed += skipped;
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
