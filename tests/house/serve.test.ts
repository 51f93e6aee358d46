import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const room = mkdtempSync(join(tmpdir(), 'serve-'));
const folder = join(room, 'site');
let server: ChildProcess;
let port = 0;

beforeAll(async () => {
  mkdirSync(join(folder, 'woods/white-ash'), { recursive: true });
  mkdirSync(join(folder, 'assets/js'), { recursive: true });
  writeFileSync(join(folder, '404.html'), '<script src=/boards/assets/js/main.js></script>none');
  writeFileSync(join(folder, 'index.html'), 'first');
  writeFileSync(join(folder, 'woods/white-ash/index.html'), 'ash');
  writeFileSync(join(folder, 'assets/js/main.js'), '1');
  writeFileSync(
    join(folder, '_headers'),
    "/*\n  Content-Security-Policy: default-src 'none'; img-src 'self' data:\n  Referrer-Policy: no-referrer\n\n# Kept long.\n/assets/*\n  Cache-Control: immutable\n",
  );
  writeFileSync(join(room, 'beside.txt'), 'not of the site');
  port = await new Promise<number>((resolve) => {
    const probe = createServer().listen(0, () => {
      const { port: free } = probe.address() as { port: number };
      probe.close(() => resolve(free));
    });
  });
  server = spawn(process.execPath, ['scripts/serve.mjs', folder, '--port', String(port)]);
  await new Promise<void>((resolve) => server.stdout?.once('data', () => resolve()));
});

afterAll(() => {
  server.kill();
  rmSync(room, { recursive: true });
});

/** What is answered to an address exactly as it is written. */
const ask = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  new Promise<{
    status: number;
    to?: string;
    type?: string;
    tag?: string;
    policy?: string;
    kept?: string;
    text: string;
  }>((resolve, reject) => {
    request({ host: 'localhost', port, path, headers, method }, (answer) => {
      let text = '';
      answer.on('data', (part) => {
        text += part;
      });
      answer.on('end', () =>
        resolve({
          status: answer.statusCode ?? 0,
          ...(answer.headers.location === undefined ? {} : { to: answer.headers.location }),
          ...(answer.headers['content-type'] === undefined ? {} : { type: answer.headers['content-type'] }),
          ...(answer.headers.etag === undefined ? {} : { tag: answer.headers.etag }),
          ...(answer.headers['content-security-policy'] === undefined
            ? {}
            : { policy: String(answer.headers['content-security-policy']) }),
          ...(answer.headers['cache-control'] === undefined ? {} : { kept: answer.headers['cache-control'] }),
          text,
        }),
      );
    })
      .on('error', reject)
      .end();
  });

test.each([
  ['/boards/', 'first', 'text/html; charset=utf-8'],
  ['/boards/?a=1', 'first', 'text/html; charset=utf-8'],
  ['/boards/woods/white-ash/', 'ash', 'text/html; charset=utf-8'],
  ['/boards/woods/white-ash/index.html?a=/b', 'ash', 'text/html; charset=utf-8'],
  ['/boards/assets/js/main.js', '1', 'text/javascript; charset=utf-8'],
])('%s is answered', async (path, text, type) => {
  expect(await ask(path)).toMatchObject({ status: 200, text, type });
});

test.each([
  ['/', '/boards/'],
  ['/boards?a=1', '/boards/?a=1'],
  ['/boards/woods/white-ash', '/boards/woods/white-ash/'],
  ['/boards/woods/white-ash?width=250+mm&q=%2F', '/boards/woods/white-ash/?width=250+mm&q=%2F'],
])('%s is sent on to %s', async (path, to) => {
  expect(await ask(path)).toMatchObject({ status: 301, to });
});

test.each([
  '/boards/woods/',
  '/boards/no/such/page/',
  '/boards/assets/js/main.js/',
  '/boards/../beside.txt',
  '/boards/..%2Fbeside.txt',
  '/boards/%2e%2e/beside.txt',
  '/boards/..%5Cbeside.txt',
  '/boards/%00',
  '/boards/%E0%A4%A',
  '//boards/woods/white-ash',
  '/elsewhere/',
])('%s is not there', async (path) => {
  const answer = await ask(path);
  expect(answer).toMatchObject({ status: 404, type: 'text/html; charset=utf-8' });
  expect(answer.text).toContain('none');
});

test.each(['/boards/', '/boards/assets/js/main.js', '/boards/no/such/page/'])(
  '%s comes with the headers that the build asks of every host, and is asked for again each time',
  async (path) => {
    expect(await ask(path)).toMatchObject({ policy: "default-src 'none'; img-src 'self' data:", kept: 'no-cache' });
  },
);

test('what is still the same is not sent again, and nothing is taken', async () => {
  const { tag = '' } = await ask('/boards/');
  expect(await ask('/boards/', { 'If-None-Match': tag })).toMatchObject({ status: 304, text: '' });
  expect(await ask('/boards/', {}, 'HEAD')).toMatchObject({ status: 200, text: '' });
  expect((await ask('/boards/', {}, 'POST')).status).toBe(405);
});
