import { type CompactWoods, restoreSpecies } from './compact.ts';
import resolved from './resolved.json' with { type: 'json' };
import type { Species } from './types.ts';

/** Every wood with its figures resolved, in order of name. */
export const allSpecies: readonly Species[] = restoreSpecies(resolved as unknown as CompactWoods);

const byId = new Map(allSpecies.map((wood) => [wood.id, wood]));

/** The wood with this id, for example `sugar-maple`, or undefined. */
export function speciesById(id: string): Species | undefined {
  return byId.get(id);
}
