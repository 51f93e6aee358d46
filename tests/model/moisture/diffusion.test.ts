import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acclimatise, showingTimes } from '../../../src/model/moisture/diffusion.ts';
import {
  assumedDensity,
  densityRange,
  diffusionScatter,
  stillAirSurface,
  workingDiffusion,
} from '../../../src/model/moisture/diffusion-coefficients.ts';
import {
  boardResponse,
  fickMean,
  fickMeanFreeFace,
  fickProfile,
  surfaceRoot,
} from '../../../src/model/moisture/diffusion-series.ts';
import { erfc, scaledErfc, scaledErfcBeyondLinear } from '../../../src/model/moisture/error-function.ts';
import { stepBoard } from './explicit-stepper.ts';

const anyEll = fc.oneof(
  fc.constant(Number.POSITIVE_INFINITY),
  fc.double({ min: -9, max: 9, noNaN: true }).map((power) => 10 ** power),
);
const anyFo = fc.double({ min: -12, max: 4, noNaN: true }).map((power) => 10 ** power);

describe('the scaled complementary error function', () => {
  // erfc by Simpson’s rule on its integral: slow, plain and independent.
  function erfcByQuadrature(z: number): number {
    const steps = 20_000;
    const reach = Math.min(12, 20 / Math.max(z, 1));
    const f = (t: number) => Math.exp(-t * t - 2 * t * z);
    let sum = f(0) + f(reach);
    for (let i = 1; i < steps; i += 1) sum += f((reach * i) / steps) * (i % 2 === 1 ? 4 : 2);
    return (2 / Math.sqrt(Math.PI)) * ((sum * reach) / steps / 3);
  }
  test.each([0, 0.01, 0.3, 0.99, 1, 1.7, 2.49, 2.5, 4, 9, 30])('at %d agrees with its integral', (z) => {
    expect(scaledErfc(z) / erfcByQuadrature(z)).toBeCloseTo(1, 11);
  });
  test('keeps its digits where the linear part cancels', () => {
    expect(scaledErfcBeyondLinear(1e-5) / (1e-10 - (4 / 3 / Math.sqrt(Math.PI)) * 1e-15)).toBeCloseTo(1, 9);
    expect(scaledErfcBeyondLinear(1) - (scaledErfc(1) - 1 + 2 / Math.sqrt(Math.PI))).toBeCloseTo(0, 13);
  });
  test('stays finite far out', () => {
    expect(erfc(40)).toBe(0);
    expect(scaledErfc(1e8)).toBeGreaterThan(0);
  });
});

describe('roots of β tan β = L', () => {
  test('each lies in its own quarter turn and satisfies the equation, for any L', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), anyEll, (n, ell) => {
        const beta = surfaceRoot(n, ell);
        expect(beta).toBeGreaterThan((n - 1) * Math.PI - 1e-9);
        expect(beta).toBeLessThanOrEqual((n - 0.5) * Math.PI + 1e-9);
        if (Number.isFinite(ell)) {
          // Written without the poles of the tangent, and scaled by its own terms.
          const gap = beta * Math.sin(beta) - ell * Math.cos(beta);
          expect(Math.abs(gap)).toBeLessThan(1e-9 * (beta + ell));
        }
      }),
    );
  });
});

describe('the series', () => {
  test('short and long forms meet where one hands over to the other, for any L', () => {
    fc.assert(
      fc.property(anyEll, (ell) => {
        const before = fickMean(0.01 * (1 - 1e-9), ell);
        const after = fickMean(0.01, ell);
        expect(Math.abs(after - before)).toBeLessThan(1e-9 * after + 1e-15);
        for (const xi of [0, 0.5, 0.9, 1]) {
          expect(Math.abs(fickProfile(xi, 0.01 * (1 - 1e-9), ell) - fickProfile(xi, 0.01, ell))).toBeLessThan(1e-8);
        }
      }),
    );
  });
  test('rises with time, never leaves 0 to 1, and shell leads mean leads core', () => {
    fc.assert(
      fc.property(anyEll, anyFo, fc.double({ min: 1.01, max: 10, noNaN: true }), (ell, fo, factor) => {
        const { mean, at } = boardResponse(ell);
        const [early, late] = [mean(fo), mean(fo * factor)];
        for (const value of [early, late]) expect(value >= 0 && value <= 1).toBe(true);
        expect(late).toBeGreaterThanOrEqual(early - 1e-12);
        expect(at(1, fo)).toBeGreaterThanOrEqual(early - 1e-9);
        expect(at(0, fo)).toBeLessThanOrEqual(early + 1e-9);
      }),
    );
  });
  test('the mean is the mean of the profile', () => {
    for (const [fo, ell] of [
      [0.002, 5],
      [0.03, 0.2],
      [0.2, 1],
      [0.7, 40],
      [0.1, Number.POSITIVE_INFINITY],
    ] as const) {
      const cells = 4000;
      const profile = Array.from({ length: cells }, (_, index) => fickProfile((index + 0.5) / cells, fo, ell));
      expect(profile.reduce((sum, value) => sum + value, 0) / cells).toBeCloseTo(fickMean(fo, ell), 6);
    }
  });
  test('a face without resistance gives the plain series within 0.1 % at every time', () => {
    for (let power = -3.5; power <= 0.7; power += 0.1) {
      const fo = 10 ** power;
      expect(Math.abs(fickMean(fo, Number.POSITIVE_INFINITY) / fickMeanFreeFace(fo) - 1)).toBeLessThan(0.001);
    }
  });
  test('a very slow face gives 1 − exp(−t/τ), τ = l/S', () => {
    for (const fo of [10, 1000, 3000]) expect(fickMean(fo, 1e-3)).toBeCloseTo(1 - Math.exp(-fo * 1e-3), 3);
  });
  test('the time for a share gives that share back', () => {
    fc.assert(
      fc.property(anyEll, fc.double({ min: 1e-4, max: 0.9999, noNaN: true }), (ell, share) => {
        const { mean, timeFor } = boardResponse(ell);
        expect(mean(timeFor(share))).toBeCloseTo(share, 9);
      }),
    );
  });
  test.each([
    { words: 'bare, still air', resistance: 1 / 5e-8, depth: 0.0125, diffusion: 0.6e-10 },
    { words: 'bare, moving air', resistance: 1 / 1e-6, depth: 0.01, diffusion: 1e-10 },
    { words: 'coated', resistance: 1 / 5e-8 + 8.7e7, depth: 0.01, diffusion: 1e-10 },
  ])('agrees with an explicit time-stepper: $words', ({ words: _, ...board }) => {
    const ell = board.depth / (board.resistance * board.diffusion);
    for (const fo of [0.1, 0.4, 1.5]) {
      const stepped = stepBoard(board, 80, (fo * board.depth ** 2) / board.diffusion);
      expect(Math.abs(stepped.mean - fickMean(fo, ell))).toBeLessThan(3e-4);
      expect(Math.abs(stepped.face - fickProfile(1, fo, ell))).toBeLessThan(2e-3);
      expect(Math.abs(stepped.middle - fickProfile(0, fo, ell))).toBeLessThan(2e-3);
    }
  });
});

describe('a board in new air', () => {
  const board = { thickness: 25, start: 12, balance: 7, diffusion: 1e-10, surface: 5e-8 };

  test('comes within one percent later than half-way, and both lie in their band', () => {
    const outcome = acclimatise(board);
    if (!outcome.ok) throw new Error(outcome.errors[0]?.message);
    const { halfWay, withinOne, band, at } = outcome.value;
    expect(at(halfWay).mean).toBeCloseTo(9.5, 9);
    expect(at(withinOne).mean).toBeCloseTo(8, 9);
    expect(withinOne).toBeGreaterThan(halfWay);
    expect(band.halfWay).toEqual([halfWay / diffusionScatter, halfWay * diffusionScatter]);
    expect(at(halfWay).meanHigh).toBeCloseTo(at(halfWay / diffusionScatter).mean, 12);
    expect(at(halfWay).meanLow).toBeCloseTo(at(halfWay * diffusionScatter).mean, 12);
    expect(at(0)).toMatchObject({ mean: 12, shell: 12, core: 12 });
  });
  test('needs four times as long where one face is sealed and nothing resists at the face', () => {
    const free = { ...board, surface: Number.POSITIVE_INFINITY };
    const both = acclimatise(free);
    const one = acclimatise({ ...free, faces: 'one' });
    if (!both.ok || !one.ok) throw new Error('refused');
    expect(one.value.halfWay / both.value.halfWay).toBeCloseTo(4, 9);
  });
  test('is within one percent from the start where it differs by no more', () => {
    const outcome = acclimatise({ ...board, start: 8, balance: 7 });
    expect(outcome.ok && outcome.value.withinOne).toBe(0);
  });
  test('is shown from the start until it is near balance', () => {
    const outcome = acclimatise(board);
    if (!outcome.ok) throw new Error('refused');
    const times = showingTimes(outcome.value, 50);
    expect(times).toHaveLength(50);
    expect(times[0]).toBe(0);
    expect(outcome.value.at(times[49] as number).mean).toBeLessThanOrEqual(8 + 1e-9);
  });
  test.each([
    ['thickness', 0],
    ['thickness', Number.NaN],
    ['start', -1],
    ['balance', 900],
    ['diffusion', 0],
    ['diffusion', Number.POSITIVE_INFINITY],
    ['surface', 0],
    ['coating', -5],
    ['coating', Number.POSITIVE_INFINITY],
  ])('refuses %s of %d and names the field', (field, value) => {
    const outcome = acclimatise({ ...board, [field]: value });
    expect(!outcome.ok && outcome.errors.map((error) => error.field)).toEqual([field]);
  });
  test('gives finite numbers for anything it accepts', () => {
    const number = fc.oneof(
      fc.double(),
      fc.double({ min: -20, max: 5, noNaN: true }).map((power) => 10 ** power),
    );
    fc.assert(
      fc.property(
        number,
        number,
        number,
        number,
        number,
        number,
        (thickness, start, balance, diffusion, surface, coating) => {
          const outcome = acclimatise({ thickness, start, balance, diffusion, surface, coating });
          if (!outcome.ok) return;
          const { halfWay, withinOne, at } = outcome.value;
          for (const value of [halfWay, withinOne, ...Object.values(at(halfWay)), ...Object.values(at(1e9))]) {
            expect(Number.isFinite(value)).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('working coefficients', () => {
  test('denser, colder and drier wood conducts more slowly', () => {
    const densities = [350, 425, 500, 650, 800, 900, 1000].map((density) => workingDiffusion(density, 20, 9));
    expect([...densities].sort((a, b) => b - a)).toEqual(densities);
    expect(workingDiffusion(650, 10, 9)).toBeLessThan(workingDiffusion(650, 20, 9));
    expect(workingDiffusion(650, 20, 6)).toBeLessThan(workingDiffusion(650, 20, 12));
  });
  test('stand beside what is published: spruce within the scatter, and two to three times beech', () => {
    const spruce = workingDiffusion(440, 20, 9);
    expect(spruce / 0.97e-10).toBeGreaterThan(1 / diffusionScatter);
    expect(spruce / 0.97e-10).toBeLessThan(diffusionScatter);
    const ratio = spruce / workingDiffusion(700, 20, 9);
    expect(ratio).toBeGreaterThan(2);
    expect(ratio).toBeLessThan(3);
  });
  test('the assumed density lies within the range, and the surface of still air between its ends', () => {
    expect(assumedDensity).toBeGreaterThan(densityRange.minimum);
    expect(assumedDensity).toBeLessThan(densityRange.maximum);
    expect(stillAirSurface).toBeGreaterThan(0.3e-7);
    expect(stillAirSurface).toBeLessThan(1e-7);
  });
});
