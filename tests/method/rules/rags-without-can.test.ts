import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a drying oil without a can', async () => {
  expect(
    await told(`
parameters: { finish: { default: tung-oil } }
tools: { window: { what: Open window, kind: ventilation } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { oiling: { tools: [window], uses: [oil, cloth, gloves] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "rags-without-can at /steps/oiling: Rags from “Oil it” are wet with raw tung oil, which sets by taking up oxygen, and can take fire by themselves; the step lists no can for them. List a metal can with a lid and water (kind rag-can) among the tools of the step.",
    ]
  `);
});

test('the same with its can', async () => {
  expect(
    await told(`
parameters: { finish: { default: tung-oil } }
tools: { window: { what: Open window, kind: ventilation }, can: { what: Metal can, kind: rag-can } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { oiling: { tools: [window, can], uses: [oil, cloth, gloves] } }
`),
  ).toEqual([]);
});

test('an oil that is nowhere named', async () => {
  expect(
    await told(`
parameters: { finish: null }
`),
  ).toMatchInlineSnapshot(`
    [
      "rags-without-can at /steps/oiling: Nowhere is it said which finish “Oil it” puts on, so its rags are taken to heat by themselves; the step lists no can for them. List a metal can with a lid and water (kind rag-can) among the tools of the step, and name the finish in a parameter of kind finish.",
    ]
  `);
});
