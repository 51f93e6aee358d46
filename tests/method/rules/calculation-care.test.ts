import { expect, test } from 'vitest';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { findingsOf, withResin } from './base.ts';

const cared = async (...patches: string[]) =>
  (await findingsOf(...patches))
    .filter(({ rule }) => rule === 'calculation-care')
    .map(({ message, level }) => `${level}: ${inReaderUnits(message, defaultUnits)}`);

test('an answer that names something to mind is a note', async () => {
  expect(await cared(withResin, 'steps: { fill: { why: null } }')).toMatchInlineSnapshot(`
    [
      "note: The board moves 3.4 mm over the year, narrowest in Jan and widest in Aug: leave 1.5 mm each side where it is held; across the inlay of 20 mm the wood works 0.3 mm that the resin does not follow.",
      "note: At 20 °C: next coat from 24 h to 56 h; sand by hand for a coat after 3.5 d; machine and oil after 8.2 d, food then too, if its maker declares it for food. Times of a kind of resin, not of yours: your sheet comes first.",
    ]
  `);
});

test('a text that shows the verdict has said it', async () => {
  expect(await cared(withResin, 'steps: { fill: { does: "Pour slowly. {/calculations/inlay/verdict}" } }')).toEqual([]);
});

test('it is silent where a rule of its own speaks of the same calculation', async () => {
  expect(
    await cared(withResin, 'steps: { fill: { calculations: { inlay: { with: { inlayWidth: 90 mm } } } } }'),
  ).toEqual([]);
});

test('a good answer is no finding', async () => {
  expect(await cared()).toEqual([]);
});
