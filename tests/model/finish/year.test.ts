import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slabResponse } from '../../../src/model/finish/slab.ts';
import { moistureYear, yearSeconds } from '../../../src/model/finish/year.ts';
import { steppedYear, swingOf } from './stepped-year.ts';

const day = 86_400;
const months = [4.5, 5, 5.9, 6.4, 8.3, 11.2, 12.5, 12.8, 10.1, 7.5, 5.7, 4.7];
const mean = months.reduce((sum, value) => sum + value, 0) / 12;
const wood = { thickness: 20, diffusion: 0.57e-10, surface: 5.5e-8 };
const sine = Array.from({ length: 360 }, (_, at) => 9 + 3 * Math.cos((2 * Math.PI * at) / 360));
const coated = (resistance: number, other = resistance) => ({ coatings: [resistance, other] as const });

const thicknesses = fc.double({ min: 3, max: 80, noNaN: true });
const diffusions = fc.double({ min: -11, max: -9, noNaN: true }).map((logarithm) => 10 ** logarithm);
const resistances = fc.oneof(
  fc.constant(0),
  fc.double({ min: 5, max: 10.5, noNaN: true }).map((logarithm) => 10 ** logarithm),
);
const balances = fc.array(fc.double({ min: 2, max: 25, noNaN: true }), { minLength: 12, maxLength: 12 });

/** The textbook form for two like faces: the mean of a slab of half thickness l that follows a sine behind 1/S. */
function likeFaces(half: number, diffusion: number, resistance: number, angular: number): { re: number; im: number } {
  // q = l √(iω/D); coth q = (sinh 2x − i sin 2x)/(cosh 2x − cos 2x) for q = x(1 + i).
  const x = half * Math.sqrt(angular / (2 * diffusion));
  const below = Math.cosh(2 * x) - Math.cos(2 * x);
  const [re, im] = [Math.sinh(2 * x) / below, -Math.sin(2 * x) / below];
  const inverse = { re: x * (re - im), im: x * (re + im) + angular * half * resistance };
  const size = inverse.re ** 2 + inverse.im ** 2;
  return { re: inverse.re / size, im: -inverse.im / size };
}

describe('a slab in air that swings as a sine', () => {
  test('with like faces is the textbook’s 1/(q coth q + q²/L)', () => {
    fc.assert(
      fc.property(
        thicknesses,
        diffusions,
        fc.double({ min: 6, max: 10, noNaN: true }),
        fc.double({ min: -8, max: -5, noNaN: true }),
        (thickness, diffusion, logR, logW) => {
          const resistance = 10 ** logR;
          const angular = 10 ** logW;
          const book = likeFaces(thickness / 2000, diffusion, resistance, angular);
          const ours = slabResponse({ thickness, diffusion, resistances: [resistance, resistance] }, angular);
          expect(ours.mean.re).toBeCloseTo(book.re, 9);
          expect(ours.mean.im).toBeCloseTo(book.im, 9);
          expect(ours.faces[0].re).toBeCloseTo(ours.faces[1].re, 9);
        },
      ),
    );
  });
  test('one face sealed is a slab twice as thick with both open', () => {
    const angular = (2 * Math.PI) / yearSeconds;
    const sealed = slabResponse({ thickness: 15, diffusion: 1e-10, resistances: [2e7, 1e16] }, angular);
    const both = slabResponse({ thickness: 30, diffusion: 1e-10, resistances: [2e7, 2e7] }, angular);
    expect(sealed.mean.re).toBeCloseTo(both.mean.re, 6);
    expect(sealed.mean.im).toBeCloseTo(both.mean.im, 6);
  });
  test('a thin board behind a film is a filter of one time, R times half its thickness', () => {
    const { lag, swing } = moistureYear({ ...wood, thickness: 2, balance: sine, ...coated(5e9) });
    const tau = (5e9 + 1 / wood.surface) * 1e-3;
    const angle = (2 * Math.PI * tau) / yearSeconds;
    expect(lag / day).toBeCloseTo(((Math.atan(angle) / (2 * Math.PI)) * yearSeconds) / day, 1);
    expect(swing).toBeCloseTo(6 / Math.sqrt(1 + angle ** 2), 2);
  });
});

describe('a board through the year', () => {
  test('thinner and freer, it comes to the air’s own year', () => {
    const thin = moistureYear({ balance: months, thickness: 0.5, diffusion: 1e-9, surface: 1e-5, ...coated(0) });
    for (const [at, value] of thin.points.entries())
      expect(Math.abs(value - (months[at] as number))).toBeLessThan(0.02);
    expect(thin.lag / day).toBeLessThan(0.1);
  });
  test('a coating that resists nothing is none', () => {
    const bare = moistureYear({ ...wood, balance: months, ...coated(0) });
    const almost = moistureYear({ ...wood, balance: months, ...coated(1) });
    expect(almost.swing).toBeCloseTo(bare.swing, 6);
    expect(almost.lag / day).toBeCloseTo(bare.lag / day, 4);
  });
  test('more resistance never enlarges the swing nor shortens the lag', () => {
    fc.assert(
      fc.property(
        thicknesses,
        diffusions,
        resistances,
        resistances,
        balances,
        (thickness, diffusion, one, more, balance) => {
          const board = { balance, thickness, diffusion, surface: 5.5e-8 };
          const less = moistureYear({ ...board, ...coated(one) });
          const greater = moistureYear({ ...board, ...coated(one + more) });
          expect(greater.swing).toBeLessThanOrEqual(less.swing + 0.02);
          expect(greater.lag).toBeGreaterThanOrEqual(less.lag - 1e-3);
        },
      ),
    );
  });
  test('no coating changes the mean of the year, and the board stays within the air’s extremes', () => {
    fc.assert(
      fc.property(
        thicknesses,
        diffusions,
        resistances,
        resistances,
        balances,
        (thickness, diffusion, one, other, balance) => {
          const year = moistureYear({ balance, thickness, diffusion, surface: 5.5e-8, ...coated(one, other) });
          expect(year.mean).toBeCloseTo(balance.reduce((sum, value) => sum + value, 0) / 12, 9);
          expect(year.driest).toBeGreaterThan(Math.min(...balance) - 0.1);
          expect(year.wettest).toBeLessThan(Math.max(...balance) + 0.1);
          expect(year.lag).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
  test('swapping the coated face changes nothing, and a half-coated board lies between', () => {
    const one = moistureYear({ ...wood, balance: months, ...coated(1.15e9, 0) });
    const other = moistureYear({ ...wood, balance: months, ...coated(0, 1.15e9) });
    expect(other.swing).toBeCloseTo(one.swing, 9);
    expect(other.faceDifference).toBeCloseTo(one.faceDifference, 9);
    const both = moistureYear({ ...wood, balance: months, ...coated(1.15e9) });
    const bare = moistureYear({ ...wood, balance: months, ...coated(0) });
    expect(one.swing).toBeLessThan(bare.swing);
    expect(one.swing).toBeGreaterThan(both.swing);
    expect(one.faceDifference).toBeGreaterThan(1);
    expect(both.faceDifference).toBe(0);
  });
  test('air that never changes leaves a board that never moves', () => {
    const still = moistureYear({ ...wood, balance: Array(12).fill(8), ...coated(1e8) });
    expect(still.swing).toBeCloseTo(0, 9);
    expect(still.mean).toBe(8);
  });
});

describe('against time steps', () => {
  const straight = (share: number) => {
    const at = share * 12;
    const from = Math.floor(at) % 12;
    const part = at - Math.floor(at);
    return (months[from] as number) * (1 - part) + (months[(from + 1) % 12] as number) * part;
  };
  const cases: readonly (readonly [words: string, thickness: number, coatings: readonly [number, number]])[] = [
    ['20 mm bare', 20, [0, 0]],
    ['20 mm behind varnish', 20, [8.7e7, 8.7e7]],
    ['20 mm behind epoxy', 20, [1.15e9, 1.15e9]],
    ['20 mm with one face behind epoxy', 20, [1.15e9, 0]],
    ['40 mm bare', 40, [0, 0]],
  ];
  const stepped = (thickness: number, coatings: readonly [number, number], perPercent: number) =>
    swingOf(
      steppedYear(
        {
          balance: straight,
          thickness: thickness / 1000,
          diffusion: wood.diffusion,
          perPercent,
          at: mean,
          resistances: [1 / wood.surface + coatings[0], 1 / wood.surface + coatings[1]],
        },
        40,
        731,
      ),
    );
  test.each(cases)('%s: the swing is that of finite volumes within 0.2 %%', (_, thickness, coatings) => {
    const ours = moistureYear({ ...wood, thickness, balance: months, coatings }).swing;
    expect(Math.abs(ours / stepped(thickness, coatings, 0) - 1)).toBeLessThan(0.002);
  });
  test.each(cases)(
    '%s: letting D grow with moisture changes the swing by less than 3.5 %%',
    (_, thickness, coatings) => {
      const ours = moistureYear({ ...wood, thickness, balance: months, coatings }).swing;
      expect(Math.abs(ours / stepped(thickness, coatings, 0.12) - 1)).toBeLessThan(0.035);
    },
  );
});
