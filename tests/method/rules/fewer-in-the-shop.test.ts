import { expect, test } from 'vitest';
import { readShop } from '../../../src/method/shop/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { findingsIn } from './base.ts';

const head = 'shop: 1\nname: Barn\nzone: Europe/Oslo\ncurrency: NOK\n';
const shopWith = (count: number) =>
  readShop(`${head}machines: [{ id: drill, kind: drill-press, count: ${count} }]\n`).shop;
const drills = (count: string) => `tools: { drill: { what: Drill presses, kind: drill-press${count} } }`;

const told = async (method: string, shop: ReturnType<typeof shopWith>) =>
  (await findingsIn(shop ? { shop } : {}, method))
    .filter(({ rule }) => rule === 'fewer-in-the-shop')
    .map(
      ({ level, path, message, wayOut }) =>
        `${level} at /${path.join('/')}: ${inReaderUnits(`${message} ${wayOut}`, defaultUnits)}`,
    );

test('one drill press where four are meant', async () => {
  expect(await told(drills(', count: 4'), shopWith(1))).toMatchInlineSnapshot(`
    [
      "note at /tools/drill/count: The method counts on 4 of “Drill presses”, and Barn has 1: the plan goes with 1. Borrow the others for the day, or read in the plan what waits for them. If there are more, write it into the shop record.",
    ]
  `);
});

test.each([
  ['as many', drills(', count: 4'), shopWith(4)],
  ['more', drills(', count: 4'), shopWith(5)],
  ['a method that names no count', drills(''), shopWith(1)],
  ['a shop without any, where what the method says stands', drills(', count: 4'), readShop(head).shop],
  ['no shop record', drills(', count: 4'), undefined],
])('%s', async (_, method, shop) => {
  expect(await told(method, shop)).toEqual([]);
});
