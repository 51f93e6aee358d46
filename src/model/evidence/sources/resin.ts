import type { CslItem } from './csl.ts';

/** Kinetics, heat and handling of casting and coating resins. */
export const resinSources = [] as const satisfies readonly CslItem[];
