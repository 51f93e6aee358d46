import { nameKey } from '../quantity/index.ts';
import { allSpecies, speciesById } from './all.ts';
import { findWoods, namesOf, usualFirst, type WoodNames } from './find-woods.ts';
import type { Species } from './types.ts';

/** Woods of the tables that a query finds; every wood for an empty one. */
export const searchSpecies = (query: string): Species[] => findWoods(allSpecies, query);

/** A lot as yards sell it, of several species: its botanical name is that of a genus. */
const isLot = ({ botanical }: WoodNames) => botanical?.endsWith(' spp.') ?? false;

/** Woods by each of their names as it is compared: their own, and the others that they bear. */
interface Named {
  own: ReadonlyMap<string, readonly Species[]>;
  others: ReadonlyMap<string, readonly Species[]>;
}

let named: Named | undefined;

/** Made once, when the first name is asked for: there are a thousand names, and a method asks for its wood in many steps. */
function woodsByName(): Named {
  named ??= {
    own: byKey(({ id, name }) => [name, id]),
    others: byKey((wood) => namesOf(wood).others),
  };
  return named;
}

function byKey(names: (wood: Species) => readonly string[]): Map<string, Species[]> {
  const woods = new Map<string, Species[]>();
  for (const wood of allSpecies) {
    for (const key of new Set(names(wood).map(nameKey))) {
      const bearers = woods.get(key);
      if (bearers) bearers.push(wood);
      else woods.set(key, [wood]);
    }
  }
  return woods;
}

/**
 * The woods that a name means.
 *
 * An id or common name means one wood. A trade or botanical name means the wood, or the mixed lot, that bears it; where several bear it,
 * all of them. A word that ends the names of several woods, such as `mahogany`, means those.
 *
 * @param text as typed
 * @returns the usual woods first; empty where no wood bears the name
 */
export function woodsNamed(text: string): readonly Species[] {
  const wanted = nameKey(text);
  if (wanted === '') return [];
  const byId = speciesById(text.trim().toLowerCase());
  if (byId) return [byId];
  const { own, others } = woodsByName();
  const owners = own.get(wanted);
  if (owners) return owners;
  const bearers = others.get(wanted) ?? [];
  const lots = bearers.filter(isLot);
  if (lots.length === 1 && bearers.length > 1) return lots;
  if (bearers.length > 0) return usualFirst(bearers);
  const kin = allSpecies.filter(({ name, tradeNames }) =>
    [name, ...tradeNames].some((each) => nameKey(each).endsWith(` ${wanted}`)),
  );
  return usualFirst(kin);
}
