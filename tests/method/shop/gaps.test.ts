import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readShop, type Shop, shopGaps, shopKnown } from '../../../src/method/shop/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

const head = 'shop: 1\nname: Barn\nzone: Europe/Oslo\ncurrency: NOK\n';
const shopOf = (more: string): Shop => {
  const { shop, problems } = readShop(`${head}${more}`);
  if (!shop) throw new Error(problems.map(({ message }) => message).join(' '));
  return shop;
};
const gaps = (more: string) => shopGaps(shopOf(more)).map(({ what }) => what);
const known = (shop: Shop) =>
  Object.fromEntries(shopKnown(shop).map(({ part, words }) => [part, inReaderUnits(words, defaultUnits)]));

test('a record that says next to nothing is told all that is missed, what can spoil a pour first', () => {
  expect(gaps('')).toEqual([
    'no temperature by day',
    'no place',
    'no humidity',
    'no resin',
    'no scale',
    'no grits',
    'no machines',
    'no opening hours',
    'nobody with a rate',
    'no materials',
    'neither a margin nor a mark-up',
    'no overhead',
  ]);
});

test.each([
  ['air: { day: 20 °C }', 'no temperature by night', true],
  ['air: { day: 20 °C, night: 14 °C }', 'no temperature by night', false],
  ['air: { place: duluth-mn }', 'no place', false],
  ['machines: [{ id: saw, kind: band-saw }]', 'no width of a jointer or planer', true],
  ['machines: [{ id: planer, kind: planer, limits: { width: 13 in } }]', 'no width of a jointer or planer', false],
  ['people: [{ id: maker, rate: 0 }]', 'nobody with a rate', false],
  ['people: [{ id: maker }]', 'nobody with a rate', true],
  ['markup: 60 %', 'neither a margin nor a mark-up', false],
  ['resins: [{ id: a, sheet: { name: Amber } }]', '“Amber” has no greatest depth', true],
  ['resins: [{ id: a, sheet: { name: Amber, greatestDepth: 20 mm } }]', '“Amber” has no greatest depth', false],
  ['resins: [{ id: a, sheet: { name: A } }, { id: b, sheet: { name: B } }]', '2 resins', true],
])('%s: “%s” is missed: %s', (more, what, missed) => {
  expect(gaps(more).includes(what)).toBe(missed);
});

test('what the sample says is counted, how many alike included', () => {
  const { shop } = readShop(readFileSync('methods/shop.yaml', 'utf8'));
  expect(known(shop as Shop)).toMatchObject({
    air: '20 °C by day; 17 °C by night; relative humidity 35 %; climate of duluth-mn',
    machines: '21 machines',
    tools: '6 moulds; 54 clamps; 2 scales; 3 bits; 8 grits',
    resins: 'Lakeside casting resin, sheet of March',
    hours: 'open on 4 days of the week',
    people: '3 people, with a rate',
    prices: 'overhead; price of a kilowatt-hour; 2 fees; margin 25 %',
  });
});
