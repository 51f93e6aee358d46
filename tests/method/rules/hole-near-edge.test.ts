import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a hole with too little wood beside it', async () => {
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, shoulderRadius: 20 mm, endRadius: 15 mm, cornerRadius: 20 mm, stock: 18 mm, handleWidth: 36 mm, holeDiameter: 12 mm, holeFromEnd: 25 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "hole-near-edge at /steps/edge/calculations/outline: Beside the hole stand 12 mm of wood; 12.5 mm, about half an inch, is the least that is usual. Move the hole inwards, or bore it smaller.",
    ]
  `);
});

test('a hole with half an inch beside it', async () => {
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, shoulderRadius: 20 mm, endRadius: 15 mm, cornerRadius: 20 mm, stock: 18 mm, handleWidth: 37 mm, holeDiameter: 12 mm, holeFromEnd: 25 mm }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});

test('a large hole wants its own diameter beside it', async () => {
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
        with: { shape: paddle, length: 400 mm, width: 180 mm, handleLength: 110 mm, shoulderRadius: 20 mm, endRadius: 15 mm, cornerRadius: 20 mm, stock: 18 mm, handleWidth: 58 mm, holeDiameter: 20 mm, holeFromEnd: 32 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "hole-near-edge at /steps/edge/calculations/outline: Beside the hole stand 19 mm of wood; 20 mm, the diameter of the hole, is the least that is usual. Move the hole inwards, or bore it smaller.",
    ]
  `);
});
