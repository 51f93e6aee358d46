import { expect, test } from '@playwright/test';
import { htmlOf } from './site.ts';

test.use({ javaScriptEnabled: false });

test('a wood can be read', async ({ page }) => {
  await page.goto('/woods/sugar-maple');
  await expect(page.getByRole('heading', { level: 1, name: 'Sugar maple' })).toBeVisible();
  await expect(page.locator('main')).toContainText('A 300 mm flatsawn board gains', { useInnerText: true });
  await expect(page.getByText('1.00 × sugar maple').or(page.getByText('1 × sugar maple'))).toBeVisible();
  await expect(page.getByRole('row', { name: /Tangential shrinkage.*9\.9 %.*Table 4-3/ })).toBeVisible();
});

test('a calculator shows the answer of its worked case', async ({ page }) => {
  for (const id of ['seasonal-movement', 'width-change', 'equilibrium-moisture']) {
    await page.goto(`/calculators/${id}`);
    await expect(page.locator('output').first()).toHaveText(/\d/);
  }
});

test('a calculator says that it needs scripts for other numbers, and shows nothing to press', async ({ page }) => {
  for (const path of ['/calculators/care-card', '/how-to/food-contact']) {
    await page.goto(path);
    // The driven browser switches scripts off after it has read the page, and so shows no <noscript>.
    expect(htmlOf(path)).toMatch(/<noscript><p>Scripts are off, so this is the worked case/);
    await expect(page.locator('[data-calculator]').getByRole('button')).toHaveCount(0);
  }
});

test('the index of woods is a full table', async ({ page }) => {
  await page.goto('/woods');
  expect(await page.locator('table tbody tr').count()).toBeGreaterThan(200);
  await expect(page.getByRole('row', { name: /Black cherry.*Prunus serotina/ })).toBeVisible();
});

test('the rooms of the site can be reached', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'How-to' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.getByRole('link', { name: 'Choosing a wood' }).first().click();
  await expect(page.getByRole('heading', { level: 1, name: 'Choosing a wood' })).toBeVisible();
  await expect(page.getByText(/\d+ N/).first()).toBeVisible();
});

test('what does nothing is not there, and a line says that it needs scripts', async ({ page }) => {
  for (const path of [
    '/',
    '/woods',
    '/resin-sheets',
    '/bench',
    '/kept',
    '/how-to/choosing-a-wood',
    '/reference/tables',
    '/reference/rules',
    '/reference/rules/resin',
    '/reference/method-format',
    '/no-such-page',
  ]) {
    await page.goto(path);
    // The fields of a calculator show its worked case, under a line of their own.
    const idle = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button, input, select, textarea')]
        .filter((control) => control.checkVisibility() && !control.closest('[data-calculator]'))
        .map((control) => control.outerHTML.slice(0, 100)),
    );
    expect(idle, path).toEqual([]);
    if (/woods|sheets|kept|^\/$/.test(path)) await expect(page.locator('.without-scripts').first(), path).toBeVisible();
  }
});
