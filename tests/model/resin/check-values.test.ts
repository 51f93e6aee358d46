import { describe, expect, test } from 'vitest';
import { gasConstant } from '../../../src/model/quantity/constants.ts';
import { criticalDelta } from '../../../src/model/resin/critical.ts';
import { fitRate } from '../../../src/model/resin/fit.ts';
import { classKinetics, classThermal, kelvin } from '../../../src/model/resin/kinetics.ts';
import { isothermalConversion, slabCooling } from '../../../src/model/resin/pour-checks.ts';
import { greatestDepth } from '../../../src/model/resin/pour-plan.ts';
import { usualPour } from '../../../src/model/resin/usual-pour.ts';

// Values that another program printed, or a closed form worked out apart from this code, digit for digit. Some of the check
// sets work their published side out by a function of ours; here that function has no part.

const within = (share: number, ours: number, printed: number) =>
  expect(Math.abs(ours / printed - 1), `${ours} against ${printed}`).toBeLessThan(share);

describe('cooling of a slab, one face insulated, Bi 1, series summed apart from this code', () => {
  test.each([
    [0.1, 0.99309, 0.73254],
    [0.5, 0.77248, 0.5108],
    [1, 0.53383, 0.35251],
    [2, 0.25465, 0.16816],
  ])('Fo %d', (fourier, core, face) => {
    const left = slabCooling(1, fourier, 40);
    within(0.001, left[0] as number, core);
    within(0.001, left[39] as number, face);
  });
});

test('conversion at constant temperature by closed forms', () => {
  const kinetics = { activationEnergy: 0, heatOfReaction: 0 };
  const second = { ...kinetics, k2At25C: 1e-4, k1OverK2: 0, m: 0, n: 2 };
  within(1e-4, isothermalConversion(second, 20_000), 0.666667);
  within(1e-4, isothermalConversion({ ...second, n: 1.5 }, 20_000), 0.75);
  const both = { ...kinetics, k2At25C: 3e-4, k1OverK2: 1 / 30, m: 1, n: 1 };
  within(1e-4, isothermalConversion(both, 15_000), 0.769662);
});

// δ with an Arrhenius source is about that of the exponential one times 1 + 1.07 RT/E, a textbook’s expansion.
test('a slab with an Arrhenius source runs away at about 0.918', () => {
  const coolness = (gasConstant * kelvin(25)) / 58_600;
  expect(coolness).toBeCloseTo(0.0423, 4);
  within(
    0.01,
    criticalDelta('slab', 20, (theta) => Math.exp(theta / (1 + coolness * theta))),
    0.918,
  );
});

// Depths that warm by 25 K, by the pot life of 100 g at 25 °C: min, class, mm at 15, 20, 25 and 30 °C.
describe.each([
  [20, 'fast', [3.8, 2.9, 2.3, 1.8]],
  [180, 'slow', [17, 13, 9.6, 7.3]],
  [720, 'slow', [34, 25, 19, 15]],
  [1440, 'slow', [47, 36, 27, 20]],
  [2880, 'slow', [71, 54, 41, 31]],
] as const)('a pot life of %d minutes, %s', (minutes, name, printed) => {
  const kinetics = classKinetics[name];
  const fitted = fitRate({
    potLife: minutes * 60,
    mass: 100,
    temperature: 25,
    means: 'gel',
    kinetics,
    thermal: classThermal,
  });
  test.each([15, 20, 25, 30].map((celsius, at) => [celsius, printed[at] as number] as const))(
    'at %d °C warms by 25 K at %d mm',
    (celsius, depth) => {
      if (!fitted.ok) throw new Error('no rate');
      const { depth: _, ...pour } = usualPour({ ...kinetics, k2At25C: fitted.value }, classThermal, depth, celsius);
      const found = greatestDepth(pour, { depth, coarseRise: 25 });
      if (found.kind !== 'found') throw new Error(found.kind);
      // Two percent, and half of the last digit that the other program printed.
      expect(Math.abs(found.depth - depth)).toBeLessThan(0.02 * depth + (depth < 10 ? 0.05 : 0.5));
    },
  );
});
