export type { Amount } from './fields.ts';
export { type LimitName, type Machine, type MachineKind, machineKinds, machineLimits, machinesOf } from './machines.ts';
export type { Material, Overhead, Pack, People, ShopFee } from './money.ts';
export { readShop, type ShopReading, shopAsWritten } from './read.ts';
export { type ShopTool, shopGoods, shopTools } from './serves.ts';
export { type Shop, type ShopResin, shopSchema } from './shop.ts';
export type { Bit, Clamp, Mould, Scale } from './tools.ts';
