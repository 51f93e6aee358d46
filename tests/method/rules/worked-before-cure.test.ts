import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

/** By the cure clock at 20 °C this resin is sanded by hand after 3 d, and has cured through after 7 d or so. */
const sandedAfter = (least: string, more = '') => `
steps:
  smooth: { after: [{ step: fill, least: ${least} }]${more} }
  wet: { after: [smooth, { step: fill, least: { from: /calculations/clock/figures/foodService, take: high } }] }
`;
const of = (figure: string) => `{ from: /calculations/clock/figures/${figure}, take: high }`;

test('a sander on resin that can only be sanded by hand', async () => {
  expect(await told(withResin, sandedAfter(of('sandable')))).toMatchInlineSnapshot(`
    [
      "worked-before-cure at /steps/smooth: “Sand it” may begin 3.61 d after “Pour the inlay” is done; it takes 8.24 d in this shop before the resin has cured through, as a machine asks. Let it wait for it: { step: fill, least: { from: /calculations/clock/figures/fullCure, take: high } }. The sheet of the resin comes first.",
    ]
  `);
});

test('a sander on resin that has cured through', async () => {
  expect(await told(withResin, sandedAfter(of('fullCure')))).toEqual([]);
});

test('a hand block on resin that can be sanded by hand', async () => {
  expect(
    await told(
      withResin,
      sandedAfter(of('sandable'), ', tools: [extractor, goggles, muffs, mask]'),
      'tools: { sander: null }',
    ),
  ).toEqual([]);
});

test('a hand block on resin a day old', async () => {
  expect(
    await told(withResin, sandedAfter('1 d', ', tools: [extractor, goggles, muffs, mask]'), 'tools: { sander: null }'),
  ).toMatchInlineSnapshot(`
    [
      "worked-before-cure at /steps/smooth: “Sand it” may begin 24 h after “Pour the inlay” is done; it takes 3.53 d in this shop before the resin can be sanded by hand. Let it wait for it: { step: fill, least: { from: /calculations/clock/figures/sandable, take: high } }. The sheet of the resin comes first.",
    ]
  `);
});

test('oil and hand-over before the resin has cured', async () => {
  expect(
    await told(
      withResin,
      sandedAfter(of('sandable'), ', tools: [extractor, goggles, muffs, mask]'),
      'tools: { sander: null }',
      'steps: { wet: { after: [smooth] } }',
    ),
  ).toMatchInlineSnapshot(`
    [
      "worked-before-cure at /steps/oiling: “Oil it” may begin 3.61 d after “Pour the inlay” is done; it takes 8.24 d in this shop before the resin takes a finish. Let it wait for it: { step: fill, least: { from: /calculations/clock/figures/oil, take: high } }. The sheet of the resin comes first.",
      "worked-before-cure at /steps/give: “Hand it over” may begin 3.61 d after “Pour the inlay” is done; it takes 8.24 d in this shop before the resin may come near food. Let it wait for it: { step: fill, least: { from: /calculations/clock/figures/foodService, take: high } }. The sheet of the resin comes first.",
    ]
  `);
});
