import { expect, test } from 'vitest';
import { told } from './base.ts';

test('food on resin, and no paper', async () => {
  expect(
    await told(`
food: { touches: wood-and-resin }
`),
  ).toMatchInlineSnapshot(`
    [
      "claim-without-papers at /food: “For serving bread and whole fruit” is said of the piece, and no paper is named for the resin. Ask the maker of the resin for a written declaration and name it under papers, or keep food off that part and say so.",
    ]
  `);
});

test('a finish that only its maker can speak for, and no paper', async () => {
  expect(
    await told(`
parameters: { finish: { default: hard-wax-oil } }
tools: { can: { what: Metal can, kind: rag-can }, window: { what: Open window, kind: ventilation } }
materials: { gloves: { what: Gloves, kind: gloves, needs: [{ amount: 2, per: batch }] } }
steps: { smooth: { calculations: { grits: { with: { lastGrit: 220 } } } }, oiling: { tools: [can, window], uses: [oil, cloth, gloves] } }
`),
  ).toMatchInlineSnapshot(`
    [
      "claim-without-papers at /food: “For serving bread and whole fruit” is said of the piece, and no paper is named for the finish (hard-wax oil). Ask the maker of the finish (hard-wax oil) for a written declaration and name it under papers, or keep food off that part and say so.",
    ]
  `);
});

test('the same with a paper', async () => {
  expect(
    await told(`
food: { touches: wood-and-resin, papers: Declarations of both makers of 2027-01-04 }
`),
  ).toEqual([]);
});
