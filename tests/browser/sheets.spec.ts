import { expect, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { open, sideways } from './site.ts';

const address = '/sheets?method=first-tray&pieces=2&start=2027-01-12';

for (const [which, least, most] of [
  ['student', 4, 7],
  ['teacher', 3, 7],
] as const) {
  test(`the ${which}’s sheet of a first tray prints on A4 and on Letter, with no page too many`, async ({ page }) => {
    for (const paper of ['a4', 'letter'] as const) {
      await open(page, `${address}&which=${which}&paper=${paper}`);
      await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
      const printed = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
      const [first] = printed.getPages();
      expect(first?.getWidth()).toBeCloseTo(paper === 'a4' ? 595 : 612, -1);
      expect(printed.getPageCount()).toBeGreaterThanOrEqual(least);
      expect(printed.getPageCount()).toBeLessThanOrEqual(most);
    }
  });
}

test('a sheet is chosen, stands as paper with its dangers before its steps, and is made for somebody @width', async ({
  page,
}) => {
  await open(page, address);
  await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
  const student = page.locator('[data-sheet="student"]');
  await expect(student.getByRole('heading', { name: /What can hurt you/ })).toBeVisible();
  await expect(student.getByRole('checkbox')).toHaveCount(23);
  await page.getByLabel('Made for').fill('Table <b>3</b>');
  await expect(student.getByText('Table <b>3</b>')).toBeVisible();
  await page.getByRole('checkbox', { name: 'The label', exact: true }).check();
  await expect(page).toHaveURL(/which=student%2Clabel/);
  await expect(page.locator('[data-sheet="label"]')).toBeVisible();
  expect(await sideways(page)).toBe(0);
});

test('an address without a method leads on', async ({ page }) => {
  await open(page, '/sheets?method=no-such');
  await expect(page.getByText('There is no method “no-such” here')).toBeVisible();
});
