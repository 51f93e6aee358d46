import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { cacheName, type FileList, listName } from '../src/site/offline/kept-files.ts';
import { browserArguments, browserPath } from './browser.ts';

// A site that was built for a folder of its host, read without a network: `KERF_BASE_URL=/sub/dir/ npm run build`, then
// `npx tsx scripts/try-folder.ts [build]`. It is served with the headers of the site, visited once, and then walked with the server off.

const folder = resolve(process.argv[2] ?? 'build');
const port = 4197;
const at = /["'= ](\/[^"'= >]*)assets\/js\/main\./.exec(readFileSync(join(folder, '404.html'), 'utf8'))?.[1] ?? '/';
const origin = `http://localhost:${port}`;
const address = origin + at;
const faults: string[] = [];
const hold = (what: string, is: unknown, wanted: unknown) => {
  if (JSON.stringify(is) !== JSON.stringify(wanted))
    faults.push(`${what}: ${JSON.stringify(is)} where ${JSON.stringify(wanted)} is wanted`);
};

/** Pages by their address in the folder, and what their heading says. */
const pages: readonly (readonly [string, RegExp])[] = [
  ['', /./],
  ['woods/', /woods/i],
  ['woods/white-ash/', /white ash/i],
  ['calculators/resin-dose/', /resin/i],
  ['methods/first-tray/', /tray/i],
  ['bench/', /bench|method/i],
  ['batches/', /made/i],
  ['class/', /class/i],
  ['how-to/oily-rags/', /rags/i],
  ['how-to/resin-and-hardeners/', /resin/i],
  ['reference/sources/food/', /sources/i],
  // As people type them.
  ['how-to/oily-rags', /rags/i],
  ['how-to/oily-rags.html', /rags/i],
  ['nowhere/at/all', /no such page/i],
  ['offline/', /without a network/i],
];

const server = spawn(process.execPath, ['scripts/serve.mjs', folder, '--port', String(port)], { stdio: 'pipe' });
const ended = new Promise((done) => server.once('exit', done));
await new Promise((done) => server.stdout.once('data', done));
const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
try {
  const context = await browser.newContext({ locale: 'en-GB' });
  const page = await context.newPage();
  page.on('console', (message) => {
    // What is not there is said so by the browser too.
    if (message.type() === 'error' && !/404/.test(message.text())) faults.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`${page.url()}: ${error.message}`));
  page.on('request', (request) => {
    if (/^https?:/.test(request.url()) && !request.url().startsWith(address))
      faults.push(`${page.url()} asks outside its folder: ${request.url()}`);
  });
  await open(page, address);
  await manifestOf(page);
  const worker = await page.evaluate(async () => {
    const { scope, active } = await navigator.serviceWorker.ready;
    return [scope, active?.scriptURL.split('?')[0]];
  });
  hold('the worker’s scope and address', worker, [address, `${address}offline-worker.js`]);
  const { version } = JSON.parse(readFileSync(join(folder, listName), 'utf8')) as FileList;
  for (const layer of ['first', 'second'] as const)
    await keptWhole(page, cacheName(at, layer, version), `${address}?kept=${layer}`);
  console.log(`kept whole from ${address}`);

  server.kill();
  await ended;
  for (const [path, heading] of pages) {
    await open(page, address + path);
    const words = (await page.locator('h1').first().textContent()) ?? '';
    if (!heading.test(words)) faults.push(`${path}: its heading is “${words}”`);
  }
  await open(page, `${address}search/?q=bubbles`);
  await page
    .getByRole('main')
    .getByRole('link', { name: /bubbles/i })
    .first()
    .waitFor();
  await open(page, `${address}calculators/pour-heat/`);
  await page.getByRole('textbox').first().fill('12 mm');
  await page.locator('[data-part="answer"], [data-part="verdict"]').first().waitFor();
  await open(page, `${address}nowhere/at/all`);
  const links = await page.evaluate(() => [...document.links].map(({ href }) => href));
  hold(
    'links of the page for what is not there that leave the folder',
    links.filter((href) => !href.startsWith(address)),
    [],
  );
  await page.getByRole('link', { name: 'Woods', exact: true }).first().click();
  await page.waitForURL(`${address}woods/`);
  await page
    .getByRole('link', { name: /^White ash/ })
    .first()
    .click();
  await page.waitForURL(`${address}woods/white-ash/`);
} finally {
  server.kill();
  await browser.close();
}
for (const fault of faults) console.error(fault);
console.log(faults.length === 0 ? `Read without a network in ${at}: all is well.` : `${faults.length} faults`);
process.exitCode = faults.length === 0 ? 0 : 1;

/** Go to a page and wait until it is live. */
async function open(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.locator('html[data-has-hydrated="true"]').waitFor({ state: 'attached' });
}

/** Where the manifest says that the app begins and what belongs to it, and that its pictures are there. */
async function manifestOf(page: Page): Promise<void> {
  const href = await page.locator('link[rel="manifest"]').evaluate((link) => (link as HTMLLinkElement).href);
  hold('the address of the manifest', href, `${address}app.webmanifest`);
  const manifest = await (await page.request.get(href)).json();
  const from = (path: string) => new URL(path, href).href;
  hold('the start and scope of the app', [from(manifest.start_url), from(manifest.scope)], [address, address]);
  for (const { src } of manifest.icons) hold(`the picture ${src}`, (await page.request.get(from(src))).status(), 200);
}

/** Wait until a layer is kept whole. A promise is awaited here, which the runner of the browser would take for a yes. */
async function keptWhole(page: Page, name: string, entry: string): Promise<void> {
  const isKept = () =>
    page.evaluate(
      async (asked) =>
        (await caches.has(asked.name)) && (await (await caches.open(asked.name)).match(asked.entry)) !== undefined,
      { name, entry },
    );
  for (let looks = 0; !(await isKept()); looks += 1) {
    if (looks > 600) throw new Error(`${name} is not kept whole after ${looks} looks`);
    await page.waitForTimeout(500);
  }
}
