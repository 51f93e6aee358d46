import { describe, expect, test } from 'vitest';
import { told } from './base.ts';

/** The base with a label and a card asked about one kind of food, and another claim. */
const found = (claim: string, food: string): Promise<string[]> =>
  told(`
food: { claim: "${claim}" }
steps:
  give:
    tell: "{/calculations/label/verdict} {/calculations/card/verdict}"
    calculations:
      label:
        use: food-contact
        with: { market: us, food: ${food}, species: { from: /parameters/wood }, finish: { from: /parameters/finish }, resinPlace: none, papers: none }
      card:
        use: care-card
        with: { market: us, food: ${food}, species: { from: /parameters/wood }, finish: { from: /parameters/finish }, resinPlace: none, papers: none }
`).then((lines) => lines.filter((line) => line.startsWith('food-not-asked')));

test('cheese is claimed and dry food asked about', async () => {
  expect(await found('For serving cheese', 'dry')).toMatchInlineSnapshot(`
    [
      "food-not-asked at /steps/give/calculations/label/with/food: The claim names “cheese”, and label was asked about dry food. Ask with food: fatty, or claim only dry food.",
      "food-not-asked at /steps/give/calculations/card/with/food: The claim names “cheese”, and card was asked about dry food. Ask with food: fatty, or claim only dry food.",
    ]
  `);
});

describe('breaks', () => {
  test.each([
    ['For serving cut fruit', 'dry'],
    ['For bread and fruit', 'dry'],
    ['For smoked fish', 'moist'],
    ['For bread, not for guests; butter too', 'dry'],
  ])('%s, asked about %s', async (claim, food) => {
    expect(await found(claim, food)).toHaveLength(2);
  });
});

describe('just keeps', () => {
  test.each([
    ['For serving bread, biscuits and whole fruit', 'dry'],
    ['For bread, not for cheese', 'dry'],
    ['For bread and dried fruit; no meat', 'dry'],
    ['For cut fruit', 'moist'],
    ['For serving cheese', 'fatty'],
  ])('%s, asked about %s', async (claim, food) => {
    expect(await found(claim, food)).toEqual([]);
  });
});
