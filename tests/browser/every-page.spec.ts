import { expect, test } from '@playwright/test';
import { everyPath, htmlOf, open, watch } from './site.ts';

const paths = everyPath();
const share = 25;

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

for (let from = 0; from < paths.length; from += share) {
  const part = paths.slice(from, from + share);
  test(`pages ${from + 1} to ${from + part.length} complain of nothing and ask nobody else`, async ({
    page,
    baseURL,
  }) => {
    test.setTimeout(180_000);
    const complaints = watch(page, baseURL ?? '');
    for (const path of part) {
      await open(page, path);
      expect(complaints, path).toEqual([]);
    }
  });
}

for (const path of ['/how-to', '/how-to/', '/woods/', '/woods/white-ash/', '/woods/white-ash/index.html']) {
  test(`${path}, another form of an address, complains of nothing`, async ({ page, baseURL }) => {
    const complaints = watch(page, baseURL ?? '');
    await open(page, path);
    expect(complaints).toEqual([]);
  });
}

test('a page that does not exist says so, and that alone is complained of', async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  const response = await page.goto('/woods/no-such-wood');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('There is no such page');
  await expect(page.locator('html')).toHaveAttribute('data-has-hydrated', 'true');
  expect(complaints.filter((each) => !each.includes('status of 404'))).toEqual([]);
});
