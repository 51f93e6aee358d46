import type { Goods } from '../cost/index.ts';
import type { Shop } from './shop.ts';

/** How a shop is sold its materials, as a bill asks for it. */
export function shopGoods({ materials }: Pick<Shop, 'materials'>): Goods[] {
  return materials.map(({ id, name, packs, onHand, density }) => ({ id, what: name, packs, onHand, density }));
}
