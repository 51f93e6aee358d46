import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a board that is handed over before its oil has cured', async () => {
  expect(
    await told(`
parameters: { finish: { default: tung-oil } }
tools: { window: { what: Open window, kind: ventilation }, can: { what: Metal can, kind: rag-can } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps:
  oiling: { tools: [window, can], uses: [oil, cloth, gloves] }
  give:
    calculations:
      food: { use: food-contact, with: { market: us, food: dry, species: sugar-maple, finish: tung-oil, daysSinceCoat: "27", resinPlace: none, papers: none } }
`),
  ).toMatchInlineSnapshot(`
    [
      "unsafe-answer at /steps/give/calculations/food: Not yet: 1 day more until everything has cured. Label then: For serving bread, biscuits and whole fruit. Change the work, or what food is told of it, until its answer no longer says stop.",
    ]
  `);
});

test('a board whose oil has cured', async () => {
  expect(
    await told(`
parameters: { finish: { default: tung-oil } }
tools: { window: { what: Open window, kind: ventilation }, can: { what: Metal can, kind: rag-can } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps:
  oiling: { tools: [window, can], uses: [oil, cloth, gloves] }
  give:
    calculations:
      food: { use: food-contact, with: { market: us, food: dry, species: sugar-maple, finish: tung-oil, daysSinceCoat: "28", resinPlace: none, papers: none } }
`),
  ).toEqual([]);
});
