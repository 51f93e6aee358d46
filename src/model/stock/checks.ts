import type { CheckSet } from '../evidence/index.ts';
import { cutterChecks } from './cutter-checks.ts';
import { flattenChecks } from './flatten-checks.ts';
import { lumberChecks } from './lumber-checks.ts';

/** Values that this room must reproduce: published ones of lumber, and workings by hand of flattening and cutters. */
export const checks: readonly CheckSet[] = [...lumberChecks, ...flattenChecks, ...cutterChecks];
