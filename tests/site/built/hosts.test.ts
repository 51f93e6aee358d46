import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hosts, htaccess, keepingHeaders } from '../../../src/site/built/hosts.ts';

const apache = readFileSync('hosting/apache.conf', 'utf8');

test('the text for Apache gets the headers of the site and the page of its folder', () => {
  const made = htaccess(apache, 'Header always set A "1 $& 2"\nHeader always set B "2"\n', '/boards/');
  expect(made).toContain('\n    Header always set A "1 $& 2"\n    Header always set B "2"\n');
  expect(made).toContain('\nErrorDocument 404 /boards/404.html\n');
  expect(() => htaccess('ErrorDocument 404 /404.html', '', '/')).toThrow(/headers of the site/);
  expect(() => htaccess('# headers of the site', '', '/')).toThrow(/ErrorDocument/);
});

test('how long files are kept is said once, below the headers', () => {
  const once = keepingHeaders('/*\n  A: 1\n', '/boards/');
  expect(once).toBe(
    '/*\n  A: 1\n\n# How long a browser keeps a file: names in assets hold a hash of what is in it.\n/boards/assets/*\n  Cache-Control: public, max-age=31536000, immutable\n',
  );
  expect(keepingHeaders(once, '/boards/')).toBe(once);
});

test('a built folder gets them, twice as once, with the headers that a policy wrote', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'hosts-'));
  try {
    writeFileSync(join(folder, '404.html'), '<script src=/boards/assets/js/main.js></script>');
    expect(() => hosts.run(folder)).toThrow(/hosting\/apache-headers\.conf is not there/);
    mkdirSync(join(folder, 'hosting'));
    writeFileSync(join(folder, 'hosting/apache-headers.conf'), 'Header always set A "1"\n');
    writeFileSync(join(folder, '_headers'), '/*\n  A: 1\n');
    const read = () => ['.htaccess', '_headers'].map((name) => readFileSync(join(folder, name), 'utf8'));
    await hosts.run(folder);
    const first = read();
    await hosts.run(folder);
    expect(read()).toEqual(first);
    expect(first[0]).toContain('Header always set A "1"');
    expect(first[1]).toContain('/boards/assets/*');
  } finally {
    rmSync(folder, { recursive: true });
  }
});
