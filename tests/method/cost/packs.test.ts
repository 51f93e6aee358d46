import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Choice, cheapestBySearch, cheapestPacks, covers } from '../../../src/method/cost/cheapest.ts';
import { bestPacks, type Currency, currencyOf, type Goods } from '../../../src/method/cost/index.ts';

const usd: Currency = { code: 'USD', digits: 2 };

/** Every choice of packs that is worth a look, by brute force: up to as many of each as cover the need alone. */
function exhaustive(
  need: number,
  choices: readonly Choice[],
): { cost: number; packs: number; amount: number } | undefined {
  let best: { cost: number; packs: number; amount: number } | undefined;
  const walk = (at: number, amount: number, cost: number, packs: number): void => {
    if (at === choices.length) {
      if (!covers(amount, need)) return;
      if (
        !best ||
        cost < best.cost ||
        (cost === best.cost && (packs < best.packs || (packs === best.packs && amount < best.amount - 1e-9)))
      )
        best = { cost, packs, amount };
      return;
    }
    const { size, price, available = 99 } = choices[at] as Choice;
    const most = Math.min(available, Math.ceil(need / size));
    for (let count = 0; count <= most; count += 1)
      walk(at + 1, amount + count * size, cost + count * price, packs + count);
  };
  walk(0, 0, 0, 0);
  return best;
}

const counts = (need: number, choices: readonly Choice[]) => cheapestPacks(need, choices)?.counts;
const sumOf = (found: readonly number[], choices: readonly Choice[]) => ({
  cost: found.reduce((sum, count, at) => sum + count * (choices[at]?.price ?? 0), 0),
  packs: found.reduce((sum, count) => sum + count, 0),
  amount: found.reduce((sum, count, at) => sum + count * (choices[at]?.size ?? 0), 0),
});

describe('the cheapest packs', () => {
  test.each<[name: string, need: number, choices: Choice[], found: number[] | undefined]>([
    // 7 = 5 + 2: 45 + 20 = 65; 2 × 5 = 90; 4 × 2 = 80; 5 + 1 + 1 = 69.
    [
      'a large one and a small one',
      7,
      [
        { size: 1, price: 12 },
        { size: 2, price: 20 },
        { size: 5, price: 45 },
      ],
      [0, 1, 1],
    ],
    // 6 of the large at 10 a litre would be 60 for 6; 9 needs 2 of them, 120, or 9 singles at 11, 99, or 6 + 3 × 11 = 93.
    [
      'mixed, though the large is cheaper by the litre',
      9,
      [
        { size: 1, price: 11 },
        { size: 6, price: 60 },
      ],
      [3, 1],
    ],
    // One of 10 for 30 beats four of 1 at 9.
    [
      'more than is needed, since it costs less',
      4,
      [
        { size: 1, price: 9 },
        { size: 10, price: 30 },
      ],
      [0, 1],
    ],
    [
      'of equal cost the fewer packs',
      4,
      [
        { size: 1, price: 5 },
        { size: 4, price: 20 },
      ],
      [0, 1],
    ],
    [
      'of equal cost and packs the less left over',
      3,
      [
        { size: 4, price: 20 },
        { size: 3, price: 20 },
      ],
      [0, 1],
    ],
    [
      'only so many of the cheap one',
      30,
      [
        { size: 10, price: 10, available: 2 },
        { size: 10, price: 15 },
      ],
      [2, 1],
    ],
    ['not enough to be had', 30, [{ size: 10, price: 10, available: 2 }], undefined],
    ['nothing is sold', 30, [], undefined],
    [
      'for nothing',
      3,
      [
        { size: 2, price: 0 },
        { size: 3, price: 5 },
      ],
      [2, 0],
    ],
  ])('%s', (_, need, choices, found) => {
    expect(counts(need, choices)).toEqual(found);
  });

  const small = fc.array(
    fc.record({
      size: fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constantFrom(0.5, 1.5, 2.5, 3.785411784, 0.946352946)),
      price: fc.integer({ min: 0, max: 60 }),
      available: fc.option(fc.integer({ min: 0, max: 4 }), { nil: 99 }),
    }),
    { minLength: 1, maxLength: 4 },
  );

  test('are those that a search of every choice finds', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.integer({ min: 1, max: 16 }), fc.constantFrom(0.3, 7.570823568, 4.731764731)),
        small,
        (need, choices) => {
          const best = exhaustive(need, choices);
          // Over the grid where there is one, and by search: two roads to one answer.
          for (const found of [cheapestPacks(need, choices), cheapestBySearch(need, choices)]) {
            expect(found === undefined).toBe(best === undefined);
            if (!found || !best) continue;
            const sums = sumOf(found.counts, choices);
            expect(found.proved).toBe(true);
            expect([sums.cost, sums.packs]).toEqual([best.cost, best.packs]);
            expect(sums.amount).toBeCloseTo(best.amount, 9);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('are so too where every size has the same price for an amount, where ties decide', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 25 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 4 }),
        (need, sizes) => {
          const choices = sizes.map((size) => ({ size, price: size * 7 }));
          const found = counts(need, choices);
          const sums = sumOf(found ?? [], choices);
          expect(sums).toEqual(exhaustive(need, choices));
        },
      ),
      { numRuns: 500 },
    );
  });

  test('of a dozen odd sizes that all cost the same for an amount, the fewest packs without a drop left over, at once', () => {
    const sizes = [7.31, 11.47, 12.89, 17.03, 19.97, 23.11, 29.63, 31.07, 37.91, 41.39, 43.21, 47.77];
    const choices = sizes.map((size) => ({ size, price: Math.round(size * 100) }));
    const found = cheapestPacks(2000, choices);
    const sums = sumOf(found?.counts ?? [], choices);
    expect(found?.proved).toBe(true);
    // Nothing left over is the least cost there is. The fewest packs that come to just 2000.00, counted up from nothing as coins are:
    expect(sums.cost).toBe(200_000);
    const fewest = new Float64Array(200_001).fill(Number.POSITIVE_INFINITY);
    fewest[0] = 0;
    for (let hundredths = 1; hundredths <= 200_000; hundredths += 1) {
      for (const { price } of choices) {
        const before = fewest[hundredths - price];
        if (before !== undefined && before + 1 < (fewest[hundredths] as number)) fewest[hundredths] = before + 1;
      }
    }
    expect(sums.packs).toBe(fewest[200_000]);
  });

  test('of sizes without a common division that are too many to try, the best found is not called proved', () => {
    const choices = Array.from({ length: 12 }, (_, at) => {
      const size = 1 + 20 * Math.abs(Math.sin(at + 1));
      return { size, price: Math.round(Math.sqrt(size) * 1e4) + at };
    });
    const found = cheapestPacks(3000, choices);
    expect(found && covers(sumOf(found.counts, choices).amount, 3000)).toBe(true);
    const proportional = choices.map(({ size }) => ({ size, price: Math.round(size * 1e4) }));
    expect(cheapestPacks(3000, proportional)?.proved).toBe(false);
  });

  test('are found for thousands of packs of many sizes of nearly one price', () => {
    const choices = [1, 2, 3, 5, 7, 11, 13, 17, 19, 23].map((size) => ({ size, price: size * 1000 + (size % 3) }));
    const found = counts(9973, choices) ?? [];
    const sums = sumOf(found, choices);
    expect(sums.amount).toBeGreaterThanOrEqual(9973);
    // No choice costs less than the need at the best price for an amount.
    expect(sums.cost).toBeGreaterThanOrEqual(9973 * 1000);
    expect(sums.cost).toBeLessThanOrEqual(9973 * 1000 + 2);
  });
});

describe('what to buy', () => {
  const resin: Goods = {
    id: 'casting-resin',
    what: 'Casting resin',
    density: 1.1,
    packs: [
      { size: { value: 1.5, unit: 'L' }, price: 62 },
      { size: { value: 6, unit: 'L' }, price: 198 },
    ],
    onHand: { value: 0.4, unit: 'L' },
  };

  test('a need in grams of what is sold in litres, worked by hand', () => {
    // 4000 g with a tenth to spare are 4400 g; at 1.1 g/ml that is 4 L, less 0.4 L on the shelf: 3.6 L. Three of 1.5 L at 186 beat one of
    // 6 L at 198; 4.5 + 0.4 - 4 = 0.9 L are left, 990 g. Used: 186 / 4950 g × 4400 g = 165.33.
    expect(bestPacks({ value: 4000, unit: 'g' }, resin, usd, 0.1)).toEqual({
      ok: true,
      value: {
        unit: 'g',
        need: 4400,
        onHand: 440,
        buy: 3960,
        packs: [{ size: { value: 1.5, unit: 'L' }, count: 3, price: 62 }],
        cost: 186,
        used: 165.33,
        left: 990,
      },
    });
  });

  test('a gallon is bought for 3.785411784 litres, to the digit', () => {
    const oil: Goods = { id: 'oil', what: 'Oil', packs: [{ size: { value: 1, unit: '[gal_us]' }, price: 31 }] };
    const one = bestPacks({ value: 3.785411784, unit: 'L' }, oil, usd);
    expect(one.ok && one.value).toMatchObject({ packs: [{ count: 1 }], left: 0, cost: 31 });
    const two = bestPacks({ value: 3.79, unit: 'L' }, oil, usd);
    expect(two.ok && two.value.packs[0]?.count).toBe(2);
  });

  test('things are bought whole', () => {
    const discs: Goods = {
      id: 'discs',
      what: 'Discs',
      packs: [{ size: { value: 50, unit: '{count}' }, price: 22 }],
      onHand: { value: 12, unit: '{count}' },
    };
    const found = bestPacks({ value: 14.2, unit: '{count}' }, discs, usd, 0.1);
    // 15.62 discs are 16; 4 are wanting; 50 are sold together.
    expect(found.ok && found.value).toMatchObject({ need: 16, buy: 4, cost: 22, left: 46 });
  });

  test('what the shelf covers is not bought, and is worth what the cheapest pack costs', () => {
    const found = bestPacks({ value: 0.3, unit: 'L' }, resin, usd);
    // 198 / 6 L = 33 a litre is the cheaper: 9.90.
    expect(found.ok && found.value).toMatchObject({ buy: 0, packs: [], cost: 0, used: 9.9, left: 0.1 });
  });

  test('what has no price costs no known sum, never nothing', () => {
    for (const packs of [[], [{ size: { value: 1, unit: 'L' } }]]) {
      const found = bestPacks({ value: 1, unit: 'L' }, { id: 'x', what: 'X', packs }, usd);
      expect(found.ok && found.value).toMatchObject({
        cost: null,
        used: null,
        left: null,
        missing: 'no price in the shop record',
      });
    }
  });

  test('where too little can be had, it says how little', () => {
    const scarce = { ...resin, packs: [{ size: { value: 1.5, unit: 'L' }, price: 62, available: 1 }] };
    const found = bestPacks({ value: 5, unit: 'L' }, scarce, usd);
    expect(found.ok && found.value).toMatchObject({ cost: null, missing: 'only 1.5 l can be had of the 4.6 l to buy' });
  });

  test.each<[name: string, unit: string, density: number | undefined, words: RegExp]>([
    [
      'litres asked, sold by weight, no density',
      'L',
      undefined,
      /needed by volume and sold or kept by weight: that takes its density.*Add its density/,
    ],
    [
      'metres asked, sold by weight',
      'm',
      1,
      /needed by length and sold or kept by weight, and the two cannot be compared/,
    ],
    ['a unit that is none', 'litre', 1, /“litre” of Resin is not a unit/],
    ['a name that every object bears', 'toString', 1, /“toString” of Resin is not a unit/],
    ['a density of nothing', 'L', 0, /takes its density/],
    ['a density that is no number', 'L', Number.NaN, /takes its density/],
  ])('%s is refused in words', (_, unit, density, words) => {
    const goods: Goods = { id: 'r', what: 'Resin', packs: [{ size: { value: 1, unit: 'kg' }, price: 20 }], density };
    const found = bestPacks({ value: 1, unit }, goods, usd);
    expect(found.ok ? '' : found.errors[0]?.message).toMatch(words);
  });

  test('more packs than a shop can carry are refused: the units are wrong', () => {
    const found = bestPacks(
      { value: 5, unit: 'm3' },
      { id: 'r', what: 'Resin', packs: [{ size: { value: 1, unit: 'mL' }, price: 1 }] },
      usd,
    );
    expect(found.ok ? '' : found.errors[0]?.message).toMatch(/more than 10000 packs of the smallest size/);
  });

  test('a purchase covers the need, its cost is that of its packs, and no number in it is not finite', () => {
    const any = fc.oneof(
      fc.double(),
      fc.integer({ min: -5, max: 500 }),
      fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0),
    );
    const sane = fc.integer({ min: 1, max: 5000 }).map((value) => value / 100);
    const unit = fc.constantFrom('L', 'mL', 'kg', 'g', '[gal_us]', '[bf_i]', '{count}', 'm', '__proto__');
    fc.assert(
      fc.property(
        fc.record({
          value: fc.oneof(sane, any),
          unit,
          packs: fc.array(
            fc.record({
              size: fc.record({ value: fc.oneof(sane, any), unit }),
              price: fc.option(fc.oneof(sane, any), { nil: undefined }),
              available: fc.option(fc.integer({ min: -1, max: 6 }), { nil: undefined }),
            }),
            { maxLength: 4 },
          ),
          onHand: fc.option(fc.record({ value: fc.oneof(sane, any), unit }), { nil: undefined }),
          density: fc.option(fc.oneof(sane, any), { nil: undefined }),
          spare: fc.oneof(fc.constant(0.1), any),
        }),
        ({ value, unit: of, packs, onHand, density, spare }) => {
          const found = bestPacks({ value, unit: of }, { id: 'x', what: 'X', packs, onHand, density }, usd, spare);
          if (!found.ok) {
            for (const { message } of found.errors) expect(message.length).toBeGreaterThan(10);
            return;
          }
          expect(
            JSON.stringify(found.value, (_, each) =>
              typeof each === 'number' && !Number.isFinite(each) ? 'not finite' : each,
            ),
          ).not.toContain('not finite');
          const { cost, left, need, onHand: kept, packs: bought } = found.value;
          if (cost === null || left === null) return;
          expect(left).toBeGreaterThanOrEqual(0);
          expect(kept + need).toBeGreaterThanOrEqual(0);
          const paid = bought.reduce((sum, { price, count }) => sum + price * count, 0);
          expect(Math.abs(paid - cost)).toBeLessThanOrEqual(0.005 + 1e-9 * paid);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

test('a currency knows its coins by ISO 4217', () => {
  // ISO 4217, list of minor units: USD and EUR 2, JPY 0, KWD 3.
  for (const [code, digits] of [
    ['USD', 2],
    ['EUR', 2],
    ['JPY', 0],
    ['KWD', 3],
  ] as const) {
    expect(currencyOf(code)).toEqual({ ok: true, value: { code, digits } });
  }
  for (const code of ['usd', 'dollars', '__proto__', '']) expect(currencyOf(code).ok).toBe(false);
});
