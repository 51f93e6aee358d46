import type { CheckEntry, CheckRoomEntry, CheckRow } from './data.ts';

/** Values from which a set of checks has a page of its own. */
const longSet = 60;

/** How many rows of a long comparison are shown: those with the largest differences. */
const shownOfComparison = 12;

/** Whether a set stands on a page of its own: of a comparison its room shows the largest differences alone. */
export const hasOwnPage = ({ set, values }: Pick<CheckEntry, 'set' | 'values'>): boolean =>
  set.kind === 'check' && values >= longSet;

/** The address of a set that has a page of its own. */
export const addressOfSet = (room: string, { set }: Pick<CheckEntry, 'set'>): string =>
  `/reference/checks/${room}/${set.id}`;

/** Which rows of a set stand on the page of its room. */
function shownRows(entry: CheckEntry): readonly CheckRow[] {
  const { set, rows } = entry;
  if (hasOwnPage(entry)) return rows.filter(({ verdict }) => verdict !== 'within');
  if (set.kind !== 'comparison' || rows.length <= shownOfComparison) return rows;
  return [...rows].sort((a, b) => Math.abs(b.difference) - Math.abs(a.difference)).slice(0, shownOfComparison);
}

/** A room with the rows that its own page shows, and no others. */
export const roomAsShown = (room: CheckRoomEntry): CheckRoomEntry => ({
  ...room,
  sets: room.sets.map((entry) => ({ ...entry, rows: shownRows(entry) })),
});
