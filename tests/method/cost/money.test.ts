import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moneyWords, parted, toCoin, total, upToCoin } from '../../../src/method/cost/index.ts';

const usd = { code: 'USD', digits: 2 };

describe('sums to the coin', () => {
  test.each([
    // Half a coin goes up, as 1.005 written in binary would not.
    [1.005, 1.01],
    [2.675, 2.68],
    [0.145, 0.15],
    [1.0049, 1],
    [0.1 + 0.2, 0.3],
  ])('%d is %d', (sum, coin) => {
    expect(toCoin(sum, usd)).toBe(coin);
  });

  test('a price is never rounded below what it must be', () => {
    expect(upToCoin(10.001, usd)).toBe(10.01);
    expect(upToCoin(10, usd)).toBe(10);
    // The noise of binary shares is no reason for a coin more: 100 × 1.1 is 110.00000000000001.
    expect(upToCoin(100 * 1.1, usd)).toBe(110);
    expect(upToCoin(980.2, { digits: 0 })).toBe(981);
  });

  test('what is rounded adds up to the coin, however many lines', () => {
    const coins = fc.integer({ min: 0, max: 1e9 });
    fc.assert(
      fc.property(fc.array(coins, { maxLength: 60 }), (lines) => {
        const all = lines.reduce((sum, each) => sum + each, 0);
        expect(total(lines.map((each) => each / 100))).toBe(all / 100);
      }),
    );
    // A tenth thirty times, which binary fractions make 3.0000000000000013.
    expect(total(Array.from({ length: 30 }, () => 0.1))).toBe(3);
  });
});

describe('parts of a sum', () => {
  test.each([
    // Three thirds of 100.00: the first takes the odd cent.
    [100, [1, 1, 1], [33.34, 33.33, 33.33]],
    // 10.00 in parts of 1, 1, 4: 1.666…, 1.666…, 6.666…; two cents are left, all remainders are equal.
    [10, [1, 1, 4], [1.67, 1.67, 6.66]],
    // 0.05 in parts of 3 and 1: 3.75 and 1.25 cents.
    [0.05, [3, 1], [0.04, 0.01]],
    [1, [0, 0], [0.5, 0.5]],
    [0, [2, 1], [0, 0]],
    [5, [], []],
  ])('%d by %j', (sum, weights, parts) => {
    expect(parted(sum, weights, usd)).toEqual(parts);
  });

  test('add up to it, and none is a coin or more from its fair share', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e8 }),
        fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 20 }),
        (cents, weights) => {
          const parts = parted(cents / 100, weights, usd);
          expect(total(parts)).toBe(cents / 100);
          const all = weights.reduce((sum, each) => sum.plus(each), new Decimal(0));
          for (const [at, part] of parts.entries()) {
            const fair = all.isZero()
              ? cents / weights.length
              : new Decimal(cents)
                  .times(weights[at] ?? 0)
                  .div(all)
                  .toNumber();
            expect(Math.abs(part * 100 - fair)).toBeLessThan(1 + 1e-6);
          }
        },
      ),
    );
  });
});

test('a sum is written as the reader writes money', () => {
  expect(moneyWords(1234.5, usd)).toBe('$1,234.50');
  expect(moneyWords(980, { code: 'JPY' })).toBe('¥980');
});
