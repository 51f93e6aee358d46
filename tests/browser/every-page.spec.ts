import { expect, type Page, test } from '@playwright/test';
import { everyPath, htmlOf, open, pageKinds, watch } from './site.ts';

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
  for (const path of ['/', '/woods', '/calculators', '/how-to/', '/reference', '/reference/equations']) {
    expect(paths).toContain(path);
  }
});

test('each page is whole as sent: one heading, a title of its own, nothing put off to a script', () => {
  const titles = new Map<string, string>();
  for (const path of paths) {
    const html = htmlOf(path);
    expect(html.match(/<h1[ >]/g), `${path}: headings of the first level`).toHaveLength(1);
    expect(html, `${path}: parts that only a script would show`).not.toMatch(/<div hidden(="")? id="\w*S:/);
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

test('other forms of an address complain of nothing', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  for (const path of ['/how-to', '/how-to/', '/woods/', '/woods/white-ash/', '/woods/white-ash/index.html']) {
    await open(page, path);
    expect(complaints, path).toEqual([]);
  }
});

test('a page that does not exist says so, and that alone is complained of', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  const response = await page.goto('/woods/no-such-wood');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('There is no such page');
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  expect(complaints.filter((each) => !each.includes('status of 404'))).toEqual([]);
});
