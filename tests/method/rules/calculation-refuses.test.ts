import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('an inlay that is wider than its board', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { calculations: { inlay: { with: { inlayWidth: 260 mm } } } } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "calculation-refuses at /steps/fill/calculations/inlay/with/inlayWidth: An inlay 260 mm wide leaves no wood of a board of 250 mm. Measure the inlay across the grain, or leave it out. Mend inlayWidth of inlay; the page of seasonal-movement says what it asks.",
    ]
  `);
});

test('an inlay that lies in it', async () => {
  expect(await told(withResin)).toEqual([]);
});
