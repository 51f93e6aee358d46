import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** Serve a built site from a folder on a free port of this machine. */
export async function serve(folder: string): Promise<{ origin: string; close: () => void }> {
  const server: Server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
    const file = [join(folder, path), join(folder, path, 'index.html'), join(folder, `${path}.html`)].find(
      (candidate) => existsSync(candidate) && statSync(candidate).isFile(),
    );
    if (!file) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, close: () => server.close() };
}

/** Gzipped bytes that a browser fetched to show a page and make it answer, by kind of file. */
export interface Weight {
  html: number;
  css: number;
  js: number;
  other: number;
  total: number;
}

/** Load pages of a served site in a fresh browser each, and weigh everything that they fetch until the network is quiet. */
export async function weigh(origin: string, paths: readonly string[]): Promise<Map<string, Weight>> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const weights = new Map<string, Weight>();
  for (const path of paths) {
    // Links in view are fetched ahead of a click; that is not the page's own weight, so the window is kept small.
    const context = await browser.newContext({ viewport: { width: 360, height: 300 } });
    const page = await context.newPage();
    const weight: Weight = { html: 0, css: 0, js: 0, other: 0, total: 0 };
    const bodies: Promise<void>[] = [];
    page.on('response', (response) => {
      bodies.push(
        response
          .body()
          .then((body) => {
            const size = gzipSync(body).length;
            const kind = response.request().resourceType();
            const key =
              kind === 'document' ? 'html' : kind === 'stylesheet' ? 'css' : kind === 'script' ? 'js' : 'other';
            weight[key] += size;
            weight.total += size;
          })
          .catch(() => undefined),
      );
    });
    await page.goto(`${origin}${path}`, { waitUntil: 'networkidle' });
    await Promise.all(bodies);
    weights.set(path, weight);
    await context.close();
  }
  await browser.close();
  return weights;
}
