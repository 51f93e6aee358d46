import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  classClock,
  classGlass,
  cureRate,
  gelConversion,
  gelPoint,
  glassTransition,
  quadratureTime,
  rateFactor,
  timeToConversion,
  viscosityRise,
  vitrification,
} from '../../../src/model/resin/clock.ts';
import { arrhenius, classKinetics } from '../../../src/model/resin/kinetics.ts';

/** Conversion after a time at constant temperature, by steps of fourth order: a road of its own. */
function stepped(time: number, k2: number, orders: { k1OverK2: number; m: number; n: number }, steps = 4000): number {
  const step = time / steps;
  let at = 0;
  for (let count = 0; count < steps; count += 1) {
    const first = cureRate(at, k2, orders);
    const second = cureRate(at + (step / 2) * first, k2, orders);
    const third = cureRate(at + (step / 2) * second, k2, orders);
    const fourth = cureRate(at + step * third, k2, orders);
    at += (step / 6) * (first + 2 * second + 2 * third + fourth);
  }
  return at;
}

describe('time to a conversion', () => {
  // Closed forms of isothermal cure: n-th order without autocatalysis, and autocatalytic with m = n = 1.
  test.each([
    ['second order, 1 − 1/(1 + kt)', 2 / 3, 1e-4, { k1OverK2: 0, m: 0, n: 2 }, 20_000],
    ['order 1.5, 1 − (1 + kt/2)^−2', 0.75, 1e-4, { k1OverK2: 0, m: 0, n: 1.5 }, 20_000],
    ['m = n = 1, (e − 1)/(e + k2/k1)', 0.769662, 3e-4, { k1OverK2: 1 / 30, m: 1, n: 1 }, 15_000],
  ])('%s', (_, conversion, k2, orders, expected) => {
    expect(Math.abs(quadratureTime(conversion, k2, orders) / expected - 1)).toBeLessThan(1e-5);
  });

  test('the closed form of the class, the quadrature and a stepper agree for any rate and share', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.97, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e-2, noNaN: true }),
        fc.double({ min: 0.003, max: 1, noNaN: true }),
        (conversion, k2, k1OverK2) => {
          const closed = classClock(conversion, k2, k1OverK2);
          expect(Math.abs(quadratureTime(conversion, k2, { k1OverK2, m: 1, n: 2 }) / closed - 1)).toBeLessThan(1e-7);
          expect(stepped(closed, k2, { k1OverK2, m: 1, n: 2 })).toBeCloseTo(conversion, 6);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('orders other than those of the class go through the quadrature', () => {
    const kinetics = { ...classKinetics.slow, m: 0.8, n: 1.7 };
    const time = timeToConversion(0.577, 22, kinetics);
    const k2 = arrhenius(kinetics.k2At25C, kinetics.activationEnergy, 22);
    expect(stepped(time, k2, kinetics)).toBeCloseTo(0.577, 6);
  });

  test('a thin layer is workable for less time, and gels sooner, the warmer it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 44, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (t, warmer) => {
          for (const conversion of [0.2, gelPoint])
            expect(timeToConversion(conversion, t + warmer, classKinetics.fast)).toBeLessThan(
              timeToConversion(conversion, t, classKinetics.fast),
            );
        },
      ),
    );
  });
});

describe('gel point', () => {
  test('is 1/√3 for two epoxide groups and four amine hydrogens in their right ratio', () => {
    expect(gelPoint).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
  test('comes later off the ratio, and at the very end with half of the hardener or less', () => {
    expect(gelConversion(0.8, 2, 4)).toBeGreaterThan(gelPoint);
    expect(gelConversion(1 / 3, 2, 4)).toBeCloseTo(1, 12);
  });
});

describe('glass transition', () => {
  test.each(['fast', 'slow'] as const)(
    'of the %s class runs from that of the fresh mix to that of the cured resin',
    (name) => {
      const glass = classGlass[name];
      expect(glassTransition(0, glass)).toBe(glass.fresh);
      expect(glassTransition(1, glass)).toBeCloseTo(glass.cured, 12);
      expect(glassTransition(0.9, glass)).toBeGreaterThan(glassTransition(0.8, glass));
    },
  );
  test('halves the rate once it is 10 °C above the resin, and leaves a rubbery resin alone', () => {
    expect(vitrification(35, 25)).toBeCloseTo(0.5, 12);
    expect(vitrification(55, 25)).toBeLessThan(0.01);
    expect(vitrification(0, 25)).toBeGreaterThan(0.999);
  });
});

test('the viscosity has doubled near the conversion that ends working time', () => {
  expect(viscosityRise(0)).toBe(1);
  expect(viscosityRise(0.2)).toBeGreaterThan(1.85);
  expect(viscosityRise(0.2)).toBeLessThan(2.0);
  expect(viscosityRise(0.2136)).toBeCloseTo(2, 2);
});

// Worked out by hand from exp[E/R (1/T1 − 1/T2)], to the digits noted.
test.each([
  [44, 1.85, 1.81],
  [48, 1.96, 1.91],
  [51.2, 2.05, 2.0],
  [58.6, 2.27, 2.21],
  [61.4, 2.36, 2.3],
  [65, 2.48, 2.41],
])('with %d kJ/mol the rate grows %d-fold from 15 to 25 °C and %d-fold from 20 to 30 °C', (energy, cool, warm) => {
  expect(Math.abs(rateFactor(energy * 1000, 15, 25) - cool)).toBeLessThan(0.006);
  expect(Math.abs(rateFactor(energy * 1000, 20, 30) - warm)).toBeLessThan(0.006);
});
