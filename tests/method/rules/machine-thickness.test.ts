import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a strip that is thinner than the planer may be fed', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { thickness: 5 mm } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "machine-thickness at /steps/thickness/piece/thickness: The piece is 5 mm thick, thinner than the 6 mm that the tool may be fed (thickness planer). Work it while it is still part of a larger piece, fix it to a sled that is large enough, and say so under wayRound.",
    ]
  `);
});

test('a blank that is thicker than the saw cuts deep', async () => {
  expect(
    await told(
      `
tools: { saw: { what: Table saw, kind: table-saw, limits: { depthOfCut: 80 mm } } }
steps:
  thickness: { act: saw, tools: [saw, extractor, goggles, muffs], piece: { length: 420 mm, width: 260 mm, thickness: 81 mm } }
  look: { tools: [meter] }
`,
      `
tools: { planer: null }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "machine-thickness at /steps/thickness/piece/thickness: The piece is 81 mm thick, thicker than the 80 mm that the tool takes (table saw). Take another tool, cut the piece down first, or say under wayRound how it is taken all the same.",
    ]
  `);
});

test('a blank that the saw just goes through', async () => {
  expect(
    await told(
      `
tools: { saw: { what: Table saw, kind: table-saw, limits: { depthOfCut: 80 mm } } }
steps:
  thickness: { act: saw, tools: [saw, extractor, goggles, muffs], piece: { length: 420 mm, width: 260 mm, thickness: 80 mm } }
  look: { tools: [meter] }
`,
      `
tools: { planer: null }
`,
    ),
  ).toEqual([]);
});

test('a strip that is just thick enough', async () => {
  expect(
    await told(`
steps: { thickness: { piece: { thickness: 6 mm } } }
`),
  ).toEqual([]);
});
