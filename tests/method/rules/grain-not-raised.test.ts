import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a coat of resin is sanded and not raised', async () => {
  expect(
    await told(
      withResin,
      `
steps:
  wet: null
  flood: { title: Flood the face, act: coat, does: Spread it with a card., interrupt: never, after: [{ step: fill, least: { from: /calculations/clock/figures/recoatOpens, take: high }, most: { from: /calculations/clock/figures/recoatCloses, take: low } }], uses: [gloves], tools: [goggles, window] }
  oiling: null
`,
      `
steps: { give: { after: [{ step: flood, least: { from: /calculations/clock/figures/foodService, take: high } }] } }
materials: { oil: null, cloth: null }
`,
    ),
  ).toEqual([]);
});

test('oil on a face that was never wetted', async () => {
  expect(
    await told(`
steps: { wet: null }
`),
  ).toMatchInlineSnapshot(`
    [
      "grain-not-raised at /steps/oiling: Water will reach the wood (“For serving bread and whole fruit”), and “Oil it” goes on before the grain was raised. Before it, wipe the sanded face with clean water, let it dry for hours, and take the fibres off with the last grit, lightly.",
    ]
  `);
});

test('a face that meets no water', async () => {
  expect(
    await told(`
steps: { wet: null, smooth: { calculations: { grits: { with: { water: "no" } } } } }
food: { claim: For a candle, touches: nothing }
`),
  ).toEqual([]);
});

test('a step that comes after the oil does not count', async () => {
  expect(
    await told(`
steps: { oiling: { after: [smooth] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "grain-not-raised at /steps/oiling: Water will reach the wood (“For serving bread and whole fruit”), and “Oil it” goes on before the grain was raised. Before it, wipe the sanded face with clean water, let it dry for hours, and take the fibres off with the last grit, lightly.",
    ]
  `);
});
