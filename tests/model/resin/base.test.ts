import { describe, expect, test } from 'vitest';
import {
  baseMaterial,
  baseMaterials,
  films,
  woodConductivity,
  woodHeatCapacity,
} from '../../../src/model/resin/base.ts';
import { type Pour, runPour } from '../../../src/model/resin/pour.ts';
import { classPour } from '../../../src/model/resin/usual-pour.ts';

// Densities and conductivities of EN ISO 10077-2:2003 as a table quotes them.
describe('plastics of the standard', () => {
  test.each([
    ['hdpe', 980, 0.5],
    ['pp', 910, 0.22],
    ['pvc', 1390, 0.17],
    ['pmma', 1180, 0.18],
    ['silicone', 1200, 0.35],
  ])('%s has %d kg/m³ and %d W/(m·K)', (id, density, conductivity) => {
    const material = baseMaterial(id);
    expect(material).toMatchObject({ id, density, conductivity });
    expect(material.evidence.citation).toMatchObject({ source: 'en-iso-10077-2', seen: 'quoted' });
    // Its heat capacity is from memory, so the whole is.
    expect(material.evidence.basis).toBe('memory');
    expect(material.evidence.text).toContain(`${density} kg/m³ and ${conductivity} W/(m·K) from the table`);
  });

  test('no other material claims the standard, and none but wood is more than memory', () => {
    for (const { id, evidence } of baseMaterials) {
      if (['hardwood', 'softwood'].includes(id)) expect(evidence.basis).toBe('derived');
      else expect(evidence.basis).toBe('memory');
    }
  });
});

// Worked by hand from the handbook’s equations for G 0.60, 8 % and 25 °C.
test('wood across the grain conducts 0.1546 W/(m·K) and holds 1532 J/(kg·K)', () => {
  expect(woodConductivity(0.6, 8)).toBeCloseTo(0.1546, 4);
  expect(woodHeatCapacity(0, 25)).toBeCloseTo(1256, 0);
  expect(Math.abs(woodHeatCapacity(8, 25) - 1532)).toBeLessThan(1);
});

test('still air takes from a warm pour what a plate of 0.6 × 0.3 m gives off', () => {
  // Nu = 0.54 Ra^¼ with length area/perimeter (quoted after Incropera and DeWitt), 15 K over the room; air at 30 °C by hand.
  const length = (0.6 * 0.3) / (2 * (0.6 + 0.3));
  const rayleigh = (9.81 * 15 * length ** 3) / (303 * 1.6e-5 * 2.27e-5);
  const convection = (0.54 * rayleigh ** 0.25 * 0.0264) / length;
  const radiation = 4 * 0.92 * 5.67e-8 * 303 ** 3;
  expect(convection).toBeCloseTo(4.8, 1);
  expect(Math.abs((convection + radiation) / films.still - 1)).toBeLessThan(0.1);
});

/** Rise of a pour, as a share of that over hardwood in still air. */
function shareOf(kinetics: 'fast' | 'slow', depth: number, more: Partial<Pour>): number {
  const pour = classPour(kinetics, depth, 25);
  const changed = runPour({ ...pour, ...more });
  return changed.outcome === 'runaway' ? Number.POSITIVE_INFINITY : changed.peakRise / runPour(pour).peakRise;
}

describe.each([
  ['fast', 2.96],
  ['slow', 14],
] as const)('a %s pour of %d mm, which warms by 25 K at 25 °C', (kinetics, depth) => {
  const over = (id: string) => {
    const { density, conductivity, heatCapacity } = baseMaterial(id);
    return shareOf(kinetics, depth, { base: { thickness: 20, density, conductivity, heatCapacity } });
  };

  test('the air over it matters more than what is below', () => {
    expect([films.covered, films.still, films.moving, films.under]).toEqual([6, 10, 14, 5]);
    expect(shareOf(kinetics, depth, { filmTop: films.covered })).toBeGreaterThan(1.8);
    expect(shareOf(kinetics, depth, { filmTop: films.moving })).toBeCloseTo(0.63, 1);
  });

  test('plastics that conduct cool it in the order of their conductivity; foam is the hottest bed', () => {
    const order = ['hdpe', 'silicone', 'pp', 'hardwood', 'softwood', 'foam'].map(over);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBeLessThan(0.65);
    expect(order[5]).toBeGreaterThan(3);
  });
});
