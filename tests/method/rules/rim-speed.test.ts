import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a large bit at the speed of a small one', async () => {
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
        with: { diameter: 63.5 mm, turns: "17000" }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "rim-speed at /steps/edge/calculations/speed: At 17 000 turns a minute the rim of a bit of 63.5 mm runs at 56.5 m/s; 16 000 turns a minute, 53.2 m/s, is the most that is usual. Set the router to 12 000 turns a minute or less before the bit goes in, or take a smaller bit.",
    ]
  `);
});

test('a bit beyond the speed that is marked on it', async () => {
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
        with: { diameter: 12.7 mm, turns: "22500" }
  hole: { after: [edge] }
`),
  ).toMatchInlineSnapshot(`
    [
      "rim-speed at /steps/edge/calculations/speed: At 22 500 turns a minute the rim of a bit of 12.7 mm runs at 15 m/s; 22 000 turns a minute, 14.6 m/s, is marked on it. Set the router to 22 000 turns a minute or less before the bit goes in, or take a smaller bit.",
    ]
  `);
});

test('a bit at the speed that is marked on it', async () => {
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
        with: { diameter: 12.7 mm, turns: "22000" }
  hole: { after: [edge] }
`),
  ).toEqual([]);
});
