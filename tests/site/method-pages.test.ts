import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { methodEntry } from '../../src/site/plugin/method-pages.ts';
import { readMethodTexts, root } from '../../src/store/index.ts';

const method = readMethodTexts().find(({ id }) => id === 'first-tray');
if (!method) throw new Error('there is no first tray');

test('a site that ships a shop record sends its pages with its prices and its hours, before any script runs', async () => {
  const { page } = await methodEntry(method, readFileSync(join(root, 'methods', 'shop.yaml'), 'utf8'));
  expect(page.shop).toBe('Lakeside community workshop');
  expect(page.brief.pieceCost).toMatch(/\d/);
  expect(page.brief.price).toMatch(/\d/);
  expect(page.timetable?.assumedHours).toBe(false);
});

test('a site that ships none says that nothing has a price', async () => {
  const { page } = await methodEntry(method, undefined);
  expect(page.shop).toBeUndefined();
  expect(page.brief.price).toBeUndefined();
  expect(page.costless[0]).toContain('Without a shop record nothing has a price.');
});
