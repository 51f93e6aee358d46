import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { type Browser, expect, type Locator, type Page, test } from '@playwright/test';
import { barriers, open, sideways, watch } from './site.ts';

const bench = '/bench';
const text = (page: Page): Locator => page.locator('[data-part="editor"] .cm-content');
const problems = (page: Page): Locator => page.locator('[data-part="problems"]');
const status = (page: Page): Locator => page.locator('[data-part="count"]');

/** The text of the open draft as the browser has stored it. */
const stored = (page: Page) =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open('kerf');
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const id = new URLSearchParams(location.search).get('draft') ?? '';
    const thing = await new Promise<{ text?: string } | undefined>((resolve) => {
      const asked = database.transaction('drafts').objectStore('drafts').get(id);
      asked.onsuccess = () => resolve(asked.result);
    });
    database.close();
    return thing?.text;
  });

async function begin(page: Page): Promise<void> {
  await open(page, bench);
  await page.getByRole('button', { name: 'A small one to change' }).click();
  await expect(text(page)).toContainText('A plain oiled board');
  await expect(status(page)).not.toContainText('Looking');
}

/** On a phone one part is shown at a time. */
async function show(page: Page, part: 'Text' | 'Form' | 'Page' | 'Problems'): Promise<void> {
  const button = page.getByRole('button', { name: new RegExp(`^${part}`) });
  if (await button.isVisible()) await button.click();
}

/** A window of its own, with nothing kept. */
async function stranger(browser: Browser, baseURL: string | undefined): Promise<Page> {
  return (await browser.newContext({ baseURL: baseURL ?? '', locale: 'en-GB' })).newPage();
}

test('a method is written from the small one, broken, and mended by its message', { tag: '@width' }, async ({
  page,
  baseURL,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await begin(page);
  await expect(status(page)).not.toContainText('fault');
  await show(page, 'Text');
  await text(page).getByText('method: 1').click();
  await page.keyboard.press('Home');
  await page.keyboard.press('Delete');
  await show(page, 'Problems');
  await expect(status(page)).toContainText('fault');
  await problems(page)
    .getByRole('button', { name: /^Fault, line \d+:.*method/ })
    .first()
    .click();
  await expect(text(page)).toBeFocused();
  await show(page, 'Problems');
  await problems(page).getByRole('button', { name: 'Write method' }).first().click();
  await expect(status(page)).not.toContainText('fault');
  expect(await sideways(page)).toBe(0);
  expect(complaints).toEqual([]);
});

test('the page follows the text, stays as it was last sound while it is broken, and the form writes the same text', {
  tag: '@width',
}, async ({ page }) => {
  await begin(page);
  const sheet = page.locator('[data-part="live-page"]');
  await show(page, 'Page');
  await expect(sheet).toContainText('A plain oiled board');
  await show(page, 'Form');
  await page.locator('[data-part="form"]').getByLabel('Title', { exact: true }).first().fill('A board from the form');
  await show(page, 'Text');
  await expect(text(page)).toContainText('title: A board from the form');
  await show(page, 'Page');
  await expect(sheet).toContainText('A board from the form');
  await show(page, 'Text');
  await text(page).click();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('\nbroken');
  await expect(status(page)).toContainText('fault');
  await show(page, 'Page');
  await expect(sheet).toHaveAttribute('data-old', '');
  await expect(sheet).toContainText('A board from the form');
  // Back through the broken word and the form's edit alike.
  const undo = page.getByRole('button', { name: 'Undo' });
  await expect(async () => {
    if (await undo.isEnabled()) await undo.click();
    expect(await stored(page)).toContain('title: A plain oiled board');
  }).toPass();
  expect(await sideways(page)).toBe(0);
});

test('what was typed a moment before a reload is there after it, and can be taken back', async ({ page }) => {
  await begin(page);
  await text(page).click();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('# the last word');
  await page.reload();
  await expect(text(page)).toContainText('A plain oiled board');
  expect(await stored(page)).toMatch(/# the last word$/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => stored(page)).not.toContain('word');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect.poll(() => stored(page)).toMatch(/# the last word$/);
});

test('a second tab reads along, takes the draft over with everything in it, and gets it when the first closes', async ({
  page,
}) => {
  await begin(page);
  const second = await page.context().newPage();
  await open(second, page.url());
  await expect(second.locator('[data-part="held"]')).toContainText('open in another tab');
  await expect(text(second)).toHaveAttribute('aria-readonly', 'true');
  await text(page).click();
  await page.keyboard.press('Control+Home');
  await page.keyboard.type('# from the first tab\n');
  await expect(text(second)).toContainText('# from the first tab');
  await page.keyboard.type('# and more\n');
  await second.getByRole('button', { name: 'Change it here' }).click();
  await expect(second.locator('[data-part="held"]')).toBeHidden();
  await expect(text(second)).toContainText('# and more');
  await expect(page.locator('[data-part="held"]')).toBeVisible();
  await text(second).click();
  await second.keyboard.press('Control+Home');
  await second.keyboard.type('# from the second\n');
  await second.close();
  await expect(page.locator('[data-part="held"]')).toBeHidden();
  await expect(text(page)).toContainText('# from the second');
});

test('a browser that stores nothing says so, keeps the text while the page lasts, and gives it as a file', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
  });
  await begin(page);
  await expect(page.locator('[data-part="storage"]')).toContainText('does not let the page store anything');
  await text(page).click();
  await page.keyboard.press('Control+Home');
  await page.keyboard.type('# typed here\n');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export the file' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('my-method.yaml');
  expect(readFileSync(await file.path(), 'utf8')).toMatch(/^# typed here\n/);
});

test('with the disk full what is typed is not lost, and stored once there is room', async ({ page }) => {
  await begin(page);
  await page.evaluate(() => {
    const real = IDBDatabase.prototype.transaction;
    Object.assign(window, { real });
    IDBDatabase.prototype.transaction = function (stores, mode, options) {
      if (mode === 'readwrite') throw new DOMException('no room', 'QuotaExceededError');
      return real.call(this, stores, mode, options);
    };
  });
  await text(page).click();
  await page.keyboard.press('Control+Home');
  await page.keyboard.type('# no room');
  await expect(page.locator('[data-part="storage"]')).toContainText('is full');
  await expect(text(page)).toContainText('# no room');
  expect(await stored(page)).not.toContain('# no room');
  await page.evaluate(() => {
    IDBDatabase.prototype.transaction = (window as unknown as { real: IDBDatabase['transaction'] }).real;
  });
  await page.keyboard.type(' before');
  await expect(page.locator('[data-part="storage"]')).toBeHidden();
  await expect.poll(() => stored(page)).toContain('# no room before');
});

test('a link gives the same text in another browser, after it was shown, and changes nothing there', async ({
  page,
  browser,
  baseURL,
}) => {
  await begin(page);
  await page.getByRole('button', { name: 'Make a link' }).click();
  const link = await page.getByLabel('The link').inputValue();
  const other = await stranger(browser, baseURL);
  await open(other, link);
  await expect(other.locator('[data-part="link-offer"]')).toContainText('A plain oiled board');
  await expect(other.locator('[data-part="drafts"]')).toContainText('None yet');
  await other.getByRole('button', { name: 'Open it as a new draft' }).click();
  await expect(text(other)).toContainText('A plain oiled board');
  await expect.poll(() => stored(other)).toBe(await stored(page));
  expect(other.url()).not.toContain('#');
  await other.context().close();
});

test('all drafts go into a zip and come back; a damaged one is refused and loses nothing', async ({ page }) => {
  await begin(page);
  await page.getByRole('link', { name: 'All drafts' }).first().click();
  await page.getByRole('button', { name: 'Copy My method' }).click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export all as a zip' }).click(),
  ]);
  const bytes = readFileSync(await file.path());
  const give = (name: string, buffer: Buffer) =>
    page.locator('[data-part="draft-file"]').setInputFiles({ name, mimeType: 'application/zip', buffer });
  await give('cut.zip', bytes.subarray(0, bytes.length - 30));
  await expect(page.locator('[data-part="said"]')).toContainText('cut.zip cannot be read. It is not a whole zip');
  await expect(page.locator('[data-part="drafts"] li')).toHaveCount(2);
  await page.getByRole('button', { name: 'Remove My method (copy)' }).click();
  await expect(page.locator('[data-part="drafts"] li')).toHaveCount(1);
  await give('methods.zip', bytes);
  await expect(page.locator('[data-part="drafts"] li')).toHaveCount(3);
});

test('all of it by keyboard: Tab leaves the text, F8 goes to a problem, an offer is taken with Enter', async ({
  page,
}) => {
  await open(page, bench);
  await page.getByRole('button', { name: 'A small one to change' }).focus();
  await page.keyboard.press('Enter');
  await expect(status(page)).not.toContainText('Looking');
  await text(page).focus();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('\nsour');
  await page.keyboard.press('Control+Space');
  await expect(page.locator('[data-part="editor"] .cm-tooltip-autocomplete')).toBeHidden();
  await page.keyboard.press('Backspace');
  await expect(status(page)).toContainText('fault');
  await page.keyboard.press('Control+Home');
  await page.keyboard.press('F8');
  await expect(page.locator('[data-part="editor"] .cm-tooltip')).toContainText('Fault');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+End');
  await page.keyboard.press('Shift+Home');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Control+Space');
  const offers = page.locator('[data-part="editor"] .cm-tooltip-autocomplete');
  await expect(offers).toBeVisible();
  await page.waitForTimeout(150);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(offers).toBeHidden();
  await page.keyboard.press('Tab');
  await expect(text(page)).not.toBeFocused();
});

test('planted scripts in every text stay text', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  const planted = `"<img src=x onerror='window.ran=1'><script>window.ran=1</script>"`;
  const hostile = [
    `title: ${planted}`,
    `for: ${planted}`,
    'method: 1',
    `steps: { "<svg onload=window.ran=1>": ${planted} }`,
    `? ${planted}`,
  ].join('\n');
  await open(page, bench);
  await page.locator('[data-part="draft-file"]').setInputFiles({
    name: '<img src=x onerror=window.ran=1>.yaml',
    mimeType: 'text/yaml',
    buffer: Buffer.from(hostile),
  });
  await expect(text(page)).toContainText('window.ran=1');
  await expect(status(page)).toContainText('fault');
  await problems(page).getByRole('button').first().click();
  await page.keyboard.press('F8');
  await text(page).getByText('title:').hover();
  await page.waitForTimeout(600);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(complaints).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing bars the way, ${colorScheme}, at any width, and at double size`, { tag: '@width' }, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    await begin(page);
    await show(page, 'Text');
    await text(page).click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('\nbroken');
    await show(page, 'Problems');
    await expect(status(page)).toContainText('fault');
    for (const part of ['Problems', 'Text'] as const) {
      await show(page, part);
      // The sheet beside may just have come, and tells in a moment that it scrolls.
      const axe = new AxeBuilder({ page }).include('main');
      await expect.poll(() => barriers(axe), { timeout: 20_000 }).toEqual([]);
      expect(await sideways(page)).toBe(0);
    }
    const size = page.viewportSize() ?? { width: 1280, height: 900 };
    await page.setViewportSize({ width: Math.max(320, size.width / 2), height: size.height / 2 });
    expect(await sideways(page)).toBe(0);
  });
}

test('other pages carry none of the editor, and the bench only once a draft is open', async ({ page }) => {
  const scripts: Promise<[string, boolean]>[] = [];
  page.on('response', (response) => {
    if (/\.js$/.test(new URL(response.url()).pathname))
      scripts.push(
        response.text().then(
          (code) => [response.url(), code.includes('cm-lintRange')],
          // A script that was still on its way as the page closed was not needed for it.
          () => [response.url(), false],
        ),
      );
  });
  // Fetched anew, or the window of the test before would have them.
  await page.route('**/*.js', (route) => route.continue());
  const carriers = async () => (await Promise.all(scripts)).filter(([, carries]) => carries).length;
  for (const path of ['/', '/calculators/resin-dose', bench]) await open(page, path);
  await expect(page.getByRole('heading', { name: 'Begin a method' })).toBeVisible();
  expect(scripts.length).toBeGreaterThan(5);
  expect(await carriers()).toBe(0);
  await page.getByRole('button', { name: 'A small one to change' }).click();
  await expect(text(page)).toBeVisible();
  expect(await carriers()).toBeGreaterThan(0);
});
