import type { EquationRecord } from '../../model/evidence/index.ts';
import * as finish from '../../model/finish/equations.ts';
import * as moisture from '../../model/moisture/index.ts';
import * as movement from '../../model/movement/equations.ts';
import * as resin from '../../model/resin/equations.ts';
import * as species from '../../model/species/equations.ts';
import * as stock from '../../model/stock/equations.ts';

/** Rooms of the model in the order in which the Equations page shows them. */
const rooms: readonly object[] = [movement, species, moisture, stock, resin, finish];

function hasRecord(value: unknown): value is { record: EquationRecord } {
  return typeof value === 'function' && 'record' in value;
}

/** The record of every equation that a room gives out: an equation is listed because it is used, not because somebody remembered. */
export const equations: readonly EquationRecord[] = [
  ...new Map(
    rooms
      .flatMap((room) => Object.values(room).flat() as unknown[])
      .filter(hasRecord)
      .map(({ record }) => [record.id, record]),
  ).values(),
];
