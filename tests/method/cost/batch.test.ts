import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Addition, addingPays, type BatchRequest, batchSizes } from '../../../src/method/cost/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

const pouring: BatchRequest = {
  currency: { code: 'USD', digits: 2 },
  steps: [
    { id: 'mix', what: 'Weigh and mix', setUp: 30, each: 5 },
    { id: 'dam', what: 'Set the dams', setUp: 0, each: 10 },
    { id: 'glue', what: 'Glue up', setUp: 12, each: 6, serves: 4 },
  ],
  rate: 30,
  consumables: { perBatch: 4, perPiece: 1 },
  capacities: [
    { id: 'tray-dam', what: 'Six dams', pieces: 6 },
    { id: 'bar-clamp', what: 'Twenty-four clamps', pieces: 8 },
  ],
  most: 12,
};
const dams: Addition = { what: 'Six more dams', price: 40, capacity: 'tray-dam', pieces: 6 };

describe('batches of each size', () => {
  const found = batchSizes(pouring);
  const sizes = found.ok ? found.value.sizes : [];

  test('worked by hand', () => {
    // One: 30 + 12 + 21 = 63 min, 31.50; and 5.00: 36.50. Four: 42 + 84 = 126 min, 63.00 + 8.00 = 71.00, 17.75 each.
    // Five: a second glue-up: 54 + 105 = 159 min, 79.50 + 9.00 = 88.50, 17.70 each. Six: 54 + 126 = 180 min, 90 + 10 = 100, 16.67.
    expect(sizes.map(({ pieces, minutes, cost }) => [pieces, minutes, cost])).toEqual([
      [1, 63, 36.5],
      [2, 84, 48],
      [3, 105, 59.5],
      [4, 126, 71],
      [5, 159, 88.5],
      [6, 180, 100],
    ]);
    expect(found.ok && found.value.cheapest.pieces).toBe(6);
    expect(found.ok && found.value.quickest.pieces).toBe(6);
    expect(found.ok && found.value.cappedBy?.id).toBe('tray-dam');
    expect(found.ok && inReaderUnits(found.value.words, defaultUnits)).toBe(
      'A batch of 6 is cheapest: 30 min of hands-on time and $16.67 a piece, against 1.05 h and $36.50 for one alone. Six dams hold no more than 6 at a time.',
    );
  });

  test('a set-up that serves four makes four quicker than five', () => {
    const five = batchSizes({ ...pouring, most: 5, capacities: [] });
    expect(five.ok && five.value.quickest.pieces).toBe(4);
    expect(five.ok && five.value.cappedBy).toBeUndefined();
  });

  test('of sizes that cost the same the smallest is named', () => {
    const flat = batchSizes({
      ...pouring,
      steps: [{ id: 'a', what: 'A', setUp: 0, each: 10 }],
      consumables: undefined,
    });
    expect(flat.ok && flat.value.cheapest.pieces).toBe(1);
  });

  test('for any steps: no size is cheaper or quicker than those that are named, and a batch takes no less than its parts', () => {
    const minutes = fc.integer({ min: 0, max: 90 });
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            id: fc.constant('a'),
            what: fc.constant('A'),
            setUp: minutes,
            each: minutes,
            serves: fc.option(fc.integer({ min: 1, max: 9 }), { nil: undefined }),
          }),
          { maxLength: 5 },
        ),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 40 }),
        (steps, rate, most) => {
          const request = { ...pouring, steps, rate, most, capacities: [] };
          const batches = batchSizes(request);
          if (!batches.ok) throw new Error(JSON.stringify(batches.errors));
          const { sizes: all, cheapest, quickest } = batches.value;
          expect(all).toHaveLength(most);
          for (const { pieces, minutes: time, costEach, minutesEach } of all) {
            expect(costEach).toBeGreaterThanOrEqual(cheapest.costEach - 1e-9);
            expect(minutesEach).toBeGreaterThanOrEqual(quickest.minutesEach - 1e-9);
            const direct = steps.reduce((sum, { setUp, each, serves = Number.POSITIVE_INFINITY }) => {
              let setUps = 0;
              for (let left = pieces; left > 0; left -= serves) setUps += 1;
              return sum + setUps * setUp + pieces * each;
            }, 0);
            expect(time).toBeCloseTo(direct, 9);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test.each<[name: string, change: Partial<BatchRequest>, field: string]>([
    ['no size', { most: 0 }, 'most'],
    ['sizes without end', { most: Number.POSITIVE_INFINITY }, 'most'],
    ['a rate that is no number', { rate: Number.NaN }, 'rate'],
    ['minutes below nothing', { steps: [{ id: 'a', what: 'A', setUp: -1, each: 0 }] }, 'steps.0.setUp'],
    [
      'a set-up that serves nothing',
      { steps: [{ id: 'a', what: 'A', setUp: 1, each: 0, serves: 0 }] },
      'steps.0.serves',
    ],
    ['moulds that hold nothing', { capacities: [{ id: 'a', what: 'A', pieces: 0 }] }, 'capacities.0'],
    ['consumables below nothing', { consumables: { perBatch: -1, perPiece: 0 } }, 'consumables.perBatch'],
  ])('%s is refused', (_, change, field) => {
    const refused = batchSizes({ ...pouring, ...change });
    expect(refused.ok ? [] : refused.errors.map((error) => error.field)).toEqual([field]);
    expect(refused.ok ? '' : refused.errors[0]?.message).toMatch(/\.$/);
  });
});

describe('when one more mould or clamp pays', () => {
  test('twelve trays in two batches or in one of eight and one of four, since the clamps are next', () => {
    // Before: 6 + 6, 360 min, 200.00. After: the clamps hold 8: 8 takes 30 + 24 + 168 = 222 min, 111 + 12 = 123.00; 4 takes 126 min, 71.00.
    // Saved: 12 min, 6.00; no batch fewer. 40 / 6 = 6.67: seven times.
    expect(addingPays(pouring, dams, 12)).toMatchObject({
      ok: true,
      value: { batches: { before: 2, after: 2 }, savedMinutes: 12, savedDays: 0, saved: 6, paysAfter: 7 },
    });
  });

  test('a day sooner may be what pays', () => {
    const roomy = { ...pouring, capacities: [{ id: 'tray-dam', what: 'Six dams', pieces: 6 }] };
    // One batch of 12: 30 + 36 + 252 = 318 min, 159 + 16 = 175.00; saved 42 min and 25.00, and one batch of 5 days at 10.
    const found = addingPays(roomy, dams, 12, { ofBatch: 5, worth: 10 });
    expect(found).toMatchObject({
      ok: true,
      value: { batches: { before: 2, after: 1 }, savedMinutes: 42, savedDays: 5, saved: 75, paysAfter: 1 },
    });
    expect(found.ok && found.value.words).toBe(
      'Six more dams at $40.00 saves 42 min of hands-on time and 5 days on 12 pieces (2 batches become 1), worth $75.00: it is paid for after the first time.',
    );
  });

  test('what saves nothing never pays, and says so', () => {
    const found = addingPays(pouring, dams, 6);
    expect(found).toMatchObject({ ok: true, value: { saved: 0, paysAfter: null } });
    expect(found.ok && found.value.words).toBe(
      'Six more dams at $40.00 never pays: 6 pieces take 1 batch with it as without.',
    );
  });

  test.each<[name: string, addition: Partial<Addition>, wanted: number, field: string]>([
    ['what limits nothing', { capacity: 'shelf' }, 12, 'capacity'],
    ['a name that every object bears', { capacity: '__proto__' }, 12, 'capacity'],
    ['a price below nothing', { price: -1 }, 12, 'price'],
    ['no piece more', { pieces: 0 }, 12, 'pieces'],
    ['no piece wanted', {}, 0, 'wanted'],
    ['pieces that are no number', {}, Number.NaN, 'wanted'],
  ])('%s is refused', (_, addition, wanted, field) => {
    const found = addingPays(pouring, { ...dams, ...addition }, wanted);
    expect(found.ok ? [] : found.errors.map((error) => error.field)).toEqual([field]);
  });

  test('for any numbers, the answer is finite or a refusal', () => {
    const odd = fc.oneof(
      fc.double(),
      fc.integer({ min: 0, max: 100 }),
      fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1, 1e12),
    );
    fc.assert(
      fc.property(odd, odd, odd, odd, odd, odd, (price, pieces, wanted, rate, ofBatch, worth) => {
        const found = addingPays({ ...pouring, rate }, { ...dams, price, pieces }, wanted, { ofBatch, worth });
        if (!found.ok) return;
        const { savedMinutes, savedDays, saved, paysAfter } = found.value;
        for (const each of [savedMinutes, savedDays, saved, paysAfter ?? 0]) expect(Number.isFinite(each)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
