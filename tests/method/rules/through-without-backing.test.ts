import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a hole without a backing', async () => {
  expect(
    await told(`
steps: { hole: { backed: null } }
`),
  ).toMatchInlineSnapshot(`
    [
      "through-without-backing at /steps/hole: “Bore the hanging hole” bores, and does not say that the hole goes into a backing. Clamp a flat piece of waste under the hole and say backed: true; for a blind hole, or one finished from the other side, say so under wayRound.",
    ]
  `);
});

test('a blind hole says so', async () => {
  expect(
    await told(`
steps: { hole: { backed: null, wayRound: "A blind hole, 10 mm deep." } }
`),
  ).toEqual([]);
});

test('a bit that leaves the end grain', async () => {
  expect(
    await told(
      `
tools: { pattern: { what: Template, kind: template } }
`,
      `
tools:
  router: { what: Router table, kind: router-table }
  cutter: { what: Template bit, kind: router-bit }
steps:
  edge:
    title: Rout the outline
    act: rout
    does: Follow the template.
    after: [thickness]
    backed: true
    tools: [router, cutter, extractor, goggles, muffs]
    calculations:
      outline:
        use: template-fit
        with: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 20 mm }
  hole: { after: [edge] }
`,
      `
steps: { edge: { backed: null, tools: [router, cutter, extractor, goggles, muffs, pattern] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "through-without-backing at /steps/edge: In “Rout the outline” the bit comes out of the end grain, and nothing is said of a backing. Clamp a flat piece of waste against the edge where the bit comes out and say backed: true, or say the way round it.",
    ]
  `);
});

test('a recess that is routed before the outline', async () => {
  expect(
    await told(
      `
tools: { pattern: { what: Template, kind: template } }
`,
      `
tools:
  router: { what: Router table, kind: router-table }
  cutter: { what: Template bit, kind: router-bit }
steps:
  edge:
    title: Rout the outline
    act: rout
    does: Follow the template.
    after: [thickness]
    backed: true
    tools: [router, cutter, extractor, goggles, muffs]
    calculations:
      outline:
        use: template-fit
        with: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 20 mm }
  hole: { after: [edge] }
`,
      `
steps: { recess: { title: Rout the recess, act: rout, does: Follow the template., after: [thickness], tools: [router, cutter, extractor, goggles, muffs, pattern] }, edge: { after: [recess] } }
`,
    ),
  ).toEqual([]);
});
