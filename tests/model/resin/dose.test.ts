import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Colour, cupCounts, cupsOf, smallestCup } from '../../../src/model/resin/batches.ts';
import { doseOf, readingError } from '../../../src/model/resin/dose.ts';
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

  test('keep their ratio to half a division of the larger part, hold whole divisions, and none passes its limit', () => {
    fc.assert(
      fc.property(cases, ({ fill, seal, layers, colours: colour, largest, weight, division, densities }) => {
        const shares = Array.from({ length: layers }, () => 1 / layers);
        const dose = doseOf(fill, shares, seal, { drip: 0, residue: 4, spare: 5 });
        const [densityA, densityB] = densities ?? [1, 1];
        const ratio = (weight * densityA) / densityB;
        const measure = { ratio, perGramA: 1 / densityA, perGramB: 1 / densityB, division };
        const cups = cupsOf(dose.stages, colour, largest, measure);
        expect(cups.length).toBeGreaterThanOrEqual(cupCounts(dose.stages, colour, largest));
        // The smallest cup that whole divisions can make.
        const least =
          division * (densityA * Math.max(1, Math.round(1 / ratio)) + densityB * Math.max(1, Math.round(ratio)));
        for (const cup of cups) {
          for (const part of [cup.a, cup.b]) {
            expect(part).toBeGreaterThan(0);
            expect(Math.abs(part / division - Math.round(part / division))).toBeLessThan(1e-6);
          }
          expect(cup.mass).toBeCloseTo(cup.a * densityA + cup.b * densityB, 6);
          expect(cup.mass).toBeLessThanOrEqual(Math.max(largest * 1.005, least + 1e-6));
          const larger = Math.max(cup.a, cup.b) / division;
          expect(Math.abs(Math.log(1 + cup.off / 100))).toBeLessThanOrEqual(
            -Math.log(1 - Math.min(0.5, 0.5 / larger)) + 1e-9,
          );
        }
        expect(cups.map(({ number }) => number)).toEqual(cups.map((_, index) => index + 1));
      }),
    );
  });

  test('of one stage and colour sum to what was wanted, to a division of each part', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 4000, noNaN: true }),
        fc.constantFrom(Number.POSITIVE_INFINITY, 100, 300),
        fc.double({ min: 0.25, max: 1.2, noNaN: true }),
        fc.constantFrom(0.1, 0.5, 1),
        (mass, largest, ratio, division) => {
          const clear = [{ name: 'clear', share: 1, pigment: 0 }];
          const measure = { ratio, perGramA: 1, perGramB: 1, division };
          const whole = sum(cupsOf([{ name: 'Fill', mass }], clear, largest, measure).map((cup) => cup.mass));
          // A cup may be two divisions of the smaller part, with what goes with them of the larger, from what it should hold.
          const step = 2 * division * (1 + Math.max(ratio, 1 / ratio));
          expect(Math.abs(whole - mass)).toBeLessThanOrEqual(Math.max(step, 0.01 * mass));
        },
      ),
    );
  });

  // By hand: 2 ml to 1 ml, marks of 5 ml. 140 and 70 ml are in ratio; 145 and 70, which would keep the sum, are 3.4 % off.
  test('952 g by volume with marks of 5 ml are cups in ratio, rather than a sum to the mark', () => {
    const clear = [{ name: 'clear', share: 1, pigment: 0 }];
    const measure = { ratio: 0.5, perGramA: 1 / 1.16, perGramB: 1, division: 5 };
    const cups = cupsOf([{ name: 'Fill', mass: 952 }], clear, 240, measure);
    expect(cups.map(({ off }) => off)).toEqual(cups.map(() => expect.closeTo(0, 9)));
    for (const { a, b } of cups) expect([a, b]).toEqual([2 * b, b]);
    expect(sum(cups.map((cup) => cup.mass)) / 952).toBeGreaterThan(0.99);
  });

  test('where the limit and the division leave a cup short, one more is mixed', () => {
    const clear = [{ name: 'clear', share: 1, pigment: 0 }];
    // Whole divisions of 5 make cups of 15 or 30, and 29 may not be passed.
    const cups = cupsOf([{ name: 'Fill', mass: 29 }], clear, 29, { ratio: 0.5, perGramA: 1, perGramB: 1, division: 5 });
    expect(cups.map(({ a, b }) => [a, b])).toEqual([
      [10, 5],
      [10, 5],
    ]);
  });

  test('a seal coat is clear, and pigment is a share of its own cup', () => {
    const measure = { ratio: 0.5, perGramA: 1, perGramB: 1, division: 0.1 };
    const moss = { name: 'moss green', share: 1, pigment: 3, kind: 'paste' as const };
    const stages = [
      { name: 'Seal coat', mass: 30 },
      { name: 'Fill', mass: 120 },
    ];
    const cups = cupsOf(stages, [moss], Number.POSITIVE_INFINITY, measure);
    expect(cups).toEqual([
      { number: 1, stage: 'Seal coat', colour: 'clear', a: 20, b: 10, mass: 30, pigment: 0, off: expect.closeTo(0, 9) },
      {
        number: 2,
        stage: 'Fill',
        colour: 'moss green',
        a: 80,
        b: 40,
        mass: 120,
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
