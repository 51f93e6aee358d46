import { expect, test } from '@playwright/test';
import { open, pageKinds, sideways } from './site.ts';

// The project of this name starts the browser with letters of 32 px in place of 16, as a reader sets who sees badly.
for (const path of pageKinds()) {
  test(`${path} is no wider than a screen of 320 px`, async ({ page }) => {
    await open(page, path);
    expect(await page.evaluate(() => matchMedia('(width: 10em)').matches)).toBe(true);
    expect(await sideways(page)).toBe(0);
  });
}
