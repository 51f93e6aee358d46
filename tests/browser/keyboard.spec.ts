import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test('the first key skips the head of the page', async ({ page }) => {
  await open(page, '/woods/white-ash');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to main content' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const inMain = await page.evaluate(() => document.activeElement?.closest('main') !== null);
  expect(inMain).toBe(true);
});

test('a wood is found with keys alone', async ({ page }) => {
  await open(page, '/');
  const box = page.getByRole('searchbox', { name: 'Find anything' });
  await box.focus();
  await page.keyboard.type('walnut');
  const first = page.locator('[data-part="found"] a').first();
  await expect(first).toContainText(/walnut/i);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  await expect(first).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(box).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/woods\/[a-z-]*walnut/);
});

test('everything that takes the focus shows it', { tag: '@width' }, async ({ page }) => {
  await open(page, '/woods?q=maple');
  const unmarked: string[] = [];
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press('Tab');
    const mark = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
      return {
        html: element.outerHTML.slice(0, 100),
        shown: (outlineStyle !== 'none' && outlineWidth !== '0px') || boxShadow !== 'none',
      };
    });
    if (mark && !mark.shown) unmarked.push(mark.html);
  }
  expect(unmarked).toEqual([]);
});

test('a wood is put beside another with keys alone', async ({ page }) => {
  await open(page, '/woods?q=cherry');
  await page.getByRole('checkbox').first().focus();
  await page.keyboard.press('Space');
  await expect(page.locator('section').filter({ hasText: 'Side by side' })).toBeVisible();
  await expect(page).toHaveURL(/compare=/);
});
