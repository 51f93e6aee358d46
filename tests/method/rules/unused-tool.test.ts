import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a tool that no step takes', async () => {
  expect(
    await told(`
tools: { saw: { what: Band saw, kind: band-saw } }
`),
  ).toMatchInlineSnapshot(`
    [
      "unused-tool at /tools/saw: “Band saw” (saw) is used in no step. List it under tools of the step that takes it, or take it out.",
    ]
  `);
});

test('what stands by all day', async () => {
  expect(
    await told(`
tools: { extinguisher: { what: Fire extinguisher, kind: fire-extinguisher } }
`),
  ).toEqual([]);
});
