import * as z from 'zod/mini';
import { type Climate, climateById, climates } from '../../model/moisture/index.ts';
import { nameKey } from '../../model/quantity/index.ts';
import { nearest } from './answer.ts';
import { excerpt, type FieldProblem, readField } from './fields.ts';

/** A place of the climate tables, or `own` where the reader gives readings of the place. */
export type Place = Climate | 'own';

/** Read the name of a place: its id (`duluth-mn`), its name (`Duluth, Minnesota`), or `own`. */
export function readPlace(text: string): { ok: true; value: Place } | ({ ok: false } & FieldProblem) {
  const wanted = nameKey(text);
  if (wanted === 'own') return { ok: true, value: 'own' };
  const found = climateById(text.trim().toLowerCase()) ?? climates.find((climate) => nameKey(climate.place) === wanted);
  if (found) return { ok: true, value: found };
  const near = nearest(
    wanted.replaceAll(' ', '-'),
    climates.map((climate) => climate.id),
  );
  return {
    ok: false,
    problem: `“${excerpt(text)}” is not a place in the climate tables, which hold ${climates.length} places of the United States and Canada`,
    wayOut: near ? `Did you mean ${near}?` : 'Pick a place with a like climate, or give your own readings.',
  };
}

/** A field that names a place of the climate tables. */
export function climateField(meta: { label: string; help?: string; group?: string }): z.ZodMiniType<Place, string> {
  return readField(z.string(), readPlace, { ...meta, kind: 'climate', examples: ['duluth-mn', 'minneapolis-mn'] });
}
