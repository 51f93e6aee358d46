import { answer, type EvidenceNote, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type Pour, runawayTemperature } from '../../model/resin/pour.ts';
import { type DayPour, type DayShop, pouredAt, risesByStart, type StartRise } from '../../model/resin/pour-day.ts';
import type { AirOfShop } from '../../model/resin/shop-air.ts';
import type { Inputs } from './inputs.ts';
import type { Setting } from './setting.ts';

/** Hours of warmth a day where none are given. */
const usualWarmHours = 10;

/** How the temperature of the shop goes: even, or warm for a part of each day. */
export type ShopAir = { even: number } | { day: DayShop; start: number | undefined };

/** A pour in a shop that is warm for a part of each day, at the hours at which it may begin. */
export interface DayOfPour {
  shop: DayShop;
  /** Hours after the heating comes on at which it is poured. */
  start: number;
  /** True where the reader gave that, false where the worst was taken. */
  asked: boolean;
  starts: readonly StartRise[];
  worst: StartRise;
  /** A rise of this or more is a runaway, K. */
  most: number;
}

/** What the reader said of the temperature of the shop, in one of two ways. */
export function shopAirOf(inputs: Inputs): Outcome<ShopAir> {
  const { shopTemperature, dayTemperature, nightTemperature, warmHours, pouredAfter } = inputs;
  if (shopTemperature !== undefined) return answer({ even: shopTemperature });
  if (dayTemperature === undefined || nightTemperature === undefined) {
    return refuse(
      'shopTemperature',
      'Nothing was said of the temperature of the shop',
      `Give it, such as ${amount(20, 'Cel')}, or that of day and night.`,
    );
  }
  const hours = warmHours === undefined ? usualWarmHours : warmHours / 3600;
  return answer({
    day: { warm: dayTemperature, cool: nightTemperature, warmHours: hours },
    start: pouredAfter === undefined ? undefined : (pouredAfter / 3600) % 24,
  });
}

/**
 * The pour in that air. Where it changes and no hour was given, the pour begins at the hour at which it grows hottest.
 *
 * @param still the pour in air that keeps still
 * @param resinTemperature of the mix, where it was given, °C
 */
export function inAir(
  still: Omit<Pour, 'shopTemperature' | 'resinTemperature' | 'air'>,
  air: ShopAir,
  resinTemperature: number | undefined,
): { pour: Pour; day: DayOfPour | undefined } {
  if ('even' in air) {
    const even = { shopTemperature: air.even, resinTemperature: resinTemperature ?? air.even };
    return { pour: { ...still, ...even }, day: undefined };
  }
  const { depth, ...anyDepth } = still;
  const dayPour: DayPour = { pour: anyDepth, shop: air.day, resinTemperature };
  const most = runawayTemperature - Math.max(air.day.warm, air.day.cool);
  const { starts, worst } = risesByStart(dayPour, depth, most);
  const start = air.start ?? worst.start;
  return {
    pour: { ...pouredAt(dayPour, start), depth },
    day: { shop: air.day, start, asked: air.start !== undefined, starts, worst, most },
  };
}

/** The same pour in a shop that keeps its warmest temperature throughout: no hour of pouring allows less depth. */
export function keptWarm({ air, ...pour }: Pour, resinTemperature: number | undefined): Pour {
  const warmest = air?.highest ?? pour.shopTemperature;
  return { ...pour, shopTemperature: warmest, resinTemperature: resinTemperature ?? warmest };
}

/** Coldest and warmest that the air becomes, °C. */
export const coldestOf = ({ air, shopTemperature }: Pour): number => air?.lowest ?? shopTemperature;
export const warmestOf = ({ air, shopTemperature }: Pour): number => air?.highest ?? shopTemperature;

/** The air of the shop, as what is said of it takes it. */
export const airOf = ({ pour, day }: Pick<Setting, 'pour' | 'day'>): AirOfShop => ({
  lowest: coldestOf(pour),
  highest: warmestOf(pour),
  ...(day ? { day: day.shop.warm, night: day.shop.cool } : {}),
});

/** The temperature of the shop in a sentence, after `at`. */
export function shopInWords(pour: Pour): string {
  const [coldest, warmest] = [coldestOf(pour), warmestOf(pour)];
  return coldest === warmest
    ? amount(coldest, 'Cel')
    : `${amount(coldest, 'Cel')} by night and ${amount(warmest, 'Cel')} by day`;
}

/** When in the day it is poured. */
export const startInWords = (start: number): string =>
  start === 0 ? 'as the heating comes on' : `${amount(3600 * start, 's', 2)} after the heating comes on`;

/** True where the reader named an hour, and another would take the pour outside the sheet. */
export function hourMatters({ day, anchor }: Pick<Setting, 'day' | 'anchor'>): boolean {
  return (day?.asked ?? false) && anchor !== undefined && (day?.worst.rise ?? 0) > anchor.coarseRise;
}

/** Where the air of the run comes from; nothing to say of an even one. */
export function airEvidence(day: DayOfPour | undefined): EvidenceNote[] {
  if (!day) return [];
  const { warm, cool, warmHours } = day.shop;
  return [
    {
      text: `The shop is taken to change over at once, every day alike: ${amount(warm, 'Cel')} for ${amount(3600 * warmHours, 's')} and ${amount(cool, 'Cel')} for the rest; poured ${startInWords(day.start)}${day.asked ? '' : ', the worst of the hours tried'}. Base and wood are then as warm as the air.`,
      basis: 'derived',
    },
  ];
}
