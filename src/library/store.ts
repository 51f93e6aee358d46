/**
 * The open data as it lies on disk: every published table row by row, every record of a wood, a resin, a finish and a surface, and the
 * methods of the house. Runs in Node alone.
 */
export { DataError, type DataProblem, problemLine } from '../model/data/problem.ts';
export type { Table, TableColumn, TableDefinition, TableRow } from '../model/evidence/table.ts';
export { type MethodText, readCalendarTexts, readMethodTexts } from '../store/methods.ts';
export {
  abrasiveRecords,
  finishRecords,
  type RecordKind,
  readRecords,
  recordKinds,
  resinRecords,
  speciesRecords,
} from '../store/records.ts';
export { readAllTables, readTable, tableDefinitions, tableFile } from '../store/tables.ts';
