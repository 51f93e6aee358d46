import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a softwood under food', async () => {
  expect(
    await told(`
parameters: { wood: { default: eastern-white-pine } }
`),
  ).toMatchInlineSnapshot(`
    [
      "wood-for-food at /parameters/wood: Eastern white pine under food (“For serving bread and whole fruit”): better not: soft under a knife; softwood, for serving at most. Take another wood, or say that no food lies on it (touches: nothing).",
    ]
  `);
});

test('a wood with open pores is good to serve on, with care', async () => {
  expect(
    await told(`
parameters: { wood: { default: white-ash } }
`),
  ).toEqual([]);
});

test('the same softwood where no food lies on it', async () => {
  expect(
    await told(
      `
parameters: { wood: { default: eastern-white-pine } }
`,
      `
food: { claim: For a candle, touches: nothing }
`,
    ),
  ).toEqual([]);
});

test('food on wood that is nowhere named', async () => {
  expect(
    await told(`
parameters: { wood: null }
steps: { look: { calculations: null } }
`),
  ).toMatchInlineSnapshot(`
    [
      "wood-for-food at /food/touches: Food is said to lie on the wood (“For serving bread and whole fruit”), and nowhere is the wood named. Add a parameter of kind wood, or name the species in a calculation.",
    ]
  `);
});
