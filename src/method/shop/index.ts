export { type KnownPart, type ShopGap, type ShopPart, shopGaps, shopKnown } from './gaps.ts';
export { shopAim, shopConsumables, shopFees, shopGoods, shopOverhead } from './goods.ts';
export {
  type LimitName,
  limitsOf,
  type Machine,
  type MachineKind,
  machineKinds,
  machineLimits,
  machinesOf,
} from './machines.ts';
export type { Material, Overhead, Pack, People, ShopFee } from './money.ts';
export { readShop, type ShopReading } from './read.ts';
export { type Shop, type ShopResin, shopSchema } from './shop.ts';
export type { Bit, Clamp, Mould, Scale } from './tools.ts';
