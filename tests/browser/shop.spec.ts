import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { barriers, open, sideways, watch } from './site.ts';

test.use({ timezoneId: 'America/Chicago', reuseContext: false });

const part = (page: Page, name: string): Locator => page.locator(`#shop-part-${name}`);
const state = (page: Page) => page.locator('[data-part="shop-state"]');
const opened = async (page: Page, name: string): Promise<Locator> => {
  await part(page, name).locator('> summary').click();
  return part(page, name);
};
const fill = async (field: Locator, words: string) => {
  await field.fill(words);
  await field.blur();
};

test('a shop is written down from nothing, outlives a reload, and a calculator begins with it and sets it aside', {
  tag: '@width',
}, async ({ page, context, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, '/shop');
  await page.getByRole('button', { name: 'Begin small' }).click();
  await expect(state(page)).toContainText('It can be read, and is in use.');
  await fill(page.getByLabel('Name (needed)'), 'Barn by the lake');

  const air = await opened(page, 'air');
  await air.getByRole('combobox', { name: /^Nearest place/ }).fill('duluth');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await fill(air.getByLabel('Temperature by day'), '20');
  await fill(air.getByLabel('Temperature by night'), '11');
  await expect(air.getByLabel('Temperature by night')).toHaveValue('11 °C');

  // With keys alone: a machine and its width.
  await part(page, 'machines').locator('> summary').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Another machine')).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(page.getByLabel('Another machine')).toBeFocused();
  await page.keyboard.type('Planer');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  const planer = page.locator('[data-entry="machines/0"]');
  await expect(planer.locator('summary')).toBeFocused();
  await planer.getByLabel('Greatest width of a board').focus();
  await page.keyboard.type('13 in');
  await page.keyboard.press('Enter');

  const tools = await opened(page, 'tools');
  await tools.getByLabel('Add grits').fill('P120, P180, P220');
  await page.keyboard.press('Enter');
  await expect(tools.getByLabel('Grit 3')).toHaveValue('P220');
  const hours = await opened(page, 'hours');
  await hours.getByRole('button', { name: 'Add hours on Saturday' }).click();
  await fill(hours.getByLabel('Until (Saturday)'), '13:00');
  const prices = await opened(page, 'prices');
  await fill(prices.getByLabel('Margin wanted'), '125');
  await expect(prices.getByText('125 %', { exact: false }).first()).toBeVisible();
  await expect(state(page)).toContainText('One thing to mend.');
  await fill(prices.getByLabel('Margin wanted'), '25');
  await expect(state(page)).toContainText('It can be read, and is in use.');

  expect(await sideways(page)).toBe(0);
  const low = await page
    .locator('main :is(button, summary, select, input:not([type="file"]))')
    .evaluateAll((controls) =>
      controls
        .filter((control) => control.getClientRects().length > 0 && control.getBoundingClientRect().height < 44)
        .map((control) => control.outerHTML.slice(0, 120)),
    );
  expect(low).toEqual([]);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(new AxeBuilder({ page }).include('main'))).toEqual([]);
  }

  // What is typed last goes in though the page is left at once.
  await page.getByLabel('Name (needed)').fill('Barn on the lake');
  await page.reload();
  await expect(page.getByLabel('Name (needed)')).toHaveValue('Barn on the lake');
  await expect(page.locator('[data-part="shop-summary"]')).toContainText('20 °C by day; 11 °C by night');
  await page.getByRole('button', { name: 'Text', exact: true }).click();
  await expect(page.getByRole('textbox', { name: 'The record' })).toHaveValue(/sat: \["?09:00-13:00"?\]/);
  await page.getByRole('button', { name: 'Form', exact: true }).click();

  // Another window writes; what is being typed here stays.
  const second = await context.newPage();
  await open(second, '/shop');
  await page.getByLabel('Name (needed)').focus();
  await opened(second, 'air');
  await fill(second.getByLabel('Temperature by day'), '19');
  await expect(page.locator('[data-part="shop-summary"]')).toContainText('19 °C by day');
  await second.close();

  await open(page, '/calculators/cure-clock');
  await expect(page.locator('main')).toContainText('With the values of Barn on the lake, your shop record.');
  await expect(page.getByLabel(/^By night/)).toHaveValue('11 °C');
  await page.getByRole('button', { name: 'Set them aside' }).click();
  // The worked case of the page has one temperature.
  await expect(page.getByLabel(/^By night/)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Take them' })).toBeVisible();
  expect(complaints).toEqual([]);
});
