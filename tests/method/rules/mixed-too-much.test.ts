import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

// One cup for two pieces, to be empty after 229 min or so.
const each = (minutes: number) => `steps: { fill: { hands: { each: ${minutes} min } } }`;

test('pouring that takes longer than the cup lasts', async () => {
  expect(await told(withResin, each(116))).toMatchInlineSnapshot(`
    [
      "mixed-too-much at /steps/fill/hands: What one cup holds takes 3.87 h to lay in “Pour the inlay”; a cup is emptied within 3.8 h of mixing. Mix smaller cups, one after another (cupMass of dose), work with more people, or take a slower resin.",
    ]
  `);
});

test('pouring that is done just in time', async () => {
  expect(await told(withResin, each(113))).toEqual([]);
});
