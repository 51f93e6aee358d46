import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test('a case of a method is worked out, kept in the address and comes back with it', { tag: '@width' }, async ({
  page,
}) => {
  await open(page, '/methods/first-tray');
  const length = page.locator('[data-field="length"] input');
  await length.fill('420');
  // A blank is longer than the tray by its allowances: 507.9 mm for the tray of 400 mm as sent.
  await expect(page.locator('#step-order')).toContainText('each 528 mm', { timeout: 30_000 });
  await expect(page).toHaveURL(/\?length=420\+mm$/);
  await page.reload();
  await expect(length).toHaveValue('420 mm');
  await expect(page.getByRole('status').filter({ hasText: 'worked out' })).toHaveCount(0, { timeout: 30_000 });

  await length.fill('2 m');
  await expect(page.locator('[data-field="length"]')).toContainText('more than the method allows', { timeout: 30_000 });
  await expect(length).toHaveValue('2 m');
});

test('whoever only reads a method fetches nothing more, and what is typed before its code is there is answered', async ({
  page,
}) => {
  await open(page, '/methods/first-tray');
  const asked: string[] = [];
  let give: () => void = () => undefined;
  const given = new Promise<void>((resolve) => {
    give = resolve;
  });
  await page.route('**/assets/js/**', async (route) => {
    asked.push(route.request().url());
    await given;
    await route.continue();
  });
  const figure = page.locator('#step-stack button[aria-controls]').first();
  await figure.click();
  await expect(figure).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('#step-stack [data-open]').first()).toBeVisible();
  expect(asked).toEqual([]);
  const length = page.locator('[data-field="length"] input');
  await length.fill('420');
  await expect.poll(() => asked.length).toBeGreaterThan(0);
  give();
  await expect(page.locator('#step-order')).toContainText('each 528 mm', { timeout: 30_000 });
  await expect(length).toHaveValue('420');
  await expect(figure).toHaveAttribute('aria-expanded', 'true');
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

test('a reader of inches gets the case that an address holds, and every way from the page with it', async ({
  browser,
}) => {
  const context = await browser.newContext({ locale: 'en-US' });
  const page = await context.newPage();
  await page.goto('/methods/first-tray?pieces=4&wood=black-cherry');
  await expect(page.locator('[data-field="pieces"] input')).toHaveValue('4', { timeout: 30_000 });
  const ways = page.locator('[data-part="case-links"]');
  await expect(ways.getByRole('link', { name: 'Print its sheets' })).toHaveAttribute(
    'href',
    '/sheets/?method=first-tray&pieces=4&wood=black-cherry',
    { timeout: 30_000 },
  );
  await expect(page).toHaveURL(/\?pieces=4&wood=black-cherry$/);
  await ways.getByRole('link', { name: 'Change the method' }).click();
  await expect(page).toHaveURL(/\/bench\/\?draft=[0-9a-f]{24}$/, { timeout: 30_000 });
  await context.close();
});
