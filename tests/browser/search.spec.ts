import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { find, searching } from '../../src/site/search/find.ts';
import { root } from '../../src/store/index.ts';
import { open, sideways, watch } from './site.ts';

/** What people type, and the page that must be among the first three of its kind, or the wood among the first three woods. */
const asked: readonly (readonly [text: string, to: string])[] = [
  ['oily rags', '/how-to/oily-rags'],
  ['rag', '/how-to/oily-rags'],
  ['splashed', '/how-to/resin-and-hardeners'],
  ['cup hot', '/how-to/heat-build-up-in-resin'],
  ['sticky resin', '/how-to/dosing-and-mixing-resin'],
  ['drum sander scratches', '/how-to/sanding-to-a-finish'],
  ['pour too deep', '/how-to/pouring-without-overheating'],
  ['dishwasher', '/how-to/care'],
  ['price', '/how-to/pricing-a-board'],
  ['food safe', '/how-to/food-contact'],
  ['guide bush', '/how-to/making-the-pocket'],
  ['movment', '/how-to/seasonal-movement'],
  ['exotherm', '/calculators/pour-heat'],
  ['mix ratio', '/calculators/resin-dose'],
  ['lumber', '/calculators/stock-order'],
  ['class of twelve', '/methods/class-of-twelve'],
  ['quartersawn', '/how-to/glossary'],
  ['shop record', '/shop'],
  ['purple heart', '/woods/purpleheart'],
  ['blackwalnut', '/woods/black-walnut'],
  ['fraxnius', '/woods/white-ash'],
  ['sasafras', '/woods/sassafras'],
  ['resin wont set', '/how-to/dosing-and-mixing-resin'],
  ['resin won’t set', '/how-to/dosing-and-mixing-resin'],
  ['sealing wood before epoxy', '/how-to/making-the-pocket'],
  ['juice groove', '/how-to/making-the-pocket'],
  ['oak tannin', '/how-to/choosing-a-wood'],
  ['warped board', '/how-to/flattening-a-wide-board'],
  ['cutting board oil', '/how-to/oiling-and-waxing'],
  ['mask', '/how-to/dust-from-cured-resin'],
  ['dust explosion', '/how-to/dust-from-cured-resin'],
  ['calendar', '/how-to/lesson-plans'],
  ['bandsaw', '/how-to/making-and-using-templates'],
  ['epoxy in eye', '/how-to/resin-and-hardeners'],
];

test('what people type leads to the page that they mean', () => {
  const search = searching(JSON.parse(readFileSync(join(root, 'build', 'search.json'), 'utf8')));
  const missed = asked.filter(([text, to]) => {
    const { woods, groups } = find(search, text);
    const first = [
      ...woods.slice(0, 3).map(({ id }) => `/woods/${id}`),
      ...groups.flatMap(({ pages }) => pages.slice(0, 3).map((page) => page.to.split('#')[0])),
    ];
    return !first.includes(to);
  });
  expect(missed).toEqual([]);
});

test('the first page searches all, by keyboard alone, and fetches the index when it is wanted', {
  tag: '@width',
}, async ({ page, baseURL }) => {
  const complaints = watch(page, baseURL ?? '');
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
  await open(page, '/');
  expect(fetched).not.toContain('/search.json');
  const box = page.getByRole('searchbox', { name: 'Find anything' });
  await box.focus();
  await page.keyboard.type('stickey resin');
  await expect(page.getByRole('heading', { name: 'How-to', exact: true })).toBeVisible();
  expect(await sideways(page)).toBe(0);
  // What is found may still be changing under the arrow of a quick typist on a busy machine.
  await expect(page.getByRole('link', { name: /^Dosing and mixing resin/ }).first()).toBeVisible();
  const first = page.locator('[data-part="found"] a').first();
  await expect(async () => {
    await box.focus();
    await page.keyboard.press('ArrowDown');
    await expect(first).toBeFocused({ timeout: 500 });
  }).toPass();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/how-to\//);
  await page.goBack();
  await page.getByRole('searchbox', { name: 'Find anything' }).fill('black walnut');
  await expect(page.getByRole('link', { name: /^Black walnut Juglans nigra/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/woods\/black-walnut\/?$/);
  expect(complaints).toEqual([]);
});

test('a search stands in its address and comes back with it', { tag: '@width' }, async ({ page }) => {
  await open(page, '/search?q=rags');
  await expect(page.getByRole('link', { name: 'Oily rags' }).first()).toBeVisible();
  await page.getByRole('searchbox').fill('sapele');
  await expect(page).toHaveURL(/\?q=sapele$/);
  await page.reload();
  await expect(page.getByRole('link', { name: /^Sapele/ })).toBeVisible();
  expect(await sideways(page)).toBe(0);
});
