import type { Caution } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';

/** Below this most sheets say no, °C; common practice. */
export const coldShop = 15;
/** Above this most sheets say no, °C; from memory. */
export const hotShop = 30;

/** How cold and how warm the air of a shop becomes, °C, and both ends of a day where they were given. */
export interface AirOfShop {
  lowest: number;
  highest: number;
  day?: number | undefined;
  night?: number | undefined;
}

/** The air of a shop that keeps one temperature, °C. */
export const steadyAir = (celsius: number): AirOfShop => ({ lowest: celsius, highest: celsius });

/**
 * What must be said of the air of a shop in which resin is mixed, poured or cures: that it is too cold, too hot, or both, and that a night
 * is given as warmer than the day. It is the one place that judges it, so that all who ask for a shop say the same.
 *
 * @param pour true of a pour whose depth was worked out for this air: warmed once it lies, it would be too deep
 */
export function shopAirCautions(air: AirOfShop, pour = false): Caution[] {
  const { lowest, highest, day, night } = air;
  const cold = lowest < coldShop;
  const hot = highest > hotShop;
  const changes = highest > lowest;
  return [
    ...(day !== undefined && night !== undefined && night > day
      ? [
          {
            id: 'night-warmer',
            level: 'warning',
            own: true,
            text: `Look at both temperatures: by night ${amount(night, 'Cel')}, warmer than the ${amount(day, 'Cel')} by day.`,
            why: 'Nights are colder in nearly every shop. It is worked out as it stands, which is right only for a shop that is heated at night.',
            basis: 'derived',
          } as const,
        ]
      : []),
    ...(cold
      ? [
          {
            id: 'cold-shop',
            level: 'warning',
            own: true,
            text: `Warm the shop${hot && changes ? ' where it is cold' : ', day and night,'} before you mix: below about ${amount(coldShop, 'Cel')} most sheets say no.`,
            why: `Cold resin thickens and holds its bubbles, a damp waxy blush forms on it that the next coat does not hold to, and the cure stalls.${pour ? ' Never warm it once the pour lies: then it would be too deep.' : ''}`,
            basis: 'shop-practice',
          } as const,
        ]
      : []),
    ...(hot
      ? [
          {
            id: 'hot-shop',
            level: 'warning',
            own: true,
            text: `Cool the shop${changes ? ' where it is hot' : ''}, or wait for a cooler day, before you mix: above about ${amount(hotShop, 'Cel')} most sheets say no.`,
            why: 'Warm resin gels early in the cup and on the board, heats itself further, and shuts the recoat window sooner than a sheet says.',
            basis: 'memory',
          } as const,
        ]
      : []),
  ];
}
