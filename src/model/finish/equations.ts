import { moistureExcluding } from './excluding-fit.ts';
import { slabResponse } from './slab.ts';

/** Every equation of the room, for the Equations page. */
export const equations = [moistureExcluding, slabResponse] as const;
