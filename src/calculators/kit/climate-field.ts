import * as z from 'zod/mini';
import { type Climate, climates, climatesNamed, countryCount, searchClimates } from '../../model/moisture/climates.ts';
import { excerpt, nameKey, nearest, type Read } from '../../model/quantity/index.ts';
import { type PickOption, readField } from './fields.ts';

/** So many places are named in a message. */
const named = 6;

/**
 * Read the name of a place: its id (`duluth-mn`), its name (`Duluth, Minnesota`; `zurich`), or `own`, which is no place of
 * the tables: the reader gives readings of it. A name that several places have is an error that lists them.
 */
export function readPlace(text: string): Read<Climate | undefined> {
  const wanted = nameKey(text);
  if (wanted === 'own') return { ok: true, value: undefined };
  const found = climatesNamed(text);
  if (found.length === 1) return { ok: true, value: found[0] as Climate };
  if (found.length > 1) return severalPlaces(text, found);
  const near = nearest(
    wanted.replaceAll(' ', '-'),
    climates.map((climate) => climate.id),
  );
  const begun = wanted === '' ? [] : searchClimates(text).slice(0, named);
  const guess = begun.length > 0 ? begun.map(({ id }) => id).join(', ') : near;
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a place in the climate tables, which hold ${climates.length} places in ${countryCount} countries and territories`,
    wayOut: guess ? `Did you mean ${guess}?` : 'Pick a place with a like climate, or give your own readings.',
  };
}

function severalPlaces(text: string, found: readonly Climate[]): Read<never> {
  const shown = found.slice(0, named);
  const more = found.length > named ? ` and ${found.length - named} more` : '';
  return {
    ok: false,
    problem: `“${excerpt(text)}” fits ${found.length} places: ${shown.map(({ place }) => place).join('; ')}${more}`,
    wayOut: `Pick one of them, such as ${shown.map(({ id }) => id).join(' or ')}.`,
  };
}

/** Every place to pick from, found by its name, another name, a town near it, its state or its country. */
export const climateOptions: readonly PickOption[] = climates.map(({ id, place, country, also, near }) => ({
  value: id,
  label: place,
  detail: [
    ...(place.endsWith(country) ? [] : [country]),
    ...also,
    ...(near.length > 0 ? [`near ${near.join(', ')}`] : []),
  ].join(', '),
}));

/** A field that names a place of the climate tables. */
export function climateField(meta: {
  label: string;
  help?: string;
  group?: string;
}): z.ZodMiniType<Climate | undefined, string> {
  return readField(z.string(), readPlace, {
    ...meta,
    kind: 'climate',
    pick: climateOptions,
    examples: ['duluth-mn', 'oslo-no'],
  });
}
