import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

const mass = (grams: number) => `steps: { stir: { calculations: { dose: { with: { mass: ${grams} g } } } } }`;
const scale = (division: string) => `tools: { scale: { limits: { division: ${division} } } }`;

// A hundred grams of 2 : 1 by volume holds 30 g of the smaller part: half a division of 1 g is 1.7 % of it, half of 2 g 3.3 %.
test('a scale on the bench coarser than the dose was told', async () => {
  expect(await told(withResin, scale('2 g'))).toMatchInlineSnapshot(`
    [
      "mix-too-small at /steps/stir/calculations/dose: The ratio of the smallest cup can be 3.4 % off, weighed on a scale of 2 g, where the dose is told 0.1 g; up to 2 % does no harm. Weigh on a finer scale, or mix more at once than the place needs.",
    ]
  `);
});

test('a coarse scale and enough in the cup', async () => {
  expect(await told(withResin, scale('1 g'))).toEqual([]);
});

test('so little that a tenth of a gram is too coarse', async () => {
  expect(await told(withResin, mass(10))).toMatchInlineSnapshot(`
    [
      "mix-too-small at /steps/stir/calculations/dose: The ratio of the smallest cup can be 2.2 % off; up to 2 % does no harm. Weigh on a finer scale, or mix more at once than the place needs.",
    ]
  `);
});

test('a little more', async () => {
  expect(await told(withResin, mass(12))).toEqual([]);
});
