import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { open, sideways, watch } from './site.ts';

const sheets = '/resin-sheets';
const dose = '/calculators/resin-dose';

const entry = (page: Page, name: string) => page.locator(`[data-part="enter-sheet"] [data-field="${name}"] input`);
const kept = (page: Page) => page.locator('[data-part="kept-sheets"]');
const figure = (page: Page, name: string) => page.locator(`[data-figure="${name}"]`);
const stored = (page: Page) => page.evaluate(() => localStorage.getItem('kerf-resin-sheets'));

const bench = {
  name: 'Lakeside bench resin',
  mixByVolume: '2:1',
  densityA: '1.13 g/ml',
  densityB: '0.97 g/ml',
  potLife: '5 h',
  potLifeMass: '150 g',
  potLifeTemperature: '23 °C',
  greatestDepth: '15 mm',
  greatestDepthTemperature: '23 °C',
};

async function enter(page: Page): Promise<void> {
  await open(page, sheets);
  for (const [name, text] of Object.entries(bench)) await entry(page, name).fill(text);
  await page.getByRole('button', { name: 'Keep this sheet' }).click();
  await expect(kept(page)).toContainText('2:1 by volume, pot life 5 h, at most 15 mm in one pour');
}

async function load(page: Page, name: string, text: string): Promise<void> {
  await page
    .locator('[data-part="sheet-file"]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

test('an own data sheet is entered, kept over a reload and used in a dose', { tag: '@width' }, async ({
  page,
  baseURL,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await enter(page);
  await page.reload();
  await expect(kept(page)).toContainText(bench.name);
  await open(page, dose);
  await page.locator('[data-part="resin"]').selectOption({ label: bench.name });
  // 97 / (2 × 1.13): parts of hardener to 100 of resin by weight.
  await expect(figure(page, 'weightRatio')).toContainText('42.9');
  await expect(figure(page, 'weightRatio')).toContainText('maker’s data sheet');
  await expect(page).toHaveURL(/Lakeside/);
  // Overdo the depth: two layers, and no dose where one is insisted on.
  await page.locator('[data-field="depth"] input').fill('25 mm');
  await expect(figure(page, 'layers')).toContainText('2');
  await page.locator('[data-field="layers"] input').fill('1');
  const verdict = page.locator('[data-part="verdict"]');
  await expect(verdict).toHaveAttribute('data-level', 'stop');
  await expect(verdict).toContainText(/Pour 2 layers of/);
  await expect(figure(page, 'massA')).toBeHidden();
  expect(await sideways(page)).toBe(0);
  expect(complaints).toEqual([]);
});

test('an address carries a sheet to a browser that does not keep it, where it can be kept', async ({ page }) => {
  await open(page, `${dose}?mass=100+g&resin=${encodeURIComponent(JSON.stringify(bench))}`);
  await expect(page.locator('[data-part="resin"] option:checked')).toHaveText(`${bench.name} (in the address)`);
  await expect(figure(page, 'weightRatio')).toContainText('42.9');
  await page.getByRole('button', { name: 'Keep this sheet' }).click();
  await expect(page.locator('[data-part="resin"] option:checked')).toHaveText(bench.name);
  await open(page, sheets);
  await expect(kept(page)).toContainText(bench.name);
});

test('what is half typed survives a reload', async ({ page }) => {
  await open(page, sheets);
  await entry(page, 'name').fill('Half a sheet');
  await entry(page, 'potLife').fill('about 6');
  await page.reload();
  await expect(entry(page, 'name')).toHaveValue('Half a sheet');
  await expect(entry(page, 'potLife')).toHaveValue('about 6');
});

test('sheets go to a file and come back; the same name is asked about', async ({ page }) => {
  await enter(page);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export all' }).click(),
  ]);
  const text = readFileSync(await file.path(), 'utf8');
  expect(JSON.parse(text)).toEqual({ format: 'kerf-and-cure/resin-sheet', version: 1, sheets: [bench] });
  await page.getByRole('button', { name: `Remove ${bench.name}` }).click();
  await expect(kept(page)).toContainText('None yet');
  await load(page, 'shelf.json', text);
  await expect(kept(page)).toContainText('pot life 5 h');
  await load(page, 'shelf.json', text.replace('"5 h"', '"4 h"'));
  await expect(page.getByText('the file’s sheet of that name has other entries')).toBeVisible();
  await expect(kept(page)).toContainText('pot life 5 h');
  await page.getByRole('button', { name: `Replace the kept one ${bench.name}` }).click();
  await expect(kept(page)).toContainText('pot life 4 h');
});

test('a damaged import is refused with a clear message and loses nothing', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await enter(page);
  const before = await stored(page);
  for (const [name, text, message] of [
    ['cut.json', (before ?? '').slice(0, 200), /cut\.json cannot be read\. It is not whole JSON/],
    ['other.json', '{"format":"x"}', /other\.json cannot be read\. Its format is "x"/],
    ['page.html', '<script>window.ran = 1</script>', /page\.html cannot be read/],
    [
      'bad.json',
      (before ?? '').replace('"5 h"', '"soon"').replace(bench.name, 'Other'),
      /bad\.json, sheet 1, “Other”, pot life: “soon” is not a time/,
    ],
  ] as const) {
    await load(page, name, text);
    await expect(page.locator('[data-part="sheet-files"]')).toContainText(message);
    await expect(page.locator('[data-part="sheet-files"]')).toContainText('what is kept is unchanged');
    expect(await stored(page)).toBe(before);
  }
  await expect(kept(page)).toContainText(bench.name);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(complaints).toEqual([]);
});

test('stored text that is damaged is said, and put by before anything is written', async ({ page }) => {
  await page.addInitScript(() => {
    if (localStorage.getItem('kerf-resin-sheets') === null) localStorage.setItem('kerf-resin-sheets', '{"format":');
  });
  await open(page, sheets);
  await expect(kept(page)).toContainText('cannot be read whole');
  await entry(page, 'name').fill('First');
  await page.getByRole('button', { name: 'Keep this sheet' }).click();
  await expect(kept(page)).toContainText('First');
  expect(await page.evaluate(() => localStorage.getItem('kerf-resin-sheets-damaged'))).toBe('{"format":');
});

test('all of it by keyboard', { tag: '@width' }, async ({ page }) => {
  await open(page, sheets);
  await entry(page, 'name').focus();
  await page.keyboard.type('Typed');
  await entry(page, 'pigmentLimit').focus();
  await page.keyboard.type('5 %');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Keep this sheet' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(kept(page)).toContainText('Typed');
  await page.getByRole('button', { name: 'Change Typed' }).focus();
  await page.keyboard.press('Enter');
  await expect(entry(page, 'name')).toHaveValue('Typed');
  expect(await sideways(page)).toBe(0);
});

test('the mixing sheet prints by itself on one page, with its boxes', async ({ page }) => {
  await open(page, dose);
  const sheet = page.locator('[data-document="mixing-sheet"]');
  await expect(sheet.getByRole('checkbox', { name: /^Cup 4, .*Pour B$/ })).toBeVisible();
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  const print = sheet.getByRole('button', { name: 'Print this sheet' });
  const paper = page.locator('[data-part="paper"]');
  const done = () => page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  for (const format of ['A4', 'Letter']) {
    await print.click();
    await expect(paper).toHaveCount(1);
    const pdf = await PDFDocument.load(await page.pdf({ format }));
    expect(pdf.getPageCount()).toBe(1);
    await done();
  }
  // Once it is printed the page prints whole again.
  expect((await PDFDocument.load(await page.pdf({ format: 'A4' }))).getPageCount()).toBeGreaterThan(1);
  await print.click();
  await page.emulateMedia({ media: 'print' });
  const tick = paper.getByRole('checkbox', { name: /^Cup 1, .*Pour A$/, includeHidden: true }).first();
  // 6 mm and more, to be hit with a pencil in a glove.
  expect((await tick.boundingBox())?.width).toBeGreaterThan((6 / 25.4) * 96);
  await expect(paper.getByText('Danger.').first()).toBeVisible();
  await expect(page.locator('[data-calculator] form')).toBeHidden();
  await expect(page.locator('[data-figure="mass"]')).toBeHidden();
});
