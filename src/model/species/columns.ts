import type { TableColumn } from '../evidence/index.ts';

/** A column of words. */
export function text(name: string, title: string, required = true): TableColumn {
  return { name, kind: 'text', title, required };
}

/** A column of numbers, with the UCUM code of its unit. */
export function number(name: string, title: string, unit: string, required = false): TableColumn {
  return { name, kind: 'number', unit, title, required };
}

/** Year of the edition in which a row, or some of its columns, is so printed. */
export function edition(name = 'edition', of = 'the row'): TableColumn {
  return text(name, `Edition of the handbook in which ${of} was read, or is remembered from`);
}

/** How a row was read. */
export const seen: TableColumn = {
  name: 'seen',
  kind: 'seen',
  title: 'How the row was read: in the work itself, in a text that repeats it, or not at all (memory)',
  required: true,
};
