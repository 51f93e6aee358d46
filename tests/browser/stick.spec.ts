import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { unzipSync } from 'fflate';
import { makeStick } from '../../src/site/stick/make.ts';

const room = resolve('.kerf/stick');
const start = pathToFileURL(join(room, 'kerf-and-cure/start.html')).href;
const at = (page: string) => new URL(`site/${page}index.html`, start).href;

// A stick has no network.
test.use({ offline: true });
// It is made once.
test.describe.configure({ mode: 'serial' });

test.beforeAll(async () => {
  test.setTimeout(240_000);
  const { zip, pages } = await makeStick(resolve('build'));
  // What the page on publishing says of its weight.
  expect(zip.length).toBeLessThan(25e6);
  expect(pages).toBeGreaterThan(400);
  rmSync(room, { recursive: true, force: true });
  for (const [name, bytes] of Object.entries(unzipSync(zip))) {
    mkdirSync(dirname(join(room, name)), { recursive: true });
    writeFileSync(join(room, name), bytes);
  }
});

test.afterAll(() => rmSync(room, { recursive: true, force: true }));

/** All that goes wrong from now on, and all that is asked of anything but the stick. */
function watchFiles(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    // Said by the runner of the tests in place of the browser’s worker.
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    if (!/^(file|blob|data):/.test(request.url())) complaints.push(`request: ${request.url()}`);
  });
  return complaints;
}

const live = (page: Page) =>
  expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true', { timeout: 30_000 });

test('a double click opens the handbook; its links, the search and the list of woods work without a server', async ({
  page,
}) => {
  const complaints = watchFiles(page);
  await page.goto(start);
  await expect(page).toHaveURL(at(''));
  await live(page);
  await page.getByRole('searchbox', { name: 'Find anything' }).fill('hard maple');
  await page
    .getByRole('link', { name: /Sugar maple/ })
    .first()
    .click();
  await expect(page).toHaveURL(at('woods/sugar-maple/'));
  await live(page);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Woods' }).click();
  await live(page);
  await page.getByRole('searchbox', { name: 'Name' }).fill('walnut');
  await expect(page).toHaveURL(`${at('woods/')}?q=walnut`);
  await page.reload();
  await expect(page.getByRole('searchbox', { name: 'Name' })).toHaveValue('walnut');
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Sugar maple' })).toBeVisible();
  expect(complaints).toEqual([]);
});

test('calculators, one with a worker too, and a method answer what is typed', async ({ page }) => {
  const complaints = watchFiles(page);
  const sheet = {
    name: 'Lakeside bench resin',
    potLife: '5 h',
    potLifeMass: '150 g',
    potLifeTemperature: '23 °C',
    greatestDepth: '15 mm',
    greatestDepthTemperature: '23 °C',
  };
  await page.goto(`${at('calculators/pour-heat/')}?depth=12+mm&resin=${encodeURIComponent(JSON.stringify(sheet))}`);
  await live(page);
  await page.locator('[data-field="depth"] input').fill('40 mm');
  await expect(
    page.locator('[data-part="verdict"]').getByText(/^Do not pour 40 mm in one go: three layers/),
  ).toBeVisible({ timeout: 30_000 });
  await expect(page).toHaveURL(/depth=40\+mm/);
  expect(page.workers().map((worker) => worker.url().slice(0, 5))).toEqual(['blob:']);
  await page.goto(at('methods/first-tray/'));
  await live(page);
  await page.locator('[data-field="length"] input').fill('420');
  await expect(page.locator('#step-order')).toContainText('each 528 mm', { timeout: 30_000 });
  expect(complaints).toEqual([]);
});

test('every room opens, and so does a page of each kind', async ({ page }) => {
  const complaints = watchFiles(page);
  for (const room of [
    'bench/',
    'batches/',
    'class/',
    'shop/',
    'kept/',
    'sheets/',
    'quote/',
    'resin-sheets/',
    'methods/',
    'how-to/',
    'how-to/bubbles/',
    'reference/checks/',
    'reference/tables/shrinkage-domestic/',
  ]) {
    await page.goto(at(room));
    await live(page);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(complaints, room).toEqual([]);
  }
});
