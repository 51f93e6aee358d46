import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PriceRequest, priceOf, total } from '../../../src/method/cost/index.ts';
import { anyRequest, twelveTrays } from './request.ts';

/** The pricing of a request that can be priced. */
function priced(request: PriceRequest) {
  const pricing = priceOf(request);
  if (!pricing.ok) throw new Error(pricing.errors.map(({ message }) => message).join('\n'));
  return pricing.value;
}

describe('twelve trays, worked by hand', () => {
  const pricing = priced(twelveTrays);

  test('cost of the batch and of a piece', () => {
    // Hours: (180 + 12 × 45) / 60 = 12. Maker 12 × 26 = 312; overhead 12 × 640 / 80 = 96; energy 14 × 0.15 = 2.10; boxes 12 × 1.50 = 18.
    // 300 + 24 + 312 + 96 + 2.10 + 18 = 752.10, 62.675 a piece, which is 62.68.
    expect(pricing.hours).toBe(12);
    expect(pricing.parts.map(({ id, batch }) => [id, batch])).toEqual([
      ['materials', 300],
      ['consumables', 24],
      ['hands-maker', 312],
      ['overhead', 96],
      ['energy', 2.1],
      ['other-box', 18],
    ]);
    expect(pricing.batchCost).toBe(752.1);
    expect(pricing.pieceCost).toBe(62.68);
    expect(total(pricing.parts.map(({ piece }) => piece))).toBe(62.68);
  });

  test('price by margin, fees in it', () => {
    // Fixed fees of a piece: 0.10 + 84 / 12 = 7.10. (62.675 + 7.10) / (1 - 0.25 - 0.027) = 96.5076, up to 96.51.
    expect(pricing.price).toBe(96.51);
    // Card: 2.7 % of 96.51 is 2.61, and 0.10. Stall: 7.00.
    expect(pricing.fees.map(({ id, piece }) => [id, piece])).toEqual([
      ['stall', 7],
      ['card', 2.71],
    ]);
    // 12 × (96.51 - 2.71) - 84 - 752.10 = 289.50; of 12 × 96.51 = 1158.12 that is 25.0 %.
    expect(pricing.stays).toBe(289.5);
    expect(pricing.margin).toBeCloseTo(0.25, 3);
    expect(pricing.words[0]).toBe('A piece costs $62.68 and sells for $96.51.');
    // 7.00 + 2.71, and 96.51 - 62.68 - 9.71.
    expect(pricing.words[1]).toBe('Of that, fees take $9.71 and $24.12 stays.');
    expect(pricing.words.join(' ')).toMatch(/A margin of 25 % of the price is asked: so much stays/);
  });

  test('where the batch pays for itself', () => {
    // (62.675 + 7.10) / (1 - 0.027) = 71.711, up to 71.72. (752.10 + 84) / (96.51 - 2.71) = 8.91: nine trays.
    expect(pricing.breakEvenPrice).toBe(71.72);
    expect(pricing.breakEvenPieces).toBe(9);
    expect(pricing.words.join(' ')).toContain(
      'The batch is paid for when 9 of 12 pieces are sold; at less than $71.72 a piece not even all of them pay for it.',
    );
  });

  test('with all that is bought, beside it', () => {
    // 384 + 36 in place of 324: 848.10, 70.675 a piece; (70.675 + 7.10) / 0.723 = 107.573, up to 107.58.
    expect(pricing.otherWay).toEqual({ count: 'bought', pieceCost: 70.68, price: 107.58 });
    const bought = priced({ ...twelveTrays, count: 'bought' });
    expect([bought.pieceCost, bought.price]).toEqual([70.68, 107.58]);
    expect(bought.otherWay).toEqual({ count: 'used', pieceCost: 62.68, price: 96.51 });
  });

  test('price by mark-up puts the fees on top, and says which margin that is', () => {
    // (62.675 × 1.6 + 7.10) / 0.973 = 110.3597, up to 110.36. Card 2.98 + 0.10; 12 × (110.36 - 3.08) - 84 - 752.10 = 451.26,
    // which is 60.0 % of 752.10 and 34.1 % of 1324.32.
    const marked = priced({ ...twelveTrays, aim: { markup: 0.6 } });
    expect(marked.price).toBe(110.36);
    expect(marked.stays).toBe(451.26);
    expect(marked.markup).toBeCloseTo(0.6, 3);
    expect(marked.words.join(' ')).toMatch(
      /A mark-up of 60 % is asked: it is put on the cost.*Of the price it is a margin of 34.1 %/,
    );
  });

  test('a price that is asked already is told what it leaves, or loses', () => {
    const asked = priced({ ...twelveTrays, aim: { price: 90 } });
    // Card 2.43 + 0.10: 12 × 87.47 - 836.10 = 213.54, of 1080 19.8 %.
    expect([asked.price, asked.stays]).toEqual([90, 213.54]);
    expect(asked.words.join(' ')).toContain('At the price asked, 19.8 % of it stays');
    const low = priced({ ...twelveTrays, aim: { price: 40 } });
    expect(low.stays).toBeLessThan(0);
    expect(low.words.join(' ')).toMatch(
      /costs more than it brings.*22 pieces would have to be sold to pay for the batch, more than the 12/,
    );
    const none = priced({ ...twelveTrays, aim: { price: 0.1 } });
    expect(none.breakEvenPieces).toBeNull();
    expect(none.words.join(' ')).toContain('the fees take all of it');
  });

  test('what a bill leaves out makes it a least price, and says so', () => {
    const without = priced({ ...twelveTrays, without: ['Pigment: no price in the shop record'] });
    expect(without.words[1]).toBe('At least: it is without Pigment: no price in the shop record.');
  });

  test('taxes are left to local rules, in words', () => {
    expect(pricing.words.at(-1)).toMatch(/Taxes on sales and income are not in it: they follow local rules/);
  });
});

describe('for any request', () => {
  test('the margin asked is what stays after fees, to the coin', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const pricing = priced(request);
        const { digits } = request.currency;
        const coin = 10 ** -digits;
        const margin = 'margin' in request.aim ? request.aim.margin : 0;
        const shares = request.fees ?? [];
        const difference = pricing.stays / request.pieces - margin * pricing.price;
        // The price goes up by less than a coin; each fee is rounded by half a coin at most.
        expect(difference).toBeGreaterThan(-(shares.length / 2 + 1e-6) * coin);
        expect(difference).toBeLessThan((1 + shares.length / 2 + 1e-6) * coin);
        if (shares.length <= 1) expect(Math.abs(difference)).toBeLessThan(1.5 * coin + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  test('without fees nothing is rounded but the price: the margin comes back within a coin, never short', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const pricing = priced({ ...request, fees: [] });
        const coin = 10 ** -request.currency.digits;
        const margin = 'margin' in request.aim ? request.aim.margin : 0;
        const difference = pricing.stays / request.pieces - margin * pricing.price;
        expect(difference).toBeGreaterThan(-1e-6);
        expect(difference).toBeLessThan(coin + 1e-6);
      }),
      { numRuns: 500 },
    );
  });

  test('parts add up to their totals to the coin', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { parts, batchCost, pieceCost } = priced(request);
        expect(total(parts.map(({ batch }) => batch))).toBe(batchCost);
        expect(total(parts.map(({ piece }) => piece))).toBe(pieceCost);
      }),
      { numRuns: 500 },
    );
  });

  test('a batch sold to the piece that pays for it leaves nothing less than nothing, and one piece fewer does not pay', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { price, fees: _, breakEvenPieces, batchCost } = priced(request);
        const { digits } = request.currency;
        const round = (value: number) => Number(value.toFixed(digits + 6));
        const { fees = [] } = request;
        const ofSale = fees.reduce(
          (sum, fee) =>
            sum +
            Math.round(round(price * (fee.share ?? 0) * 10 ** digits)) / 10 ** digits +
            (fee.per === 'piece' ? (fee.fixed ?? 0) : 0),
          0,
        );
        const ofBatch = fees.reduce((sum, fee) => sum + (fee.per === 'batch' ? (fee.fixed ?? 0) : 0), 0);
        const leaves = (sold: number) => sold * (price - ofSale) - ofBatch - batchCost;
        expect(breakEvenPieces).not.toBeNull();
        expect(leaves(breakEvenPieces ?? 0)).toBeGreaterThan(-1e-6 * batchCost - 1e-6);
        expect(leaves((breakEvenPieces ?? 0) - 1)).toBeLessThan(1e-6 * batchCost + 1e-6);
      }),
      { numRuns: 500 },
    );
  });

  test('whatever number stands in a field, the answer is finite or a refusal in words', () => {
    const odd = fc.constantFrom(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      -1,
      0,
      1e-300,
      1e300,
      1e12,
      1,
      0.5,
    );
    const place = fc.constantFrom<(request: PriceRequest, value: number) => PriceRequest>(
      (request, pieces) => ({ ...request, pieces }),
      (request, used) => ({ ...request, materials: { ...request.materials, used } }),
      (request, bought) => ({ ...request, consumables: { used: 1, bought } }),
      (request, rate) => ({ ...request, hands: [{ id: 'a', what: 'Work', setUp: 1, each: 1, rate }] }),
      (request, each) => ({ ...request, hands: [{ id: 'a', what: 'Work', setUp: 1, each, rate: 20 }] }),
      (request, perHour) => ({ ...request, overhead: { perHour } }),
      (request, hoursPerMonth) => ({ ...request, overhead: { perMonth: 1, hoursPerMonth } }),
      (request, price) => ({ ...request, energy: { amount: 1, price } }),
      (request, share) => ({ ...request, fees: [{ id: 'a', what: 'Fee', share, per: 'piece' }] }),
      (request, fixed) => ({ ...request, fees: [{ id: 'a', what: 'Fee', fixed, per: 'batch' }] }),
      (request, margin) => ({ ...request, aim: { margin } }),
      (request, markup) => ({ ...request, aim: { markup } }),
      (request, price) => ({ ...request, aim: { price } }),
    );
    fc.assert(
      fc.property(anyRequest, place, odd, (request, put, value) => {
        const pricing = priceOf(put(request, value));
        if (!pricing.ok) {
          for (const { field, message } of pricing.errors) expect(`${field} ${message}`).toMatch(/^\S+ .{20,}\.$/);
          return;
        }
        const numbers: number[] = [];
        JSON.stringify(pricing.value, (_, each) => {
          if (typeof each === 'number') numbers.push(each);
          return each;
        });
        expect(numbers.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what cannot be priced is refused, with the field and a way out', () => {
  test.each<[name: string, change: Partial<PriceRequest>, field: string, words: RegExp]>([
    [
      'margin and fees that take the whole price',
      { aim: { margin: 0.6 }, fees: [{ id: 'g', what: 'Gallery', share: 0.4, per: 'piece' }] },
      'aim.margin',
      /A margin of 60 % and fees of 40 % are 100 % of the price.*less than 60 %/,
    ],
    ['a margin of all', { aim: { margin: 1 } }, 'aim.margin', /less than 100 %/],
    [
      'fees that take the whole price',
      {
        aim: { markup: 1 },
        fees: [
          { id: 'a', what: 'A', share: 0.5, per: 'piece' },
          { id: 'b', what: 'B', share: 0.5, per: 'piece' },
        ],
      },
      'fees',
      /keep 100 % of the price/,
    ],
    [
      'time without a rate',
      { hands: [{ id: 'maker', what: 'Maker', setUp: 0, each: 30 }] },
      'hands.0.rate',
      /there is no rate for an hour of it/,
    ],
    [
      'no hours in a month',
      { overhead: { perMonth: 100, hoursPerMonth: 0 } },
      'overhead.hoursPerMonth',
      /more than 0 and at most 744/,
    ],
    ['no pieces', { pieces: 0 }, 'pieces', /whole number from 1/],
    ['half a piece', { pieces: 1.5 }, 'pieces', /whole number from 1/],
    ['a cost below nothing', { materials: { used: -1, bought: 0 } }, 'materials.used', /must be 0 or more/],
    [
      'no cost at all',
      {
        materials: { used: 0, bought: 0 },
        consumables: undefined,
        hands: [],
        overhead: undefined,
        energy: undefined,
        other: [],
      },
      'materials',
      /No cost is known/,
    ],
    ['a price under the smallest coin', { aim: { price: 0.004 } }, 'aim.price', /less than the smallest coin/],
    ['a price of nothing', { aim: { price: 0 } }, 'aim.price', /must be more than 0/],
  ])('%s', (_, change, field, words) => {
    const pricing = priceOf({ ...twelveTrays, ...change });
    const [error] = pricing.ok ? [] : pricing.errors;
    expect(error?.field).toBe(field);
    expect(error?.message).toMatch(words);
  });

  test('work that takes no time needs no rate', () => {
    expect(priceOf({ ...twelveTrays, hands: [{ id: 'a', what: 'A', setUp: 0, each: 0 }] }).ok).toBe(true);
  });
});
