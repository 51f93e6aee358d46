import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/store/index.ts';

function kerf(...args: string[]) {
  return spawnSync(process.execPath, [join(root, 'scripts', 'kerf.mjs'), ...args], { encoding: 'utf8' });
}

describe('scripts/kerf.mjs', () => {
  test('runs the command line from its bundle and passes the exit code on', () => {
    const done = kerf('species', 'sugar-maple', '--json');
    expect([done.status, done.stderr]).toEqual([0, '']);
    expect(JSON.parse(done.stdout)[0].id).toBe('sugar-maple');
    const refused = kerf('species', 'no-such-wood-at-all');
    expect([refused.status, refused.stdout]).toEqual([2, '']);
  });
});
