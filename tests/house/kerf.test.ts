import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { starterMethod } from '../../src/method/record/starter.ts';
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

  test('shares many files out among workers, and tells of them in the order in which they were named', () => {
    const folder = mkdtempSync(join(tmpdir(), 'many-'));
    try {
      const files = Array.from({ length: 20 }, (_, at) => {
        const file = join(folder, `${at}.yaml`);
        writeFileSync(file, at % 3 === 0 ? starterMethod.replace('act: oil', `act: oil-${at}`) : starterMethod);
        return file;
      });
      const done = kerf('check', ...files, '--json');
      expect([done.status, done.stderr]).toEqual([1, '']);
      const told = (JSON.parse(done.stdout) as { file: string; message: string }[]).map(({ file }) => file);
      expect(told).toEqual(files.filter((_, at) => at % 3 === 0));
      expect(kerf('check', ...files, join(folder, 'gone.yaml'))).toMatchObject({ status: 2, stdout: '' });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
