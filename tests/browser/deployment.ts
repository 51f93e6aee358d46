import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, extname, join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { offlineStep } from '../../src/site/built/offline.ts';
import { cacheName, listName } from '../../src/site/offline/kept-files.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** A folder on a host of its own, which can be changed and switched off while a browser reads it. */
export class Deployment {
  readonly folder = mkdtempSync(join(tmpdir(), 'kerf-deployment-'));
  /** Where the site stands on the host, with a slash at both ends. */
  readonly at: string;
  /** Paths that were asked for since this was emptied. */
  asked: string[] = [];
  #server: Server | undefined;
  #port = 0;

  constructor(at = '/') {
    this.at = at;
  }

  get address(): string {
    return `http://localhost:${this.#port}${this.at}`;
  }

  /** Put files of a built site there. */
  copy(from: string, wanted: (path: string) => boolean = () => true): void {
    cpSync(from, this.folder, {
      recursive: true,
      filter: (source) => statSync(source).isDirectory() || wanted(source.slice(from.length + 1)),
    });
  }

  read(path: string): string {
    return readFileSync(join(this.folder, path), 'utf8');
  }

  write(files: Readonly<Record<string, string>>): void {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(this.folder, path)), { recursive: true });
      writeFileSync(join(this.folder, path), text);
    }
  }

  remove(path: string): void {
    rmSync(join(this.folder, path));
  }

  /** List what is kept, and write the worker. */
  async finish(): Promise<void> {
    await offlineStep.run(this.folder);
  }

  async start(): Promise<void> {
    const server = createServer((request, response) => {
      const path = decodeURI(new URL(request.url ?? '/', 'http://localhost').pathname);
      this.asked.push(path);
      const inside = path.startsWith(this.at) ? path.slice(this.at.length) : undefined;
      const file = [inside, `${inside}/index.html`, `${inside}.html`].find(
        (each) =>
          inside !== undefined &&
          existsSync(join(this.folder, each ?? '')) &&
          statSync(join(this.folder, each ?? '')).isFile(),
      );
      const sent = file ?? '404.html';
      // Hosts let browsers keep pages for a while: a worker must get the new ones all the same.
      response.writeHead(file === undefined ? 404 : 200, {
        'content-type': types[extname(sent)] ?? 'application/octet-stream',
        'cache-control': 'max-age=600',
      });
      response.end(request.method === 'HEAD' ? undefined : readFileSync(join(this.folder, sent)));
    });
    await new Promise<void>((resolve) => server.listen(this.#port, 'localhost', resolve));
    this.#port = (server.address() as AddressInfo).port;
    this.#server = server;
  }

  /** Pull the plug. */
  async stop(): Promise<void> {
    const server = this.#server;
    this.#server = undefined;
    if (!server) return;
    await new Promise((resolve) => {
      server.close(resolve);
      server.closeAllConnections();
    });
  }

  async end(): Promise<void> {
    await this.stop();
    rmSync(this.folder, { recursive: true });
  }

  get version(): string {
    return (JSON.parse(this.read(listName)) as { version: string }).version;
  }

  /** Wait until a layer of the version that stands here is kept whole by a browser. */
  async isKept(page: Page, layer: 'first' | 'second', within = 60_000): Promise<void> {
    const asked = { name: cacheName(this.at, layer, this.version), entry: `${this.address}?kept=${layer}` };
    await becomes(
      page,
      async ({ name, entry }) =>
        (await caches.has(name)) && (await (await caches.open(name)).match(entry)) !== undefined,
      asked,
      within,
    );
  }
}

/** Wait until a page answers yes. A promise is awaited, which the runner's own `waitForFunction` takes for a yes. */
export async function becomes<T>(
  page: Page,
  ask: (given: T) => boolean | Promise<boolean>,
  given?: T,
  within = 60_000,
): Promise<void> {
  await expect
    .poll(() => page.evaluate(ask as (given: unknown) => Promise<boolean>, given).catch(() => false), {
      timeout: within,
    })
    .toBe(true);
}

/** Wait until a worker answers for a page and is done with taking over. */
export const isControlled = (page: Page) =>
  becomes(page, () => navigator.serviceWorker.controller?.state === 'activated');

/** Look whether there is a newer version, and wait until what came of it is settled: whether one waits. */
export async function lookForNewer(page: Page, waits: boolean): Promise<void> {
  await page.evaluate(() =>
    navigator.serviceWorker.ready
      .then((it) => it.update())
      .then(
        () => undefined,
        () => undefined,
      ),
  );
  await becomes(
    page,
    async (wanted) => {
      const { installing, waiting } = await navigator.serviceWorker.ready;
      return !installing && (waiting?.state === 'installed') === wanted;
    },
    waits,
  );
}
