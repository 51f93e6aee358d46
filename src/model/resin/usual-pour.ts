import { films, usualBase } from './base.ts';
import { classKinetics, classThermal, type Kinetics, type ThermalProperties } from './kinetics.ts';
import type { Pour } from './pour-types.ts';

/**
 * A pour as data sheets mean it and as the reference pours are: over 20 mm of hardwood in still air, the resin at the temperature of the shop.
 *
 * @param depth mm
 * @param celsius of the shop and of the resin, °C
 */
export function usualPour(kinetics: Kinetics, resin: ThermalProperties, depth: number, celsius: number): Pour {
  return {
    kinetics,
    resin,
    depth,
    base: usualBase,
    filmTop: films.still,
    filmBottom: films.under,
    shopTemperature: celsius,
    resinTemperature: celsius,
  };
}

/**
 * The same of one of the two classes of resin.
 *
 * @param depth mm
 * @param celsius of the shop and of the resin, °C
 * @param more what is otherwise: another base, moving air, a channel
 */
export const classPour = (
  kinetics: keyof typeof classKinetics,
  depth: number,
  celsius: number,
  more: Partial<Pour> = {},
): Pour => ({ ...usualPour(classKinetics[kinetics], classThermal, depth, celsius), ...more });
