import fc from 'fast-check';
import type { Fee, PriceRequest } from '../../../src/method/cost/index.ts';

/** Twelve trays of the demonstration's shop, of round numbers. */
export const twelveTrays: PriceRequest = {
  currency: { code: 'USD', digits: 2 },
  pieces: 12,
  materials: { used: 300, bought: 384 },
  consumables: { used: 24, bought: 36 },
  count: 'used',
  hands: [{ id: 'maker', what: 'Maker, hands on', setUp: 180, each: 45, rate: 26 }],
  overhead: { perMonth: 640, hoursPerMonth: 80 },
  energy: { amount: 14, price: 0.15 },
  other: [{ id: 'box', what: 'Box and card', cost: 1.5, per: 'piece' }],
  fees: [
    { id: 'stall', what: 'Stall at the fair', fixed: 84, per: 'batch' },
    { id: 'card', what: 'Card payments', share: 0.027, fixed: 0.1, per: 'piece' },
  ],
  aim: { margin: 0.25 },
};

const money = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((cents) => cents / 100);
const share = (most: number) => fc.integer({ min: 0, max: most * 1000 }).map((thousandths) => thousandths / 1000);

const fee: fc.Arbitrary<Fee> = fc.record({
  id: fc.constantFrom('stall', 'card', 'gallery'),
  what: fc.constant('A fee'),
  share: fc.option(share(0.2), { nil: undefined }),
  fixed: fc.option(money(50), { nil: undefined }),
  per: fc.constantFrom('piece', 'batch'),
});

/** Any request that can be priced. */
export const anyRequest: fc.Arbitrary<PriceRequest> = fc.record({
  currency: fc.constantFrom({ code: 'USD', digits: 2 }, { code: 'JPY', digits: 0 }, { code: 'KWD', digits: 3 }),
  pieces: fc.integer({ min: 1, max: 60 }),
  materials: fc
    .record({ used: money(900), bought: money(900) })
    .map(({ used, bought }) => ({ used: used + 1, bought: bought + 1 })),
  consumables: fc.option(fc.record({ used: money(90), bought: money(90) }), { nil: undefined }),
  count: fc.constantFrom('used', 'bought'),
  hands: fc.array(
    fc.record({
      id: fc.constantFrom('maker', 'helper'),
      what: fc.constant('Work'),
      setUp: fc.integer({ min: 0, max: 400 }),
      each: fc.integer({ min: 0, max: 120 }),
      rate: money(60),
    }),
    { maxLength: 3 },
  ),
  overhead: fc.option(
    fc.oneof(
      fc.record({ perHour: money(20) }),
      fc.record({ perMonth: money(2000), hoursPerMonth: fc.integer({ min: 1, max: 200 }) }),
    ),
    { nil: undefined },
  ),
  energy: fc.option(fc.record({ amount: money(50), price: money(1) }), { nil: undefined }),
  other: fc.option(
    fc.array(
      fc.record({
        id: fc.constant('box'),
        what: fc.constant('Box'),
        cost: money(9),
        per: fc.constantFrom('piece', 'batch'),
      }),
      {
        maxLength: 2,
      },
    ),
    { nil: undefined },
  ),
  fees: fc.array(fee, { maxLength: 3 }),
  aim: share(0.35).map((margin) => ({ margin })),
});
