import { defineConfig } from '@playwright/test';
import { browserArguments, browserPath } from './scripts/browser.ts';

const port = Number(process.env.KERF_TEST_PORT ?? 4173);

/** The built site in Debian's Chromium: build it first. */
export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: '.kerf/test-results',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  // A slow or shared machine is not a fault of the site.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  reporter: 'list',
  use: {
    baseURL: `http://localhost:${port}`,
    // Of a metric region, unless a test says otherwise: where nothing is kept, the region gives the units.
    locale: 'en-GB',
    // One window for the tests of a worker, emptied of all that is kept after each: a new one for each loads the site’s code anew.
    reuseContext: true,
    // What a worker keeps would outlive a test and answer for the next: the tests of it have windows of their own.
    serviceWorkers: 'block',
    launchOptions: { executablePath: browserPath(), args: browserArguments },
  },
  webServer: {
    command: `node scripts/serve.mjs --port ${port}`,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
  },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1280, height: 900 } } },
    // What is laid out otherwise on a phone bears the mark; the rest does not depend on the width, and is tried once.
    { name: 'phone', use: { viewport: { width: 360, height: 740 }, hasTouch: true }, grep: /@width/ },
  ],
});
