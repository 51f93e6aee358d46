import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

const build = fileURLToPath(new URL('../../build', import.meta.url));

/** Path of every page of the built site, from its site map, without the slash behind it. */
export function everyPath(): string[] {
  const map = readFileSync(`${build}/sitemap.xml`, 'utf8');
  return [...map.matchAll(/<loc>https?:\/\/[^/<]+([^<]*)<\/loc>/g)].map(
    (match) => match[1]?.replace(/(?<=.)\/$/, '') || '/',
  );
}

/** The HTML of a page as the server sends it. */
export function htmlOf(path: string): string {
  return readFileSync(`${build}${path === '/' ? '' : path}/index.html`, 'utf8');
}

/** One page of each kind, and every calculator. */
export function pageKinds(): string[] {
  const calculators = everyPath().filter((path) => path.startsWith('/calculators/'));
  return [
    '/',
    '/woods',
    '/woods/white-ash',
    '/search',
    '/offline',
    '/calculators',
    ...calculators,
    '/access',
    '/resin-sheets',
    '/sheets',
    '/quote',
    '/batches',
    '/bench',
    '/privacy',
    '/methods',
    '/methods/first-tray',
    '/how-to',
    '/how-to/choosing-a-wood',
    '/how-to/seasonal-movement',
    '/reference',
    '/reference/evidence',
    '/reference/equations',
    '/reference/equations/moisture',
    '/reference/checks',
    '/reference/checks/resin',
    '/reference/sources',
    '/reference/sources/food',
    '/reference/tables',
    '/reference/tables/shrinkage-domestic',
    '/reference/food-rules',
    '/reference/rules',
    '/reference/rules/resin',
    '/reference/rules/besides',
    '/reference/acts',
    '/reference/acts/resin',
    '/reference/method-format',
    '/reference/shop-record',
    '/reference/schemas',
    '/reference/library',
    '/reference/library/movement',
  ];
}

/** Go to a page and wait until it is live: before that a key or a click goes nowhere. */
export async function open(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true', { timeout: 30_000 });
  // A case in the address is answered by what is fetched, not by the page as sent.
  if (/^\/calculators\/.*\?/.test(path)) await expect(page.locator('[data-part="sent"]')).toHaveCount(0);
}

/** Everything that a page complains of, and every request that leaves the site, from now on. */
export function watch(page: Page, origin: string): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    // Said by the runner of the tests in place of the browser’s worker.
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    if (message.type() === 'error' || message.type() === 'warning')
      complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !url.startsWith('data:') && !url.startsWith('blob:'))
      complaints.push(`request: ${url}`);
  });
  return complaints;
}

/** Add rules of style to a page. A `style` element, as the tool would write, is what the policy of the site forbids. */
export async function addStyle(page: Page, css: string): Promise<void> {
  await page.evaluate((rules) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(rules);
    document.adoptedStyleSheets.push(sheet);
  }, css);
}

/** How many pixels a page can be scrolled sideways. */
export function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** What axe finds, one line a rule, with the elements. */
export async function barriers(axe: AxeBuilder): Promise<string[]> {
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
