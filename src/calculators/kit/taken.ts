/** All that takes an answer away as a file: a page fetches it when it is asked for, and not before. */
export { byteOrderMark, csvOf } from './csv.ts';
export { spreadsheetOf } from './spreadsheet.ts';
export { takenName, takenTables } from './take-away.ts';
