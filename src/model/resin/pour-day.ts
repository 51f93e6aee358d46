import { day } from '../quantity/seconds.ts';
import { riseUpTo } from './anchor.ts';
import { dayAndNight, type History } from './history.ts';
import type { Pour } from './pour.ts';

/** A shop that is heated for a part of each day. */
export interface DayShop {
  /** By day and by night, °C. */
  warm: number;
  cool: number;
  /** Hours of the day that it is warm, above 0 and below 24. */
  warmHours: number;
}

/** A pour in such a shop, wherever in the day it begins. */
export interface DayPour {
  pour: Omit<Pour, 'depth' | 'shopTemperature' | 'resinTemperature' | 'air'>;
  shop: DayShop;
  /** Of the mixed resin, °C; undefined where it is as warm as the shop when it is poured. */
  resinTemperature: number | undefined;
}

/** The air of such a shop from a start on, in hours after the heating came on. */
export function airFrom({ warm, cool, warmHours }: DayShop, start: number): History {
  return dayAndNight({ warm, cool }, warmHours, warmHours - start);
}

/**
 * The pour as it is when it begins at a start; base and air are then as warm as the shop is.
 *
 * @param start hours after the heating came on, 0 to 24
 */
export function pouredAt({ pour, shop, resinTemperature }: DayPour, start: number): Omit<Pour, 'depth'> {
  const air = airFrom(shop, start);
  const shopTemperature = air.at(0);
  return { ...pour, air, shopTemperature, resinTemperature: resinTemperature ?? shopTemperature };
}

/** What a pour does by the hour at which it begins. */
export interface StartRise {
  /** Hours after the heating came on. */
  start: number;
  /** K above the warmest air so far, on the coarse grid. */
  rise: number;
}

/** A resin that has not set in so many days grows hot at no hour, s. */
const longestDays = 8 * day;
/** Hours between the starts that are tried, and how far off the hottest of them the worst is then sought. */
const every = 3;
const near = 1.5;

/** Rises of a pour begun at hours through the day, and the hottest of them. */
export interface RisesByStart {
  starts: readonly StartRise[];
  worst: StartRise;
}

/**
 * Rises of a pour begun at hours through the day, and the start at which it warms the most. Poured in the cold of the evening it may lie
 * unset until the heating comes on, and then run hot when nobody looks.
 *
 * No start allows a lesser depth than a shop that keeps its warmest temperature throughout, which is what a greatest depth is sought for.
 *
 * @param depth mm
 * @param most rise at which a run is given up as hot enough, K
 */
function startsOf(day: DayPour, depth: number, most: number): RisesByStart {
  const tried = new Map<number, number>();
  const at = (start: number): StartRise => {
    const hour = ((start % 24) + 24) % 24;
    const rise = tried.get(hour) ?? riseUpTo({ ...pouredAt(day, hour), depth }, most, longestDays);
    tried.set(hour, rise);
    return { start: hour, rise };
  };
  const even = Array.from({ length: 24 / every }, (_, index) => every * index);
  const starts = [...new Set([...even, day.shop.warmHours])].sort((one, other) => one - other).map(at);
  const hotter = (one: StartRise, other: StartRise) => (other.rise > one.rise ? other : one);
  const worst = starts.reduce(hotter);
  return {
    starts,
    worst: worst.rise < most ? [at(worst.start - near), at(worst.start + near)].reduce(hotter, worst) : worst,
  };
}

const known = new Map<string, RisesByStart>();
const mostKnown = 50;

/**
 * The same, kept: a dozen runs, asked again when something changes that they do not depend on, as the area of the pour.
 *
 * @param depth mm
 * @param most rise at which a run is given up as hot enough, K
 */
export function risesByStart(day: DayPour, depth: number, most: number): RisesByStart {
  const key = JSON.stringify([day, depth, most]);
  const before = known.get(key);
  if (before) return before;
  const found = startsOf(day, depth, most);
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, found);
  return found;
}
