import { type Browser, expect, type Locator, type Page, test } from '@playwright/test';
import { searchFile } from '../../src/site/search/index-format.ts';
import { open, watch } from './site.ts';

/** A window of its own, with nothing kept. */
async function stranger(browser: Browser, baseURL: string | undefined): Promise<Page> {
  return (await browser.newContext({ baseURL: baseURL ?? '', locale: 'en-GB' })).newPage();
}

const editor = (page: Page) => page.locator('[data-part="editor"] .cm-content');

test('a page whose own part does not arrive says so, and is whole once it is tried again', async ({
  browser,
  baseURL,
}) => {
  const page = await stranger(browser, baseURL);
  // The network goes after the page itself and its main script have come.
  await page.route(/assets\/js\/(?!main|runtime)/, (route) => route.abort());
  await page.goto('/calculators/width-change/');
  const alert = page.getByRole('alert').filter({ hasText: 'did not arrive' });
  await expect(alert).toContainText('What you typed before is kept');
  // What the server sent can still be read.
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.unrouteAll();
  await alert.getByRole('button', { name: 'Try again' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  await expect(alert).toHaveCount(0);
  await page.context().close();
});

/** Ways in which a browser keeps nothing: switched off, and full. */
const storages: Readonly<Record<string, () => void>> = {
  'switched off': () => {
    const refused = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches'])
      Object.defineProperty(window, name, { get: refused });
  },
  full: () => {
    const full = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
    Storage.prototype.setItem = full;
    IDBObjectStore.prototype.put = full;
    Cache.prototype.put = full;
  },
};

for (const [how, spoil] of Object.entries(storages))
  test(`with storage ${how} everything works as long as the page stands, and the page says so`, async ({
    browser,
    baseURL,
  }) => {
    const page = await stranger(browser, baseURL);
    await page.addInitScript(spoil);
    const complaints = watch(page, baseURL ?? '');
    for (const path of [
      '/',
      '/woods/',
      '/calculators/resin-dose/',
      '/methods/first-tray/',
      '/class/',
      '/batches/',
      '/shop/',
      '/kept/',
      '/resin-sheets/',
      '/quote/?method=first-tray',
      '/offline/',
    ]) {
      await open(page, path);
      await expect(page.locator('h1').first(), path).toBeVisible();
    }
    await open(page, '/calculators/width-change/');
    const width = page.getByRole('textbox', { name: /width/i }).first();
    await width.fill('312 mm');
    await expect(page).toHaveURL(/312/);
    await page.reload();
    await expect(width).toHaveValue(/312/);
    await open(page, '/bench/');
    await page.getByRole('button', { name: 'A small one to change' }).click();
    await expect(editor(page)).toContainText('A plain oiled board');
    await expect(page.getByText(/not kept|keeps nothing|cannot keep|not stored|no space|full/i).first()).toBeVisible();
    // The framework says once a page that it keeps nothing; where nothing can be kept, a zip is asked for that this build has not; nothing is thrown.
    expect(complaints.filter((each) => !/browser storage is not available|status of 404/.test(each))).toEqual([]);
    await page.context().close();
  });

for (const year of [1999, 2061])
  test(`a clock that says ${year} keeps nothing from working or from being kept`, async ({ browser, baseURL }) => {
    const page = await stranger(browser, baseURL);
    await page.addInitScript(
      (off) => {
        const Real = Date;
        const now = () => Real.now() + off;
        class Wrong extends Real {
          constructor(...given: []) {
            super(...((given.length > 0 ? given : [now()]) as []));
          }
          static override now = now;
        }
        window.Date = Wrong as DateConstructor;
      },
      (year - 2026) * 31_557_600_000,
    );
    const complaints = watch(page, baseURL ?? '');
    for (const path of ['/calculators/cure-clock/', '/methods/first-tray/', '/class/', '/batches/', '/offline/'])
      await open(page, path);
    await open(page, '/bench/');
    await page.getByRole('button', { name: 'A small one to change' }).click();
    await expect(editor(page)).toContainText('A plain oiled board');
    await editor(page).click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('# of another year');
    await page.reload();
    await expect(editor(page)).toContainText('# of another year');
    expect(complaints).toEqual([]);
    await page.context().close();
  });

/** Each place where something is typed: how one comes to the field, which is then empty. */
const places: Readonly<Record<string, (page: Page) => Promise<Locator>>> = {
  'a calculator': async (page) => {
    await open(page, '/calculators/width-change/');
    const width = page.getByRole('textbox', { name: /width/i }).first();
    await width.fill('');
    // Once its code is there.
    await expect(page.locator('[data-field="width"] [id$="-error"]')).toBeVisible();
    return width;
  },
  'a method': async (page) => {
    await open(page, '/methods/first-tray/');
    return page.locator('[data-field="pieces"] input');
  },
  'the shop record': async (page) => {
    await open(page, '/shop/');
    await page.getByRole('button', { name: 'Begin small' }).click();
    return page.getByLabel('Name (needed)');
  },
  'a class': async (page) => {
    await open(page, '/class/');
    return page.getByLabel('Name of the class');
  },
  'a quote': async (page) => {
    await open(page, '/quote/?method=first-tray');
    return page.getByLabel('From: your name and address');
  },
  'the search': async (page) => {
    await open(page, '/search/');
    return page.getByRole('searchbox').last();
  },
};

for (const [where, come] of Object.entries(places))
  test(`keys typed in ${where} just before the page is loaded anew are kept`, async ({ browser, baseURL }) => {
    const page = await stranger(browser, baseURL);
    const field = await come(page);
    await field.fill('');
    await page.keyboard.type('28');
    // With the last key, before any pause.
    await page.evaluate(() => window.addEventListener('input', () => location.reload()));
    await Promise.all([page.waitForEvent('load'), page.keyboard.press('7')]);
    await expect(field).toHaveValue(/^287/);
    await page.context().close();
  });

/** A draft begun on the bench, with these words at its end. */
async function draftWith(page: Page, words: string): Promise<void> {
  await open(page, '/bench/');
  await page.getByRole('button', { name: 'A small one to change' }).click();
  await expect(editor(page)).toContainText('A plain oiled board');
  await editor(page).click();
  await page.keyboard.press('Control+End');
  await page.keyboard.type(words);
}

test('keys typed just before a page is loaded anew are kept', async ({ browser, baseURL }) => {
  const page = await stranger(browser, baseURL);
  await draftWith(page, '# the last words');
  await page.reload();
  await expect(editor(page)).toContainText('# the last words');
  await page.context().close();
});

test('the network goes while a draft is open: nothing is lost, and more can be written', async ({
  browser,
  baseURL,
}) => {
  // Without what keeps pages: what works a draft out is then on its way when the network goes.
  const context = await browser.newContext({ baseURL: baseURL ?? '', locale: 'en-GB', serviceWorkers: 'block' });
  const page = await context.newPage();
  const thrown: string[] = [];
  page.on('pageerror', (error) => thrown.push(error.message));
  page.on('console', (message) => {
    // That a file could not be fetched is the browser's own to say.
    if (message.type() === 'error' && !/Failed to load resource/.test(message.text())) thrown.push(message.text());
  });
  await page.route(/worker|text-answers/, (route) => route.abort('internetdisconnected'));
  await draftWith(page, '# before. ');
  await page.unrouteAll();
  await page.context().setOffline(true);
  await page.keyboard.type('# without a network');
  // What is worked out beside it may fail to come; the text stands.
  await page.keyboard.press('Control+Home');
  await expect(editor(page)).toContainText('method: 1');
  await page.waitForTimeout(1_000);
  await page.context().setOffline(false);
  await page.reload();
  await expect(editor(page)).toContainText('A plain oiled board');
  await editor(page).click();
  await page.keyboard.press('Control+End');
  await expect(editor(page)).toContainText('# before. # without a network');
  expect(thrown).toEqual([]);
  await page.context().close();
});

/** Pages with a form, each with a field of it that begins empty or with a text. */
const forms: Readonly<Record<string, string>> = {
  '/resin-sheets/': '[data-field=name] input',
  '/woods/': 'input[name=q]',
  '/search/': 'main input[name=q]',
  '/methods/first-tray/': '[data-field=pieces] input',
  '/calculators/stock-order/': '[data-field=count] input',
};

for (const [path, selector] of Object.entries(forms))
  test(`what is typed at ${path} before the page is alive stays, and so does the place in it`, async ({
    browser,
    baseURL,
  }) => {
    const page = await stranger(browser, baseURL);
    let release = () => {};
    const released = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route(/assets\/js\/main/, async (route) => {
      await released;
      await route.continue();
    });
    await page.goto(path, { waitUntil: 'commit' });
    const field = page.locator(selector).first();
    await field.fill('');
    await field.pressSequentially('287');
    await field.press('ArrowLeft');
    release();
    await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
    // The next key goes where the reader was, once what stands in the page is drawn anew.
    await expect(page.locator('[data-part="sent"]')).toHaveCount(0);
    await field.press('5');
    await expect(field).toHaveValue('2857');
    await page.context().close();
  });

test('without a network a page that is not here leaves the one before where it is, with what was typed', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ baseURL: baseURL ?? '', locale: 'en-GB', serviceWorkers: 'block' });
  const page = await context.newPage();
  await open(page, '/');
  await open(page, '/resin-sheets/');
  const name = page.locator('[data-field=name] input');
  await name.fill('Lakeside amber');
  await context.setOffline(true);
  const link = page.getByRole('link', { name: 'Woods', exact: true }).first();
  await link.click();
  const notice = page.getByRole('alert').filter({ hasText: 'There is no network' });
  await expect(notice).toContainText('/woods/ is not kept in this browser');
  await expect(page).toHaveURL(/resin-sheets/);
  await expect(name).toHaveValue('Lakeside amber');
  await notice.getByRole('button', { name: 'Stay here' }).click();
  await expect(notice).toHaveCount(0);
  await name.press('End');
  await page.keyboard.type(', sheet of March');
  await link.click();
  // Until it is said that the page cannot be had, it is still asked for: a network that comes back sooner would bring it.
  await expect(notice).toBeVisible();
  await context.setOffline(false);
  await notice.getByRole('button', { name: 'Try again' }).click();
  await expect(page.locator('h1')).toHaveText(/Woods/);
  await expect(notice).toHaveCount(0);
  // It was loaded anew, and follows the history once it is alive.
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  await page.goBack();
  await expect(name).toHaveValue('Lakeside amber, sheet of March');
  await context.close();
});

test('a search that cannot be fetched says so in plain words and is tried again when asked', async ({
  browser,
  baseURL,
}) => {
  const page = await stranger(browser, baseURL);
  // The field of this page asks for the search as it opens.
  await page.route(`**${searchFile}`, (route) => route.abort('internetdisconnected'));
  await open(page, '/search/');
  const field = page.getByRole('searchbox').last();
  await field.click();
  await page.keyboard.type('rags');
  await expect(page.getByRole('status').filter({ hasText: 'could not be fetched' })).toContainText('no connection');
  const again = page.getByRole('button', { name: 'Try again' });
  await again.click();
  await expect(again).toBeVisible();
  await page.unrouteAll();
  await again.click();
  await expect(page.getByRole('link', { name: /Oily rags/ }).first()).toBeVisible();
  await expect(again).toHaveCount(0);
  await expect(field).toHaveValue('rags');
  await page.context().close();
});

test('with scripts off the page on reading without a network says what to do', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ baseURL: baseURL ?? '', javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/offline/');
  await expect(page.getByText('Scripts are off: nothing is kept while they are.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Keep everything' })).toHaveCount(0);
  await context.close();
});
