import type { TableDefinition } from '../evidence/index.ts';

/** Published tables of this room: none. What it needs stands in the tables of species. */
export const tables: readonly TableDefinition[] = [];
