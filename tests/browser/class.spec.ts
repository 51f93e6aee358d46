import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { barriers, open, sideways, watch } from './site.ts';

const list = fileURLToPath(new URL('../../methods/classes/spring-evening.csv', import.meta.url));

test('a class of twelve is planned from its list, somebody misses an evening, and all of it is printed @width', async ({
  page,
  baseURL,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, '/class');
  await page.getByLabel('Name of the class').fill('Spring evening class');
  await page.locator('input[data-part="class-list"]').setInputFiles(list);
  await page
    .getByLabel('Sessions, one a line')
    .fill('2027-01-23 09:00-16:00\n2027-01-30 09:00-16:00\n2027-02-06 13:00-14:05');
  // The main path is walked by keyboard.
  await page.getByText('Write the sessions of a class that meets every week').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.type('2027-02-09');
  await page.keyboard.press('Tab');
  await page.keyboard.type('18:30 to 21:00');
  await page.keyboard.press('Tab');
  await page.keyboard.type('6');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Sessions, one a line')).toHaveValue(/2027-03-16 18:30-21:00$/);
  const order = page.locator('[data-part="class-order"]');
  await expect(order.getByRole('row', { name: /yellow birch/ })).toContainText('3, 8', { timeout: 60_000 });
  await expect(page.locator('[data-part="class-mix"]')).toHaveCount(3);
  await expect(page.locator('[data-part="class-session"]')).not.toHaveCount(0);

  const missed = page.locator('[data-part="class-missed"]');
  await missed.getByLabel('Place').selectOption('3');
  await missed.getByLabel('Session').selectOption({ index: 4 });
  await missed.getByRole('button', { name: 'What now?' }).press('Enter');
  await expect(missed.getByText('Place 3.')).toBeVisible({ timeout: 60_000 });
  expect(await sideways(page)).toBe(0);
  expect(await barriers(new AxeBuilder({ page }).include('main').setLegacyMode(true))).toEqual([]);

  await page.getByRole('button', { name: 'Make all sheets' }).press('Enter');
  await expect(page.locator('[data-sheet="student"]')).toHaveCount(12, { timeout: 60_000 });
  expect(await sideways(page)).toBe(0);
  await page.getByLabel('A student’s sheet for each place').uncheck();
  await expect(page.locator('[data-sheet="student"]')).toHaveCount(0);
  await page.getByLabel('Paper').selectOption('letter');
  const printed = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
  expect(printed.getPages()[0]?.getWidth()).toBeCloseTo(612, -1);
  // Twelve labels and twelve cards are three sheets each, and five templates take at least one each.
  expect(printed.getPageCount()).toBeGreaterThan(3 + 3 + 5 + 3);

  // Half of an entry is kept as it was typed.
  await page.getByRole('button', { name: 'Close the sheets' }).click();
  await page.getByLabel('Length of the tray at place 4').fill('4');
  await page.getByLabel('How many weeks').fill('6 or');
  await page.waitForTimeout(300);
  await page.reload();
  await expect(page.getByLabel('Length of the tray at place 4')).toHaveValue('4', { timeout: 30_000 });
  await expect(page.getByLabel('How many weeks')).toHaveValue('6 or');
  await expect(page.getByLabel('Name of the class')).toHaveValue('Spring evening class');
  expect(complaints).toEqual([]);
});

test('what was kept and cannot be read is shown as text, and two tabs show the same class', async ({
  page,
  context,
}) => {
  await open(page, '/class?method=first-tray&pieces=2&wood=black-cherry');
  await expect(page.getByLabel('Wood, for all')).toHaveValue('black-cherry', { timeout: 30_000 });
  await expect(page.locator('[data-part="class-places"] tbody tr')).toHaveCount(2);
  await page.getByLabel('Name of the class').fill('Two trays');
  const other = await context.newPage();
  await open(other, '/class');
  await expect(other.getByLabel('Name of the class')).toHaveValue('Two trays', { timeout: 30_000 });
  await other.getByLabel('Name at place 2').fill('E. F.');
  await expect(page.getByLabel('Name at place 2')).toHaveValue('E. F.');
  await other.close();
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('kerf');
        asked.onsuccess = () => {
          const written = asked.result.transaction('classes', 'readwrite');
          written.objectStore('classes').put({ id: 'old', changed: 1, text: '{"class": 0, "name": "<b>Autumn</b>"}' });
          written.oncomplete = () => {
            asked.result.close();
            resolve();
          };
        };
        asked.onerror = () => reject(asked.error);
      }),
  );
  await page.reload();
  const damaged = page.locator('[data-part="class-damaged"]');
  await expect(damaged.getByText('{"class": 0, "name": "<b>Autumn</b>"}')).toBeVisible({ timeout: 30_000 });
  const saved = page.waitForEvent('download');
  await damaged.getByRole('button', { name: 'Save it as a file' }).click();
  expect((await saved).suggestedFilename()).toBe('class.json');
});
