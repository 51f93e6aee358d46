import type { Act } from './act.ts';
import { finishing } from './finishing.ts';
import { handingOver } from './handing-over.ts';
import type { ActId } from './ids.ts';
import { preparing } from './preparing.ts';
import { resin } from './resin.ts';
import { shaping } from './shaping.ts';

export type { Act, Hazard } from './act.ts';
export { type ActId, actIds } from './ids.ts';

/** Every act, in the order of the work. */
export const acts: readonly Act[] = [...preparing, ...shaping, ...resin, ...finishing, ...handingOver];

const byId = new Map(acts.map((act) => [act.id, act]));

/** The act of an id. */
export const actOf = (id: ActId): Act => byId.get(id) as Act;
