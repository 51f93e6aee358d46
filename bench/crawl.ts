import { readdirSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';
import { linkFault, pageOf } from './crawl/links.ts';
import { pageFacts } from './crawl/page-facts.ts';
import { spoken } from './crawl/spoken.ts';
import { serve } from './serve.ts';

/*
 * Opens every page of a built site in a real browser, as wide as a desk and as narrow as 320 px, and says what is wrong with it.
 *
 *   npx tsx bench/crawl.ts [--without-axe] [folder] [part of a path …]
 *
 * axe takes most of the time: about eight seconds a page on two cores, the rest one. Of a table it looks at the first rows, since
 * the others are like them, and not at the drawn twin of a formula, which is hidden from all but the eye and takes minutes.
 */
const kinds = [
  'page that does not come to life',
  'console error or warning',
  'hydration error',
  'error thrown',
  'request that failed',
  'request to another origin',
  'broken link',
  'broken anchor',
  'image without alt text',
  'drawing without a name',
  'picture without a name, as heard',
  'control without a name, as heard',
  'landmark like another, as heard',
  'id that stands twice',
  'heading out of order',
  'title missing or that of another page',
  'scrolls sideways at 320 px',
  'axe, 1280 px, light',
  'axe, 320 px, dark',
] as const;
type Kind = (typeof kinds)[number];

interface Finding {
  kind: Kind;
  page: string;
  what: string;
}

const withoutAxe = process.argv.includes('--without-axe');
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds, one line a place. */
async function faultsByAxe(page: Page): Promise<string[]> {
  if (withoutAxe) return [];
  const axe = new AxeBuilder({ page }).withTags(tags).setLegacyMode(true);
  axe.exclude('.katex-html').exclude('tbody tr:nth-child(n + 5)');
  const { violations } = await axe.options({ resultTypes: ['violations'] }).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
}

interface Told {
  findings: Finding[];
  ids: Set<string>;
  links: { href: string; text: string }[];
  title: string;
}

/** Look at one page in both widths and both colours. */
async function look(context: BrowserContext, origin: string, path: string): Promise<Told> {
  const findings: Finding[] = [];
  const add = (kind: Kind, whats: readonly string[]) => {
    for (const what of whats) findings.push({ kind, page: path, what });
  };
  const page = await context.newPage();
  page.on('console', (message) => {
    // The look itself keeps the worker away, so that every page comes from the server.
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    if (!['error', 'warning'].includes(message.type())) return;
    // The page for what is not there is sent as such.
    if (path === '/404' && message.text().includes('404')) return;
    add('console error or warning', [message.text()]);
  });
  page.on('pageerror', (error) =>
    add(/hydrat|React error #(418|421|422|423|425)/i.test(error.message) ? 'hydration error' : 'error thrown', [
      error.message.slice(0, 200),
    ]),
  );
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(data|blob):/.test(url)) add('request to another origin', [url]);
  });
  page.on('response', (response) => {
    if (response.status() >= 400 && path !== '/404') add('request that failed', [response.url()]);
  });
  try {
    await page.goto(origin + path, { waitUntil: 'load', timeout: 60_000 });
    await page
      .waitForFunction(() => document.documentElement.dataset.hasHydrated === 'true', undefined, { timeout: 30_000 })
      .catch(() => add('page that does not come to life', [path]));
    await page.evaluate(() => document.fonts.ready);
    const facts = await page.evaluate(pageFacts);
    add('image without alt text', facts.images);
    add('drawing without a name', facts.drawings);
    add('id that stands twice', facts.duplicateIds);
    add('heading out of order', facts.headings);
    if (!facts.title || !facts.lang) add('title missing or that of another page', [`“${facts.title}” ${facts.lang}`]);
    const heard = await spoken(await context.newCDPSession(page));
    add('control without a name, as heard', heard.controls);
    add('picture without a name, as heard', heard.pictures);
    add('landmark like another, as heard', heard.landmarks);
    add('axe, 1280 px, light', await faultsByAxe(page));

    await page.emulateMedia({ colorScheme: 'dark' });
    await page.setViewportSize({ width: 320, height: 640 });
    await page.waitForFunction(() => document.documentElement.dataset.theme === 'dark', undefined, { timeout: 5000 });
    await page.evaluate(laidOut);
    const narrow = await page.evaluate(pageFacts);
    if (narrow.sideways > 0) add('scrolls sideways at 320 px', [`${narrow.sideways} px ${narrow.wide.join(' | ')}`]);
    add('axe, 320 px, dark', await faultsByAxe(page));
    return { findings, ids: new Set(facts.ids), links: facts.links, title: facts.title };
  } finally {
    await page.close();
  }
}

/** What a phone lays out late, and colours that change in steps, stand as a reader comes to see them: what nobody is near wears the colours of before. */
function laidOut(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync('* { content-visibility: visible !important; transition: none !important; }');
  document.adoptedStyleSheets.push(sheet);
}

/** Paths of all pages of a folder. */
export function pagesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => pageOf(`/${relative(folder, join(entry.parentPath, entry.name))}`))
    .sort();
}

async function main(): Promise<void> {
  const [folder = 'build', ...parts] = process.argv.slice(2).filter((word) => !word.startsWith('--'));
  const root = resolve(folder);
  const all = pagesOf(root);
  const paths = all.filter((path) => parts.length === 0 || parts.some((part) => path.includes(part)));
  const { origin, close } = await serve(root);
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const told = new Map<string, Told>();
  const start = performance.now();
  const queue = [...paths];
  const work = async () => {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 900 },
      locale: 'en-GB',
      // What a worker hands out is what a visit before has kept: the crawl looks at what the folder holds.
      serviceWorkers: 'block',
      colorScheme: 'light',
    });
    // tsx writes this helper into functions, and those that run in the page bring it along.
    await context.addInitScript('globalThis.__name = (made) => made');
    for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
      try {
        told.set(path, await look(context, origin, path));
      } catch (error) {
        const findings: Finding[] = [{ kind: 'error thrown', page: path, what: String(error).slice(0, 200) }];
        told.set(path, { findings, ids: new Set(), links: [], title: '' });
      }
      if (told.size % 20 === 0)
        process.stderr.write(`${told.size} of ${paths.length}, ${((performance.now() - start) / 1000).toFixed(0)} s\n`);
    }
  };
  await Promise.all([work(), work()]);
  await browser.close();
  close();

  const findings = [...told.values()].flatMap((each) => each.findings);
  const ids = new Map([...told].map(([path, each]) => [path, each.ids]));
  let links = 0;
  for (const [page, { links: ofPage }] of told) {
    for (const { href, text } of ofPage) {
      if (!href.startsWith(origin)) continue;
      links++;
      // Where a part of the pages is looked at, the others are known by their file alone.
      if (parts.length > 0 && !ids.has(pageOf(new URL(href).pathname))) continue;
      const fault = linkFault(href, root, ids);
      if (fault) findings.push({ kind: `broken ${fault}`, page, what: `${href.slice(origin.length)} “${text}”` });
    }
  }
  const titles = new Map<string, string>();
  for (const [page, { title }] of told) {
    const other = titles.get(title);
    if (other !== undefined) findings.push({ kind: 'title missing or that of another page', page, what: title });
    titles.set(title, page);
  }

  for (const { kind, page, what } of findings) console.log(`${kind}\t${page}\t${what}`);
  console.log(`\n${'what'.padEnd(42)}findings  pages`);
  for (const kind of kinds) {
    const ofKind = findings.filter((finding) => finding.kind === kind);
    const pages = new Set(ofKind.map(({ page }) => page)).size;
    console.log(`${kind.padEnd(42)}${String(ofKind.length).padStart(8)}${String(pages).padStart(7)}`);
  }
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  console.log(`${told.size} pages, ${links} links within the site, ${findings.length} findings, ${seconds} s`);
  process.exitCode = findings.length > 0 ? 1 : 0;
}

await main();
