import { expect, test } from '@playwright/test';
import { open } from './site.ts';

for (const path of [
  '/woods/sugar-maple',
  '/calculators/width-change?species=white-ash&width=250+mm',
  '/how-to/choosing-a-wood',
]) {
  test(`${path} prints without what can only be pressed, with its address, and dark pages on white`, async ({
    page,
  }) => {
    await open(page, path);
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('navigation', { name: 'Main' })).toBeHidden();
    await expect(page.getByRole('button')).toHaveCount(0);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText(`kerf-and-cure.example${path}`)).toBeVisible();
    const [paper, ink] = await page.evaluate(() => {
      const { backgroundColor, color } = getComputedStyle(document.documentElement);
      return [backgroundColor, color];
    });
    expect([paper, ink]).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    for (const format of ['A4', 'Letter']) {
      const pdf = await page.pdf({ format, preferCSSPageSize: false });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      expect(pdf.length).toBeGreaterThan(10_000);
    }
    await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const ofDark = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(ofDark).toBe('rgb(255, 255, 255)');
  });
}

test('cautions stay on paper', async ({ page }) => {
  await open(page, '/how-to/salvaged-stock');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Old paint may hold lead')).toBeVisible();
});

test('a number on a mixing sheet stands beside its box and before its unit', async ({ page }) => {
  await open(page, '/calculators/resin-dose');
  await page.emulateMedia({ media: 'print' });
  const cell = page.locator('[data-document="mixing-sheet"] td:has(input):has(strong)').first();
  await expect(cell).toHaveCSS('white-space', 'nowrap');
  await expect(cell.locator('strong')).toHaveCSS('white-space', 'nowrap');
});

test('the answers to the questions of a page are folded on the screen, and the last sheet on paper', async ({
  page,
}) => {
  await open(page, '/how-to/oiling-and-waxing');
  const answers = page.locator('[data-part="answers"]');
  const sheet = page.locator('[data-part="answers-sheet"]');
  await expect(answers.getByRole('listitem').first()).toBeHidden();
  await answers.getByText('Answers').click();
  await expect(answers.getByRole('listitem').first()).toBeVisible();
  await expect(sheet).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  await expect(answers).toBeHidden();
  await expect(sheet.getByRole('heading', { name: 'Answers: Oiling and waxing' })).toBeVisible();
  await expect(sheet).toHaveCSS('break-before', 'page');
});
