import { expect, type Page, test } from '@playwright/test';
import { everyPath, htmlOf, pageKinds, watch } from './site.ts';

const paths = everyPath();
const share = 50;

/** Those that pages.spec.ts does not open. */
const others = paths.filter((path) => !pageKinds().includes(path));

/** An empty page of the site’s own place, that asks for nothing. */
async function openHost(page: Page): Promise<void> {
  const body = '<!doctype html><link rel="icon" href="data:,"><body></body>';
  await page.route('/host', (route) => route.fulfill({ contentType: 'text/html', body }));
  await page.goto('/host');
  await page.unroute('/host');
}

/**
 * Open a page within the page that is open, in the place of the one before, and wait until it is live. To make a new page of the
 * browser for each takes half as long again.
 *
 * @returns whether it came to life
 */
function openWithin(page: Page, path: string): Promise<boolean> {
  return page.evaluate(async (source) => {
    const frame = document.createElement('iframe');
    frame.style.cssText = 'width: 400px; height: 300px';
    frame.src = source;
    const loaded = new Promise((resolve) => {
      frame.onload = resolve;
    });
    document.body.replaceChildren(frame);
    await loaded;
    const live = () => frame.contentDocument?.documentElement.dataset.hasHydrated === 'true';
    for (const end = Date.now() + 30_000; !live() && Date.now() < end; )
      await new Promise((resolve) => setTimeout(resolve, 5));
    return live();
  }, path);
}

test('there is a page for every wood, and for every other kind', () => {
  expect(paths.filter((path) => path.startsWith('/woods/')).length).toBeGreaterThan(200);
  for (const path of ['/', '/woods', '/calculators', '/how-to', '/reference', '/reference/equations']) {
    expect(paths).toContain(path);
  }
});

test('each page is whole as sent: one heading, a title of its own, links that lead somewhere, nothing put off to a script', () => {
  const titles = new Map<string, string>();
  for (const path of paths) {
    const html = htmlOf(path);
    expect(html.match(/<h1[ >]/g), `${path}: headings of the first level`).toHaveLength(1);
    expect(html, `${path}: parts that only a script would show`).not.toMatch(/<div hidden(="")? id="\w*S:/);
    expect(html, `${path}: a link that leads nowhere`).not.toMatch(/<a(?=[\s>])(?![^>]*\bhref)/);
    const title = /<title[^>]*>([^<]*)/.exec(html)?.[1] ?? '';
    expect(titles.get(title), `${path}: the title “${title}” is that of another page`).toBeUndefined();
    titles.set(title, path);
  }
});

for (let from = 0; from < others.length; from += share) {
  const part = others.slice(from, from + share);
  test(`of the other pages ${from + 1} to ${from + part.length} complain of nothing and ask nobody else`, async ({
    page,
    baseURL,
  }) => {
    test.setTimeout(240_000);
    const complaints = watch(page, baseURL ?? '');
    await openHost(page);
    for (const path of part) {
      expect(await openWithin(page, path), `${path} comes to life`).toBe(true);
      expect(complaints, path).toEqual([]);
    }
  });
}

test('a page that the script would write otherwise, and one that asks a stranger, are complained of', async ({
  page,
  baseURL,
}) => {
  await page.route('**/woods/white-ash', (route) =>
    route.fulfill({ contentType: 'text/html', body: htmlOf('/woods/white-ash').replaceAll('White ash', 'Black ash') }),
  );
  await page.route('**/woods/sugar-maple', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: htmlOf('/woods/sugar-maple').replace('<body', '<img src="https://stranger.example/x.png"><body'),
    }),
  );
  await page.route('https://stranger.example/**', (route) => route.abort());
  const complaints = watch(page, baseURL ?? '');
  await openHost(page);
  await openWithin(page, '/woods/white-ash');
  expect(complaints.join()).toMatch(/Minified React error #418/);
  await openWithin(page, '/woods/sugar-maple');
  expect(complaints).toContain('request: https://stranger.example/x.png');
});

/** A host that answers every form of an address with the page itself, as some do in place of sending the reader on. */
async function answerAsAsked(page: Page): Promise<void> {
  await page.route(/\/(?:[^/.?#]+|index\.html)(?:[?#].*)?$/, async (route) => {
    const path = new URL(route.request().url()).pathname.replace(/\/index\.html$/, '') || '/';
    if (route.request().resourceType() !== 'document' || !paths.includes(path)) return route.fallback();
    await route.fulfill({ contentType: 'text/html', body: htmlOf(path) });
  });
}

/** One page of each kind, and of the calculators one. */
const kinds = pageKinds().filter((path) => !path.startsWith('/calculators/') || path === '/calculators/pour-heat');

test('whatever form of its address a page of any kind was asked for by, it comes to life as it was sent, at its own address', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const complaints = watch(page, baseURL ?? '');
  await openHost(page);
  await answerAsAsked(page);
  const own = () => page.evaluate(() => document.querySelector('iframe')?.contentWindow?.location.href);
  for (const path of kinds) {
    const asked = `${path === '/' ? '' : path}/index.html?kept=1#kept`;
    expect(await openWithin(page, asked), `${asked} comes to life`).toBe(true);
    expect(complaints, asked).toEqual([]);
    if (!path.startsWith('/bench'))
      expect(await own()).toMatch(new RegExp(`^${baseURL}${path === '/' ? '' : path}/\\?.*kept=1`));
  }
  for (const path of ['/woods', '/woods/white-ash', '/how-to', '/how-to/choosing-a-wood']) {
    expect(await openWithin(page, path), `${path} comes to life`).toBe(true);
    expect(complaints, path).toEqual([]);
    expect(await own()).toBe(`${baseURL}${path}/`);
  }
});

test('the host is sent on from a form of an address to the page itself, and canonical links and the site map name that', async ({
  page,
}) => {
  for (const path of ['/how-to', '/woods', '/woods/white-ash']) {
    const answer = await page.request.get(`${path}?a=1`, { maxRedirects: 0 });
    expect([answer.status(), answer.headers()['location']], path).toEqual([301, `${path}/?a=1`]);
  }
  for (const path of paths) {
    const html = htmlOf(path);
    const canonical = /<link[^>]*rel=["']?canonical["']?[^>]*href=["']?https?:\/\/[^/"'\s>]+([^"'\s>]*)/.exec(
      html,
    )?.[1];
    expect(canonical, path).toBe(path === '/' ? '/' : `${path}/`);
  }
});

test('an address with .html, as other sites write them, leads to the page', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  await page.goto('/woods/white-ash.html?width=250+mm');
  await expect(page).toHaveURL(/\/woods\/white-ash\/\?width=250/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('White ash');
  expect(complaints.filter((each) => !each.includes('status of 404'))).toEqual([]);
});

test('a page that does not exist says so, and that alone is complained of', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  const response = await page.goto('/woods/no-such-wood');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('There is no such page');
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  // From however deep, within the how-to pages too, and with the search.
  for (const path of ['/no/such/page/at/all/', '/how-to/no-such-page', '/calculators/pour-heat/more?a=1#b']) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toContainText('There is no such page');
    await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  }
  await page.getByRole('searchbox', { name: 'Find anything' }).fill('white ash');
  await page
    .getByRole('link', { name: /White ash/ })
    .first()
    .click();
  await expect(page).toHaveURL(/\/woods\/white-ash\/$/);
  expect(complaints.filter((each) => !each.includes('status of 404'))).toEqual([]);
});
