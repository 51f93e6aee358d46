import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import lighthouse from 'lighthouse';
import { browserArguments, browserPath } from '../scripts/browser.ts';
import { builtBareSite } from './bare-site.ts';
import { serve } from './serve.ts';

/** A page of each kind, with the calculators that have most to draw. */
export const kinds: readonly string[] = [
  '/',
  '/woods',
  '/woods/sugar-maple',
  '/how-to/bubbles',
  '/how-to/seasonal-movement',
  '/how-to/pouring-without-overheating',
  '/calculators/seasonal-movement',
  '/calculators/pour-heat',
  '/calculators/template-fit',
  '/calculators/stock-order',
  '/methods',
  '/methods/first-tray',
  '/bench',
  '/batches',
  '/reference/checks',
  '/reference/checks/resin',
  '/reference/evidence',
  '/reference/equations',
  '/reference/sources',
  '/reference/sources/woods',
  '/reference/rules',
  '/reference/rules/resin',
  '/reference/acts/resin',
  '/reference/tables/shrinkage-domestic',
];

/** What one look at a page gave: scores of 0 to 100, times in ms, shift as the sum of scores. */
export interface Look {
  performance: number;
  accessibility: number;
  practice: number;
  search: number;
  blocking: number;
  shift: number;
  largest: number;
}

const columns: readonly (readonly [keyof Look, string, number])[] = [
  ['performance', 'performance', 0],
  ['accessibility', 'access', 0],
  ['practice', 'practice', 0],
  ['search', 'search', 0],
  ['blocking', 'blocked ms', 0],
  ['shift', 'shift', 2],
  ['largest', 'largest ms', 0],
];

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

async function look(url: string, port: number): Promise<Look> {
  const result = await lighthouse(url, { port, output: 'json', logLevel: 'error' });
  if (!result) throw new Error(`Lighthouse gave nothing for ${url}.`);
  const { categories, audits, runtimeError } = result.lhr;
  if (runtimeError) throw new Error(`Lighthouse could not look at ${url}: ${runtimeError.message}`);
  const score = (id: string) => 100 * (categories[id]?.score ?? Number.NaN);
  const value = (id: string) => audits[id]?.numericValue ?? Number.NaN;
  return {
    performance: score('performance'),
    accessibility: score('accessibility'),
    practice: score('best-practices'),
    search: score('seo'),
    blocking: value('total-blocking-time'),
    shift: value('cumulative-layout-shift'),
    largest: value('largest-contentful-paint'),
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] as number) + (sorted[sorted.length >> 1] as number)) / 2;
}

function medianLook(looks: readonly Look[]): Look {
  const entries = columns.map(([key]) => [key, median(looks.map((one) => one[key]))]);
  return Object.fromEntries(entries) as Look;
}

/** A page looked at; the bare page's name stands first. */
export type Looks = Map<string, Look>;
export const barePage = 'bare page';

/**
 * Look at pages as Lighthouse's phone does, each as often, in turn, so that a busy minute of the machine falls on all of them.
 *
 * @param bare folder of the bare site
 * @param site folder of the built site
 * @param paths of the pages
 * @param times looks at each page, of which the median is taken
 */
export async function lookAt(bare: string, site: string, paths: readonly string[], times: number): Promise<Looks> {
  const bareServer = await serve(bare);
  const siteServer = await serve(site);
  const port = await freePort();
  const browser = await chromium.launch({
    executablePath: browserPath(),
    args: [...browserArguments, `--remote-debugging-port=${port}`],
  });
  const looks = new Map<string, Look[]>([[barePage, []], ...paths.map((path): [string, Look[]] => [path, []])]);
  try {
    for (let time = 0; time < times; time += 1)
      for (const [name, seen] of looks) {
        const url = name === barePage ? `${bareServer.origin}/plain` : `${siteServer.origin}${name}`;
        seen.push(await look(url, port));
      }
  } finally {
    await browser.close();
    bareServer.close();
    siteServer.close();
  }
  return new Map([...looks].map(([name, seen]) => [name, medianLook(seen)]));
}

/** A table of looks; what falls short of the bare page by more than it may is marked with a star. */
export function printLooks(looks: Looks, times: number): void {
  const bare = looks.get(barePage) as Look;
  const fallsShort = (key: keyof Look, { [key]: value }: Look): boolean => {
    if (key === 'performance') return value < bare.performance - 3;
    if (key === 'blocking') return value > bare.blocking + 100;
    if (key === 'shift') return value >= 0.005;
    return key !== 'largest' && value < 100;
  };
  console.log(
    `\nLighthouse, its phone, with gzip, median of ${times}; * short of the bare page, or of 100, or not still`,
  );
  console.log(`${''.padEnd(40)}${columns.map(([, title]) => title.padStart(12)).join('')}`);
  for (const [name, one] of looks) {
    const cells = columns.map(([key, , digits]) => `${one[key].toFixed(digits)}${fallsShort(key, one) ? '*' : ' '}`);
    console.log(`${name.padEnd(40)}${cells.map((cell) => cell.padStart(12)).join('')}`);
  }
}

// `tsx bench/lighthouse.ts [times] [paths with commas] [folder of the site]`: the built site beside the bare one.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [times = '5', paths = kinds.join(), folder] = process.argv.slice(2);
  const root = fileURLToPath(new URL('..', import.meta.url));
  printLooks(
    await lookAt(builtBareSite(root), folder ?? join(root, 'build'), paths.split(','), Number(times)),
    Number(times),
  );
}
