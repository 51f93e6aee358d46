import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a pour whose depth nobody asked about', async () => {
  expect(await told(withResin, 'steps: { fill: { tell: null, calculations: { heat: null } } }')).toMatchInlineSnapshot(`
    [
      "pour-never-asked at /steps/fill: “Pour the inlay” pours resin, and nothing asks how deep it may be in this shop. Ask pour-heat in the step, with the resin, the depth and the temperature of the shop.",
    ]
  `);
});

test('one that was asked about in the step before', async () => {
  expect(
    await told(
      withResin,
      `
steps:
  fill: { tell: null, calculations: { heat: null } }
  stir:
    calculations:
      heat:
        use: pour-heat
        with: { resin: slow-casting-2-1, depth: 6 mm, shopTemperature: 20 °C, base: hardwood, baseThickness: 12 mm, air: still }
`,
    ),
  ).toEqual([]);
});
