import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { billOf, type Currency, type Goods, type Need, total } from '../../../src/method/cost/index.ts';

const usd: Currency = { code: 'USD', digits: 2 };
const count = (value: number) => ({ value, unit: '{count}' });
const maple: Goods = {
  id: 'maple',
  what: 'Sugar maple, 5/4',
  packs: [{ size: { value: 1, unit: '[bf_i]' }, price: 9 }],
};
const discs: Goods = {
  id: 'disc-p120',
  what: 'Discs P120',
  packs: [
    { size: count(50), price: 22 },
    { size: count(100), price: 39 },
  ],
  onHand: count(12),
};
const pigment: Goods = { id: 'pigment', what: 'Pigment', packs: [] };

describe('the bill of a batch', () => {
  test('goods that nobody knows bear the words of all who need them', () => {
    const part = (what: string, grams: number): Need => ({ goods: 'resin', what, amount: { value: grams, unit: 'g' } });
    const bill = billOf(
      [part('Resin, part A', 200), part('Hardener, part B', 100), part('Resin, part A', 20)],
      [],
      usd,
    );
    if (!bill.ok) throw new Error(JSON.stringify(bill.errors));
    expect(bill.value.lines.map(({ what, need }) => [what, need])).toEqual([['Resin, part A + Hardener, part B', 320]]);
    expect(bill.value.without.bought).toEqual([
      'Resin, part A + Hardener, part B: no price in the shop record, which does not have it',
    ]);
  });

  test('twelve trays, worked by hand', () => {
    const needs: Need[] = [
      {
        goods: 'maple',
        what: 'Maple',
        amount: { value: 22.4, unit: '[bf_i]' },
        spare: 0.15,
        step: 'order',
        figure: '/calculations/order/uses/board-feet',
      },
      { goods: 'disc-p120', what: 'Discs', amount: count(20), step: 'sand-blank' },
      { goods: 'disc-p120', what: 'Discs', amount: count(30), spare: 0.1, step: 'sand-inlay' },
      { goods: 'pigment', what: 'Pigment', amount: { value: 36, unit: 'g' }, step: 'mix' },
    ];
    const bill = billOf(needs, [discs, maple, pigment], usd);
    expect(bill).toEqual({
      ok: true,
      value: {
        currency: 'USD',
        lines: [
          {
            id: 'maple',
            what: 'Sugar maple, 5/4',
            // 22.4 × 1.15 = 25.76; sold by the board foot: 26 at 9.
            need: 25.76,
            unit: '[bf_i]',
            onHand: 0,
            buy: 25.76,
            packs: [{ size: { value: 1, unit: '[bf_i]' }, count: 26, price: 9 }],
            cost: 234,
            used: 231.84,
            left: 0.24,
            from: [{ step: 'order', figure: '/calculations/order/uses/board-feet', amount: 22.4 }],
          },
          {
            id: 'disc-p120',
            what: 'Discs P120',
            // 20 + 33 = 53, less 12 on the shelf: 41 of a pack of 50. Used: 53 × 22 / 50 = 23.32.
            need: 53,
            unit: '{count}',
            onHand: 12,
            buy: 41,
            packs: [{ size: count(50), count: 1, price: 22 }],
            cost: 22,
            used: 23.32,
            left: 9,
            from: [
              { step: 'sand-blank', amount: 20 },
              { step: 'sand-inlay', amount: 30 },
            ],
          },
          {
            id: 'pigment',
            what: 'Pigment',
            need: 36,
            unit: 'g',
            onHand: 0,
            buy: 36,
            packs: [],
            cost: null,
            used: null,
            left: null,
            from: [{ step: 'mix', amount: 36 }],
            missing: 'no price in the shop record',
          },
        ],
        bought: 256,
        used: 255.16,
        without: {
          bought: ['Pigment: no price in the shop record'],
          used: ['Pigment: no price in the shop record'],
        },
        rounding: expect.stringMatching(/half a coin upwards/),
      },
    });
  });

  test('needs of one material are bought together, half a disc and half a disc being one', () => {
    const half: Need = { goods: 'disc-p120', what: 'Discs', amount: count(0.5) };
    const bill = billOf([half, half], [{ ...discs, onHand: count(0) }], usd);
    expect(bill.ok && bill.value.lines.map(({ need }) => need)).toEqual([1]);
  });

  test('litres and millilitres of one material meet in the unit of the first need', () => {
    const oil: Goods = { id: 'oil', what: 'Oil', packs: [{ size: { value: 500, unit: 'mL' }, price: 8.9 }] };
    const bill = billOf(
      [
        { goods: 'oil', what: 'Oil', amount: { value: 0.4, unit: 'L' } },
        { goods: 'oil', what: 'Oil', amount: { value: 150, unit: 'mL' } },
      ],
      [oil],
      usd,
    );
    expect(bill.ok && bill.value.lines[0]).toMatchObject({ unit: 'L', need: 0.55, cost: 17.8, left: 0.45 });
  });

  test('what the shop record does not have is on the bill, without a price', () => {
    for (const goods of ['walnut', 'constructor', '__proto__']) {
      const bill = billOf([{ goods, what: 'Walnut', amount: { value: 3, unit: '[bf_i]' } }], [maple], usd);
      expect(bill.ok && bill.value.lines).toHaveLength(1);
      expect(bill.ok && bill.value).toMatchObject({
        bought: 0,
        without: { bought: ['Walnut: no price in the shop record, which does not have it'] },
      });
    }
  });

  test('materials whose amounts cannot be compared are named, each by itself', () => {
    const bill = billOf(
      [
        { goods: 'maple', what: 'Maple', amount: { value: 3, unit: 'kg' } },
        { goods: 'disc-p120', what: 'Discs', amount: { value: 3, unit: 'm' } },
        { goods: 'pigment', what: 'Pigment', amount: { value: -36, unit: 'g' } },
      ],
      [maple, discs, pigment],
      usd,
    );
    expect(bill.ok ? [] : bill.errors.map(({ field }) => field)).toEqual([
      'maple.density',
      'disc-p120.unit',
      'pigment.amount',
    ]);
  });

  test('an empty bill comes to nothing', () => {
    expect(billOf([], [], usd)).toMatchObject({
      ok: true,
      value: { lines: [], bought: 0, used: 0, without: { bought: [], used: [] } },
    });
  });

  test('its totals are the sums of its lines to the cent, for any prices and needs', () => {
    const cents = fc.integer({ min: 0, max: 99_999 }).map((value) => value / 100);
    const amounts = fc.integer({ min: 1, max: 9999 }).map((value) => value / 100);
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            size: amounts,
            price: fc.option(cents, { nil: undefined }),
            need: amounts,
            spare: fc.constantFrom(0, 0.05, 0.1, 1 / 3),
          }),
          { maxLength: 12 },
        ),
        (rows) => {
          const goods = rows.map(
            ({ size, price }, at): Goods => ({
              id: `m${at}`,
              what: `Material ${at}`,
              packs: [{ size: { value: size, unit: 'L' }, price }],
            }),
          );
          const needs = rows.map(
            ({ need, spare }, at): Need => ({ goods: `m${at}`, what: '', amount: { value: need, unit: 'L' }, spare }),
          );
          const bill = billOf(needs, goods, usd);
          if (!bill.ok) throw new Error(JSON.stringify(bill.errors));
          const { lines, bought, used, without } = bill.value;
          expect(Math.round(lines.reduce((sum, { cost }) => sum + (cost ?? 0) * 100, 0))).toBe(
            Math.round(bought * 100),
          );
          expect(total(lines.map((line) => line.used ?? 0))).toBe(used);
          expect(without.bought).toHaveLength(rows.filter(({ price }) => price === undefined).length);
          for (const { cost, packs } of lines) {
            if (cost !== null)
              expect(Math.round(cost * 100)).toBe(
                packs.reduce((sum, pack) => sum + Math.round(pack.price * 100) * pack.count, 0),
              );
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
