import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a bit that is too wide for the shoulders of a paddle', async () => {
  expect(
    await told(`
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, handleWidth: 45 mm, shoulderRadius: 6 mm, endRadius: 20 mm, cornerRadius: 20 mm, bitDiameter: 12.7 mm, stock: 18 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "inside-corner at /steps/edge/calculations/outline: A bit of 12.7 mm does not follow a hollow of radius 6 mm: it leaves 0.14 mm standing. Take a bit of at most 12 mm, or round the hollow to 6.35 mm.",
    ]
  `);
});

test('a bit that just follows them', async () => {
  expect(
    await told(`
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, handleWidth: 45 mm, shoulderRadius: 6.4 mm, endRadius: 20 mm, cornerRadius: 20 mm, bitDiameter: 12.7 mm, stock: 18 mm }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
