import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

/** A second pour over the first, before the tray is sanded. By the cure clock its window is open from 24 h to 57 h or so. */
const twice = (link: string, between = '') => `
steps:
  again:
    title: Pour the second layer
    act: pour
    does: Pour it slowly.
    after: [${link}]
    uses: [resin, gloves]
    tools: [goggles, window]
    interrupt: never
${between}
  smooth: { after: [{ step: again, least: { from: /calculations/clock/figures/foodService, take: high } }] }
`;
const opens = 'least: { from: /calculations/clock/figures/recoatOpens, take: high }';
const closes = 'most: { from: /calculations/clock/figures/recoatCloses, take: low }';

test('a layer too soon', async () => {
  expect(await told(withResin, twice(`{ step: fill, least: 12 h, ${closes} }`))).toMatchInlineSnapshot(`
    [
      "recoat-window at /steps/again/after/0: “Pour the second layer” may begin 12 h after “Pour the inlay” is done; the window opens after 23.5 h. Let it wait at least that long: least: { from: /calculations/clock/figures/recoatOpens, take: high }.",
    ]
  `);
});

test('a layer that may come any time later', async () => {
  expect(await told(withResin, twice(`{ step: fill, ${opens} }`))).toMatchInlineSnapshot(`
    [
      "recoat-window at /steps/again/after/0: “Pour the second layer” may come any time after “Pour the inlay”; the window closes after 56.5 h. Close it on the link between the two, most: { from: /calculations/clock/figures/recoatCloses, take: low }, and state under “missed” how the face is abraded then (abrades: true); or sand in between.",
    ]
  `);
});

test('a layer up to a week later', async () => {
  expect(await told(withResin, twice(`{ step: fill, ${opens}, most: 7 d }`))).toMatchInlineSnapshot(`
    [
      "recoat-window at /steps/again/after/0: “Pour the second layer” may come up to 7 d after “Pour the inlay”; the window closes after 56.5 h. Close it in time, most: { from: /calculations/clock/figures/recoatCloses, take: low }, and state under “missed” how the face is abraded then (abrades: true).",
    ]
  `);
});

test('a second way that does not abrade', async () => {
  expect(
    await told(withResin, twice(`{ step: fill, ${opens}, ${closes}, missed: { do: Wipe it and pour, adds: 5 min } }`)),
  ).toMatchInlineSnapshot(`
    [
      "recoat-window at /steps/again/after/0: Where the window between “Pour the inlay” and “Pour the second layer” was missed, the second way does not abrade the face. Sand the face dull in it, and say so (abrades: true).",
    ]
  `);
});

test('a window that is kept, from its opening to its closing', async () => {
  expect(await told(withResin, twice(`{ step: fill, ${opens}, ${closes} }`))).toEqual([]);
});

test('a second way that abrades', async () => {
  expect(
    await told(
      withResin,
      twice(`{ step: fill, ${opens}, ${closes}, missed: { do: Sand it dull and pour, adds: 5 min, abrades: true } }`),
    ),
  ).toEqual([]);
});

const key = (least: string) => `
  key:
    title: Dull the first layer by hand
    act: sand
    does: Sand it dull.
    after: [{ step: fill, least: ${least} }]
    uses: [discs]
    tools: [extractor, goggles, muffs, mask]`;

test('a layer that is sanded by hand in between, however late', async () => {
  expect(
    await told(withResin, twice('key', key('{ from: /calculations/clock/figures/sandable, take: high }'))),
  ).toEqual([]);
});
