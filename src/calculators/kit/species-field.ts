import * as z from 'zod/mini';
import { nameKey } from '../../model/quantity/index.ts';
import { allSpecies, speciesById } from '../../model/species/index.ts';
import type { Species } from '../../model/species/types.ts';
import { nearest } from './answer.ts';
import { excerpt, type FieldProblem, readField } from './fields.ts';

let names: Map<string, Species> | undefined;

/** Every name under which a wood can be entered: id, common name and, where only one wood bears it, trade or botanical name. */
function speciesNames(): Map<string, Species> {
  if (names) return names;
  const shared = new Map<string, Species | null>();
  for (const species of allSpecies) {
    for (const name of [...species.tradeNames, ...(species.botanical ? [species.botanical] : [])]) {
      const key = nameKey(name);
      shared.set(key, shared.has(key) && shared.get(key) !== species ? null : species);
    }
  }
  names = new Map([...shared].filter((entry): entry is [string, Species] => entry[1] !== null));
  for (const species of allSpecies) {
    names.set(nameKey(species.name), species);
    names.set(nameKey(species.id), species);
  }
  return names;
}

/**
 * Read the name of a wood: its id (`sugar-maple`), common name (`Sugar maple`) or a trade or botanical name that only one wood bears.
 */
export function readSpecies(text: string): { ok: true; value: Species } | ({ ok: false } & FieldProblem) {
  const found = speciesById(text.trim().toLowerCase()) ?? speciesNames().get(nameKey(text));
  if (found) return { ok: true, value: found };
  const near = nearest(
    nameKey(text).replaceAll(' ', '-'),
    allSpecies.map((species) => species.id),
  );
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a wood in the tables`,
    wayOut: near ? `Did you mean ${near}?` : 'Find its name on the woods page, for example sugar-maple.',
  };
}

/** A field that names one wood of the tables. */
export function speciesField(meta: { label: string; help?: string; group?: string }): z.ZodMiniType<Species, string> {
  return readField(z.string(), readSpecies, { ...meta, kind: 'species', examples: ['sugar-maple', 'white-ash'] });
}
