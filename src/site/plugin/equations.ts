import type { EquationRecord } from '../../model/evidence/index.ts';
import * as finish from '../../model/finish/equations.ts';
import * as moisture from '../../model/moisture/index.ts';
import * as movement from '../../model/movement/equations.ts';
import * as resin from '../../model/resin/equations.ts';
import * as species from '../../model/species/equations.ts';
import * as stock from '../../model/stock/equations.ts';

/** Rooms of the model in the order in which the pages of the equations show them. */
const rooms: readonly { id: string; title: string; holds: object }[] = [
  { id: 'movement', title: 'Movement', holds: movement },
  { id: 'woods', title: 'Woods', holds: species },
  { id: 'moisture', title: 'Moisture and air', holds: moisture },
  { id: 'stock', title: 'Stock and machines', holds: stock },
  { id: 'resin', title: 'Resin', holds: resin },
  { id: 'finishes', title: 'Finishes', holds: finish },
];

function hasRecord(value: unknown): value is { record: EquationRecord } {
  return typeof value === 'function' && 'record' in value;
}

/** The equations of a room, none of them of another. */
export interface RoomOfEquations {
  id: string;
  title: string;
  equations: readonly EquationRecord[];
}

/**
 * The record of every equation that a room gives out: an equation is listed because it is used, not because somebody remembered. What several
 * rooms give out stands in the first.
 */
export const equationRooms: readonly RoomOfEquations[] = (() => {
  const listed = new Set<string>();
  return rooms.map(({ id, title, holds }) => {
    const records = (Object.values(holds).flat() as unknown[]).filter(hasRecord).map(({ record }) => record);
    const own = [...new Map(records.map((record) => [record.id, record])).values()].filter(
      (one) => !listed.has(one.id),
    );
    for (const record of own) listed.add(record.id);
    return { id, title, equations: own };
  });
})();
