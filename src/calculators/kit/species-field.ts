import * as z from 'zod/mini';
import { excerpt, type FieldProblem, nameKey } from '../../model/quantity/index.ts';
import { allSpecies, searchSpecies, woodsNamed } from '../../model/species/index.ts';
import type { Species } from '../../model/species/types.ts';
import { usualWoods } from '../../model/species/usual.ts';
import { type PickOption, readField } from './fields.ts';

/** So many woods are named in a message. */
const named = 8;

const idsOf = (woods: readonly Species[]) => woods.slice(0, named).map(({ id }) => id);
const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/**
 * Read the name of a wood: its id (`sugar-maple`), common name (`Sugar maple`), or a trade or botanical name. A name that several
 * woods bear is an error that lists them; a name that none bears, one that lists what may be meant.
 */
export function readSpecies(text: string): { ok: true; value: Species } | ({ ok: false } & FieldProblem) {
  const woods = woodsNamed(text);
  if (woods.length === 1) return { ok: true, value: woods[0] as Species };
  if (woods.length > 1) {
    const more = woods.length > named ? `, and ${woods.length - named} others` : '';
    return {
      ok: false,
      problem: `“${excerpt(text)}” is a name of ${woods.length} woods, which differ: ${woods
        .slice(0, named)
        .map(({ name }) => name)
        .join(', ')}${more}`,
      wayOut: `Say which, such as ${listed(idsOf(woods).slice(0, 3))}; a yard can tell from its order.`,
    };
  }
  const near = idsOf(searchSpecies(text)).slice(0, 4);
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a wood in the tables`,
    wayOut:
      near.length > 0 && nameKey(text) !== ''
        ? `Did you mean ${listed(near)}?`
        : 'Find its name on the woods page, for example sugar-maple.',
  };
}

/** Place of a wood in the list: the usual ones first, the rest as they come. */
const place = (id: string) => (usualWoods.includes(id) ? usualWoods.indexOf(id) : usualWoods.length);

/** Every wood to pick from, the usual ones first, found by common, trade and botanical name. */
export const speciesOptions: readonly PickOption[] = [...allSpecies]
  .sort((one, other) => place(one.id) - place(other.id))
  .map((species) => ({
    value: species.id,
    label: species.name,
    wood: species,
    detail: [species.botanical, ...species.tradeNames].filter(Boolean).join(', '),
  }));

/** A field that names one wood of the tables. */
export function speciesField(meta: { label: string; help?: string; group?: string }): z.ZodMiniType<Species, string> {
  return readField(z.string(), readSpecies, {
    ...meta,
    kind: 'species',
    pick: speciesOptions,
    examples: ['sugar-maple', 'white-ash'],
  });
}
