import type { SourceId } from './sources/index.ts';

/** A column of a table file: its name in the header row, its kind, its unit and what it holds. */
export interface TableColumn {
  name: string;
  kind: 'text' | 'number' | 'seen';
  /** UCUM code of a number column; absent where the row itself names its unit. */
  unit?: string;
  title: string;
  /** False where a cell may be empty, which means 'not published'. */
  required: boolean;
}

/** Terms under which the figures of a table may be passed on, where its document sets some. */
export interface TableTerms {
  /** Short name of the licence, as lists of licences write it. */
  licence: 'CC-BY-4.0' | 'CC-BY-SA-4.0';
  /** Whose figures they are, in the words in which the source asks to be named, and what was done to them. */
  credit: string;
  /** How the terms are known. */
  known: string;
}

/** Name and address of each licence. */
export const licences: Readonly<Record<TableTerms['licence'], { title: string; address: string }>> = {
  'CC-BY-4.0': {
    title: 'Creative Commons Attribution 4.0 International',
    address: 'https://creativecommons.org/licenses/by/4.0/',
  },
  'CC-BY-SA-4.0': {
    title: 'Creative Commons Attribution-ShareAlike 4.0 International',
    address: 'https://creativecommons.org/licenses/by-sa/4.0/',
  },
};

/** What a table file is: its file, the source and table number it transcribes, and its columns in order. */
export interface TableDefinition {
  /** Stable name: the file is `<name>.csv` in the room's `tables` folder. */
  name: string;
  /** Room of the model that owns the file. */
  room: 'species' | 'moisture' | 'movement' | 'stock' | 'abrasive' | 'finish';
  title: string;
  /** The work transcribed, and where in it; absent where each row names its own. */
  source?: SourceId;
  locator?: string;
  /** Terms of the figures; absent where they are facts in which no right is claimed. */
  terms?: TableTerms;
  /** Footnotes that change the meaning of the figures, and doubts about them. */
  notes: readonly string[];
  columns: readonly TableColumn[];
}

/** A row as read: text trimmed, numbers parsed, an empty cell null. `line` is its line in the file, the header being 1. */
export interface TableRow {
  line: number;
  cells: Readonly<Record<string, string | number | null>>;
}

/** A published table as read: what it is, and its rows. */
export interface Table {
  definition: TableDefinition;
  rows: readonly TableRow[];
}
