import { expect, test } from '@playwright/test';
import { stripHoldsVerdict } from './calculator-on-a-phone.ts';
import { addStyle, open } from './site.ts';

test('the answer about a wood stands in the first screen', { tag: '@width' }, async ({ page, viewport }) => {
  await open(page, '/woods/white-ash');
  for (const words of ['Side hardness', 'Movement', 'Pores', 'Touching food']) {
    const box = await page.locator('dl').first().getByText(words, { exact: true }).boundingBox();
    expect(box && box.y + box.height, words).toBeLessThanOrEqual(viewport?.height ?? 0);
  }
});

test('what has the focus never lies under the strip with the answer', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  for (const path of ['/calculators/resin-dose', '/calculators/pour-heat', '/calculators/seasonal-movement']) {
    await open(page, path);
    const fields = page.locator('[data-calculator] form :is(input, select)');
    const strip = page.locator('[data-part="glance"]');
    for (const field of await fields.all()) {
      if (!(await field.isVisible())) continue;
      await field.evaluate((element: HTMLElement) => element.focus());
      await expect(strip).toBeVisible();
      // The page is brought clear of it behind the paint of the field.
      const isUnder = () =>
        field.evaluate((element) => {
          const above = document.querySelector('[data-part="glance"]')?.getBoundingClientRect();
          const own = element.getBoundingClientRect();
          return !above || above.height === 0 || (own.bottom > above.top && own.top < above.bottom);
        });
      const which = await field.evaluate((element) => element.outerHTML.slice(0, 120));
      await expect.poll(isUnder, `${path}: ${which}`).toBe(false);
    }
  }
});

test('the strip with the answer comes once somebody is in the form, never over the field that they are in, and stays for a case of their own', {
  tag: '@width',
}, async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await open(page, '/calculators/seasonal-movement');
  const strip = page.locator('[data-part="glance"]');
  const field = page.getByLabel('Width across the grain', { exact: true });
  await expect(strip).toBeHidden();
  // The field lies where the strip will come.
  await field.evaluate((element) =>
    window.scrollBy(0, element.getBoundingClientRect().bottom - window.innerHeight + 4),
  );
  await field.click();
  await expect(strip).toBeVisible();
  const room = () =>
    page.evaluate(() => {
      const edge = (element: Element | null) => element?.getBoundingClientRect();
      const above = edge(document.querySelector('[data-part="glance"]'))?.top ?? Number.NaN;
      return above - (edge(document.activeElement)?.bottom ?? Number.NaN);
    });
  await expect.poll(room).toBeGreaterThanOrEqual(0);
  await page.getByRole('heading', { level: 1 }).click();
  await expect(strip).toBeHidden();
  await field.fill('287 mm');
  await page.getByRole('heading', { level: 1 }).click();
  await expect(page).toHaveURL(/width=287/);
  await expect(strip).toBeVisible();
  await strip.click();
  await expect(page.locator('[data-calculator] [data-part="verdict"]').first()).toBeInViewport();
});

test('what is pressed with a thumb is at least 44 pixels high', { tag: '@width' }, async ({ page }) => {
  for (const path of ['/', '/woods', '/woods/white-ash', '/calculators/seasonal-movement']) {
    await open(page, path);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button, select, input:not([type=radio], [type=checkbox]), nav a')]
        .filter((element) => element.offsetParent !== null && element.getBoundingClientRect().height < 44)
        .map((element) => element.outerHTML.slice(0, 120)),
    );
    expect(small, path).toEqual([]);
  }
});

test('no page scrolls sideways on a narrow phone with letters twice as large', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  for (const path of ['/woods/white-ash', '/woods/commercial-red-oak', '/how-to/flattening-a-wide-board']) {
    await open(page, path);
    await addStyle(page, 'html { font-size: 200% !important }');
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(over, path).toBeLessThanOrEqual(0);
  }
});

test('the strip at the foot of a phone holds the longest verdicts that random cases found', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  for (const path of [
    '/calculators/cure-clock?dayTemperature=3+%C2%B0C&nightTemperature=16+%C2%B0C&warmHours=9+h&shopTemperature=',
    '/calculators/food-contact?resinPlace=under-food&resin=fast-coating-1-1&market=eu',
  ]) {
    await open(page, path);
    await stripHoldsVerdict(page, path);
  }
});
