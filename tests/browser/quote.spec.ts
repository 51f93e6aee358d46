import { expect, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { open, sideways } from './site.ts';

test('from the page of a method to a quote that prints on one sheet @width', async ({ page }) => {
  await open(page, '/methods/first-tray?pieces=4&wood=black-cherry');
  await page.getByRole('link', { name: /^Sell it: a quote/ }).click();
  await expect(page).toHaveURL(/\/quote\/\?method=first-tray&pieces=4&wood=black-cherry/);
  const print = page.getByRole('button', { name: 'Print the quote' });
  await expect(print).toBeEnabled({ timeout: 60_000 });
  const sheet = page.locator('[data-sheet="quote"]');
  await expect(sheet).toContainText('Black cherry (Prunus serotina)');
  await expect(sheet).toContainText('No first day is agreed yet');

  await page.getByLabel('From: your name and address').fill('Lakeside <b>workshop</b>\n1 Pier Road');
  await page.getByLabel('For: the customer').fill('A. Buyer');
  await page.getByLabel('Number').fill('7');
  await page.getByLabel('First day of the work').fill('2027-01-12');
  const pieces = page.getByLabel('Pieces');
  await pieces.fill('-3');
  await expect(page.getByText('“-3” is not a whole number')).toBeVisible();
  await expect(sheet).toHaveCount(0);
  await expect(print).toBeDisabled();
  await pieces.fill('4');
  await expect(print).toBeEnabled({ timeout: 60_000 });
  await page.getByLabel('Price of a piece, if your own').fill('cheap');
  await expect(page.getByText('is not a sum of money')).toBeVisible();
  await page.getByLabel('Price of a piece, if your own').fill('$95');
  // No shop record stands here that names one.
  await expect(page.locator('[data-part="quote-notes"]')).toContainText('The currency is missing');
  await page.getByLabel('Currency').fill('USD');
  await expect(print).toBeEnabled({ timeout: 60_000 });
  await expect(sheet.getByText('Lakeside <b>workshop</b>')).toBeVisible();
  await expect(sheet).toContainText('$380.00');
  await expect(sheet).toContainText(/Planned ready by.*\w{3} 2027-\d\d-\d\d\. The day moves/);
  await expect(page.locator('[data-part="quote-notes"]')).toContainText('The price is yours alone');
  expect(await sideways(page)).toBe(0);

  for (const paper of ['a4', 'letter'] as const) {
    await page.getByLabel('Paper').selectOption(paper);
    const printed = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
    expect(printed.getPageCount()).toBe(1);
    expect(printed.getPages()[0]?.getWidth()).toBeCloseTo(paper === 'a4' ? 595 : 612, -1);
  }

  // Name and address stand ready the next time; the customer does not, unless somebody asked for it.
  await page.reload();
  await expect(page.getByLabel('From: your name and address')).toHaveValue(/Lakeside/);
  await expect(page.getByLabel('For: the customer')).toHaveValue('');
});

test('the listing is copied as it stands, and says nothing that nobody has shown', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, '/quote?method=class-of-twelve');
  const listing = page.locator('[data-part="listing"]');
  await expect(listing).toContainText('Wood: sugar maple (Acer saccharum).', { timeout: 60_000 });
  await listing.getByRole('button', { name: 'Copy the text' }).click();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(text).toMatch(/^Tray of the class/);
  expect(text).not.toMatch(/food safe|non-toxic|hygienic/i);
  await expect(listing.getByText('“food safe”')).toBeVisible();
});

test('an address without a method leads on', async ({ page }) => {
  await open(page, '/quote');
  await expect(page.getByText('No method is named in the address.')).toBeVisible();
});
