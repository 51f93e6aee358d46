import { defineConfig } from '@playwright/test';
import { browserArguments, browserPath } from './scripts/browser.ts';

const port = Number(process.env.KERF_TEST_PORT ?? 4173);

const largeText = '**/large-text.spec.ts';

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
    launchOptions: { executablePath: browserPath(), args: browserArguments },
  },
  webServer: {
    command: `npx docusaurus serve --no-open --port ${port}`,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
  },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1280, height: 900 } }, testIgnore: largeText },
    {
      name: 'phone',
      use: { viewport: { width: 360, height: 740 }, hasTouch: true },
      // What does not depend on the width is tried once.
      testIgnore: [
        largeText,
        '**/every-page.spec.ts',
        '**/fonts.spec.ts',
        '**/print.spec.ts',
        '**/without-javascript.spec.ts',
      ],
    },
    {
      name: 'large text',
      testMatch: largeText,
      use: {
        viewport: { width: 320, height: 640 },
        launchOptions: {
          executablePath: browserPath(),
          args: [...browserArguments, '--blink-settings=defaultFontSize=32,defaultFixedFontSize=26'],
        },
      },
    },
  ],
});
