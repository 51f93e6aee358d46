import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('sanding without abrasive', async () => {
  expect(
    await told(`
materials: { discs: null }
steps: { smooth: { uses: [maple] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "missing-tool-or-material at /steps/smooth: “Sand it” (sand) does not list abrasive paper. List it under tools or uses of the step, or choose the act that the step is.",
    ]
  `);
});

test('mixing without a scale', async () => {
  expect(
    await told(
      withResin,
      `
tools: { scale: null }
steps: { stir: { tools: [goggles, window] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "missing-tool-or-material at /steps/stir: “Mix the resin” (weigh and mix resin) does not list a scale. List it under tools or uses of the step, or choose the act that the step is.",
    ]
  `);
});

test('an inspection without a meter', async () => {
  expect(
    await told(`
tools: { meter: null }
steps: { look: { tools: [] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "missing-tool-or-material at /steps/look: “Read the moisture” (look the wood over) does not list a moisture meter. List it under tools or uses of the step, or choose the act that the step is.",
    ]
  `);
});

test('pouring what was never mixed', async () => {
  expect(
    await told(
      withResin,
      `
steps: { stir: null, fill: { after: [rehearse], uses: [gloves] } }
materials: { resin: null, cups: null }
tools: { scale: null }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "missing-tool-or-material at /steps/fill: “Pour the inlay” (pour) does not list resin. List it under tools or uses of the step, or choose the act that the step is.",
    ]
  `);
});

test('pouring what was mixed before', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { uses: [gloves] } }
`,
    ),
  ).toEqual([]);
});

test('a tool of another kind may stand for a tool', async () => {
  expect(
    await told(`
tools: { planer: null, plane: { what: Hand plane, kind: other } }
steps: { thickness: { tools: [plane, goggles] } }
`),
  ).toEqual([]);
});
