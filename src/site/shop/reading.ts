import type { ShopDefaults } from '../../calculators/kit/shop-defaults.ts';
import { shopDefaults } from '../../method/shop/defaults.ts';
import { readShop, type Shop } from '../../method/shop/index.ts';
import type { DataProblem } from '../../model/data/problem.ts';

/** A shop record of a reader, as the page shows it. */
export type ShopText =
  | { ok: true; shop: Shop; defaults: ShopDefaults; problems: readonly [] }
  | { ok: false; problems: readonly DataProblem[] };

/** Read a record as typed: what it gives, or everything wrong with it. */
export function readShopText(text: string): ShopText {
  const { shop, problems, reading } = readShop(text, 'shop.yaml');
  return shop ? { ok: true, shop, defaults: shopDefaults({ shop, reading }), problems: [] } : { ok: false, problems };
}
