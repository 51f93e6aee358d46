import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';

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
