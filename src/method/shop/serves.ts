import type { Goods } from '../cost/packs.ts';
import type { ToolKind, LimitName as ToolLimit } from '../record/index.ts';
import type { LimitName, Machine, MachineKind } from './machines.ts';
import type { Shop } from './shop.ts';

/** A machine or tool of the shop as a method asks for it. */
export interface ShopTool {
  id: string;
  kind: ToolKind;
  count: number;
  /** mm for lengths, /min for turns, g for a scale's division and capacity. */
  limits: Partial<Record<ToolLimit, number>>;
}

/** As which kind of tool a method asks for a machine; what no method asks for is left out. */
const toolOf: Readonly<Partial<Record<MachineKind, ToolKind>>> = {
  planer: 'planer',
  jointer: 'jointer',
  'drum-sander': 'drum-sander',
  'table-saw': 'table-saw',
  'mitre-saw': 'mitre-saw',
  'band-saw': 'band-saw',
  'router-table': 'router-table',
  'plunge-router': 'hand-router',
  'router-sled': 'router-sled',
  'drill-press': 'drill-press',
  'random-orbit-sander': 'random-orbit-sander',
  'dust-extractor': 'dust-extractor',
};

/** What a method calls a limit of a machine. */
const limitOf: Readonly<Partial<Record<LimitName, ToolLimit>>> = {
  width: 'width',
  ripWidth: 'width',
  throat: 'width',
  thickness: 'thickness',
  leastThickness: 'leastThickness',
  leastWidth: 'leastWidth',
  leastLength: 'leastLength',
  mostLength: 'length',
  disc: 'diameter',
  bitDiameter: 'diameter',
  mostTurns: 'turns',
};

const given = <Key extends string>(limits: Partial<Record<Key, number | undefined>>): Partial<Record<Key, number>> =>
  Object.fromEntries(Object.entries(limits).filter(([, value]) => value !== undefined)) as Partial<Record<Key, number>>;

function machineTool({ id, kind, count, limits }: Machine): ShopTool[] {
  const tool = toolOf[kind];
  if (!tool) return [];
  const named: Partial<Record<ToolLimit, number>> = {};
  for (const [name, value] of Object.entries(limits)) {
    const limit = limitOf[name as LimitName];
    if (limit && typeof value === 'number') named[limit] = value;
  }
  return [{ id, kind: tool, count, limits: named }];
}

/** Everything in a shop that a method may ask for as a tool, of which there is at least one. */
export function shopTools(shop: Pick<Shop, 'machines' | 'bits' | 'clamps' | 'moulds' | 'scales'>): ShopTool[] {
  const tools: ShopTool[] = [
    ...shop.machines.flatMap(machineTool),
    ...shop.bits.map(
      ({ id, count, diameter, cuttingLength, mostTurns }): ShopTool => ({
        id,
        kind: 'router-bit',
        count,
        limits: given({ diameter, cuttingLength, turns: mostTurns }),
      }),
    ),
    ...shop.clamps.map(
      ({ id, count, opening }): ShopTool => ({ id, kind: 'clamp', count, limits: given({ length: opening }) }),
    ),
    ...shop.moulds.map(
      ({ id, count, length, width, depth }): ShopTool => ({
        id,
        kind: 'mould',
        count,
        limits: given({ length, width, thickness: depth }),
      }),
    ),
    ...shop.scales.map(
      ({ id, division, capacity }): ShopTool => ({
        id,
        kind: 'scale',
        count: 1,
        limits: given({ division, capacity }),
      }),
    ),
  ];
  return tools.filter(({ count }) => count > 0);
}

/** How a shop is sold its materials, as a bill asks for it. */
export function shopGoods({ materials }: Pick<Shop, 'materials'>): Goods[] {
  return materials.map(({ id, name, packs, onHand, density }) => ({ id, what: name, packs, onHand, density }));
}
