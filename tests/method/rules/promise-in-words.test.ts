import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a claim that promises', async () => {
  expect(
    await told(`
food: { claim: Food-safe and dishwasher-proof }
`),
  ).toMatchInlineSnapshot(`
    [
      "promise-in-words at /food/claim: The words promise what nobody has shown of a board: “food safe” and “dishwasher proof”. Say what it is made of, what it is for and how it is kept; the food-contact calculator writes such a label.",
    ]
  `);
});

test('a label that promises', async () => {
  expect(
    await told(`
steps: { give: { does: Tell them that it is antibacterial. } }
`),
  ).toMatchInlineSnapshot(`
    [
      "promise-in-words at /steps/give/does: The words promise what nobody has shown of a board: “antibacterial”. Say what it is made of, what it is for and how it is kept; the food-contact calculator writes such a label.",
    ]
  `);
});

test('words that deny it promise nothing', async () => {
  expect(
    await told(`
steps: { give: { does: Do not call it food safe. } }
`),
  ).toEqual([]);
});
