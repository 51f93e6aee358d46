import { expect, test } from 'vitest';
import { told } from './base.ts';

test('an outline that is larger than its board', async () => {
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
        with: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 20 mm, boardLength: 405 mm, boardWidth: 300 mm }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "calculation-stops at /steps/edge/calculations/outline: The board is 1 mm too short for the outline. The grain tears in 2 places: turn the board over for them. Change the work, or what outline is told of it, until its answer no longer says stop.",
    ]
  `);
});

test('an outline that just lies on it', async () => {
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
        with: { shape: rounded-rectangle, length: 400 mm, width: 250 mm, cornerRadius: 20 mm, boardLength: 406 mm, boardWidth: 300 mm }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
