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
  /** Terms under which the file is given away, where they are not those of the other tables. */
  terms?: {
    /** SPDX identifier of the licence. */
    id: string;
    title: string;
    /** What the terms ask, in plain words. */
    text: string;
  };
  /** Footnotes that change the meaning of the figures, and doubts about them. */
  notes: readonly string[];
  columns: readonly TableColumn[];
}

/** A row as read: text trimmed, numbers parsed, an empty cell null. `line` is its line in the file, the header being 1. */
export interface TableRow {
  line: number;
  cells: Readonly<Record<string, string | number | null>>;
}

export interface Table {
  definition: TableDefinition;
  rows: readonly TableRow[];
}
