import { expect, test } from 'vitest';
import { told } from './base.ts';

test('the end of a handle beyond its hole, thinner than the board', async () => {
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, handleWidth: 45 mm, shoulderRadius: 20 mm, endRadius: 20 mm, cornerRadius: 20 mm, stock: 19.5 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "short-grain-neck at /steps/edge/calculations/outline: A part only 19 mm wide has its grain running across it, narrower than the stock is thick, 19.5 mm; it may split off. Turn the outline on the board, make that part wider, or leave it out.",
    ]
  `);
});

test('the same on a board that is no thicker than it', async () => {
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, handleWidth: 45 mm, shoulderRadius: 20 mm, endRadius: 20 mm, cornerRadius: 20 mm, stock: 19 mm }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
