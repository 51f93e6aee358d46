import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test('a wood is found by a trade name, and Enter goes to it, or to the list where several woods bear it', async ({
  page,
}) => {
  await open(page, '/');
  const search = page.getByRole('searchbox', { name: 'Find anything' });
  await search.fill('honeyloc');
  await expect(page.getByRole('link', { name: /Honeylocust/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/woods\/honeylocust\/$/);
  await open(page, '/');
  await search.fill('hard map');
  await expect(page.getByRole('link', { name: /Sugar maple/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: /Sugar maple/ })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/woods\/sugar-maple\/$/);
  await expect(page.getByRole('heading', { level: 1, name: 'Sugar maple' })).toBeVisible();
});

test('a name that no wood bears is said to be unknown, and pages of that name are offered', async ({ page }) => {
  await open(page, '/');
  await page.getByRole('searchbox', { name: 'Find anything' }).fill('zzyzxqq');
  await expect(page.getByText('Nothing is found under these words')).toBeVisible();
  await page.getByRole('searchbox', { name: 'Find anything' }).fill('overheating');
  await page
    .getByRole('link', { name: /^Pouring without overheating/ })
    .first()
    .click();
  await expect(page).toHaveURL(/\/how-to\/pouring-without-overheating\/(#|$)/);
});

test('search, filters and order stand in the address and come back with it', { tag: '@width' }, async ({ page }) => {
  await open(page, '/woods');
  await page.getByRole('searchbox', { name: 'Name' }).fill('maple');
  await expect(page).toHaveURL(/q=maple/);
  await page.getByLabel('Order').selectOption('Hardest first');
  await expect(page).toHaveURL(/sort=hardest/);
  const first = page.locator('tbody tr').first();
  await expect(first).toContainText('Sugar maple');
  await page.reload();
  await expect(page.getByRole('searchbox', { name: 'Name' })).toHaveValue('maple');
  await expect(first).toContainText('Sugar maple');
  await expect(page.getByRole('status').filter({ hasText: /of \d+ woods/ })).toBeVisible();
});

test('a filter keeps what it names, and can be taken away', { tag: '@width' }, async ({ page }) => {
  await open(page, '/woods?kind=softwood');
  const kept = page.getByRole('status').filter({ hasText: 'woods' });
  await expect(kept).toContainText(/\d+ of \d+ woods/);
  await expect(page.getByText('Filters (1 set)')).toBeVisible();
  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(kept).toContainText(/^All \d+ woods/);
  await expect(page).toHaveURL(/\/woods\/$/);
});

test('up to four woods stand side by side, and the address keeps them', { tag: '@width' }, async ({ page }) => {
  await open(page, '/woods?q=maple');
  const boxes = page.getByRole('checkbox');
  for (let i = 0; i < 4; i++) await boxes.nth(i).check();
  await expect(boxes.nth(4)).toBeDisabled();
  const table = page.locator('section').filter({ hasText: 'Side by side' });
  await expect(table.getByRole('columnheader')).toHaveCount(4);
  await expect(page).toHaveURL(/compare=[a-z-]+,[a-z-]+,[a-z-]+,[a-z-]+$/);
  await page.reload();
  await expect(table.getByRole('columnheader')).toHaveCount(4);
  await table
    .getByRole('button', { name: /^Remove/ })
    .first()
    .click();
  await expect(table.getByRole('columnheader')).toHaveCount(3);
  await expect(boxes.nth(4)).toBeEnabled();
});

test('the board form opens the calculator with the wood and the width, units written out', async ({ page }) => {
  await open(page, '/');
  await page.getByRole('textbox', { name: /^Width/ }).fill('250');
  await page.getByRole('button', { name: 'Check the board' }).click();
  await expect(page).toHaveURL(/\/calculators\/seasonal-movement\/?\?species=white-ash&width=250\+mm/);
  await expect(page.locator('output').first()).toHaveText(/\d/);
});

test('the units switch turns every figure and is remembered', { tag: '@width' }, async ({ page }) => {
  await open(page, '/woods/white-ash');
  const facts = page.locator('dl').first();
  const read = { useInnerText: true };
  await expect(facts).toContainText(/\d N/, read);
  await expect(facts).not.toContainText('lbf', read);
  await page.getByRole('button', { name: 'inch', exact: true }).click();
  await expect(facts).toContainText(/\d lbf/, read);
  await expect(facts).toContainText('A 12 in flatsawn board', read);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Woods' }).click();
  const row = page.locator('tbody tr').filter({ hasText: 'White ash' }).first();
  await expect(row.getByText(/\d lbf$/)).toBeVisible();
  await expect(row.getByText(/\d N$/)).toBeHidden();
  await page.reload();
  await expect(page.getByRole('button', { name: 'inch', exact: true })).toHaveAttribute('aria-pressed', 'true');
});

test('four woods stand side by side on a phone, with nothing out of sight', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, '/woods?compare=sugar-maple,white-ash,black-walnut,northern-red-oak');
  const table = page.getByRole('table').first();
  await expect(table.getByRole('columnheader')).toHaveCount(4);
  await expect(table.getByRole('rowheader')).toHaveCount(9);
  const { width, room, over } = await table.evaluate((element) => ({
    width: element.scrollWidth,
    room: element.parentElement?.clientWidth ?? 0,
    over: [...element.querySelectorAll('td, th')].filter((cell) => cell.scrollWidth > cell.clientWidth + 1).length,
  }));
  expect(width).toBeLessThanOrEqual(room);
  expect(over).toBe(0);
});
