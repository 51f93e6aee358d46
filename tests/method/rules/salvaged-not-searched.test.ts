import { expect, test } from 'vitest';
import { told } from './base.ts';

test('old boards that were searched for metal alone', async () => {
  expect(
    await told(`
materials: { maple: { what: Ash from an old barn, salvaged: true } }
tools: { detector: { what: Metal detector, kind: metal-detector } }
steps: { look: { tools: [meter, detector], looksFor: [moisture, metal] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "salvaged-not-searched at /steps/thickness: “Plane to thickness” cuts into salvaged wood (ash from an old barn) that nobody has searched for old paint or preservative. Put a step before it that inspects the wood and looks for metal, old paint and preservative, with a metal detector and a test for lead.",
    ]
  `);
});

test('old boards that were searched for all three', async () => {
  expect(
    await told(`
materials: { maple: { what: Ash from an old barn, salvaged: true } }
tools: { detector: { what: Metal detector, kind: metal-detector } }
steps: { look: { tools: [meter, detector], looksFor: [moisture, metal, old-paint, treatment] } }
`),
  ).toEqual([]);
});

test('a search that nothing waits for comes too late', async () => {
  expect(
    await told(
      `
materials: { maple: { what: Ash from an old barn, salvaged: true } }
tools: { detector: { what: Metal detector, kind: metal-detector } }
steps: { look: { tools: [meter, detector], looksFor: [moisture, metal, old-paint, treatment] } }
`,
      `
steps: { thickness: { after: [] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "salvaged-not-searched at /steps/thickness: “Plane to thickness” cuts into salvaged wood (ash from an old barn) that nobody has searched for metal, old paint or preservative. Put a step before it that inspects the wood and looks for metal, old paint and preservative, with a metal detector and a test for lead.",
    ]
  `);
});
