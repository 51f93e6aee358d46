import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { open, pageKinds } from './site.ts';

/** The rows of a table are alike; some tables have hundreds. */
const furtherRows = 'tbody tr:nth-child(n + 8)';

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });
    for (const path of pageKinds()) {
      test(`${path} has nothing that axe finds`, async ({ page }) => {
        test.setTimeout(120_000);
        await open(page, path);
        const { violations } = await new AxeBuilder({ page }).exclude(furtherRows).analyze();
        const found = violations.map(
          ({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`,
        );
        expect(found).toEqual([]);
      });
    }
  });
}
