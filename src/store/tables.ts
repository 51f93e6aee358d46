import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { tables as abrasiveTables } from '../model/abrasive/tables.ts';
import { parseTable, type TableReading } from '../model/data/csv.ts';
import { DataError } from '../model/data/problem.ts';
import type { Table, TableDefinition } from '../model/evidence/index.ts';
import { tables as finishTables } from '../model/finish/tables.ts';
import { tables as moistureTables } from '../model/moisture/tables.ts';
import { tables as movementTables } from '../model/movement/tables.ts';
import { tables as speciesTables } from '../model/species/tables.ts';
import { tables as stockTables } from '../model/stock/tables.ts';
import { root, shownPath } from './root.ts';

/** Every published table of every room, in the order in which they are listed. */
export const tableDefinitions: readonly TableDefinition[] = [
  ...speciesTables,
  ...moistureTables,
  ...movementTables,
  ...stockTables,
  ...abrasiveTables,
  ...finishTables,
];

/** The file of a table. */
export function tableFile(definition: TableDefinition): string {
  return join(root, 'src', 'model', definition.room, 'tables', `${definition.name}.csv`);
}

/** A table and everything wrong with its file; rows with a problem are left out. */
export function inspectTable(definition: TableDefinition): TableReading {
  const file = tableFile(definition);
  if (!existsSync(file)) {
    const message = 'the file is missing. Add it, or remove the table from its room’s tables.ts.';
    return {
      table: { definition, rows: [] },
      problems: [{ file: shownPath(file), line: 1, column: 1, field: '', message }],
      columnAt: () => 1,
    };
  }
  return parseTable(readFileSync(file, 'utf8'), definition, shownPath(file));
}

/**
 * Read one table.
 *
 * @throws DataError that lists file:line:column of everything wrong in the file
 */
export function readTable(definition: TableDefinition): Table {
  const { table, problems } = inspectTable(definition);
  if (problems.length > 0) throw new DataError(problems);
  return table;
}

/**
 * Read every table of every room, by name.
 *
 * @throws DataError that lists file:line:column of everything wrong in the files
 */
export function readAllTables(): Map<string, Table> {
  const readings = tableDefinitions.map(inspectTable);
  const problems = readings.flatMap((reading) => reading.problems);
  if (problems.length > 0) throw new DataError(problems);
  return new Map(readings.map(({ table }) => [table.definition.name, table]));
}
