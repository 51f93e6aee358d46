import { expect, type Page, test } from '@playwright/test';
import { jumpsOf, watchShift } from './jumps.ts';
import { open, watch } from './site.ts';

const line = (page: Page) => page.locator('[data-part="units-guess"]');

test.describe('a browser of the United States', () => {
  test.use({ locale: 'en-US' });

  test('begins in inches and says so without a jump or a complaint, until a choice is made', { tag: '@width' }, async ({
    page,
    baseURL,
  }) => {
    const complaints = watch(page, baseURL ?? '');
    await watchShift(page);
    await open(page, '/');
    await expect(line(page)).toContainText('In inches, by your region.');
    await expect(page.getByRole('button', { name: 'inch', exact: true })).toHaveAttribute('aria-pressed', 'true');
    const { ofFaces, others } = await jumpsOf(page);
    expect(others).toBeLessThan(0.02);
    expect(ofFaces, 'as our faces came').toBeLessThan(0.25);
    await page.getByRole('button', { name: 'Use mm' }).click();
    await expect(line(page)).toBeHidden();
    await page.reload();
    await expect(page.getByRole('button', { name: 'mm', exact: true })).toHaveAttribute('aria-pressed', 'true');
    await expect(line(page)).toBeHidden();
    expect(complaints).toEqual([]);
  });

  test('reads a calculator in inches from the first paint on, without a jump, and fetches it only to change something', async ({
    page,
    baseURL,
  }) => {
    const complaints = watch(page, baseURL ?? '');
    await watchShift(page);
    for (const path of ['/calculators/template-fit', '/woods/sugar-maple']) {
      await open(page, path);
      const part = page.locator('[data-part="sent"]');
      await expect(part.locator('[data-figure] output').first()).toHaveText(/ in$/);
      expect((await jumpsOf(page)).others, path).toBeLessThan(0.02);
    }
    await expect(page.locator('[data-part="sent"]')).toHaveCount(1);
    await page.locator('[data-field="width"] input').fill('10');
    await expect(page.locator('[data-part="sent"]')).toHaveCount(0);
    await expect(page).toHaveURL(/width=10\+in/);
    expect(complaints).toEqual([]);
  });

  test('reads a method in inches from the first paint on, as its live form says it', async ({ page, baseURL }) => {
    const complaints = watch(page, baseURL ?? '');
    await watchShift(page);
    await open(page, '/methods/first-tray');
    const length = page.locator('[data-field="length"] input');
    const step = page.locator('#step-stack');
    await expect(length).toHaveValue(/ in$/);
    expect((await jumpsOf(page)).others).toBeLessThan(0.02);
    const [first, words] = [await length.inputValue(), await step.allInnerTexts()];
    await expect(page.locator('[data-part="sent"]')).toHaveCount(1);
    await length.click();
    await expect(page.locator('[data-part="sent"]')).toHaveCount(0);
    await expect(length).toHaveValue(first);
    expect(await step.allInnerTexts()).toEqual(words);
    expect(complaints).toEqual([]);
  });

  test('reads the worked case of a page in inches', async ({ page }) => {
    await open(page, '/how-to/choosing-a-wood');
    await expect(page.locator('[data-part="case"]').first()).toContainText(/width \d+( \d+\/\d+)? in/);
  });
});

test('the first screen of a phone says what the site is, and holds the emergencies and the search', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, '/');
  const within = async (part: ReturnType<Page['locator']>) => {
    const box = await part.boundingBox();
    return box ? box.y + box.height : Number.POSITIVE_INFINITY;
  };
  expect(await within(page.getByRole('heading', { level: 1 }))).toBeLessThan(300);
  const links = page.getByRole('navigation', { name: 'What to do now' }).getByRole('link');
  await expect(links).toHaveCount(3);
  for (const link of await links.all()) expect(await within(link)).toBeLessThan(420);
  expect(await within(page.getByRole('searchbox', { name: 'Find anything' }))).toBeLessThan(740);
});

test('the list of how-to pages shows the page that is open', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 700 });
  await open(page, '/how-to/glossary');
  await expect(page.locator('.menu__link--active[aria-current]')).toBeInViewport();
});

test('where there is no page, a word finds those that there are', async ({ page }) => {
  await page.goto('/calculators/no-such-thing');
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  await page.getByRole('searchbox').fill('rags');
  await expect(page.getByRole('link', { name: 'Oily rags' }).last()).toBeVisible();
});
