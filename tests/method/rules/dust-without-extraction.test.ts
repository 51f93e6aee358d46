import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a sander without an extractor', async () => {
  expect(
    await told(`
steps: { smooth: { tools: [sander, goggles, muffs, mask] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "dust-without-extraction at /steps/smooth: “Sand it” makes dust and lists no dust extractor. List the extractor (kind dust-extractor) among the tools of the step, connected to the tool that makes the dust.",
    ]
  `);
});

test('sanding with a block and a mask', async () => {
  expect(
    await told(`
tools: { sander: null, block: { what: Cork block, kind: sanding-block } }
steps: { smooth: { tools: [block, goggles, mask] } }
`),
  ).toEqual([]);
});
