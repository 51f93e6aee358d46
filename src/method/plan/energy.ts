import { shopToolOf } from '../case/shop.ts';
import type { WorkedMethod } from '../case/types.ts';
import type { Shop } from '../shop/index.ts';
import { roundsOf, setUpsOf } from './rounds.ts';

/**
 * Energy that the machines of a case draw, kWh: each for as long as its steps are worked on, at the power of the shop record. What has no power
 * there counts nothing.
 */
export function energyOf(worked: WorkedMethod, shop: Shop): number {
  const power = new Map(
    shop.machines.flatMap(({ id, power: kilowatts }) => (kilowatts === undefined ? [] : [[id, kilowatts] as const])),
  );
  const rounds = roundsOf(worked);
  return worked.steps.reduce((sum, { id: step, record, hands }) => {
    const minutes = hands.setUp * setUpsOf(rounds, step, worked.pieces) + hands.each * worked.pieces;
    const drawn = (record.tools ?? []).reduce((kilowatts, name) => {
      const tool = worked.tools[name];
      const id = tool && shopToolOf(shop, tool.record)?.id;
      return kilowatts + (id === undefined ? 0 : (power.get(id) ?? 0));
    }, 0);
    return sum + (minutes / 60) * drawn;
  }, 0);
}
