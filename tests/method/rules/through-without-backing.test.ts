import { expect, test } from 'vitest';
import { readMethod } from '../../../src/method/read.ts';
import { patched, told } from './base.ts';

test('a hole without a backing', async () => {
  expect(
    await told(`
steps: { hole: { backed: null } }
`),
  ).toMatchInlineSnapshot(`
    [
      "through-without-backing at /steps/hole: “Bore the hanging hole” bores, and says neither that the hole goes through into a backing nor that it is blind. Clamp a flat piece of waste under the hole and say backed: true; of a hole that ends within the wood say blind: true, and of one that is finished from the other side say so under wayRound.",
    ]
  `);
});

test('a blind hole says so, and one that is finished from the other side', async () => {
  expect(await told('steps: { hole: { backed: null, blind: true } }')).toEqual([]);
  expect(
    await told(`
steps: { hole: { backed: null, wayRound: "Bored until the point shows, and finished from the other side." } }
`),
  ).toEqual([]);
  expect(await told('steps: { hole: { backed: null, blind: false } }')).toHaveLength(1);
});

test('a hole cannot be both', () => {
  const { problems } = readMethod(patched('steps: { hole: { blind: true } }'), 'tray.yaml');
  expect(problems.map(({ field, message }) => `${field}: ${message}`)).toEqual([
    'steps.hole.blind: the step says backed and blind, and what ends within the wood needs no backing. Keep the one that is so; two holes of two kinds are two steps.',
  ]);
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
