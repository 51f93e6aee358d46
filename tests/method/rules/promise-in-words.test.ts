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

test.each([
  ['title', 'title: "A food safe, non-toxic board"', '/title: '],
  ['for whom', 'for: Whoever wants an antibacterial board.', '/for: '],
  ['about', 'about: A dishwasher-proof board.', '/about: '],
  [
    'what a step says, whatever it does',
    'steps: { oiling: { why: So the board is FDA approved. } }',
    '/steps/oiling/why: ',
  ],
])('a promise stands wherever a reader meets it: %s', async (_, patch, place) => {
  expect(await told(patch)).toEqual([
    expect.stringMatching(new RegExp(`^promise-in-words at ${place}The words promise what nobody has shown`)),
  ]);
});

test('what goes wrong is quoted and promised to nobody', async () => {
  expect(await told('steps: { give: { wrong: The words “food safe” have crept in. Take them out. } }')).toEqual([]);
});

test('the grade of an oil that is bought is no promise of the board', async () => {
  expect(await told('materials: { oil: { what: "Mineral oil, food grade" } }')).toEqual([]);
});
