import { expect, test } from 'vitest';
import { billOf, currencyOf, type Need, priceOf, tornadoOf, total } from '../../../src/method/cost/index.ts';
import { shopAim, shopConsumables, shopFees, shopGoods, shopOverhead } from '../../../src/method/shop/index.ts';
import { sampleShop } from '../shop/sample.ts';

/**
 * Six trays in salvaged ash with a poured channel, by the prices of the demonstration's shop.
 */
test('from the shop record to the price of a tray, worked by hand', () => {
  const shop = sampleShop();
  const currency = currencyOf(shop.currency);
  if (!currency.ok) throw new Error('USD');
  const needs: Need[] = [
    // 12 bd ft and 15 % are 13.8; 18 are on the shelf: nothing is bought, and it is worth 13.8 × 4.50 = 62.10.
    { goods: 'white-ash', what: 'Ash', amount: { value: 12, unit: '[bf_i]' }, spare: 0.15 },
    // 1900 g and 5 % are 1995 g, at 1.11 g/ml 1797.3 ml; 400 are on the shelf: 1397.3 ml, one pack of 1.5 l at 62.00. Used: 62 / 1665 g × 1995 = 74.29.
    { goods: 'casting-resin', what: 'Resin', amount: { value: 1900, unit: 'g' }, spare: 0.05 },
    // 18 discs, 12 in the drawer: a pack of 50 at 22.00. Used: 18 × 0.44 = 7.92.
    { goods: 'disc-p120', what: 'Discs', amount: { value: 18, unit: '{count}' } },
    // No walnut in the record.
    { goods: 'walnut', what: 'Walnut plugs', amount: { value: 6, unit: '{count}' } },
  ];
  const bill = billOf(needs, shopGoods(shop), currency.value);
  if (!bill.ok) throw new Error(JSON.stringify(bill.errors));
  const { lines, bought, used, without } = bill.value;
  expect(lines.map(({ id, cost, used: worth }) => [id, cost, worth])).toEqual([
    ['white-ash', 0, 62.1],
    ['casting-resin', 62, 74.29],
    ['disc-p120', 22, 7.92],
    ['walnut', null, null],
  ]);
  expect([bought, used]).toEqual([84, 144.31]);
  expect(without.bought).toEqual(['Walnut plugs: no price in the shop record, which does not have it']);

  const consumable = shopConsumables(shop);
  const sums = (of: boolean) => {
    const some = lines.filter(({ id }) => consumable.has(id) === of);
    return { used: total(some.map((line) => line.used ?? 0)), bought: total(some.map((line) => line.cost ?? 0)) };
  };
  const maker = shop.people.find(({ id }) => id === 'maker');
  const overhead = shopOverhead(shop);
  const aim = shopAim(shop);
  if (!overhead || !aim) throw new Error('The record states overhead and a margin');
  const request = {
    currency: currency.value,
    pieces: 6,
    materials: sums(false),
    consumables: sums(true),
    count: 'used' as const,
    hands: [{ id: 'maker', what: 'Maker', setUp: 120, each: 60, rate: maker?.rate }],
    overhead,
    energy: { amount: 8, price: shop.energy?.price ?? 0 },
    fees: shopFees(shop),
    aim,
    without: without.used,
  };
  const pricing = priceOf(request);
  if (!pricing.ok) throw new Error(JSON.stringify(pricing.errors));
  // 136.39 + 7.92 + 8 h × 26 = 208.00 + 8 h × 8 = 64.00 + 8 kWh × 0.15 = 1.20: 417.51, 69.585 a tray. Fees: 0.10 + 85 / 6 = 14.2667.
  // (69.585 + 14.2667) / (1 - 0.25 - 0.027) = 115.9774, up to 115.98.
  expect(pricing.value.batchCost).toBe(417.51);
  expect(pricing.value.price).toBe(115.98);
  expect(pricing.value.words[1]).toMatch(/^At least: it is without Walnut plugs/);
  const tornado = tornadoOf(request);
  expect(tornado.ok && tornado.value.bars[0]?.spread).toBeGreaterThan(10);
});
