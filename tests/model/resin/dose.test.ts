import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Colour, cupCounts, cupsOf, smallestCup } from '../../../src/model/resin/batches.ts';
import { doseOf, readingError } from '../../../src/model/resin/dose.ts';
import { partsOfMass } from '../../../src/model/resin/ratio.ts';
import {
  type DepthProfile,
  deepest,
  footprintOf,
  layerShares,
  meanDepth,
  sumFootprints,
} from '../../../src/model/resin/shapes.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const percent = (max: number) => fc.double({ min: 0, max, noNaN: true });

const profile: fc.Arbitrary<DepthProfile> = fc
  .array(fc.tuple(fc.double({ min: 0.5, max: 60, noNaN: true }), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((places) => {
    const whole = sum(places.map(([, weight]) => weight));
    return places.map(([depth, weight]) => ({ depth, share: weight / whole }));
  });

const colours: fc.Arbitrary<Colour[]> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), percent(6)), { minLength: 1, maxLength: 4 })
  .map((given) => {
    const whole = sum(given.map(([weight]) => weight));
    return given.map(([weight, pigment], index) => ({ name: `colour ${index}`, share: weight / whole, pigment }));
  });

describe('areas', () => {
  // By hand: 300 × 40; π/4 × 120 × 80; π/4 × (200² − 160²).
  test.each([
    [{ kind: 'rectangle', length: 300, width: 40 }, 12_000, 680],
    [{ kind: 'channel', length: 900, width: 12 }, 10_800, 1824],
    [{ kind: 'oval', length: 120, width: 80 }, 7539.8, 317.3],
    [{ kind: 'oval', length: 100, width: 100 }, 7854, 314.2],
    [{ kind: 'ring', outer: 200, inner: 160 }, 11_309.7, 1131],
  ] as const)('%j', (shape, area, edge) => {
    expect(footprintOf(shape).area).toBeCloseTo(area, 0);
    expect(footprintOf(shape).edge).toBeCloseTo(edge, 0);
  });

  test('several are their sum', () => {
    const one = footprintOf({ kind: 'rectangle', length: 30, width: 4 });
    expect(sumFootprints([one, one, one])).toEqual({ area: 360, edge: 204 });
  });
});

describe('layers', () => {
  test('take the whole fill between them, and a lower layer never more than one above it', () => {
    fc.assert(
      fc.property(profile, fc.integer({ min: 1, max: 12 }), (places, layers) => {
        const shares = layerShares(places, layers);
        expect(sum(shares)).toBeCloseTo(1, 9);
        for (const [index, share] of shares.entries()) {
          expect(share).toBeGreaterThan(0);
          expect(share).toBeLessThanOrEqual((shares[index + 1] ?? Number.POSITIVE_INFINITY) + 1e-9);
        }
      }),
    );
  });

  test('of an even floor are equal; of a floor half 10, half 20 mm deep the lower takes a third', () => {
    expect(layerShares([{ depth: 30, share: 1 }], 3)).toEqual([1 / 3, 1 / 3, 1 / 3].map((x) => expect.closeTo(x, 9)));
    const uneven = [
      { depth: 10, share: 0.5 },
      { depth: 20, share: 0.5 },
    ];
    expect(layerShares(uneven, 2)).toEqual([expect.closeTo(1 / 3, 9), expect.closeTo(2 / 3, 9)]);
    expect([meanDepth(uneven), deepest(uneven)]).toEqual([15, 20]);
  });
});

describe('a dose', () => {
  test('is the sum of its stages and of what becomes of it, and what is needed arrives', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 1e3, noNaN: true }),
        profile,
        fc.integer({ min: 1, max: 6 }),
        percent(50),
        percent(30),
        percent(50),
        (fill, seal, places, layers, drip, residue, spare) => {
          const dose = doseOf(fill, layerShares(places, layers), seal, { drip, residue, spare });
          expect(sum(dose.stages.map(({ mass }) => mass)) / dose.total).toBeCloseTo(1, 9);
          const { total } = dose;
          expect((dose.fill + dose.seal + dose.drip + dose.spare + dose.residue) / total).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('without allowances is what was asked for, exactly', () => {
    expect(doseOf(100, [1], 0, { drip: 0, residue: 0, spare: 0 }).total).toBe(100);
  });
});

describe('cups', () => {
  const cases = fc.record({
    fill: fc.double({ min: 5, max: 4000, noNaN: true }),
    seal: fc.constantFrom(0, 0, 12.3),
    layers: fc.integer({ min: 1, max: 4 }),
    colours,
    largest: fc.constantFrom(Number.POSITIVE_INFINITY, 60, 100, 300),
    weight: fc.double({ min: 0.2, max: 1.4, noNaN: true }),
    division: fc.constantFrom(0.01, 0.1, 0.5, 1, 2, 5),
    densities: fc.constantFrom(undefined, [1.16, 1] as const, [1.1, 0.95] as const),
  });

  test('sum to the totals rounded to the division, none exceeds its limit by more than the rounding, none is lost', () => {
    fc.assert(
      fc.property(cases, ({ fill, seal, layers, colours: colour, largest, weight, division, densities }) => {
        const shares = Array.from({ length: layers }, () => 1 / layers);
        const dose = doseOf(fill, shares, seal, { drip: 0, residue: 4, spare: 5 });
        const [densityA, densityB] = densities ?? [1, 1];
        const ratio = (weight * densityA) / densityB;
        const measure = { ratio, perGramA: 1 / densityA, perGramB: 1 / densityB, division };
        const cups = cupsOf(dose.stages, colour, largest, weight, measure);
        expect(cups).toHaveLength(cupCounts(dose.stages, colour, largest));
        const parts = partsOfMass(dose.total, weight, densityA, densityB);
        const [a, b] = densities ? [parts.volumeA, parts.volumeB] : [parts.massA, parts.massB];
        const near = division / 2 + 1e-6;
        expect(Math.abs(sum(cups.map((cup) => cup.a)) - a)).toBeLessThanOrEqual(near);
        expect(Math.abs(sum(cups.map((cup) => cup.b)) - b)).toBeLessThanOrEqual(near);
        for (const cup of cups) {
          for (const part of [cup.a, cup.b]) {
            expect(part).toBeGreaterThanOrEqual(0);
            expect(Math.abs(part / division - Math.round(part / division))).toBeLessThan(1e-6);
          }
          const grams = cup.a * densityA + cup.b * densityB;
          expect(grams).toBeLessThanOrEqual(largest + 4 * division * (densityA + densityB));
        }
        expect(cups.map(({ number }) => number)).toEqual(cups.map((_, index) => index + 1));
      }),
    );
  });

  test('a cup that is far larger than the division keeps its ratio to about a division of the larger part', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 4000, noNaN: true }),
        fc.double({ min: 0.25, max: 1, noNaN: true }),
        (mass, weight) => {
          const measure = { ratio: weight, perGramA: 1, perGramB: 1, division: 1 };
          const clear = [{ name: 'clear', share: 1, pigment: 0 }];
          for (const { off, a, b } of cupsOf([{ name: 'Fill', mass }], clear, 300, weight, measure)) {
            expect(Math.abs(off)).toBeLessThan(100 * (1.5 / a + 0.5 / b));
          }
        },
      ),
    );
  });

  test('a seal coat is clear, and pigment is a share of its own cup', () => {
    const measure = { ratio: 0.5, perGramA: 1, perGramB: 1, division: 0.1 };
    const moss = { name: 'moss green', share: 1, pigment: 3, kind: 'paste' as const };
    const stages = [
      { name: 'Seal coat', mass: 30 },
      { name: 'Fill', mass: 120 },
    ];
    const cups = cupsOf(stages, [moss], Number.POSITIVE_INFINITY, 0.5, measure);
    expect(cups).toEqual([
      { number: 1, stage: 'Seal coat', colour: 'clear', a: 20, b: 10, pigment: 0, off: expect.closeTo(0, 9) },
      {
        number: 2,
        stage: 'Fill',
        colour: 'moss green',
        a: 80,
        b: 40,
        pigment: expect.closeTo(3.6, 9),
        off: expect.closeTo(0, 9),
      },
    ]);
    expect(smallestCup(stages, [moss], Number.POSITIVE_INFINITY)).toBe(30);
  });
});

test('a scale of 1 g on 20 g of hardener leaves 2.5 % open', () => {
  expect(readingError(1, 20)).toBe(2.5);
});
