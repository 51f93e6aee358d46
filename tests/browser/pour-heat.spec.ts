import { expect, type Page, test } from '@playwright/test';
import { open, sideways, watch } from './site.ts';

const path = '/calculators/pour-heat';
const figure = (page: Page, name: string) => page.locator(`[data-figure="${name}"]`);
const depth = (page: Page) => page.locator('[data-field="depth"] input');
const sheet = {
  name: 'Lakeside bench resin',
  potLife: '5 h',
  potLifeMass: '150 g',
  potLifeTemperature: '23 °C',
  greatestDepth: '15 mm',
  greatestDepthTemperature: '23 °C',
};

test('a pour deeper than its sheet is warned of, with layers instead, and answered off the main thread', {
  tag: '@width',
}, async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, `${path}?depth=12+mm&shopTemperature=23+%C2%B0C&resin=${encodeURIComponent(JSON.stringify(sheet))}`);
  await expect(figure(page, 'sheetDepth')).toContainText('15 mm');
  await expect(figure(page, 'heatIndex')).toContainText('Inside the sheet');
  await depth(page).fill('40 mm');
  await expect(
    page.locator('[data-part="verdict"]').getByText(/^Do not pour 40 mm in one go: three layers/),
  ).toBeVisible();
  await expect(
    page.getByText('Deeper than the 15 mm that Lakeside bench resin allows in one pour at 23 °C'),
  ).toBeVisible();
  await expect(figure(page, 'layers')).toContainText('3');
  await expect(page.getByRole('region', { name: /^Layers, each with a heat index/ }).getByRole('row')).toHaveCount(4);
  expect(page.workers()).toHaveLength(1);
  expect(await sideways(page)).toBe(0);
  expect(complaints).toEqual([]);
});

test('without workers the page answers by itself', async ({ page }) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'Worker');
  });
  await open(page, path);
  await depth(page).fill('12 mm');
  await expect(figure(page, 'heatIndex')).toContainText('Inside the sheet');
});

test('a figure for experts in the address stands open, without one the groups are closed', async ({ page }) => {
  await open(page, path);
  await expect(page.locator('[data-field="filmTop"]')).toBeHidden();
  await page.locator('summary', { hasText: 'how heat moves' }).click();
  await expect(page.locator('[data-field="filmTop"]')).toBeVisible();
  await open(page, `${path}?filmTop=14`);
  await expect(page.locator('[data-field="filmTop"] input')).toBeVisible();
});
