import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a bit that the router table does not take', async () => {
  expect(
    await told(
      `
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
        with: { diameter: 51 mm, turns: "10000" }
  hole: { after: [edge] }
`,
      `
tools: { router: { limits: { bitDiameter: 50 mm } } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "bit-too-large at /steps/edge/calculations/speed: The bit of 51 mm is larger than the 50 mm that the machine takes (router table). Take a smaller bit, or a machine that is made for it.",
    ]
  `);
});

test('the largest that it takes', async () => {
  expect(
    await told(
      `
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
        with: { diameter: 50 mm, turns: "10000" }
  hole: { after: [edge] }
`,
      `
tools: { router: { limits: { bitDiameter: 50 mm } } }
`,
    ),
  ).toEqual([]);
});
