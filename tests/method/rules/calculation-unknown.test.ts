import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a router bit of a size that no table speaks of', async () => {
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
        with: { diameter: 120 mm, turns: "8000" }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "calculation-unknown at /steps/edge/calculations/speed: Only the maker of a bit this large can say how fast it may turn: no usual speed is known. Do not run it without that figure. Find the figure that it names, on the maker’s sheet or from the maker, and give it to speed.",
    ]
  `);
});

test('a bit of a size that one does', async () => {
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
        with: { diameter: 63.5 mm, turns: "8000" }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
