import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gelPoint, timeToConversion } from '../../../src/model/resin/clock.ts';
import { type Cup, type CupStart, cupOf, fineGrid, quickGrid, runCup } from '../../../src/model/resin/cup.ts';
import { classKinetics, classThermal, type Kinetics } from '../../../src/model/resin/kinetics.ts';
import { modesOf } from '../../../src/model/resin/modes.ts';
import { stepCup } from '../../second-roads/cup.ts';
import { classes } from '../../second-roads/resins.ts';

const run = (cup: Cup, kinetics: Kinetics, start: CupStart) => {
  const outcome = runCup(cup, kinetics, start);
  if (!outcome) throw new Error('never gels');
  return outcome;
};
const share = (one: number, other: number) => Math.abs(one / other - 1);

describe('modes of a row of cells', () => {
  test('are orthonormal and rebuild the matrix', () => {
    const diagonal = [3, 2.5, 4, 2, 7];
    const beside = [-1, -1.5, -0.3, -2];
    const { decays, shapes, count } = modesOf(diagonal, beside);
    for (let i = 0; i < count; i += 1) {
      for (let j = 0; j < count; j += 1) {
        const over = (weight: (p: number) => number) =>
          Array.from({ length: count }, (_, p) => weight(p)).reduce((sum, term) => sum + term, 0);
        const entry = i === j ? diagonal[i] : Math.abs(i - j) === 1 ? beside[Math.min(i, j)] : 0;
        const product = over((p) => (shapes[i * count + p] ?? 0) * (decays[p] ?? 0) * (shapes[j * count + p] ?? 0));
        expect(product).toBeCloseTo(entry ?? Number.NaN, 10);
        expect(over((k) => (shapes[k * count + i] ?? 0) * (shapes[k * count + j] ?? 0))).toBeCloseTo(
          i === j ? 1 : 0,
          10,
        );
      }
    }
  });
});

test('a field goes into the shapes of a cup and comes back whole', () => {
  const cup = cupOf(300, classThermal);
  const field = Float64Array.from({ length: 25 }, (_, i) => Math.sin(3 * i) * 40);
  const [modes, back] = [new Float64Array(25), new Float64Array(25)];
  cup.toModes(field, modes);
  cup.fromModes(modes, back);
  for (const [i, value] of field.entries()) expect(back[i]).toBeCloseTo(value, 9);
});

test('a cup whose cure gives no heat keeps the clock of a thin layer', () => {
  const cold = { ...classKinetics.fast, heatOfReaction: 0 };
  const { work, gel } = run(cupOf(100, classThermal), cold, { air: 20 });
  expect(share(work, timeToConversion(0.2, 20, cold))).toBeLessThan(1e-3);
  expect(share(gel, timeToConversion(gelPoint, 20, cold))).toBeLessThan(1e-3);
});

test('a cup that loses next to nothing, being vast, heats itself as an insulated one: H/cp times the conversion', () => {
  const cup = cupOf(1e9, classThermal, { ...quickGrid, step: 0.01 });
  const { course, gel } = run(cup, classKinetics.slow, { air: 20 });
  // Insulated cure in one cell, by small steps.
  let [alpha, time] = [0, 0];
  const k = (warmth: number) =>
    classKinetics.slow.k2At25C * Math.exp((58_600 / 8.314462618) * (1 / 298.15 - 1 / (293.15 + warmth)));
  while (alpha < gelPoint) {
    alpha += 2 * k(175 * alpha) * (0.03 + alpha) * (1 - alpha) ** 2;
    time += 2;
  }
  expect(share(gel, time)).toBeLessThan(0.005);
  expect(course.at(-1)?.conversion).toBeGreaterThanOrEqual(gelPoint);
});

describe.each([
  ['fast', 100, 15],
  ['fast', 25, 25],
  ['slow', 25, 25],
  ['slow', 100, 20],
  ['slow', 500, 25],
] as const)('%s class, %d g at %d °C', (name, mass, air) => {
  const kinetics = classKinetics[name];
  test('a plain explicit scheme gives the same times', () => {
    const plain = stepCup(classes[name], mass, air, 'gel', { cells: [8, 8], gain: 0.002 });
    const { work, gel } = run(cupOf(mass, classThermal), kinetics, { air });
    expect(share(work, 60 * plain.work)).toBeLessThan(0.01);
    expect(share(gel, 60 * plain.gel)).toBeLessThan(0.01);
  });
  test('the quick grid keeps the times of the fine one within 1 %', () => {
    const quick = run(cupOf(mass, classThermal, quickGrid), kinetics, { air });
    const fine = run(cupOf(mass, classThermal, fineGrid), kinetics, { air });
    expect(share(quick.work, fine.work)).toBeLessThan(0.01);
    expect(share(quick.gel, fine.gel)).toBeLessThan(0.01);
  });
});

test('warmer air, warmer resin or more of it never makes a cup last longer, and warmer air or more of it never peaks lower', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('fast' as const, 'slow' as const),
      fc.double({ min: 5, max: 35, noNaN: true }),
      fc.double({ min: 10, max: 1500, noNaN: true }),
      fc.double({ min: 0.5, max: 10, noNaN: true }),
      (name, air, mass, more) => {
        const kinetics = classKinetics[name];
        const at = (grams: number, celsius: number, resin?: number) =>
          run(cupOf(grams, classThermal), kinetics, {
            air: celsius,
            until: 'peak',
            ...(resin === undefined ? {} : { resin }),
          });
        const plain = at(mass, air);
        const warmResin = at(mass, air, air + more);
        const others = [at(mass, air + more), at(mass * (1 + more / 5), air)];
        for (const other of [warmResin, ...others]) {
          expect(other.work).toBeLessThan(plain.work * 1.003);
          expect(other.gel).toBeLessThan(plain.gel * 1.003);
        }
        // Warm resin has less left to give once it has cooled, so its later peak may be a trifle lower.
        for (const { peak } of others) expect(peak ?? 0).toBeGreaterThan((plain.peak ?? 0) - 0.3);
      },
    ),
    { numRuns: 60 },
  );
});

test('conversion only grows, and a small slow cup in a cold shop peaks once, well below the gel point', () => {
  const { course, timeOfPeak, gel, peak } = run(cupOf(25, classThermal), classKinetics.slow, { air: 5, until: 'peak' });
  for (const [index, { conversion }] of course.entries())
    if (index > 0) expect(conversion).toBeGreaterThan(course[index - 1]?.conversion ?? 1);
  expect(peak ?? 99).toBeLessThan(7);
  expect(timeOfPeak ?? Number.NaN).toBeLessThan(gel);
});

test('kinetics that never start have no answer', () => {
  expect(runCup(cupOf(100, classThermal), { ...classKinetics.fast, k1OverK2: 0 }, { air: 20 })).toBeUndefined();
});
