import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductorOf, gridOf } from '../../../src/model/resin/conduction.ts';

const layer = { thickness: 0.02, cells: 8, conductivity: 0.18, heatCapacity: 2.2e6 };

describe('a grid', () => {
  test('holds the size and the heat of its layers', () => {
    const grid = gridOf([layer, { thickness: 0.006, cells: 5, conductivity: 0.5, heatCapacity: 1e6 }], {
      low: 5,
      high: 10,
    });
    expect(grid.count).toBe(13);
    expect(grid.volumes.reduce((sum, volume) => sum + volume)).toBeCloseTo(0.026, 12);
    expect(grid.capacities.reduce((sum, one) => sum + one)).toBeCloseTo(0.02 * 2.2e6 + 0.006 * 1e6, 6);
    expect(grid.centres[8]).toBeCloseTo(0.0206, 12);
  });

  test('of a cylinder and a ball holds their size per radian and steradian', () => {
    const volume = (shape: 'cylinder' | 'sphere') =>
      gridOf([layer], { low: 0, high: 1 }, shape).volumes.reduce((sum, one) => sum + one);
    expect(volume('cylinder')).toBeCloseTo(0.02 ** 2 / 2, 12);
    expect(volume('sphere')).toBeCloseTo(0.02 ** 3 / 3, 12);
  });

  test('passes steady heat through layers and films as resistances in series', () => {
    const grid = gridOf([layer, { thickness: 0.006, cells: 5, conductivity: 0.5, heatCapacity: 1e6 }], {
      low: 5,
      high: 10,
    });
    const resistance = grid.conductances.reduce((sum, one) => sum + 1 / one, 0);
    expect(resistance).toBeCloseTo(1 / 5 + 0.02 / 0.18 + 0.006 / 0.5 + 1 / 10, 9);
  });

  test('without a film lets no heat out', () => {
    const grid = gridOf([layer], { low: 0, high: 0 });
    expect([grid.conductances[0], grid.conductances[8]]).toEqual([0, 0]);
  });
});

describe('a step', () => {
  test('keeps the heat: what is held changes by what is made less what is lost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.array(fc.double({ min: -20, max: 120, noNaN: true }), { minLength: 8, maxLength: 8 }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (seconds, start, watts) => {
          const grid = gridOf([layer], { low: 5, high: 10 });
          const conductor = conductorOf(grid);
          conductor.setStep(seconds);
          const before = Float64Array.from(start);
          const after = new Float64Array(8);
          const source = new Float64Array(8).fill(watts / 8);
          conductor.step(before, source, 20, after);
          const held = grid.capacities.reduce(
            (sum, capacity, at) => sum + capacity * ((after[at] as number) - (before[at] as number)),
            0,
          );
          const gained = watts * seconds - conductor.lost(20);
          expect(Math.abs(held - gained)).toBeLessThan(1e-8 * (Math.abs(held) + watts * seconds + 1e5));
        },
      ),
    );
  });

  test('however long, lets a body cool without swinging past the air', () => {
    for (const seconds of [900, 1e5, 1e8]) {
      const grid = gridOf([layer], { low: 5, high: 10 });
      const conductor = conductorOf(grid);
      conductor.setStep(seconds);
      const after = new Float64Array(8);
      conductor.step(new Float64Array(8).fill(60), new Float64Array(8), 20, after);
      // The method is L-stable, not monotone: it passes the air by up to a seventh of the difference, and by nothing where the step is endless.
      for (const temperature of after) expect(temperature).toBeGreaterThan(20 - (seconds > 1e6 ? 0.01 : 40 * 0.14));
      for (const temperature of after) expect(temperature).toBeLessThan(60);
    }
  });

  test('is of second order: half the step leaves a quarter of the error', () => {
    const coolTo = (steps: number) => {
      const grid = gridOf([layer], { low: 5, high: 10 });
      const conductor = conductorOf(grid);
      conductor.setStep(3000 / steps);
      let before = new Float64Array(8).fill(60);
      let after = new Float64Array(8);
      for (let step = 0; step < steps; step += 1) {
        conductor.step(before, new Float64Array(8), 20, after);
        [before, after] = [after, before];
      }
      return before[4] as number;
    };
    const exact = coolTo(4096);
    const ratio = Math.abs(coolTo(32) - exact) / Math.abs(coolTo(64) - exact);
    expect(ratio).toBeGreaterThan(3.4);
    expect(ratio).toBeLessThan(4.6);
  });
});
