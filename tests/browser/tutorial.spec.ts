import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { type Told, tutorial } from '../docs/tutorial.ts';
import { open, sideways, watch } from './site.ts';

const editor = (page: Page) => page.locator('[data-part="editor"]');

const oftener = { intervals: [100] };

/** The line of the text that holds this, brought into sight: the editor shows no more of a long text than there is room for. */
async function lineWith(page: Page, words: string): Promise<Locator> {
  const line = editor(page).locator('.cm-line').filter({ hasText: words });
  const scroller = editor(page).locator('.cm-scroller');
  // A busy machine draws the lines after the scroll: who is past the end begins again above.
  await expect(async () => {
    if ((await line.count()) === 0)
      await scroller.evaluate((element) => {
        const atEnd = element.scrollTop + element.clientHeight >= element.scrollHeight - 1;
        element.scrollTo(0, atEnd ? 0 : element.scrollTop + element.clientHeight / 2);
      });
    expect(await line.count()).toBe(1);
  }).toPass(oftener);
  return line;
}

/** Put a line of the text, or several, in the place of one, as somebody does who marks it and pastes. */
async function rewrite(page: Page, words: string, change: (line: string) => string): Promise<void> {
  let before = '';
  // A line that has just come into sight may be drawn anew under the pointer.
  await expect(async () => {
    const line = await lineWith(page, words);
    before = (await line.textContent({ timeout: 1000 })) ?? '';
    await line.click({ clickCount: 3, position: { x: 40, y: 8 }, timeout: 2000 });
  }).toPass(oftener);
  await editor(page)
    .locator('.cm-content')
    .evaluate(
      (content, text) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', text);
        content.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
      },
      `${change(before)}\n`,
    );
}

const places: Readonly<Record<string, string>> = {
  'below the buttons': '[data-part="count"]',
  'in the list': '[data-part="problems"]',
  'on the page': '[data-part="live-page"]',
  'on the sheet': '[data-sheet="student"]',
};

/** Do or see what one line of the page tells. */
async function follow(page: Page, told: Told): Promise<void> {
  switch (told.do) {
    case 'open':
      return open(page, told.address);
    case 'change':
      return rewrite(page, told.from, (line) => line.replace(told.from, told.into));
    case 'add':
      return rewrite(page, told.under, (line) => `${line}\n${told.block}`);
    case 'fill':
      return page.getByLabel(told.field, { exact: true }).fill(told.value);
    case 'read':
      if (told.where === 'in the text') return expect(await lineWith(page, told.words)).toBeVisible();
      return expect(page.locator(places[told.where] ?? 'none')).toContainText(told.words);
    case 'press': {
      const named = page
        .getByRole('button', { name: told.name, exact: true })
        .or(page.getByRole('link', { name: told.name, exact: true }))
        // How many there are stands behind the word.
        .or(page.getByRole('button', { name: new RegExp(`^${told.name} \\(\\d+\\)$`) }));
      if (told.narrow && !(await named.isVisible())) return;
      await expect(named).toBeEnabled({ timeout: 60_000 });
      return named.click();
    }
  }
}

test('the tutorial, followed word by word, ends with a printed sheet and a file', { tag: '@width' }, async ({
  page,
  baseURL,
}) => {
  // Some fifty lines of a page are followed here, each of which waits for the sheet beside the text.
  test.slow();
  const complaints = watch(page, baseURL ?? '');
  await page.addInitScript(() => {
    window.print = () => Object.assign(window, { printed: true });
  });
  for (const told of tutorial()) {
    if (told.do === 'press' && told.name === 'Export the file') {
      const [file] = await Promise.all([page.waitForEvent('download'), follow(page, told)]);
      expect(file.suggestedFilename()).toBe('bread-board.yaml');
      const text = readFileSync(await file.path(), 'utf8');
      for (const words of ['title: Bread board for the fair', 'default: 360 mm', 'step: wipe-again, most: 60 min'])
        expect(text).toContain(words);
      continue;
    }
    await test.step(JSON.stringify(told), () => follow(page, told));
    expect(await sideways(page)).toBe(0);
    if (told.do === 'press' && told.name === 'Print') {
      expect(await page.evaluate(() => 'printed' in window)).toBe(true);
      const sheet = page.locator('[data-sheet="student"]');
      for (const words of ['Table 3', 'The can goes outside', '2 × ']) await expect(sheet).toContainText(words);
      const printed = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
      expect(printed.getPageCount()).toBeGreaterThanOrEqual(1);
      expect(printed.getPageCount()).toBeLessThanOrEqual(3);
    }
  }
  expect(complaints).toEqual([]);
});
