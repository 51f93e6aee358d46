import type { Act } from './act.ts';
import { finishing } from './finishing.ts';
import { handingOver } from './handing-over.ts';
import type { ActId } from './ids.ts';
import { preparing } from './preparing.ts';
import { resin } from './resin.ts';
import { shaping } from './shaping.ts';

export type { Act, Hazard } from './act.ts';
export { type ActId, actIds } from './ids.ts';

/** Acts of one part of the work. */
export interface ActGroup {
  id: string;
  title: string;
  acts: readonly Act[];
}

/** Every act by the part of the work that it belongs to, in the order of the work. */
export const actGroups: readonly ActGroup[] = [
  { id: 'preparing', title: 'Preparing the wood', acts: preparing },
  { id: 'shaping', title: 'Shaping and smoothing', acts: shaping },
  { id: 'resin', title: 'Resin', acts: resin },
  { id: 'finishing', title: 'Finish and clearing up', acts: finishing },
  { id: 'handing-over', title: 'Handing over', acts: handingOver },
];

/** Every act, in the order of the work. */
export const acts: readonly Act[] = actGroups.flatMap((group) => group.acts);

const byId = new Map(acts.map((act) => [act.id, act]));

/** Whether an act makes dust, by machine or by hand: it asks for what takes dust away. */
export const makesDust = ({ protection }: Act): boolean => protection.includes('dust-extractor');

/** The act of an id. */
export const actOf = (id: ActId): Act => byId.get(id) as Act;
