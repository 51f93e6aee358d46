import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { shortRegistry, withoutFiles } from '../../../src/site/built/short-registry.ts';

const list =
  'a={"01d23b62":[()=>n.e("46508").then(n.t.bind(n,92598,19)),"/home/somebody/site/facts-95.json",92598],"00a8b9c4":[()=>Promise.all([n.e("1"),n.e("2")]).then(n.bind(n,91928)),"@site/src/Page.tsx",91928]}';

test('parts of pages keep how they are fetched and their number, and lose the file', () => {
  expect(withoutFiles(list)).toEqual({
    script:
      'a={"01d23b62":[()=>n.e("46508").then(n.t.bind(n,92598,19)),"",92598],"00a8b9c4":[()=>Promise.all([n.e("1"),n.e("2")]).then(n.bind(n,91928)),"",91928]}',
    parts: 2,
  });
});

test('a list of something else stays as it is', () => {
  const other = '[f(g.bind(h,7)),"text",8],[()=>f(1),"text",1]';
  expect(withoutFiles(other)).toEqual({ script: other, parts: 0 });
});

test('the main script has the name of its new text on every page, and a second run changes nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'kerf-registry-'));
  try {
    mkdirSync(join(folder, 'assets/js'), { recursive: true });
    writeFileSync(join(folder, 'assets/js/main.11112222.js'), list);
    writeFileSync(join(folder, 'index.html'), '<script src=/boards/assets/js/main.11112222.js defer></script>');
    expect(await shortRegistry.run(folder)).toMatch(/^left out of 2/);
    const [name = ''] = readdirSync(join(folder, 'assets/js'));
    expect(name).not.toBe('main.11112222.js');
    expect(readFileSync(join(folder, 'index.html'), 'utf8')).toContain(`/boards/assets/js/${name} `);
    expect(await shortRegistry.run(folder)).toBe('none among 2');
    expect(readdirSync(join(folder, 'assets/js'))).toEqual([name]);
    writeFileSync(join(folder, 'assets/js', name), 'a={}');
    expect(() => shortRegistry.run(folder)).toThrow(/lists no part/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
