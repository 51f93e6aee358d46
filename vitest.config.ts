import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const shared = {
  resolve: { alias: { '@site': fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, '') } },
  oxc: { jsx: { runtime: 'automatic' as const } },
};

export default defineConfig({
  test: {
    coverage: { include: ['src/model/**', 'src/calculators/**', 'src/command/**', 'src/store/**'] },
    projects: [
      {
        ...shared,
        test: {
          name: 'node',
          setupFiles: ['tests/setup.ts'],
          // Some tests start programs; a busy machine takes its time over it, and a limit that fires then tells nothing.
          testTimeout: 60_000,
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/views/**'],
        },
      },
      {
        ...shared,
        test: { name: 'happy-dom', environment: 'happy-dom', include: ['tests/views/**/*.test.tsx'] },
      },
    ],
  },
});
