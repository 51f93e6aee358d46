import { expect, test } from 'vitest';
import { told } from './base.ts';

test('an edge that does not reach past the stock', async () => {
  expect(
    await told(`
tools:
  router: { what: Router table, kind: router-table }
  cutter: { what: Template bit, kind: router-bit, limits: { mostTurns: 22000 /min } }
steps:
  edge:
    title: Rout the outline
    act: rout
    does: Follow the template.
    after: [thickness]
    backed: true
    tools: [router, cutter, extractor, goggles, muffs]
    calculations:
      speed:
        use: cutter-speed
        with: { diameter: 12.7 mm, turns: "16000", cuttingLength: 19 mm, bearing: shank, stock: 19 mm, template: 18 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "cutter-too-short at /steps/edge/calculations/speed: The edge of 19 mm is 1 mm too short for stock of 19 mm. Take a bit with an edge of at least 20 mm, or say why the last passes may ride on the edge already cut.",
    ]
  `);
});

test('an edge that just does', async () => {
  expect(
    await told(`
tools:
  router: { what: Router table, kind: router-table }
  cutter: { what: Template bit, kind: router-bit, limits: { mostTurns: 22000 /min } }
steps:
  edge:
    title: Rout the outline
    act: rout
    does: Follow the template.
    after: [thickness]
    backed: true
    tools: [router, cutter, extractor, goggles, muffs]
    calculations:
      speed:
        use: cutter-speed
        with: { diameter: 12.7 mm, turns: "16000", cuttingLength: 20 mm, bearing: shank, stock: 19 mm, template: 18 mm }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
