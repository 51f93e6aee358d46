import type { Aim, Fee, Goods, OverheadRate } from '../cost/index.ts';
import type { Shop } from './shop.ts';

/** A share in percent as a share of one, without the noise of the division: 2.7 % is 0.027. */
const ofOne = (percent: number): number => Number((percent / 100).toPrecision(12));

/** How a shop is sold its materials, as a bill asks for it. */
export function shopGoods({ materials }: Pick<Shop, 'materials'>): Goods[] {
  return materials.map(({ id, name, packs, onHand, density }) => ({ id, what: name, packs, onHand, density }));
}

/** Ids of the goods that are worn out or thrown away: a price counts them apart from materials. */
export function shopConsumables({ materials }: Pick<Shop, 'materials'>): ReadonlySet<string> {
  return new Set(materials.filter(({ consumable }) => consumable).map(({ id }) => id));
}

/** What a market, a card or a gallery keeps, as a price asks for it: shares of one, not percent. */
export function shopFees({ fees }: Pick<Shop, 'fees'>): Fee[] {
  return fees.map(({ id, name, percent, fixed, per }) => ({
    id,
    what: name ?? id,
    per,
    ...(percent === undefined ? {} : { share: ofOne(percent) }),
    ...(fixed === undefined ? {} : { fixed }),
  }));
}

/** Overhead as a price asks for it, hours in h; undefined where the shop states none. */
export function shopOverhead({ overhead }: Pick<Shop, 'overhead'>): OverheadRate | undefined {
  if (overhead?.perHour !== undefined) return { perHour: overhead.perHour };
  if (overhead?.perMonth === undefined || overhead.hoursPerMonth === undefined) return undefined;
  return { perMonth: overhead.perMonth, hoursPerMonth: overhead.hoursPerMonth / 3600 };
}

/** How the shop sets its prices; undefined where it states neither a margin nor a mark-up. */
export function shopAim({ margin, markup }: Pick<Shop, 'margin' | 'markup'>): Aim | undefined {
  if (margin !== undefined) return { margin: ofOne(margin) };
  return markup === undefined ? undefined : { markup: ofOne(markup) };
}
