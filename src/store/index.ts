export { DataError, type DataProblem, problemLine } from '../model/data/problem.ts';
export { root, shownPath } from './root.ts';
export {
  inspectSpeciesRecord,
  inspectSpeciesRecords,
  readSpeciesRecords,
  type SpeciesRecordReading,
  speciesRecordFolder,
} from './species-records.ts';
export { inspectTable, readAllTables, readTable, tableDefinitions, tableFile } from './tables.ts';
