import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a wide inlay across the grain', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { calculations: { inlay: { with: { inlayWidth: 75 mm } } } } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "movement-of-inlay at /steps/fill/calculations/inlay: Over the 75 mm of the inlay the wood works 1.03 mm through the year, which the resin does not follow; up to 1 mm is usual. Draw the inlay narrower across the grain, 73 mm at most in this wood and place, or turn it along the grain.",
    ]
  `);
});

test('an inlay just narrow enough', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { calculations: { inlay: { with: { inlayWidth: 70 mm } } } } }
`,
    ),
  ).toEqual([]);
});

test('an inlay that nobody asked about', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { calculations: { inlay: null } } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "movement-of-inlay at /steps/fill: Resin is poured into wood, and nowhere is it worked out how far the wood moves over it. Ask for the movement through the year (seasonal-movement) with inlayWidth, the width of the inlay across the grain.",
    ]
  `);
});
