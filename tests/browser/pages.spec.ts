import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { resultsNearVerdict, stripHoldsVerdict } from './calculator-on-a-phone.ts';
import { jumpsOf, watchShift } from './jumps.ts';
import { strange } from './signs.ts';
import { addStyle, open, pageKinds, sideways, watch } from './site.ts';

/**
 * What is like what comes before it: the rows of a table, some of which have hundreds, and the sets of the checks; and the drawn
 * twin of a formula, hidden from every reader but the eye, whose hundred boxes take minutes.
 */
const alike = (path: string) => [
  '.katex-html',
  'tbody tr:nth-child(n + 5)',
  ...(path.startsWith('/reference/checks') ? ['section:nth-of-type(n + 6)'] : []),
];

/** What depends on how a page is laid out, and so on the width; the rest, colours too, is looked at once, on the desktop. */
const ofTheWidth = ['target-size', 'scrollable-region-focusable', 'meta-viewport'];

/** What axe finds, one line a rule, with the places. */
async function faults(page: Page, path: string, rules?: readonly string[]): Promise<string[]> {
  const axe = alike(path).reduce((all, part) => all.exclude(part), new AxeBuilder({ page }));
  // In the page itself, which holds no page of another place, and without a list of all that is well: a third of the time.
  axe.setLegacyMode(true).options({
    resultTypes: ['violations'],
    ...(rules ? { runOnly: { type: 'rule' as const, values: [...rules] } } : {}),
  });
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

/** The files of our faces that a page loads from now on, with their bytes; all is loaded anew, as on a first visit. */
async function facesOf(page: Page): Promise<Map<string, number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  const loaded = new Map<string, number>();
  page.on('response', async (response) => {
    const file = response.url().split('/').at(-1) ?? '';
    if (file.startsWith('kerf-')) loaded.set(file, (await response.body()).length);
  });
  return loaded;
}

/** How many pixels a page can be scrolled sideways on a screen of 320 px, with letters of 32 px in place of 16, as a reader sets who sees badly. */
async function sidewaysInLargeLetters(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  const choose = (standard: number, fixed: number) =>
    session.send('Page.setFontSizes', { fontSizes: { standard, fixed } });
  await page.setViewportSize({ width: 320, height: 640 });
  await choose(32, 26);
  await page.waitForFunction(() => matchMedia('(width: 10em)').matches);
  const over = await sideways(page);
  await choose(16, 13);
  await page.waitForFunction(() => matchMedia('(width: 20em)').matches);
  return over;
}

// Each page is opened once and looked at in every way: to open it takes longer than to look.
for (const path of pageKinds()) {
  test(`${path} can be read by everybody and fits`, { tag: '@width' }, async ({
    page,
    baseURL,
    viewport,
    hasTouch,
  }) => {
    test.setTimeout(180_000);
    const complaints = watch(page, baseURL ?? '');
    const faces = await facesOf(page);
    await watchShift(page);
    await open(page, path);
    expect(complaints).toEqual([]);
    expect.soft(await sideways(page), 'wider than the screen').toBe(0);
    await page.evaluate(() => document.fonts.ready);
    const { ofFaces, others } = await jumpsOf(page);
    expect.soft(others, 'share of the screen that jumped').toBeLessThan(0.02);
    expect.soft(ofFaces, 'share of the screen that jumped as our faces came').toBeLessThan(0.25);
    // Zoom leaves half the pixels; below 320 of them no page has to fit.
    await page.setViewportSize({ width: Math.max(320, (viewport?.width ?? 0) / 2), height: 450 });
    expect.soft(await sideways(page), 'wider than the screen at 200 % zoom').toBe(0);
    if (hasTouch)
      expect.soft(await sidewaysInLargeLetters(page), 'wider than a screen of 320 px in large letters').toBe(0);
    if (viewport) await page.setViewportSize(viewport);

    if (hasTouch) {
      if (path.startsWith('/calculators/')) {
        await stripHoldsVerdict(page, path);
        await resultsNearVerdict(page, path);
      }
      // The strip with the answer lies over whatever is there while one scrolls; a button within its label is as large as that.
      await addStyle(page, '[data-part=glance] { display: none }');
      await addStyle(page, 'label > input:is([type=radio], [type=checkbox]) { pointer-events: none }');
      // What is out of sight is laid out once somebody comes to it, and takes the focus then where it scrolls: it is looked at so.
      await addStyle(page, '* { content-visibility: visible !important }');
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 100))));
      expect.soft(await faults(page, path, ofTheWidth)).toEqual([]);
    } else {
      expect.soft(await faults(page, path)).toEqual([]);
      // Colours on their way from one to the other are nobody's.
      await addStyle(page, '*, ::before, ::after { transition: none !important }');
      await page.emulateMedia({ colorScheme: 'dark' });
      await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
      expect.soft(await faults(page, path, ['color-contrast']), 'in the dark').toEqual([]);
    }

    if (hasTouch) return;
    const weight = [...faces.values()].reduce((sum, bytes) => sum + bytes, 0);
    expect.soft([...faces.keys()]).toEqual(expect.arrayContaining(['kerf-book.woff2', 'kerf-sans.woff2']));
    // Out of a cache they would come without bytes.
    expect.soft(Math.min(...faces.values())).toBeGreaterThan(0);
    expect.soft(weight, [...faces].join(' ')).toBeLessThanOrEqual(61_440);
    const text = await page.evaluate(() => {
      // Formulas have faces of their own.
      for (const other of document.querySelectorAll('.katex, script, style')) other.remove();
      return document.body.textContent;
    });
    expect.soft(strange(text), 'signs that the faces lack').toEqual([]);
  });
}

test('a link to an equation, a rule, a source, an act or a caution of one, as answers and older pages give it, ends at its place', async ({
  page,
}) => {
  for (const [list, part, id, at = 'h2'] of [
    ['equations', 'moisture', 'wood-handbook-4-5'],
    ['rules', 'resin', 'cure-never-asked'],
    ['rules', 'besides', 'exception-refused'],
    ['sources', 'food', 'fda-food-code'],
    ['acts', 'finishing', 'oil'],
    ['acts', 'resin', 'caution-deep-pour', 'li'],
  ] as const) {
    await open(page, `/reference/${list}#${id}`);
    await expect(page).toHaveURL(new RegExp(`/reference/${list}/${part}/#${id}$`));
    await expect(page.locator(`${at}[id="${id}"]`)).toBeInViewport();
  }
});
