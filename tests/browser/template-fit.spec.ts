import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { open, sideways, watch } from './site.ts';

const path = '/calculators/template-fit';

const field = (page: Page, name: string) => page.locator(`[data-calculator="template-fit"] [data-field="${name}"]`);
const figure = (page: Page, name: string) => page.locator(`[data-figure="${name}"]`);

/** A board of 12 by 8 in with a notch whose inside corners are round, 10 mm in radius, and a script that must not run. */
const ownDrawing = `<svg xmlns="http://www.w3.org/2000/svg" width="12in" height="8in" viewBox="0 0 304.8 203.2" onload="window.ran=1">
  <script>window.ran = 1</script>
  <g transform="translate(2 2)"><path d="M0 0H300V60H230A10 10 0 0 0 220 70V120A10 10 0 0 0 230 130H300V199H0Z"/></g>
</svg>`;

async function load(page: Page, name: string, text: string): Promise<void> {
  await field(page, 'drawing')
    .locator('input[type="file"]')
    .setInputFiles({ name, mimeType: 'image/svg+xml', buffer: Buffer.from(text) });
}

test('an own SVG is read, the bit moved until a corner fails, and the tiles downloaded', { tag: '@width' }, async ({
  page,
  baseURL,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, path);
  await page.getByLabel('My own drawing').check();
  await load(page, 'notch.svg', ownDrawing);
  await expect(field(page, 'drawing')).toContainText('notch.svg: 300.0 × 199.0 mm, no holes.');
  await expect(field(page, 'drawing')).toContainText('nothing of that was run or kept');
  await expect(figure(page, 'insideRadius')).toContainText('10 mm');
  await expect(figure(page, 'leftStanding')).toContainText('reaches every hollow');
  await field(page, 'bitDiameter').locator('input').fill('25 mm');
  await expect(figure(page, 'leftStanding')).toContainText('In 2 places');
  const tooWide = page.getByRole('listitem').filter({ hasText: 'The bit is too wide for a hollow of this outline' });
  await tooWide.getByRole('button', { name: 'Why' }).click();
  await expect(tooWide.getByText('The bit is too wide for a hollow of this outline')).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Template, PDF in tiles' }).click(),
  ]);
  const pdf = await PDFDocument.load(readFileSync(await file.path()));
  expect(pdf.getPageCount()).toBeGreaterThan(1);
  expect((pdf.getPage(0).getWidth() * 25.4) / 72).toBeCloseTo(210, 3);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(await sideways(page)).toBe(0);
  expect(complaints).toEqual([]);
});

test('the address holds the drawing, and gives it back', async ({ page }) => {
  await open(page, path);
  await page.getByLabel('My own drawing').check();
  await load(page, 'notch.svg', ownDrawing);
  await expect(page).toHaveURL(/drawing=M/);
  const length = await figure(page, 'boxLength').textContent();
  await page.reload();
  await expect(figure(page, 'boxLength')).toHaveText(length ?? '');
});

test('all of it by keyboard', async ({ page }) => {
  await open(page, path);
  const shapes = field(page, 'shape').locator('input[type="radio"]');
  await shapes.nth(4).focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByLabel('My own drawing')).toBeChecked();
  await expect(field(page, 'drawing').locator('textarea')).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.type('M0 0H200V100H100V200H0Z');
  await expect(figure(page, 'boxLength')).toContainText('200 mm');
  await field(page, 'drawing').locator('textarea').focus();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Load an SVG file' })).toBeFocused();
  // The browser's own window for files is not ours to test: that the key asks for it is.
  await field(page, 'drawing')
    .locator('input[type="file"]')
    .evaluate((input) =>
      input.addEventListener('click', (event) => {
        event.preventDefault();
        document.body.dataset.asked = 'file';
      }),
    );
  await page.keyboard.press('Enter');
  await expect(page.locator('body')).toHaveAttribute('data-asked', 'file');
  await load(page, 'notch.svg', ownDrawing);
  await expect(figure(page, 'boxLength')).toContainText('300 mm');
  await field(page, 'bitDiameter').locator('input').focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('25 mm');
  // The answer to half of what was typed says the same; the one after it may take the button away, and the place of the keys with it.
  await expect(page.locator('[data-calculator] [aria-busy]')).toHaveCount(0);
  await expect(figure(page, 'leftStanding')).toContainText('In 2 places');
  await page.getByRole('button', { name: 'Template, PDF in tiles' }).focus();
  const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(file.suggestedFilename()).toBe('template-a4.pdf');
});

test('a drawing that cannot be read is explained, and nothing is lost', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, path);
  await page.getByLabel('My own drawing').check();
  await load(page, 'notch.svg', ownDrawing);
  await expect(field(page, 'drawing')).toContainText('notch.svg: 300.0');
  const before = await field(page, 'drawing').locator('textarea').inputValue();
  const cases = {
    'broken.svg': ['<svg width="10mm"><path d="M0 0', 'not well-formed XML'],
    'open.svg': [
      '<svg width="100mm" viewBox="0 0 100 100"><path d="M0 0H100V50"/></svg>',
      'No path in the drawing is closed',
    ],
    'eight.svg': ['<svg width="100mm" viewBox="0 0 100 100"><path d="M0 0L100 80V0L0 50Z"/></svg>', 'crosses itself'],
    'huge.svg': ['<svg>'.padEnd(5.1 * 1024 * 1024, ' '), 'larger than 5 MB'],
  } as const;
  for (const [name, [text, words]] of Object.entries(cases)) {
    await load(page, name, text);
    await expect(field(page, 'drawing')).toContainText(words);
    await expect(field(page, 'drawing').locator('textarea')).toHaveValue(before);
  }
  await load(page, 'plain.svg', '<svg viewBox="0 0 40 20"><rect width="40" height="20"/></svg>');
  await expect(field(page, 'drawing')).toContainText('does not say how large it is');
  await field(page, 'drawing').getByLabel('Width of the finished outline').fill('240 mm');
  await page.getByRole('button', { name: 'Read it at this width' }).click();
  await expect(figure(page, 'boxLength')).toContainText('240 mm');
  expect(complaints).toEqual([]);
});
