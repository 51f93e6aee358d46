import MiniSearch from 'minisearch';
import { nameKey } from '../quantity/index.ts';
import { allSpecies, speciesById } from './all.ts';
import type { Species } from './types.ts';

let index: MiniSearch | undefined;

function built(): MiniSearch {
  if (index === undefined) {
    index = new MiniSearch({ fields: ['name', 'trade', 'botanical'], processTerm: (term) => nameKey(term) });
    index.addAll(
      allSpecies.map((wood) => ({
        id: wood.id,
        name: nameKey(wood.name),
        trade: wood.tradeNames.map(nameKey).join(' '),
        botanical: nameKey(wood.botanical ?? ''),
      })),
    );
  }
  return index;
}

/** Rank of the woods that a query names outright: by name, then by trade name, then by botanical name. */
function exactRank(wood: Species, query: string): number {
  if (nameKey(wood.name) === query || nameKey(wood.id) === query) return 0;
  if (wood.tradeNames.some((name) => nameKey(name) === query)) return 1;
  return nameKey(wood.botanical ?? '') === query ? 2 : 3;
}

/**
 * Find woods by common, trade or botanical name; beginnings of words and small slips of spelling count.
 *
 * @param query as typed; an empty query gives every wood
 * @returns woods, one named outright first, the likelier before the less likely
 */
export function searchSpecies(query: string): Species[] {
  const wanted = nameKey(query);
  if (wanted === '') return [...allSpecies];
  const found = built()
    .search(wanted, { prefix: true, fuzzy: 0.2, combineWith: 'AND', boost: { name: 3, trade: 2 } })
    .flatMap((hit) => speciesById(String(hit.id)) ?? []);
  return found
    .map((wood, at) => ({ wood, rank: exactRank(wood, wanted), at }))
    .sort((one, other) => one.rank - other.rank || one.at - other.at)
    .map(({ wood }) => wood);
}
