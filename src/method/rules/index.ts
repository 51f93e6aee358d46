import type { Rule } from './rule.ts';

/** Every rule, in the order of the work; `judge.ts` asks them all. */
export const rules: readonly Rule[] = [];
