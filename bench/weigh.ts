import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';

/** Gzipped bytes that a browser fetched to show a page and make it answer, by kind of file. */
export interface Weight {
  html: number;
  css: number;
  js: number;
  /** The site's own faces, which a plain page has none of. */
  faces: number;
  /** Data, pictures, faces of formulas. */
  other: number;
  /** All of it. */
  total: number;
  /** The texts of its scripts. */
  scripts: string[];
}

/** What goals are stated in: a page without the site's own faces, in bytes. */
export const withoutFaces = ({ total, faces }: Pick<Weight, 'total' | 'faces'>): number => total - faces;

/** Addresses of the site's own faces; those of formulas stand elsewhere. */
const ownFace = /\/fonts\/kerf-[^/]*$/;

const kinds: Readonly<Record<string, 'html' | 'css' | 'js'>> = { document: 'html', stylesheet: 'css', script: 'js' };

/** Load pages of a served site in a fresh browser each, and weigh everything that they fetch until the network is quiet. */
export async function weigh(origin: string, paths: readonly string[]): Promise<Map<string, Weight>> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const weights = new Map<string, Weight>();
  for (const path of paths) {
    // Links in view are fetched ahead of a click; that is not the page's own weight, so the window is kept small.
    // A reader of millimetres, in which pages are sent: a page that must turn to inches asks for what works it out at once.
    const context = await browser.newContext({
      viewport: { width: 360, height: 300 },
      locale: 'en-GB',
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    const weight: Weight = { html: 0, css: 0, js: 0, faces: 0, other: 0, total: 0, scripts: [] };
    const bodies: Promise<void>[] = [];
    page.on('response', (response) => {
      bodies.push(
        response
          .body()
          .then((body) => {
            const size = gzipSync(body).length;
            const kind = response.request().resourceType();
            const key = ownFace.test(new URL(response.url()).pathname) ? 'faces' : (kinds[kind] ?? 'other');
            if (kind === 'script') weight.scripts.push(body.toString());
            weight[key] += size;
            weight.total += size;
          })
          .catch(() => undefined),
      );
    });
    await page.goto(`${origin}${path}`);
    // On a busy machine the network is quiet for a while before the page has come to life and asked for the rest.
    await page.waitForSelector('html[data-has-hydrated="true"]', { state: 'attached' });
    await page.waitForLoadState('networkidle');
    await Promise.all(bodies);
    weights.set(path, weight);
    await context.close();
  }
  await browser.close();
  return weights;
}
