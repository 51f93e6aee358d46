export { DataError, type DataProblem, problemLine } from '../model/data/problem.ts';
export { type MethodText, readCalendarTexts, readMethodTexts } from './methods.ts';
export {
  abrasiveRecords,
  finishRecords,
  inspectRecord,
  inspectRecords,
  type RecordKind,
  type RecordReading,
  readRecords,
  recordFolder,
  recordKinds,
  resinRecords,
  speciesRecords,
} from './records.ts';
export { root, shownPath } from './root.ts';
export {
  colourSheet,
  readSite,
  readSiteShop,
  readSiteShopText,
  readSiteText,
  type Site,
  siteFile,
  siteShopFile,
} from './site/site.ts';
export { inspectTable, readAllTables, readTable, tableDefinitions, tableFile } from './tables.ts';
