import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

/** Shellac, whose film holds to sanded resin and not to polished resin. */
const film = `
parameters: { finish: { default: shellac } }
tools: { can: { what: Metal can, kind: rag-can } }
steps:
  smooth: { calculations: { grits: { with: { lastGrit: 220 } } } }
  oiling: { act: coat, tools: [window, can, goggles], uses: [oil, cloth, gloves] }
`;
const polished = `
steps:
  shine:
    title: Polish the inlay
    act: polish
    does: Wet, up to a mirror.
    after: [smooth]
    uses: [cloth]
    tools: [goggles]
  wet: { after: [shine] }
`;

test('a film on polished resin', async () => {
  expect(await told(withResin, film, polished)).toMatchInlineSnapshot(`
    [
      "finish-on-resin at /steps/oiling: “Oil it” puts shellac on resin that “Polish the inlay” has polished. It holds to cured resin that is clean and sanded to P220; alcohol softens resin that has not cured.",
    ]
  `);
});

test('the same on sanded resin', async () => {
  expect(await told(withResin, film)).toEqual([]);
});

test('mineral oil on polished resin', async () => {
  expect(await told(withResin, polished)).toEqual([]);
});

test('a film on resin that nobody sanded', async () => {
  expect(
    await told(
      withResin,
      film,
      `
steps:
  smooth: { after: [hole] }
  fill: { after: [stir, wet] }
  oiling: { after: [{ step: fill, least: { from: /calculations/clock/figures/foodService, take: high } }] }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "finish-on-resin at /steps/oiling: “Oil it” puts shellac on resin that nobody has sanded since “Pour the inlay”. It holds to cured resin that is clean and sanded to P220; alcohol softens resin that has not cured.",
    ]
  `);
});
