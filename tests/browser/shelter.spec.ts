import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { zipSync } from 'fflate';
import { open, watch } from './site.ts';

/** What a planted script would do, and what the policy stopped, both kept for the test to ask. */
interface Trap {
  ran: string[];
  stopped: string[];
}

/** From the first moment of every page: note what runs that was planted, and every refusal of the policy. */
async function setTrap(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const trap = { ran: [] as string[], stopped: [] as string[] };
    Object.assign(window, { trap, planted: (where: string) => trap.ran.push(where) });
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample, sourceFile }) => {
      trap.stopped.push(`${effectiveDirective} ${blockedURI} ${sample} ${sourceFile}`);
    });
  });
}

const trapOf = (page: Page) => page.evaluate(() => (window as unknown as { trap: Trap }).trap);

/** Go on by a link of the site, as a reader does, so that nothing is loaded anew. */
async function follow(page: Page, path: string): Promise<void> {
  await page.locator(`a[href="${path}"], a[href="${path}/"]`).first().click();
  await expect(page).toHaveURL((url) => url.pathname.replace(/\/$/, '') === path.replace(/\/$/, ''));
}

/** Everything that somebody could plant as text. */
const scripts = (where: string) =>
  `<script>planted('${where}')</script><img src=x onerror="planted('${where}')"><svg onload="planted('${where}')">"><a href="javascript:planted('${where}')">x</a>\${planted('${where}')}`;

test.beforeEach(({ page }) => setTrap(page));

test('pages of each kind, loaded and come to by links, and what works within them, ask for nothing that the policy forbids', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const complaints = watch(page, baseURL ?? '');
  const clean = async (where: string) => {
    expect((await trapOf(page)).stopped, where).toEqual([]);
    expect(complaints, where).toEqual([]);
  };
  for (const path of [
    '/',
    '/how-to/writing-a-method',
    '/reference/checks/resin',
    '/calculators/template-fit',
    '/sheets',
  ]) {
    await open(page, path);
    await clean(path);
  }
  await open(page, '/');
  for (const path of [
    '/how-to',
    '/how-to/choosing-a-wood',
    '/reference/equations',
    '/reference/tables',
    '/woods',
    '/woods/white-ash',
    '/privacy',
    '/kept',
  ]) {
    await follow(page, path);
    await clean(`to ${path}`);
  }
  await follow(page, '/calculators');
  await follow(page, '/calculators/pour-heat');
  // A worker answers, and a chart is drawn.
  await page.getByRole('textbox', { name: /depth/i }).first().fill('12 mm');
  await expect(page.locator('[data-part=chart], figure svg, svg[role=img]').first()).toBeVisible();
  await clean('a chart of an answer');
  await follow(page, '/methods');
  await follow(page, '/methods/first-tray');
  await clean('a method');
  await follow(page, '/bench');
  await page.getByRole('button', { name: 'A small one to change' }).click();
  await expect(page.locator('[data-part="editor"] .cm-content')).toContainText('A plain oiled board');
  await clean('the bench with its editor');
  await page.emulateMedia({ media: 'print' });
  await clean('the bench, printed');
  await page.emulateMedia({ media: 'screen' });
});

test('what is planted in an address runs nowhere', async ({ page }) => {
  const text = encodeURIComponent(scripts('address'));
  for (const path of [
    `/calculators/seasonal-movement?species=${text}&width=${text}`,
    `/calculators/template-fit?shape=custom&drawing=${text}`,
    `/search?q=${text}`,
    `/woods?q=${text}#${text}`,
    `/methods/first-tray?length=${text}#${text}`,
    `/bench#m=${text}`,
    `/sheets?method=${text}`,
    `/class?c=${text}#${text}`,
  ]) {
    await open(page, path);
    expect((await trapOf(page)).ran, path).toEqual([]);
    expect(await page.locator('img[src="x"], svg[onload], a[href^="javascript:"]').count(), path).toBe(0);
  }
});

test('what is planted in files runs nowhere, and each is taken as text or refused in words', async ({ page }) => {
  const give = (part: string, name: string, content: string | Uint8Array) =>
    page.locator(`input[data-part=${part}]`).setInputFiles({ name, mimeType: '', buffer: Buffer.from(content) });
  const noneRan = async (where: string) => {
    expect((await trapOf(page)).ran, where).toEqual([]);
    expect(await page.locator('img[src="x"], svg[onload], a[href^="javascript:"]').count(), where).toBe(0);
  };
  const evil = scripts('file');

  await open(page, '/calculators/template-fit?shape=drawing');
  const drawing = page.locator('input[data-part=drawing-file]');
  if ((await drawing.count()) > 0) {
    await give(
      'drawing-file',
      'outline.svg',
      `<svg xmlns="http://www.w3.org/2000/svg" onload="planted('svg')">${evil}</svg>`,
    );
    await expect(page.getByRole('status').filter({ hasText: 'outline.svg' })).toBeVisible();
    await noneRan('a drawing');
  }
  await open(page, '/resin-sheets');
  await give('sheet-file', 'sheets.json', JSON.stringify({ format: evil, version: 1, sheets: [{ name: evil }] }));
  await expect(page.getByText('Its format is').first()).toBeVisible();
  await noneRan('a file of data sheets');

  await open(page, '/shop');
  await give('shop-file', 'shop.yaml', `shop: ${JSON.stringify(evil)}\nunknown: ${JSON.stringify(evil)}\n`);
  await noneRan('a shop record');

  await open(page, '/batches');
  await give('batch-file', 'log.json', JSON.stringify({ batches: [{ id: evil, title: evil }] }));
  await noneRan('a log of batches');
  await give('batch-file', 'log.zip', zipSync({ 'batches.json': Buffer.from(evil) }));
  await noneRan('a zip of a log');
});

test('what is planted in storage runs nowhere', async ({ page }) => {
  await open(page, '/privacy');
  await page.evaluate((evil) => {
    for (const key of [
      'kerf-units',
      'kerf-remembered',
      'kerf-resin-sheets',
      'kerf-resin-sheet-draft',
      'kerf-quotes',
      'kerf-batch-typed',
    ])
      localStorage.setItem(key, evil);
    localStorage.setItem('kerf-shop', JSON.stringify({ text: `shop: ${JSON.stringify(evil)}` }));
  }, scripts('storage'));
  await page.evaluate(
    (evil) =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('kerf', 1);
        asked.onupgradeneeded = () => {
          for (const name of ['drafts', 'batches', 'classes', 'snapshots']) {
            const store = asked.result.createObjectStore(name, { keyPath: 'id' });
            if (name === 'snapshots') store.createIndex('of', 'of');
          }
        };
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const writing = asked.result.transaction(['drafts', 'batches', 'classes'], 'readwrite');
          writing.objectStore('drafts').put({ id: 'a', name: evil, text: evil, changed: 1, saved: 1 });
          for (const name of ['batches', 'classes']) writing.objectStore(name).put({ id: 'a', text: evil, changed: 1 });
          writing.oncomplete = () => {
            asked.result.close();
            resolve();
          };
        };
      }),
    scripts('database'),
  );
  for (const path of [
    '/bench',
    '/batches',
    '/class',
    '/kept',
    '/shop',
    '/quote',
    '/resin-sheets',
    '/calculators/width-change',
    '/privacy',
  ]) {
    await open(page, path);
    await page.waitForTimeout(100);
    expect((await trapOf(page)).ran, path).toEqual([]);
    expect(await page.locator('img[src="x"], svg[onload], a[href^="javascript:"]').count(), path).toBe(0);
  }
});

test('were a script planted all the same, the policy would stop it', async ({ page }) => {
  await open(page, '/');
  const outcome = await page.evaluate(async () => {
    const tried: string[] = [];
    const attempt = (name: string, work: () => void) => {
      try {
        work();
      } catch {
        tried.push(`${name} refused`);
      }
    };
    const inline = document.createElement('script');
    attempt('text of a script', () => {
      inline.textContent = "planted('inline')";
      document.head.append(inline);
    });
    attempt('markup', () => {
      document.body.insertAdjacentHTML('beforeend', "<img src=x onerror=planted('markup')>");
    });
    attempt('a script of another place', () => {
      const foreign = document.createElement('script');
      foreign.src = 'https://stranger.example/a.js';
      document.head.append(foreign);
    });
    attempt('a worker out of text', () => new Worker(URL.createObjectURL(new Blob(["planted('worker')"]))));
    // What a test runs may make code out of text until it waits for the first time.
    await new Promise((resolve) => setTimeout(resolve, 50));
    attempt('code out of text', () => new Function("planted('code')")());
    const link = document.createElement('a');
    link.href = "javascript:planted('link')";
    document.body.append(link);
    link.click();
    const holder = document.createElement('div');
    holder.setAttribute('style', 'color: red');
    document.body.append(holder);
    await fetch('https://stranger.example/').catch(() => tried.push('a request refused'));
    await new Promise((resolve) => setTimeout(resolve, 300));
    return { tried, coloured: getComputedStyle(holder).color === 'rgb(255, 0, 0)' };
  });
  const { ran, stopped } = await trapOf(page);
  expect(ran).toEqual([]);
  expect(outcome.coloured).toBe(false);
  for (const name of ['markup', 'code out of text', 'a script of another place', 'a worker out of text', 'a request'])
    expect(outcome.tried).toContain(`${name} refused`);
  for (const directive of ['require-trusted-types-for', 'script-src', 'style-src', 'connect-src'])
    expect(
      stopped.some((one) => one.startsWith(directive)),
      `${directive}: ${stopped.join('; ')}`,
    ).toBe(true);
});

test('a whole journey sets no cookie and asks no stranger; what it kept is shown, saved, and taken away to the last', async ({
  page,
  baseURL,
  context,
}) => {
  const complaints = watch(page, baseURL ?? '');
  await open(page, '/calculators/width-change');
  await page.getByRole('textbox', { name: /width/i }).first().fill('311 mm');
  await expect(page).toHaveURL(/311/);
  await expect.poll(() => page.evaluate(() => localStorage.getItem('kerf-remembered'))).toContain('311');
  await open(page, '/bench');
  await page.getByRole('button', { name: 'A small one to change' }).click();
  await expect(page.locator('[data-part="editor"] .cm-content')).toContainText('A plain oiled board');
  await open(page, '/privacy');
  const list = page.locator('[data-part=kept-places]');
  await expect(list).toContainText('kerf-remembered');
  await expect(list).toContainText('Drafts of methods');

  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all of it as a file' }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await file.path(), 'utf8'));
  expect(saved.database.drafts.length).toBeGreaterThan(0);
  expect(saved.storage['kerf-remembered']).toContain('311 mm');

  await page.getByRole('button', { name: 'Take all of it away' }).click();
  await page.getByRole('button', { name: 'No, leave it' }).click();
  await expect(list).toContainText('kerf-remembered');
  await page.getByRole('button', { name: 'Take all of it away' }).click();
  await page.getByRole('button', { name: 'Yes, take all of it away' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'All of it is taken away.' })).toBeVisible();
  await expect(page.locator('[data-part=nothing-kept]')).toBeVisible();
  expect(
    await page.evaluate(async () => ({
      storage: Object.keys(localStorage).filter((key) => key.startsWith('kerf') || key.startsWith('theme')),
      session: Object.keys(sessionStorage),
      databases: (await indexedDB.databases()).map(({ name }) => name),
      caches: await caches.keys(),
      workers: (await navigator.serviceWorker.getRegistrations()).length,
    })),
    // The tab alone remembers that it is to keep nothing again.
  ).toEqual({ storage: [], session: ['kerf-offline-rest'], databases: [], caches: [], workers: 0 });
  expect(await context.cookies()).toEqual([]);
  expect(complaints).toEqual([]);
});
