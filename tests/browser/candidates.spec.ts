import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { addStyle, barriers, open } from './site.ts';

const path = '/calculators/seasonal-movement?species=soft+maple&place=Portland';

for (const colorScheme of ['light', 'dark'] as const) {
  test(`an answer that is not of these inputs can be read all the same: ${colorScheme}`, async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.emulateMedia({ colorScheme });
    await open(page, path);
    await addStyle(page, '*, ::before, ::after { transition: none !important }');
    const axe = new AxeBuilder({ page }).include('[data-calculator]').setLegacyMode(true);
    expect(await barriers(axe.options({ resultTypes: ['violations'] }))).toEqual([]);
  });
}

test('each wood and place of a shared name is a touch away', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, path);
  const offers = page.getByRole('group', { name: /which\?$/ }).getByRole('button');
  await expect(offers).toHaveText(['Red maple', 'Silver maple', 'Portland, Maine', 'Portland, Oregon']);
  for (const offer of await offers.all()) expect((await offer.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await page.getByRole('button', { name: 'Silver maple' }).click();
  await page.getByRole('button', { name: 'Portland, Oregon' }).click();
  await expect(page).toHaveURL(/species=silver-maple.*place=portland-or/);
  await expect(page.getByText(/^Not updated/)).toHaveCount(0);
});
