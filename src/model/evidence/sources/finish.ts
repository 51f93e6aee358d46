import type { CslItem } from './csl.ts';

/** Oils, waxes, varnishes and what they do to moisture. */
export const finishSources = [] as const satisfies readonly CslItem[];
