import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test('a case of a method is worked out, kept in the address and comes back with it', { tag: '@width' }, async ({
  page,
}) => {
  await open(page, '/methods/first-tray');
  const length = page.locator('[data-field="length"] input');
  await length.fill('420');
  await expect(page.locator('#step-order')).toContainText('420', { timeout: 30_000 });
  await expect(page).toHaveURL(/\?length=420\+mm$/);
  await page.reload();
  await expect(length).toHaveValue('420 mm');
  await expect(page.getByRole('status')).toHaveText('', { timeout: 30_000 });

  await length.fill('2 m');
  await expect(page.locator('[data-field="length"]')).toContainText('more than the method allows', { timeout: 30_000 });
  await expect(length).toHaveValue('2 m');
});

test('a method is whole without JavaScript', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/methods/class-of-twelve');
  await expect(page.locator('li[id^="step-"]').first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Times' })).toBeVisible();
  await expect(page.getByRole('img', { name: /^Timetable of/ })).toBeVisible();
  await context.close();
});
