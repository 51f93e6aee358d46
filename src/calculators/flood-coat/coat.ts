import { derivedBasis, type Use } from '../../model/evidence/index.ts';
import { assumed } from '../../model/resin/assumed.ts';
import { angleThatHolds, capillaryLength, puddleThickness, usualAngle, usualResin } from '../../model/resin/flood.ts';
import { mixedDensity, partsOfMass } from '../../model/resin/ratio.ts';
import { silentOn, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { Inputs } from './inputs.ts';

/** A coat as it comes to rest without a dam, beside the one that is wanted. */
export interface Coat {
  /** °, and whether it is assumed for want of one. */
  angle: number;
  unsure: boolean;
  /** N/m. */
  tension: number;
  /** kg/m³. */
  density: number;
  /** How thick it comes to rest, mm, and at the least and the greatest of the usual contact angles. */
  rest: number;
  least: number;
  most: number;
  /** mm. */
  capillary: number;
  wanted: number | undefined;
  /** Contact angle that would hold the wanted thickness, °; null where none would. */
  holding: number | null;
  /** g of liquid in a thickness in mm; undefined where the area was not given. */
  grams: ((thickness: number) => number) | undefined;
}

/** Work out the coat of some inputs. */
export function coatOf({ wantedThickness: wanted, area, ...given }: Inputs): Coat {
  const tension = given.surfaceTension ?? usualResin.surfaceTension;
  const density = given.density ?? mixDensity(given.resin) ?? usualResin.density;
  const angle = given.contactAngle ?? usualAngle.value;
  const at = (degrees: number) => puddleThickness(tension, density, degrees);
  return {
    angle,
    unsure: given.contactAngle === undefined,
    tension,
    density,
    rest: at(angle),
    least: at(usualAngle.low),
    most: at(usualAngle.high),
    capillary: capillaryLength(tension, density),
    wanted,
    holding: wanted === undefined ? null : angleThatHolds(wanted, tension, density),
    grams: area === undefined ? undefined : (thickness) => (area * thickness * density) / 1e6,
  };
}

/** kg/m³ of the mix of a resin, where its ratio and its densities are known. */
function mixDensity(resin: Resin | undefined): number | undefined {
  const { weightRatio, densityA, densityB } = resin?.figures ?? {};
  return weightRatio && densityA && densityB
    ? 1000 * mixedDensity(weightRatio.value, densityA.value, densityB.value)
    : undefined;
}

/** Cups that a mass of mix, g, takes where none holds more than the pot life is stated for; undefined where nobody states one. */
export function cupsFor(mass: number, resin: Resin): number | undefined {
  const { potLife, potLifeMass } = resin.figures;
  if (!potLife || silentOn(resin, 'potLife')) return undefined;
  return Math.max(1, Math.ceil(mass / (potLifeMass?.value ?? assumed.potLifeMass) - 1e-9));
}

/**
 * What a coat uses up: both parts where the ratio of a named resin is known, else the mix.
 *
 * @param mass of the mix, g
 * @param resin undefined where none was named
 */
export function usesOf(mass: number, resin: Resin | undefined): Use[] {
  const { weightRatio, densityA, densityB } = resin?.figures ?? {};
  if (!resin || !weightRatio || !densityA || !densityB || warIn(resin)) {
    return [{ id: 'mix', what: 'Mixed resin', amount: mass, unit: 'g', basis: 'memory' }];
  }
  const parts = partsOfMass(mass, weightRatio.value, densityA.value, densityB.value);
  const basis = derivedBasis([weightRatio.basis, densityA.basis, densityB.basis]);
  const cups = cupsFor(mass, resin);
  return [
    { id: 'part-a', what: `${resin.name}, part A`, amount: parts.massA, unit: 'g', basis },
    { id: 'part-b', what: `${resin.name}, part B`, amount: parts.massB, unit: 'g', basis },
    ...(cups === undefined
      ? []
      : [{ id: 'cups', what: 'Mixing cups', amount: cups, unit: '{count}', basis: 'derived' as const }]),
  ];
}
