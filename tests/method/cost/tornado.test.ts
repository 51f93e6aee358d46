import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PriceRequest, priceInputs, priceOf, tornadoOf } from '../../../src/method/cost/index.ts';
import { anyRequest, twelveTrays } from './request.ts';

/** A request with nothing but three round costs: 10 of material, an hour at 20, margin of a half. */
const plain: PriceRequest = {
  currency: { code: 'USD', digits: 2 },
  pieces: 1,
  materials: { used: 10, bought: 10 },
  count: 'used',
  hands: [{ id: 'maker', what: 'Maker', setUp: 0, each: 60, rate: 20 }],
  aim: { margin: 0.5 },
};

describe('what changes the price most', () => {
  test('worked by hand', () => {
    // (10 + 20) / 0.5 = 60. Margin 0.4 and 0.6: 50 and 75. Time or rate ± a fifth: 16 and 24: 52 and 68. Material 8 and 12: 56 and 64.
    const tornado = tornadoOf(plain);
    expect(tornado.ok && tornado.value.price).toBe(60);
    expect(
      tornado.ok && tornado.value.bars.map(({ id, atLow, atHigh, spread }) => [id, atLow, atHigh, spread]),
    ).toEqual([
      // A batch of one piece cannot be of fewer; of two at the same cost each is 15, and sells for 30.
      ['pieces', 60, 30, 30],
      ['aim', 50, 75, 25],
      ['hands.0.minutes', 52, 68, 16],
      ['hands.0.rate', 52, 68, 16],
      ['materials', 56, 64, 8],
    ]);
  });

  test('an input with its own band is moved by that', () => {
    const tornado = tornadoOf(plain, { materials: { low: 10, high: 30 } });
    const bar = tornado.ok ? tornado.value.bars.find(({ id }) => id === 'materials') : undefined;
    expect(bar).toMatchObject({ low: 10, high: 30, atLow: 60, atHigh: 100, spread: 40 });
  });

  test('an end without a price says why, and comes first', () => {
    const tornado = tornadoOf({ ...plain, aim: { margin: 0.9 } });
    const [first] = tornado.ok ? tornado.value.bars : [];
    expect(first).toMatchObject({ id: 'aim', atHigh: null, spread: null });
    expect(first?.why).toMatch(/margin/);
  });

  test('what the price does not depend on is left out', () => {
    const ids = priceInputs({ ...twelveTrays, fees: [{ id: 'a', what: 'A', share: 0, fixed: 5, per: 'batch' }] }).map(
      ({ id }) => id,
    );
    expect(ids).toContain('fees.0.fixed');
    expect(ids).not.toContain('fees.0.share');
    expect(ids).toContain('overhead.hoursPerMonth');
  });

  test.each([
    ['a band that does not hold the value', { materials: { low: 20, high: 30 } }, 'materials'],
    ['a band that is no number', { materials: { low: Number.NaN, high: 30 } }, 'materials'],
    ['a band without end', { materials: { low: 1, high: Number.POSITIVE_INFINITY } }, 'materials'],
    ['an input that there is none of', { toString: { low: 1, high: 2 } }, 'toString'],
    ['a name that every object bears', JSON.parse('{"__proto__": {"low": 1, "high": 2}}'), '__proto__'],
  ])('%s is refused', (_, bands, field) => {
    const tornado = tornadoOf(plain, bands);
    expect(tornado.ok ? [] : tornado.errors.map((error) => error.field)).toEqual([field]);
  });

  test('a price that is asked has nothing that changes it, and a request without a price says why', () => {
    expect(tornadoOf({ ...plain, aim: { price: 60 } })).toMatchObject({ ok: false, errors: [{ field: 'aim' }] });
    expect(tornadoOf({ ...plain, pieces: 0 })).toMatchObject({ ok: false, errors: [{ field: 'pieces' }] });
  });

  test('for any request: the ends are the prices of their own requests, sorted, and each lies on the right side', () => {
    // The more it is, the dearer: all but the hours that overhead is spread over and the pieces that share the batch.
    const cheaper = ['pieces', 'overhead.hoursPerMonth'];
    fc.assert(
      fc.property(anyRequest, (request) => {
        const tornado = tornadoOf(request);
        if (!tornado.ok) throw new Error(JSON.stringify(tornado.errors));
        const { bars, price } = tornado.value;
        const coin = 10 ** -request.currency.digits;
        // Parts are rounded by themselves: each may move the price by half a coin the other way.
        const slack = 8 * coin;
        const widths = bars.map(({ spread }) => spread ?? Number.POSITIVE_INFINITY);
        expect(widths).toEqual([...widths].sort((one, other) => other - one));
        for (const { id, low, atLow, atHigh } of bars) {
          if (atLow === null || atHigh === null) continue;
          const [least, most] = cheaper.includes(id) ? [atHigh, atLow] : [atLow, atHigh];
          expect(least).toBeLessThanOrEqual(price + slack);
          expect(most).toBeGreaterThanOrEqual(price - slack);
          const input = priceInputs(request).find((one) => one.id === id);
          const again = input && priceOf(input.put(request, low));
          expect(again?.ok && again.value.price).toBe(atLow);
        }
      }),
      { numRuns: 80 },
    );
  });
});
