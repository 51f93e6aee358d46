import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a planer without ears and eyes', async () => {
  expect(
    await told(`
steps: { thickness: { tools: [planer, extractor] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "without-protection at /steps/thickness: “Plane to thickness” (plane to thickness) lists no eye protection or hearing protection. List eye protection and hearing protection among the tools or materials of the step.",
    ]
  `);
});

test('a mask that is thrown away does for a respirator', async () => {
  expect(
    await told(`
materials: { p2: { what: Particle masks, kind: mask-filter, needs: [{ amount: 1, per: piece }] } }
tools: { mask: null }
steps: { smooth: { uses: [maple, discs, p2], tools: [sander, extractor, goggles, muffs] } }
`),
  ).toEqual([]);
});

test('pouring without gloves, in still air', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { uses: [resin], tools: [goggles] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "without-protection at /steps/fill: “Pour the inlay” (pour) lists no gloves or moving air. List gloves and moving air among the tools or materials of the step.",
    ]
  `);
});

test('a drying oil on bare hands in still air', async () => {
  expect(
    await told(`
parameters: { finish: { default: tung-oil } }
tools: { can: { what: Metal can, kind: rag-can } }
steps: { oiling: { tools: [can] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "without-protection at /steps/oiling: “Oil it” (oil) lists no gloves or moving air. List gloves and moving air among the tools or materials of the step.",
    ]
  `);
});
