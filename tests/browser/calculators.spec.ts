import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { open, watch } from './site.ts';

const path = '/calculators/seasonal-movement';

const field = (page: Page, name: string) =>
  page.locator(`[data-calculator="seasonal-movement"] [data-field="${name}"]`);
const input = (page: Page, name: string) => field(page, name).locator('input, textarea').first();
const headline = (page: Page) => page.locator('[data-figure="swing"] output');

test('answers while one types, and the address carries the case with its units', { tag: '@width' }, async ({
  page,
  baseURL,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, path);
  const before = await headline(page).textContent();
  await input(page, 'width').fill('600');
  await expect(headline(page)).not.toHaveText(before ?? '');
  await expect(page).toHaveURL(/width=600\+mm/);
  const after = await headline(page).textContent();
  await page.reload();
  await expect(input(page, 'width')).toHaveValue('600 mm');
  await expect(headline(page)).toHaveText(after ?? '');
  expect(complaints).toEqual([]);
});

test('a wood is found by a trade name, with keys alone', async ({ page }) => {
  await open(page, path);
  const wood = input(page, 'species');
  await wood.focus();
  await page.keyboard.type('hard map');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(wood).toHaveValue('Sugar maple');
  await expect(page).toHaveURL(/species=sugar-maple/);
});

test('an input that cannot be read is explained at its field and the last answer stays', async ({ page }) => {
  await open(page, path);
  const before = await headline(page).textContent();
  await input(page, 'width').fill('wide');
  await expect(field(page, 'width')).toContainText('“wide” is not a length');
  await expect(input(page, 'width')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText(/^Not updated: one input to mend/)).toBeVisible();
  await expect(headline(page)).toHaveText(before ?? '');
  await expect(input(page, 'width')).toHaveValue('wide');
});

test('a logger’s file becomes monthly means, and a damaged one changes nothing', async ({ page }) => {
  await open(page, path);
  await page.getByLabel('Own readings').check();
  const rows = Array.from({ length: 360 }, (_, day) => {
    const date = new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10);
    return `${date};${(68 + 4 * Math.sin(day / 58)).toFixed(1)};${(40 + 20 * Math.sin(day / 58 - 1)).toFixed(1)}`;
  });
  const csv = ['Date;Temperature (°F);Humidity (%)', ...rows].join('\n');
  const file = page.locator('input[type="file"]');
  await file.setInputFiles({ name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await expect(field(page, 'readings')).toContainText('log.csv:');
  const loaded = await input(page, 'readings').inputValue();
  expect(loaded).toMatch(/Jan/);
  // The message stands before the answer has been worked out.
  await expect(page.locator('[data-calculator] [aria-busy]')).toHaveCount(0);
  const answered = await headline(page).textContent();
  await file.setInputFiles({ name: 'broken.csv', mimeType: 'text/csv', buffer: Buffer.from('a,b\n1\n"') });
  await expect(field(page, 'readings')).toContainText('broken.csv:');
  await expect(field(page, 'readings')).toContainText('unchanged');
  await expect(input(page, 'readings')).toHaveValue(loaded);
  await expect(headline(page)).toHaveText(answered ?? '');
});

test('a panel is built stave by stave', { tag: '@width' }, async ({ page }) => {
  await open(page, path);
  await page.getByLabel('Panel', { exact: true }).check();
  await page.getByRole('button', { name: 'Add a stave' }).click();
  await page.getByLabel('Width, stave 4').fill('45');
  await page.getByLabel('Cut, stave 4').selectOption('quartersawn');
  await expect(page).toHaveURL(/staves=.*45\+mm%2C\+quartersawn/);
  await expect(page.locator('[data-figure="step"]')).toBeVisible();
});

test('turning to inches keeps the case and writes it in fractions', async ({ page }) => {
  await open(
    page,
    `${path}?species=white-ash&width=12+in&thickness=3%2F4+in&cut=flatsawn&moistureNow=8+%25&place=duluth-mn`,
  );
  await page.evaluate(() => localStorage.setItem('kerf-units', 'inch thirty-seconds'));
  await page.reload();
  await expect(input(page, 'width')).toHaveValue('12 in');
  await expect(page.locator('[data-figure="narrowest"]')).toContainText(/11 \d+\/\d+ in/);
});

test('the answer is downloaded as JSON and CSV, and the link copied', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, path);
  await page.getByText('Take it away', { exact: true }).click();
  const [json] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'JSON' }).click()]);
  const report = JSON.parse(readFileSync(await json.path(), 'utf8'));
  expect(report).toMatchObject({ calculator: 'seasonal-movement', figures: { swing: { unit: 'mm' } } });
  const [csv] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'CSV: question and figures' }).click(),
  ]);
  expect(readFileSync(await csv.path(), 'utf8')).toMatch(/^\ufeffPart,What,Value,Unit,[^\r]*\r\nAnswer,/);
  await page.getByRole('button', { name: 'Copy link' }).click();
  const link = new URL(await page.evaluate(() => navigator.clipboard.readText()));
  expect(link.pathname).toBe(`${path}/`);
  expect(link.searchParams.get('width')).toBe('280 mm');
});

test('a calculator of a page is fetched when it is asked for, opens in place and keeps to its own inputs', {
  tag: '@width',
}, async ({ page }) => {
  await open(page, '/how-to/seasonal-movement');
  const folds = page.locator('[data-part="calculator"]');
  await expect(folds.locator('input')).toHaveCount(0);
  const fold = page.locator('[data-calculator="width-change"]').first();
  const opener = fold.locator('button[aria-controls]').first();
  await opener.scrollIntoViewIfNeeded();
  const place = await opener.boundingBox();
  await opener.click();
  const width = fold.locator('[data-field="width"] input').first();
  await expect(width).toBeVisible();
  await expect(opener).toBeFocused();
  expect(Math.abs(((await opener.boundingBox())?.y ?? 0) - (place?.y ?? 0))).toBeLessThan(2);
  const line = fold.locator('[data-part="answer"]');
  const others = await page.locator('[data-calculator="seasonal-movement"] [data-part="answer"]').allTextContents();
  const before = await line.textContent();
  await width.fill('333');
  await expect(page).toHaveURL(/width-change\.width=333\+mm/);
  await expect(line).not.toHaveText(before ?? '');
  expect(await page.locator('[data-calculator="seasonal-movement"] [data-part="answer"]').allTextContents()).toEqual(
    others,
  );
  // Nothing typed is lost when it is closed, when the page comes anew, or when it is printed.
  const after = await line.textContent();
  await opener.click();
  await expect(width).toBeHidden();
  await expect(line).toHaveText(after ?? '');
  await page.reload();
  await expect(width).toHaveValue('333 mm');
  await page.emulateMedia({ media: 'print' });
  await expect(width).toBeHidden();
  await expect(fold.locator('[data-part="short-answer"]')).toContainText('333 mm');
});

test('text from the address is shown as text and never run', async ({ page }) => {
  await open(
    page,
    `${path}?species=${encodeURIComponent('<img src=x onerror="window.ran=1">')}&width=${encodeURIComponent('"><script>window.ran=1</script>')}`,
  );
  await expect(field(page, 'species')).toContainText('<img src=x');
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
});
