import { at, stepsOfPointer } from '../pointer.ts';
import type { LimitName, Tool } from '../record/index.ts';
import type { Shop } from '../shop/index.ts';

/** What a list of the record holds, by id; a resin by what its data sheet says, as a calculator takes it. */
const byId = <T extends { id: string }>(items: readonly T[], value: (item: T) => unknown = (item) => item) =>
  Object.fromEntries(items.map((item) => [item.id, value(item)]));

/**
 * What stands in a shop record at a pointer: `/air/day`, `/air/place`, `/resins/<id>`, `/machines/<id>/limits/width`.
 *
 * @returns in canonical units; undefined where nothing stands there
 */
export function shopAt(shop: Shop, pointer: string): unknown {
  const { machines, moulds, clamps, scales, bits, resins } = shop;
  const data = {
    ...shop,
    machines: byId(machines),
    moulds: byId(moulds),
    clamps: byId(clamps),
    scales: byId(scales),
    bits: byId(bits),
    resins: byId(resins, ({ entries }) => entries),
  };
  return at(data, stepsOfPointer(pointer));
}

/** A thing of the shop that stands for a tool: how many there are, and what limits it in canonical units. */
export interface ShopTool {
  id: string;
  /** The list of the record that holds it. */
  list: 'machines' | 'moulds' | 'clamps' | 'scales' | 'bits';
  count: number;
  /** What one more costs, in the currency of the shop. */
  price?: number;
  limits: Readonly<Partial<Record<LimitName, number>>>;
}

/** Lists of the record by the kind of tool that they hold, beside the machines. */
function candidates(shop: Shop, kind: Tool['kind']): readonly ShopTool[] {
  const priced = ({ price }: { price?: number }) => (price === undefined ? {} : { price });
  switch (kind) {
    case 'mould':
      return shop.moulds.map((mould) => ({
        id: mould.id,
        list: 'moulds',
        count: mould.count,
        ...priced(mould),
        limits: {},
      }));
    case 'clamp':
      return shop.clamps.map((clamp) => ({
        id: clamp.id,
        list: 'clamps',
        count: clamp.count,
        ...priced(clamp),
        limits: {},
      }));
    case 'scale':
      return shop.scales.map(({ id, division, capacity, ...scale }) => ({
        id,
        list: 'scales',
        count: 1,
        ...priced(scale),
        limits: { division, ...(capacity === undefined ? {} : { capacity }) },
      }));
    case 'router-bit':
      return shop.bits.map(({ id, count, diameter, cuttingLength, mostTurns, ...bit }) => ({
        id,
        list: 'bits',
        count,
        ...priced(bit),
        limits: {
          diameter,
          ...(cuttingLength === undefined ? {} : { cuttingLength }),
          ...(mostTurns === undefined ? {} : { mostTurns }),
        },
      }));
    default:
      return shop.machines
        .filter((machine) => machine.kind === kind)
        .map(
          ({ id, count, limits: { collets: _collets, leastTurns: _least, disc: _disc, ...limits }, ...machine }) => ({
            id,
            list: 'machines',
            count,
            ...priced(machine),
            limits,
          }),
        );
  }
}

/** The thing of the shop that a tool of a method is: the one that it names, or the only one of its kind. */
export function shopToolOf(shop: Shop, { kind, item }: Tool): ShopTool | undefined {
  const all = candidates(shop, kind);
  if (item !== undefined) return all.find(({ id }) => id === item);
  return all.length === 1 ? all[0] : undefined;
}
