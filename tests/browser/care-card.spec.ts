import { expect, type Page, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { open, sideways, watch } from './site.ts';

const long =
  'Bring it back for new oil, on any Saturday from ten to four, at the workshop by the lake; we sand it, oil it, look at the seam and tell you what we think of it.';

const address = (inputs: Readonly<Record<string, string>>) =>
  `/calculators/care-card?${new URLSearchParams({ market: 'eu', resinPlace: 'beside-food', food: 'fatty', ...inputs })}`;

/** Press the button without the browser's own window, as a reader would before the paper comes. */
async function press(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print four to a sheet' }).click();
}

// Short and long cards, each with the longest note that is taken.
for (const inputs of [
  { species: 'sugar-maple', finish: 'mineral-oil', papers: 'none', shop: 'Lakeside workshop', note: '' },
  { species: 'sugar-maple', finish: 'walnut-oil', papers: 'none', shop: 'Lakeside workshop', note: '' },
  { species: 'sugar-maple', finish: 'none', papers: 'none', shop: 'Lakeside workshop', note: long },
  {
    species: 'cocobolo',
    finish: 'walnut-oil',
    papers: 'both',
    shop: 'The Lakeside Workshop and Its Evening Cl',
    note: long,
  },
  { species: 'american-chestnut', finish: 'oil-with-driers', papers: 'both', shop: 'Lakeside workshop', note: long },
]) {
  test(`four cards stand whole on one sheet: ${inputs.species}, ${inputs.finish}`, async ({ page, baseURL }) => {
    const complaints = watch(page, baseURL ?? '');
    await open(page, address(inputs));
    await press(page);
    await page.emulateMedia({ media: 'print' });
    const cards = page.locator('[data-part="care-cards"] [data-part="card"]');
    await expect(cards).toHaveCount(4);
    const spilt = await cards.evaluateAll((all) => all.map((card) => card.scrollHeight - card.clientHeight));
    expect(spilt).toEqual([0, 0, 0, 0]);
    await expect(page.getByRole('heading', { level: 1 })).toBeHidden();
    for (const format of ['A4', 'Letter']) {
      await page.evaluate(() => document.documentElement.setAttribute('data-printing', 'care-cards'));
      const pdf = await PDFDocument.load(await page.pdf({ format }));
      expect(pdf.getPageCount()).toBe(1);
    }
    expect(complaints).toEqual([]);
  });
}

test('on a phone the card is as wide as there is room, and what is typed stays text', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(
    page,
    address({ species: 'sugar-maple', finish: 'mineral-oil', shop: '<img src=x onerror="window.ran=1">' }),
  );
  const card = page.locator('[data-part="cards"] [data-part="card"]');
  await expect(card).toContainText('<img src=x onerror="window.ran=1">');
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(await sideways(page)).toBe(0);
  const [inner, outer] = await card.evaluate((element) => [element.scrollWidth, element.clientWidth]);
  expect(inner).toBe(outer);
});

test('after printing the page is back', async ({ page }) => {
  await open(page, address({ species: 'sugar-maple', finish: 'mineral-oil' }));
  await press(page);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.locator('[data-part="care-cards"]')).toBeHidden();
});
