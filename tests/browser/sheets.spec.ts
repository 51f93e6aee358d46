import { expect, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { pdfTexts } from './pdf-text.ts';
import { open, sideways } from './site.ts';

const address = '/sheets?method=first-tray&pieces=2&start=2027-01-12';

for (const [which, least, most] of [
  ['student', 4, 7],
  ['teacher', 3, 7],
] as const) {
  test(`the ${which}’s sheet of a first tray prints on A4 and on Letter, with no page too many`, async ({ page }) => {
    for (const paper of ['a4', 'letter'] as const) {
      await open(page, `${address}&which=${which}&paper=${paper}`);
      await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
      const printed = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
      const [first] = printed.getPages();
      expect(first?.getWidth()).toBeCloseTo(paper === 'a4' ? 595 : 612, -1);
      expect(printed.getPageCount()).toBeGreaterThanOrEqual(least);
      expect(printed.getPageCount()).toBeLessThanOrEqual(most);
    }
  });
}

test('a session stands on the sheet of its table, and the day of the printing in one line', async ({ page }) => {
  for (const method of ['salvaged-ash-amber', 'class-of-twelve', 'wide-cherry-flood'])
    for (const paper of ['a4', 'letter'] as const) {
      await open(page, `/sheets?method=${method}&start=2027-01-12&which=teacher&paper=${paper}`);
      await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
      for (const text of await pdfTexts(await page.pdf({ preferCSSPageSize: true }))) {
        const last = text
          .split(/Session\d+:/)
          .slice(1)
          .at(-1);
        if (last !== undefined) expect(last, `${method} ${paper}`).toContain('TimeStepPieces');
        // In the margin it stands whole: a line is broken between two pieces of text.
        expect(text).toMatch(/printed20\d\d-\d\d-\d\d/);
      }
    }
});

test('no head of a table is broken inside a word, however much stands in a cell', async ({ page }) => {
  await open(page, '/sheets?method=class-of-twelve&which=teacher&paper=a4');
  await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 703, height: 1000 });
  const broken = await page.locator('[data-sheet="teacher"] table').evaluateAll((tables) =>
    tables.flatMap((table) => {
      const cell = table.querySelector('tbody td:last-child');
      if (cell)
        cell.textContent = 'not known for place 3: nobody told how much of it is left on the shelf; '.repeat(12);
      return [...table.querySelectorAll('th')].flatMap((head) => {
        const words = head.firstChild as Text;
        return [...words.data.matchAll(/\S+/g)].flatMap((word) => {
          const range = document.createRange();
          range.setStart(words, word.index);
          range.setEnd(words, word.index + word[0].length);
          return new Set([...range.getClientRects()].map(({ top }) => top)).size > 1 ? [word[0]] : [];
        });
      });
    }),
  );
  expect(broken).toEqual([]);
});

test('a sheet is chosen, stands as paper with its dangers before its steps, and is made for somebody @width', async ({
  page,
}) => {
  await open(page, address);
  await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled({ timeout: 60_000 });
  const student = page.locator('[data-sheet="student"]');
  await expect(student.getByRole('heading', { name: /What can hurt you/ })).toBeVisible();
  await expect(student.getByRole('checkbox')).toHaveCount(23);
  await page.getByLabel('Made for').fill('Table <b>3</b>');
  await expect(student.getByText('Table <b>3</b>')).toBeVisible();
  await page.getByRole('checkbox', { name: 'The label', exact: true }).check();
  await expect(page).toHaveURL(/which=student%2Clabel/);
  await expect(page.locator('[data-sheet="label"]')).toBeVisible();
  expect(await sideways(page)).toBe(0);
});

test('an address without a method leads on', async ({ page }) => {
  await open(page, '/sheets?method=no-such');
  await expect(page.getByText('There is no method “no-such” here')).toBeVisible();
});
