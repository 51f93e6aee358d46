import type { Seen, Table, TableRow } from '../evidence/index.ts';
import { type JoinTable, joinTables, type SpeciesRecord } from './record.ts';
import { labelColumn } from './tables.ts';

/** A table row that a record names. */
export interface JoinedRow {
  table: JoinTable;
  label: string;
  /** Line in the table's file. */
  line: number;
  /** True where the row speaks of a group of which the wood is a member. */
  group: boolean;
  cells: TableRow['cells'];
}

/** Tables of which each row is one figure or statement of a document. */
const documentTables: readonly JoinTable[] = ['other-sources', 'queensland-timber'];

/** Whether a row is one figure or statement of a document. */
export function isOfDocument(row: JoinedRow): boolean {
  return documentTables.includes(row.table);
}

/** The document of such a row: named in the row, or once for the table. */
export function documentOf(row: JoinedRow): string {
  return row.table === 'queensland-timber' ? 'Queensland Government' : (text(row, 'document') ?? '');
}

/** Text of a cell, or null where it is empty. */
export function text(row: JoinedRow, column: string): string | null {
  const value = row.cells[column];
  return typeof value === 'string' && value !== '' ? value : null;
}

/** Number in a cell, or null where nothing is printed. */
export function number(row: JoinedRow, column: string): number | null {
  const value = row.cells[column];
  return typeof value === 'number' ? value : null;
}

/** How a row, or the columns that a second mark covers, was read. */
export function seenOf(row: JoinedRow, column = 'seen'): Seen {
  return row.cells[column] as Seen;
}

/** Rows of each table by printed label; a label may have several rows. */
export type RowIndex = ReadonlyMap<JoinTable, ReadonlyMap<string, readonly TableRow[]>>;

/**
 * Index the tables by printed label.
 *
 * @param tables parsed tables by name; tables that no record can join to are passed over
 */
export function indexRows(tables: ReadonlyMap<string, Table>): RowIndex {
  return new Map(
    joinTables.map((name) => {
      const byLabel = new Map<string, TableRow[]>();
      for (const row of tables.get(name)?.rows ?? []) {
        const label = String(row.cells[labelColumn(name)]);
        byLabel.set(label, [...(byLabel.get(label) ?? []), row]);
      }
      return [name, byLabel] as const;
    }),
  );
}

/** Rows that a record names, its own before those of its groups, in the order of the tables. */
export function joinRows(record: SpeciesRecord, index: RowIndex): JoinedRow[] {
  return [record.rows, record.groupRows ?? {}].flatMap((joins, which) =>
    joinTables.flatMap((table) =>
      (joins[table] ?? []).flatMap((label) =>
        (index.get(table)?.get(label) ?? []).map(
          (row): JoinedRow => ({ table, label, line: row.line, group: which === 1, cells: row.cells }),
        ),
      ),
    ),
  );
}

/** Labels that a record names and no table has; validation reports them. */
export function missingRows(record: SpeciesRecord, index: RowIndex): { table: JoinTable; label: string }[] {
  return [record.rows, record.groupRows ?? {}].flatMap((joins) =>
    joinTables.flatMap((table) =>
      (joins[table] ?? []).filter((label) => !index.get(table)?.has(label)).map((label) => ({ table, label })),
    ),
  );
}
