import { expect, type Page, test } from '@playwright/test';
import { addStyle, everyPath, htmlOf, open } from './site.ts';

/** What has the focus, in a word; '' where the focus was lost to the page as a whole. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const { activeElement: at } = document;
    if (!at || at === document.body) return '';
    return at.getAttribute('aria-label') || at.textContent?.trim() || at.id || at.tagName;
  });

test('a list of a calculator is filled with keys alone: the focus goes where the next key is wanted', async ({
  page,
}) => {
  await open(page, '/calculators/board-yield');
  const boards = page.locator('[data-field="boards"]');
  const rows = boards.locator('ol > li');
  const before = await rows.count();
  await boards.getByRole('button', { name: 'Add a board' }).press('Enter');
  await expect(rows).toHaveCount(before + 1);
  await expect(rows.last().locator('input').first()).toBeFocused();
  await boards.getByRole('button', { name: `Remove board ${before + 1}` }).press('Enter');
  await expect(rows).toHaveCount(before);
  await expect(rows.last().locator('input').first()).toBeFocused();
  await boards.getByRole('button', { name: 'As text' }).press('Enter');
  await expect(boards.locator('textarea')).toBeFocused();
  await boards.getByRole('button', { name: 'In rows' }).press('Enter');
  await expect(rows.first().locator('input').first()).toBeFocused();
});

test('what goes once it is pressed hands the focus to its neighbour', async ({ page }) => {
  await open(page, '/woods?compare=sugar-maple,red-maple');
  await page.getByRole('button', { name: 'Remove Sugar maple' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Remove Sugar maple' })).toHaveCount(0);
  await expect.poll(() => focused(page)).not.toBe('');
});

test('a verdict is said once the fields rest, and not at every key', async ({ page }) => {
  await open(page, '/calculators/seasonal-movement');
  const said = page.locator('[data-part="said-verdict"]');
  await expect(said).toHaveText('');
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    // The page as sent gives way to the live one: what is heard is any change within the region, whichever stands there.
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const region = (target instanceof Element ? target : target.parentElement)?.closest(
          '[data-part="said-verdict"]',
        );
        if (region) heard.push(region.textContent ?? '');
      }
    }).observe(document, { childList: true, characterData: true, subtree: true });
  });
  await page.getByLabel('Width across the grain', { exact: true }).fill('');
  await page.keyboard.type('412', { delay: 40 });
  await expect(said).toContainText(/moves/i);
  expect(await page.evaluate(() => (window as unknown as { heard: string[] }).heard)).toHaveLength(1);
});

test('the first and the last of what takes the focus are in sight, on a phone too', { tag: '@width' }, async ({
  page,
}) => {
  await open(page, '/calculators/pour-heat');
  const hidden: string[] = [];
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press('Tab');
    const where = await page.evaluate(() => {
      const at = document.activeElement;
      if (!at || at === document.body || at.closest('[data-part="glance"], .navbar')) return '';
      const box = at.getBoundingClientRect();
      // Not one corner of it may be all that is seen: its middle, and what is drawn there is it or within it.
      const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1);
      const seen = [0.25, 0.5, 0.75].some((share) => {
        const top = document.elementFromPoint(x, box.top + box.height * share);
        return top !== null && (at.contains(top) || top.contains(at) || at.parentElement?.contains(top));
      });
      return seen ? '' : at.outerHTML.slice(0, 100);
    });
    if (where) hidden.push(where);
  }
  expect(hidden).toEqual([]);
});

test('where the system forces its colours, what is chosen is told from what is not', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await open(page, '/');
  const ground = (name: string) =>
    page.getByRole('button', { name, exact: true }).evaluate((button) => getComputedStyle(button).backgroundColor);
  expect(await ground('mm')).not.toBe(await ground('inch'));
  await page.emulateMedia({ forcedColors: null });
});

test('nothing is cut where a reader sets lines, words and letters wider', { tag: '@width' }, async ({ page }) => {
  // The measures of success criterion 1.4.12 of WCAG 2.2.
  const wider =
    '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';
  for (const path of ['/', '/calculators/seasonal-movement', '/methods/first-tray']) {
    await open(page, path);
    await addStyle(page, wider);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll('button, a, label, summary, legend, h1, h2, h3, td, th')]
        .filter((each) => {
          const { overflow, clipPath } = getComputedStyle(each);
          return overflow === 'hidden' && clipPath === 'none' && each.scrollHeight > each.clientHeight + 1;
        })
        .map((each) => each.outerHTML.slice(0, 100)),
    );
    expect(cut, path).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(over, path).toBe(0);
  }
});

test('a box to tick on paper, and the sign beside a note, are kept from those who hear the page', () => {
  const pages = everyPath().filter((path) => path.startsWith('/how-to'));
  const boxes = pages.flatMap((path) => htmlOf(path).match(/<input[^>]* type="?checkbox"?[^>]*disabled[^>]*>/g) ?? []);
  const signs = pages.flatMap((path) => htmlOf(path).match(/<span class="?admonitionIcon[^>]*><svg[^>]*>/g) ?? []);
  expect(boxes.length).toBeGreaterThan(0);
  expect(signs.length).toBeGreaterThan(0);
  expect([...boxes, ...signs].filter((tag) => !/aria-hidden="?true/.test(tag))).toEqual([]);
});

test('whoever asks for less motion sees none, on one page of each make', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const path of ['/', '/woods', '/calculators/resin-dose', '/methods/first-tray', '/how-to/bubbles', '/bench']) {
    await open(page, path);
    const moving = await page.evaluate(() => {
      const long = (times: string) => times.split(',').some((time) => Number.parseFloat(time) > 0.01);
      return [...document.querySelectorAll('*')].flatMap((element) =>
        ['', '::before', '::after'].flatMap((part) => {
          const style = getComputedStyle(element, part || null);
          const moves =
            (style.animationName !== 'none' && long(style.animationDuration)) ||
            (style.transitionProperty !== 'none' && long(style.transitionDuration)) ||
            style.scrollBehavior === 'smooth';
          return moves ? [`${element.tagName}.${element.className}${part}`] : [];
        }),
      );
    });
    expect(moving, path).toEqual([]);
  }
});
