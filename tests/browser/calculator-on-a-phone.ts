import { expect, type Page } from '@playwright/test';

/** The strip at the foot of a calculator on a phone holds the whole verdict, and no more than a fifth of a screen of 740 px. */
export async function stripHoldsVerdict(page: Page, path: string): Promise<void> {
  const strip = page.locator('[data-part="glance"]');
  await expect(strip, path).toContainText(
    ((await page.locator('[data-part="verdict"] > :last-child').textContent()) ?? '').trim(),
  );
  const { cut, height } = await strip.evaluate((element) => ({
    cut: [element, ...element.querySelectorAll('*')].some(
      (one) => one.clientHeight > 0 && one.scrollHeight > one.clientHeight + 1,
    ),
    height: element.getBoundingClientRect().height,
  }));
  expect.soft(cut, `${path}: words are cut`).toBe(false);
  expect.soft(height, path).toBeLessThanOrEqual(148);
}

/** The rows that one mixes by, and the first results, begin within a screen and a half of the verdict. */
export async function resultsNearVerdict(page: Page, path: string): Promise<void> {
  const screens = await page.evaluate(() => {
    const verdict = document.querySelector('[data-part="verdict"]')?.getBoundingClientRect().bottom ?? 0;
    const of = (selector: string) => {
      const found = [...document.querySelectorAll<HTMLElement>(selector)].find((one) => one.offsetParent !== null);
      return found ? (found.getBoundingClientRect().top - verdict) / window.innerHeight : 0;
    };
    return { rows: of('[data-document="mixing-sheet"] tbody tr'), results: of('[data-rest] > *') };
  });
  expect.soft(screens.rows, `${path}, rows of the mixing sheet`).toBeLessThan(1.5);
  expect.soft(screens.results, `${path}, first results`).toBeLessThan(1.5);
}
