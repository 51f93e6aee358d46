import { describe, expect, test } from 'vitest';
import { told } from './base.ts';

/** The base with a label, and what the step that hands it over says. */
const labelled = (inputs: Record<string, string> = {}, does = 'Say how it is kept.', food = ''): Promise<string[]> => {
  const asked = { market: 'us', food: 'dry', resinPlace: 'none', papers: 'none', ...inputs };
  const pairs = Object.entries(asked).map(([name, value]) => `${name}: ${value}`);
  return told(`
${food}
steps:
  give:
    does: "${does}"
    tell: "{/calculations/label/verdict}"
    calculations:
      label:
        use: food-contact
        with: { ${pairs.join(', ')}, species: { from: /parameters/wood }, finish: { from: /parameters/finish } }
`).then((lines) => lines.filter((line) => line.startsWith('label-beyond-claim')));
};

test('a label that is worked out for harder food than is claimed', async () => {
  expect(await labelled({ food: 'fatty' })).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/food: label is worked out for fatty food, and the claim is “For serving bread and whole fruit”. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
});

test('words at the handing over that name harder food', async () => {
  expect(await labelled({}, 'Tell them: for bread, cheese and cold cuts.')).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/does: The text names “cheese” and “cold cuts”, and the claim is “For serving bread and whole fruit”. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
});

test('papers, another market, food on the resin', async () => {
  expect(await labelled({ papers: 'finish' })).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/papers: label is worked out as if papers were there, and the head names none under food. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
  expect(await labelled({ market: 'eu' })).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/market: label speaks by the rules of another market than the head of the method does. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
  expect(
    await labelled({ resinPlace: 'under-food', resin: 'slow-casting-2-1', daysSincePour: '"20"' }),
  ).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/resinPlace: label is worked out for food on the resin, and by the head food touches the wood alone. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
});

test('a label where nothing is claimed', async () => {
  expect(await labelled({}, 'Say how it is kept.', 'food: null')).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/food: label is worked out for dry food, and the head of the method claims no food. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
  expect(
    await labelled({}, 'Say how it is kept.', 'food: { claim: To look at, touches: nothing }'),
  ).toMatchInlineSnapshot(`
    [
      "label-beyond-claim at /steps/give/calculations/label/with/food: label is worked out for dry food, and by the head of the method food touches nothing. Let the label say what the claim says, or change the claim where the piece is made for it.",
    ]
  `);
});

describe('just keeps', () => {
  test.each([
    ['the same food', {}, 'For bread and whole fruit.', ''],
    ['harder food that is claimed', { food: 'fatty' }, 'For cheese.', 'food: { claim: For bread and cheese }'],
    ['easier food than is claimed', { food: 'moist' }, 'For bread.', 'food: { claim: For bread and cheese }'],
    ['food that is turned away', {}, 'Not for cheese; keep butter and meat off it.', ''],
    [
      'papers that the head names',
      { papers: 'finish' },
      'For bread.',
      'food: { papers: A letter of the maker of the oil }',
    ],
  ])('%s', async (_what, inputs, does, food) => {
    expect(await labelled(inputs, does, food)).toEqual([]);
  });
});
