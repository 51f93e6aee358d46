import type { RawInputs } from '../../calculators/kit/calculator.ts';
import type { ShopDefaults } from '../../calculators/kit/read-shop-defaults.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import type { MachineLimits } from '../../model/stock/machines.ts';
import { at } from '../pointer.ts';
import type { MachineKind } from './machines.ts';
import type { ShopReading } from './read.ts';
import type { Shop } from './shop.ts';

/** A text or a number of the record as somebody wrote it. */
const written = (data: unknown, ...path: readonly (string | number)[]): string | undefined => {
  const value = at(data, path.map(String));
  return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;
};

type Texts = Readonly<Record<string, string | undefined>>;

/** What was written, and nothing else. */
const given = (texts: Texts): RawInputs =>
  Object.fromEntries(Object.entries(texts).filter((entry): entry is [string, string] => entry[1] !== undefined));

/** The widest machine of a kind: the one that a board is taken to. Its place in the record. */
function widest({ machines }: Shop, kind: MachineKind): number | undefined {
  let best: number | undefined;
  for (const [place, machine] of machines.entries()) {
    if (machine.kind !== kind || machine.count < 1 || machine.limits.width === undefined) continue;
    if (best === undefined || machine.limits.width > (machines[best]?.limits.width ?? 0)) best = place;
  }
  return best;
}

const machineFields: Readonly<Record<keyof MachineLimits & string, readonly [MachineKind, string]>> = {
  jointerWidth: ['jointer', 'width'],
  jointerLeastLength: ['jointer', 'leastLength'],
  jointerLeastThickness: ['jointer', 'leastThickness'],
  planerWidth: ['planer', 'width'],
  planerLeastLength: ['planer', 'leastLength'],
  planerLeastThickness: ['planer', 'leastThickness'],
};

function machineTexts(shop: Shop, data: unknown): Texts {
  return Object.fromEntries(
    Object.entries(machineFields).map(([field, [kind, limit]]) => {
      const place = widest(shop, kind);
      return [field, place === undefined ? undefined : written(data, 'machines', place, 'limits', limit)];
    }),
  );
}

/** The scale on which a mix is weighed: the one that carries most; of scales that do not say, the coarsest, which promises least. */
function scaleText({ scales }: Shop, data: unknown): string | undefined {
  const ranked = scales
    .map(({ division, capacity = 0 }, place) => ({ division, capacity, place }))
    .sort((one, other) => other.capacity - one.capacity || other.division - one.division);
  const [first] = ranked;
  return first && written(data, 'scales', first.place, 'division');
}

/**
 * What calculators begin with of a shop record, as it was written there.
 *
 * A resin is taken only where the shop has one alone: which of several is poured, nobody but the maker knows.
 *
 * @param read a record without problems
 */
export function shopDefaults({ shop, reading }: Pick<ShopReading, 'reading'> & { shop: Shop }): ShopDefaults {
  const { data } = reading;
  const [resin, another] = shop.resins;
  const sheet = resin && !another ? JSON.stringify(resin.entries) : undefined;
  const [day, night, humidity] = ['day', 'night', 'humidity'].map((name) => written(data, 'air', name));
  const air: Texts =
    day !== undefined && night !== undefined
      ? { dayTemperature: day, nightTemperature: night }
      : { shopTemperature: day };
  const place: Texts = shop.air?.readings === undefined ? { place: shop.air?.place } : { readings: shop.air.readings };
  const drawer = shop.grits.length > 0 ? shop.grits.map((_, at) => written(data, 'grits', at)).join(', ') : undefined;
  const byCalculator: Readonly<Partial<Record<CalculatorId, Texts>>> = {
    'seasonal-movement': { ...place, shopTemperature: day, shopHumidity: humidity },
    'finish-and-moisture': place,
    acclimatise: { temperature: day, relativeHumidity: humidity },
    'flatten-plan': machineTexts(shop, data),
    'grit-sequence': { drawer },
    'resin-dose': { resin: sheet, shopTemperature: day, scaleDivision: scaleText(shop, data) },
    'pour-heat': { resin: sheet, ...air },
    'working-time': { resin: sheet, shopTemperature: day },
    'cure-clock': { resin: sheet, ...air },
    'flood-coat': { resin: sheet, shopTemperature: day },
    'food-contact': { resin: sheet, roomTemperature: day, nightTemperature: night },
    'care-card': { resin: sheet, roomTemperature: day, nightTemperature: night, shop: shop.name },
  };
  const inputs = Object.entries(byCalculator).map(([id, texts]) => [id, given(texts)] as const);
  return { shop: shop.name, inputs: Object.fromEntries(inputs.filter(([, texts]) => Object.keys(texts).length > 0)) };
}
