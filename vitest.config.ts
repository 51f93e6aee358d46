import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Of each project: the second and third find the files made. */
const globalSetup = ['tests/made.ts'];

const shared = {
  resolve: { alias: { '@site': fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, '') } },
  oxc: { jsx: { runtime: 'automatic' as const } },
};

/** Some tests start programs; a busy machine takes its time over it, and a limit that fires then tells nothing. ms. */
const testTimeout = 120_000;

/**
 * What a test logs is written at once. Sent to the runner, as it is by default, a line that is still on its way when its file ends fails a whole
 * run in which every test passed.
 */
const disableConsoleIntercept = true;

/** The site's framework resolves these names itself; pages under test get what they ask of it from one small file. */
const framework = {
  ...Object.fromEntries(
    [
      '@docusaurus/Link',
      '@docusaurus/router',
      '@docusaurus/useGlobalData',
      '@docusaurus/plugin-content-docs/client',
      '@theme/Layout',
    ].map((name) => [name, fileURLToPath(new URL('tests/views/framework.tsx', import.meta.url))]),
  ),
  '@docusaurus/useBrokenLinks': fileURLToPath(new URL('tests/views/broken-links.ts', import.meta.url)),
  '@docusaurus/useDocusaurusContext': fileURLToPath(new URL('tests/views/docusaurus-context.ts', import.meta.url)),
  '@docusaurus/useBaseUrl': fileURLToPath(new URL('tests/views/base-url.ts', import.meta.url)),
};

const addresses = 'tests/calculators/random-addresses-*.test.ts';

export default defineConfig({
  test: {
    // Every core: left to itself the runner keeps one free, which is half of a machine with two.
    maxWorkers: '100%',
    coverage: { include: ['src/model/**', 'src/calculators/**', 'src/command/**', 'src/store/**'] },
    projects: [
      {
        ...shared,
        test: {
          name: 'node',
          globalSetup,
          setupFiles: ['tests/setup.ts'],
          testTimeout,
          disableConsoleIntercept,
          environment: 'node',
          isolate: false,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/views/**', addresses],
        },
      },
      // Apart from the rest, since the test command tries more of them.
      {
        ...shared,
        test: {
          name: 'addresses',
          globalSetup,
          testTimeout,
          disableConsoleIntercept,
          setupFiles: ['tests/setup.ts'],
          include: [addresses],
        },
      },
      {
        ...shared,
        resolve: { alias: { ...shared.resolve.alias, ...framework } },
        test: {
          name: 'happy-dom',
          globalSetup,
          testTimeout,
          disableConsoleIntercept,
          environment: 'happy-dom',
          // Pages keep units, drafts and what they fetched in their modules: each file loads its own, or one finds what another left.
          isolate: true,
          setupFiles: ['tests/views/setup.ts'],
          include: ['tests/views/**/*.test.tsx'],
        },
      },
    ],
  },
});
