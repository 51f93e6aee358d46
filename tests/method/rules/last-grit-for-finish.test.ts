import { expect, test } from 'vitest';
import { told } from './base.ts';

test('scratches under oil', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { lastGrit: 180, drawer: "80, 120, 180" } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "last-grit-for-finish at /steps/smooth/calculations/grits: Sanding ends with P180, grain 82 µm: too coarse under mineral oil, for which P320, 46 µm, is usual. End with P320. Nothing covers the scratches, so they must be too fine to see.",
    ]
  `);
});

test('a grit coarser than usual still does', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { lastGrit: 220 } } } } }
`),
  ).toEqual([]);
});

test('too fine for a film', async () => {
  expect(
    await told(`
parameters: { finish: { default: shellac } }
tools: { window: { what: Open window, kind: ventilation } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { oiling: { act: coat, uses: [oil, cloth, gloves], tools: [window, goggles] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "last-grit-for-finish at /steps/smooth/calculations/grits: Sanding ends with P320, grain 46 µm: too fine under shellac, for which P220, 68 µm, is usual. End with P220. The film fills what P220 leaves, and holds to it.",
    ]
  `);
});
