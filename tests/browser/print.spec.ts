import { expect, type Page, test } from '@playwright/test';
import { inlaidTray } from '../calculators/kit/inlaid-tray.ts';
import { pdfTexts } from './pdf-text.ts';
import { open } from './site.ts';

const papers = ['A4', 'Letter'] as const;

/** What the browser prints of a page, sheet by sheet, its text without blanks. */
const printed = async (page: Page, format: (typeof papers)[number]) =>
  pdfTexts(await page.pdf({ format, preferCSSPageSize: false }));

const bare = (text: string) => text.replace(/\s+/g, '');

/** Run what a button does, and print where the browser would ask its printer; the marks of what is printed stay while it does. */
async function printBy(page: Page, press: () => Promise<void>, format: (typeof papers)[number]): Promise<string[]> {
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await press();
  const sheets = await printed(page, format);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  return sheets;
}

for (const path of [
  '/woods/sugar-maple',
  '/calculators/width-change?species=white-ash&width=250+mm',
  '/how-to/choosing-a-wood',
]) {
  test(`${path} prints with its title, address, date and number in the margin, and dark pages on white`, async ({
    page,
  }) => {
    await open(page, path);
    const title = bare((await page.getByRole('heading', { level: 1 }).textContent()) ?? '');
    for (const format of papers) {
      const sheets = await printed(page, format);
      for (const [at, text] of sheets.entries()) {
        expect(text).toContain(`page${at + 1}of${sheets.length}`);
        expect(text).toContain(path);
        expect(text).toMatch(/printed\d{1,2}[A-Z][a-z]+20\d\d/);
        expect(text).toContain(title);
        // No sheet for a line or two.
        expect(text.length).toBeGreaterThan(250);
      }
    }
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('navigation', { name: 'Main' })).toBeHidden();
    await expect(page.getByRole('button')).toHaveCount(0);
    await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const ofDark = await page.evaluate(() => {
      const { backgroundColor, color } = getComputedStyle(document.documentElement);
      return [backgroundColor, color];
    });
    expect(ofDark).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  });
}

test('a long address stands in the margin without its entries, which stand on the sheet', async ({ page }) => {
  const query = `length=420+mm&width=220+mm&thickness=19+mm&count=12&grade=1-common&clearFaces=both&spare=10+%25`;
  await open(page, `/calculators/stock-order?${query}`);
  const [first] = await printed(page, 'A4');
  expect(first).toContain('/calculators/stock-order');
  expect(first).not.toContain('thickness=19');
  expect(first).toContain('Finishedthickness19mm');
  expect(first).toMatch(/taken:.*eachendofablank2in/);
});

test('a how-to page prints on few sheets, without controls, with names of pages for addresses', async ({ page }) => {
  await open(page, '/how-to/dosing-and-mixing-resin');
  for (const format of papers) {
    const sheets = await printed(page, format);
    expect(sheets.length).toBeLessThanOrEqual(6);
    const all = sheets.join('');
    expect(all).not.toMatch(/Copylink|Printthissheet|Startagain|Handout|\(\/how-to/);
    expect(all).toMatch(/\(see:[A-Z]/);
  }
});

test('no sheet of a how-to page is empty behind a full one', async ({ page }) => {
  // The last of them holds code that is higher than a column.
  for (const path of ['/how-to/flattening-a-wide-board', '/how-to/food-contact', '/how-to/writing-a-method']) {
    await open(page, path);
    for (const format of papers)
      for (const text of await printed(page, format)) expect(text.length, path).toBeGreaterThan(250);
  }
});

test('a how-to page takes no more sheets of Letter than of A4, and none of them is empty', async ({ page }) => {
  for (const name of [
    'what-may-be-promised',
    'resin-and-hardeners',
    'polishing-resin',
    'oiling-and-waxing',
    'coating-a-whole-face',
    'seasonal-movement',
  ]) {
    await open(page, `/how-to/${name}`);
    const [a4, letter] = [await printed(page, 'A4'), await printed(page, 'Letter')];
    expect(letter.length, name).toBeLessThanOrEqual(a4.length);
    for (const text of letter) expect(text.length, name).toBeGreaterThan(250);
  }
});

test('no table of a how-to page is wider than its column, or the browser would print the whole page smaller', async ({
  page,
}) => {
  // Tables of figures, each with its source in words on paper; the width is that of A4 within its margins.
  for (const path of [
    '/how-to/choosing-a-wood',
    '/how-to/seasonal-movement',
    '/how-to/wide-boards-panels-and-inlays',
  ]) {
    await open(page, path);
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 718, height: 1000 });
    const over = await page.evaluate(() =>
      [...document.querySelectorAll('.theme-doc-markdown table')]
        .filter((table) => {
          const column = (table.parentElement as Element).getBoundingClientRect();
          return table.getBoundingClientRect().right > column.right + 2;
        })
        .map((table) => (table.textContent ?? '').slice(0, 60)),
    );
    expect(over, path).toEqual([]);
    // Nor is there room behind the last line, which would take a sheet of its own.
    const room = await page
      .locator('.theme-doc-markdown > :last-child')
      .evaluate((last) => [last, last.lastElementChild ?? last].map((each) => getComputedStyle(each).marginBottom));
    expect(room, path).toEqual(['0px', '0px']);
    await page.emulateMedia({ media: null });
  }
});

test('a method prints in two columns, without a sheet that is half white', async ({ page }) => {
  await open(page, '/methods/first-tray');
  for (const format of papers) {
    const sheets = await printed(page, format);
    expect(sheets.length).toBeLessThanOrEqual(9);
    // Steps go on from sheet to sheet: only the last, and those of the timetable and the bill, may end early.
    for (const text of sheets.slice(0, 5)) expect(text.length).toBeGreaterThan(2500);
    for (const [at, text] of sheets.entries()) expect(text).toContain(`page${at + 1}of${sheets.length}`);
  }
});

test('a handout keeps the answers to the questions back', async ({ page }) => {
  await open(page, '/how-to/dosing-and-mixing-resin');
  const whole = (await printed(page, 'A4')).join('');
  const handout = (
    await printBy(page, () => page.getByRole('button', { name: 'Handout', exact: true }).click(), 'A4')
  ).join('');
  expect(whole).toContain('Answers:');
  expect(handout).not.toContain('Answers:');
  expect(handout).not.toContain('Wherethefigurescomefrom');
  expect(handout).toContain('Checkyourself');
  // The page is as it was.
  await expect(page.locator('html')).not.toHaveAttribute('data-handout');
});

test('a booklet holds the pages of its stage, each danger in full once, and is in no search', async ({ page }) => {
  await open(page, '/booklets/finish');
  await expect(page.locator('meta[name="robots"]')).toHaveAttribute('content', 'noindex');
  const names = await page.locator('[data-page] > h2').allTextContents();
  expect(names.length).toBeGreaterThan(1);
  for (const format of papers) {
    const sheets = await printBy(
      page,
      () => page.getByRole('button', { name: 'Print for the class', exact: true }).click(),
      format,
    );
    for (const [at, text] of sheets.entries()) expect(text).toContain(`page${at + 1}of${sheets.length}`);
    for (const name of names) {
      // Once in the contents, once at the head of its page, on a sheet of its own.
      expect(sheets[0]).toContain(bare(name));
      expect(sheets.slice(1).some((text) => text.includes(bare(name)))).toBe(true);
    }
    const all = sheets.join('');
    expect(all.match(/Danger\.Oilyclothsheat/g)?.length ?? 0).toBeLessThanOrEqual(1);
    expect(all).not.toContain('Answers:');
  }
});

test('no sheet is printed for a line or two, nor for nothing', async ({ page }) => {
  // What fills a screen to its foot began an empty sheet behind a full one; a calculator had the room of a screen about it.
  for (const [path, most] of [
    ['/how-to/pouring-an-inlay', 3],
    ['/how-to/pouring-without-overheating', 2],
    ['/how-to/making-and-using-templates', 4],
    ['/calculators/stock-order', 1],
  ] as const) {
    await open(page, path);
    for (const format of papers) {
      const sheets = await printed(page, format);
      expect(sheets.length, `${path} ${format}`).toBeLessThanOrEqual(most);
      for (const text of sheets) expect(text.length, `${path} ${format}`).toBeGreaterThan(250);
    }
  }
});

test('the care card that a method leads to prints on one sheet, and by itself on one side', async ({ page }) => {
  await open(page, `/calculators/care-card?${new URLSearchParams(inlaidTray)}`);
  for (const format of papers) {
    expect(await printed(page, format), format).toHaveLength(1);
    const alone = await printBy(
      page,
      () => page.getByRole('button', { name: 'Print this sheet', exact: true }).click(),
      format,
    );
    expect(alone, format).toHaveLength(1);
  }
});

test('what is printed by itself alone leaves no heading on the page', async ({ page }) => {
  await open(page, '/calculators/template-fit');
  for (const heading of ['Template: ', 'Copies on a template blank: '])
    await expect(page.getByRole('heading', { name: heading })).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  for (const heading of ['Template: ', 'Copies on a template blank: '])
    await expect(page.getByText(heading, { exact: false }).first()).toBeHidden();
});

test('nothing on paper sends to what can only be pressed, and an hour that nobody told is a line', async ({ page }) => {
  await open(page, '/calculators/cure-clock');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Take it away').filter({ visible: true })).toHaveCount(0);
  await expect(page.getByText(/^One in \d+ of \d+ values\.$/).first()).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await open(page, '/methods/class-of-twelve');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Say above what holds for you')).toBeHidden();
});

test('cautions stay on paper', async ({ page }) => {
  await open(page, '/how-to/salvaged-stock');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Old paint may hold lead').first()).toBeVisible();
});

test('a number on a mixing sheet stands beside its box and before its unit', async ({ page }) => {
  await open(page, '/calculators/resin-dose');
  await page.emulateMedia({ media: 'print' });
  const cell = page.locator('[data-document="mixing-sheet"] td:has(input):has(strong)').first();
  await expect(cell).toHaveCSS('white-space', 'nowrap');
  await expect(cell.locator('strong')).toHaveCSS('white-space', 'nowrap');
});

test('the answers to the questions of a page are folded on the screen, and last on paper', async ({ page }) => {
  await open(page, '/how-to/oiling-and-waxing');
  const answers = page.locator('[data-part="answers"]');
  const sheet = page.locator('[data-part="answers-sheet"]');
  await expect(answers.getByRole('listitem').first()).toBeHidden();
  await answers.getByText('Answers').click();
  await expect(answers.getByRole('listitem').first()).toBeVisible();
  await expect(sheet).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  await expect(answers).toBeHidden();
  await expect(sheet.getByRole('heading', { name: 'Answers: Oiling and waxing' })).toBeVisible();
  // On a sheet of their own they would cost one a page; a handout goes without them.
  await expect(sheet).toHaveCSS('break-before', 'auto');
});
