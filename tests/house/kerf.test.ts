import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

function kerf(...args: string[]) {
  const started = performance.now();
  const run = spawnSync(process.execPath, [join(root, 'scripts', 'kerf.mjs'), ...args], { encoding: 'utf8' });
  return { ...run, milliseconds: performance.now() - started };
}

describe('scripts/kerf.mjs', () => {
  test('runs the command line from its bundle and passes the exit code on', () => {
    const done = kerf('species', 'sugar-maple', '--json');
    expect([done.status, done.stderr]).toEqual([0, '']);
    expect(JSON.parse(done.stdout)[0].id).toBe('sugar-maple');
    const refused = kerf('species', 'no-such-wood-at-all');
    expect([refused.status, refused.stdout]).toEqual([2, '']);
  });

  test('reads the tables on disk', () => {
    expect(kerf('validate').stdout).toMatch(/nothing wrong/);
  });

  test('starts in under half a second once bundled', () => {
    const inputs = JSON.stringify({ temperature: '20 °C', relativeHumidity: '65 %' });
    const runs = [1, 2, 3].map(() => kerf('calc', 'equilibrium-moisture', '--json', inputs));
    expect(runs.map((run) => run.status)).toEqual([0, 0, 0]);
    expect(Math.min(...runs.map((run) => run.milliseconds))).toBeLessThan(500);
  });
});
