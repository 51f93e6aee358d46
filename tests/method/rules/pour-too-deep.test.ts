import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

const deep = (depth: string) => `steps: { fill: { calculations: { heat: { with: { depth: ${depth} } } } } }`;

test('a pour just deeper than the resin bears', async () => {
  expect(await told(withResin, deep('19.5 mm'))).toMatchInlineSnapshot(`
    [
      "pour-too-deep at /steps/fill/calculations/heat/with/depth: The pour is 19.5 mm deep in one go; 19 mm is the most in this shop. Pour it in 2 layers, as heat says, or in a cooler shop.",
    ]
  `);
});

test('one just within it', async () => {
  expect(await told(withResin, deep('18.9 mm'))).toEqual([]);
});
