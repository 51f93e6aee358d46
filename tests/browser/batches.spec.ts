import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { inlaidBoard } from '../method/batch/kit.ts';
import { open, sideways, watch } from './site.ts';

test.use({ timezoneId: 'America/Chicago', reuseContext: false });

const item = (page: Page, step: string) => page.locator(`[data-part="today"] [data-step="${step}"]`);
const writes = (page: Page) => expect(page.locator('[data-part="written"]')).toContainText('Written down');

/** Open a batch of a method in a file, as a maker does who wrote one. */
async function openBatch(page: Page): Promise<void> {
  await open(page, '/batches');
  await page
    .locator('[data-part="method-file"]')
    .setInputFiles({ name: 'inlaid-board.yaml', mimeType: 'text/yaml', buffer: Buffer.from(inlaidBoard) });
  await page.getByLabel('What you call it').fill('Trays for the fair');
  await page.getByRole('button', { name: 'Open a batch' }).click();
  await expect(item(page, 'seal')).toContainText('May be done now.');
}

const press = (page: Page, name: string) => page.getByRole('button', { name }).click();

test('a week at the bench: a cold shop moves the times, each day goes on after a reload, a second tab sees it', {
  tag: '@width',
}, async ({ page, context, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await page.clock.install({ time: new Date('2027-01-12T09:00:00-06:00') });
  await openBatch(page);
  await press(page, 'Started: Seal the pocket');
  await expect(item(page, 'seal')).toContainText('Begun Tue 2027-01-12 09:0');
  await page.clock.setFixedTime(new Date('2027-01-12T09:20:00-06:00'));
  await press(page, 'Finished: Seal the pocket');
  // Without the temperature nobody knows when the pour may follow.
  await expect(item(page, 'pour')).toHaveAttribute('data-state', 'unknown');
  const reading = page.locator('[data-part="wanted"] input').first();
  await reading.fill('16');
  await page.reload();
  await expect(reading).toHaveValue('16');
  await page.locator('[data-part="wanted"]').getByRole('button', { name: 'Write down' }).click();
  await expect(item(page, 'pour')).toContainText('Not before Wed 2027-01-13 20:2');
  await expect(page.locator('[data-part="changes"]').first()).toContainText(
    'the plan said at least 20 h and at most 48 h',
  );
  expect(await sideways(page)).toBe(0);
  // Every control that a glove must hit is tall enough.
  const box = await page.getByRole('button', { name: 'Save this batch as a file' }).first().boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);

  // The third day, after a night with the browser closed: the pour, written in one tab and seen in the other.
  await page.clock.setFixedTime(new Date('2027-01-14T09:00:00-06:00'));
  await page.reload();
  await expect(item(page, 'pour')).toHaveAttribute('data-state', 'now');
  const second = await context.newPage();
  await second.clock.install({ time: new Date('2027-01-14T09:00:00-06:00') });
  await open(second, page.url());
  await press(second, 'Started: Pour');
  await expect(item(page, 'pour')).toHaveAttribute('data-state', 'going');
  await page.clock.setFixedTime(new Date('2027-01-14T09:20:00-06:00'));
  await press(page, 'Finished: Pour');
  await expect(second.locator('[data-part="entries"]')).toContainText('“Pour” finished Thu 2027-01-14 09:20');
  await second.close();
  await page.locator('[data-part="wanted"] input').first().fill('20 °C');
  await page.locator('[data-part="wanted"]').getByRole('button', { name: 'Write down' }).click();
  await writes(page);
  await expect(item(page, 'level')).toContainText('Not before');

  // A week later it has cured; no label comes before the oil is on and all of it has had its time.
  await page.clock.setFixedTime(new Date('2027-02-08T09:00:00-06:00'));
  await page.reload();
  await expect(item(page, 'level')).toHaveAttribute('data-state', 'now');
  await expect(page.locator('[data-part="label"]')).toContainText('No label yet');
  for (const [step, title, hour] of [
    ['level', 'Level the inlay', '10'],
    ['oil', 'Oil it', '11'],
    ['label', 'Write the label', '12'],
  ] as const) {
    await page.clock.setFixedTime(new Date(`2027-02-08T${hour}:30:00-06:00`));
    await press(page, `Finished: ${title}`);
    await expect(item(page, step)).toBeHidden();
  }
  await page.clock.setFixedTime(new Date('2027-02-10T09:00:00-06:00'));
  await page.reload();
  await expect(page.locator('[data-part="label"] [data-part="verdict"]')).toHaveAttribute('data-level', 'care');
  await expect(page.locator('[data-document="card"]')).toContainText('Care of your board');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this batch as a file' }).click(),
  ]);
  const { batches } = JSON.parse(readFileSync(await file.path(), 'utf8'));
  expect(batches[0]).toMatchObject({ title: 'Trays for the fair', batch: 1 });
  expect(batches[0].entries.length).toBeGreaterThanOrEqual(9);
  expect(await sideways(page)).toBe(0);
  expect(complaints).toEqual([]);
});

test('where the browser refuses to store, the page says so, works on, and offers a file', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined, configurable: true });
  });
  await openBatch(page);
  await expect(page.locator('[data-part="not-kept"]')).toContainText('This browser stores nothing for this page');
  await press(page, 'Started: Seal the pocket');
  await expect(item(page, 'seal')).toHaveAttribute('data-state', 'going');
  await expect(
    page.locator('[data-part="not-kept"]').getByRole('button', { name: 'Save this batch as a file' }),
  ).toBeVisible();
});
