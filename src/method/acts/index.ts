import type { Act } from './act.ts';
import { type ActId, actIds } from './ids.ts';

export type { Act, Hazard } from './act.ts';
export { type ActId, actIds } from './ids.ts';

/** A heading of an id: `raise-the-grain` reads `Raise the grain`. */
const labelOf = (id: string) => `${id.charAt(0).toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`;

/** Every act, in the order of the work. */
export const acts: readonly Act[] = actIds.map((id) => ({
  id,
  label: labelOf(id),
  about: labelOf(id),
  hazards: [],
  cautions: [],
  protection: [],
}));

const byId = new Map(acts.map((act) => [act.id, act]));

/** The act of an id. */
export const actOf = (id: ActId): Act => byId.get(id) as Act;
