import { readPlace } from '../../calculators/kit/climate-field.ts';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import type { Climate } from '../../model/moisture/climates.ts';
import { parseReadings, type ReadingsRead } from '../../model/moisture/index.ts';
import type { Shop } from './shop.ts';

/**
 * The place of the climate tables that a shop names. This loads the tables: import it from here, never through the index.
 *
 * @returns undefined where the shop names none; an error for `air.place` with the nearest name where the tables do not have it
 */
export function shopClimate({ air }: Pick<Shop, 'air'>): Outcome<Climate | undefined> {
  if (air?.place === undefined) return answer(undefined);
  const read = readPlace(air.place);
  return read.ok ? answer(read.value) : refuse('air.place', read.problem, read.wayOut);
}

/** The shop's own readings of its air: undefined where it has none; an error for `air.readings` where they cannot be read. */
export function shopReadings({ air }: Pick<Shop, 'air'>): Outcome<ReadingsRead | undefined> {
  if (air?.readings === undefined) return answer(undefined);
  const read = parseReadings(air.readings);
  return read.ok ? read : { ok: false, errors: read.errors.map(({ message }) => ({ field: 'air.readings', message })) };
}
