import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import type { FileList } from '../../../src/site/offline/kept-files.ts';
import type { Asked } from '../../../src/site/offline/worker.ts';
import { browserOf, hash } from './browser-caches.ts';

const address = 'https://shop.example/sub/';
const { server, beginAnew, end } = browserOf(address);
const files = { 'index.html': 'home', 'how-to/index.html': 'pages' };
const list: FileList = {
  version: 'v1',
  first: Object.fromEntries(Object.entries(files).map(([path, text]) => [path, hash(text)])),
  second: {},
  sizes: {} as FileList['sizes'],
};
const listed = JSON.stringify(list);

/** What the worker listens to. */
const heard: Record<string, (event: object) => void> = {};

// A worker is begun once, and lives through all that it is asked.
beforeAll(async () => {
  vi.stubGlobal('registration', { scope: address });
  vi.stubGlobal('addEventListener', (type: string, listener: (event: object) => void) => {
    heard[type] = listener;
  });
  await import('../../../src/site/offline/worker.ts');
});
beforeEach(() => {
  beginAnew();
  vi.useFakeTimers();
  server.files = { ...files, 'offline-files.json': listed };
  vi.stubGlobal('VERSION', 'v1');
  vi.stubGlobal('LIST_HASH', hash(listed));
});
afterEach(() => {
  vi.useRealTimers();
  end();
});

/** Have the worker installed; settled when it is. */
function install(): Promise<unknown> {
  let done: Promise<unknown> = Promise.resolve();
  heard.install?.({
    waitUntil: (until: Promise<unknown>) => {
      done = until;
    },
  });
  return done;
}

const say = (data: Asked) => heard.message?.({ data, ports: [], waitUntil: () => undefined });

test('a worker that is being installed keeps the first layer at once where no page is in use', async () => {
  await install();
  expect(server.asked).toEqual(['offline-files.json', '', 'how-to/']);
});

test('while a page says that it is in use the worker fetches no file', async () => {
  say({ say: 'in use' });
  const installed = install();
  await vi.advanceTimersByTimeAsync(900);
  expect(server.asked).toEqual(['offline-files.json']);
  await vi.advanceTimersByTimeAsync(200);
  await installed;
  expect(server.asked).toEqual(['offline-files.json', '', 'how-to/']);
});
