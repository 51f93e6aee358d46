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
  await page.getByRole('button', { name: 'Print this sheet' }).click();
}

// Short and long cards, each with the longest note that is taken.
const cases: readonly Readonly<Record<string, string>>[] = [
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
];

/** Pixels by which what stands on each card of the sheet goes over its foot or its side. */
const spilt = (page: Page) =>
  page
    .locator('[data-part="paper"] [data-part="card"]')
    .evaluateAll((all) =>
      all.map((card) => Math.max(card.scrollHeight - card.clientHeight, card.scrollWidth - card.clientWidth)),
    );

/** The size in which a card is set, pt. */
const sizeOf = (page: Page) =>
  page
    .locator('[data-document="card"] [data-part="card"]')
    .first()
    .evaluate((card) => Number.parseFloat((card as HTMLElement).style.getPropertyValue('--type-size')));

for (const inputs of cases) {
  test(`two folded cards stand whole on a sheet: ${inputs.species}, ${inputs.finish}`, async ({ page, baseURL }) => {
    const complaints = watch(page, baseURL ?? '');
    await open(page, address(inputs));
    await press(page);
    await page.emulateMedia({ media: 'print' });
    const cards = page.locator('[data-part="paper"] [data-part="card"]');
    // A card of two panels is folded too, and has nothing inside; for a point of type none takes a second side.
    const sides = inputs.papers === 'none' ? 1 : 2;
    await expect(cards).toHaveCount(4 * sides);
    expect((await spilt(page)).every((over) => over === 0)).toBe(true);
    const size = await sizeOf(page);
    expect(size).toBeLessThanOrEqual(11);
    expect(size).toBeGreaterThanOrEqual(sides === 1 ? 10 : 11);
    await expect(page.getByRole('heading', { level: 1 })).toBeHidden();
    for (const format of ['A4', 'Letter']) {
      // What the driven browser prints ends the printing alone.
      await page.emulateMedia({ media: 'screen' });
      await press(page);
      await page.emulateMedia({ media: 'print' });
      const pdf = await PDFDocument.load(await page.pdf({ format }));
      expect(pdf.getPageCount()).toBe(sides);
    }
    expect(complaints).toEqual([]);
  });
}

// Where the faces of the site do not arrive the machine's own are drawn, and some are a sixth wider.
for (const [what, spacing] of [
  ['in the faces of this machine', '0'],
  ['in faces a sixth wider', '0.08em'],
]) {
  test(`cards stand whole on their sheet ${what}`, async ({ page }) => {
    await page.route(/\/fonts\//, (route) => route.abort());
    await page.addInitScript((letters) => {
      document.addEventListener('DOMContentLoaded', () => {
        document.body.style.letterSpacing = letters;
      });
    }, spacing);
    for (const inputs of cases) {
      await open(page, address(inputs));
      await press(page);
      await page.emulateMedia({ media: 'print' });
      expect(
        (await spilt(page)).filter((over) => over > 0),
        inputs.species,
      ).toEqual([]);
      await page.emulateMedia({ media: 'screen' });
    }
  });
}

test('a card is measured again when another face arrives before it is printed', async ({ page }) => {
  await open(page, address(cases[0] as Record<string, string>));
  const before = await sizeOf(page);
  await page.evaluate(() => {
    document.body.style.letterSpacing = '0.25em';
    window.dispatchEvent(new Event('beforeprint'));
  });
  expect(await sizeOf(page)).toBeLessThan(before);
  await press(page);
  await page.emulateMedia({ media: 'print' });
  expect((await spilt(page)).filter((over) => over > 0)).toEqual([]);
});

test('on a phone the card is as wide as there is room, and what is typed stays text', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(
    page,
    address({ species: 'sugar-maple', finish: 'mineral-oil', shop: '<img src=x onerror="window.ran=1">' }),
  );
  const card = page.locator('[data-document="card"] [data-part="card"]').first();
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
  await expect(page.locator('[data-part="paper"]')).toBeHidden();
});
