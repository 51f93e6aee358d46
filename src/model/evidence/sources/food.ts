import type { CslItem } from './csl.ts';

/** Rules on food contact, and papers on boards and hygiene. */
export const foodSources = [] as const satisfies readonly CslItem[];
