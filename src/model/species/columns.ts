import type { TableColumn } from '../evidence/index.ts';

/** A column of words. */
export function text(name: string, title: string, required = true): TableColumn {
  return { name, kind: 'text', title, required };
}

/** A column of numbers, with the UCUM code of its unit. */
export function number(name: string, title: string, unit: string, required = false): TableColumn {
  return { name, kind: 'number', unit, title, required };
}

/** How a row was read. */
export const seen: TableColumn = {
  name: 'seen',
  kind: 'seen',
  title: 'How the row was read: in the work itself, in a text that repeats it, or not at all (memory)',
  required: true,
};
