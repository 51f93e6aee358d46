import type {
  CheckCounts,
  CheckSet,
  Citation,
  CslItem,
  EquationRecord,
  Figure,
  TableDefinition,
} from '../../model/evidence/index.ts';

/** An element of a typeset formula: its name, its properties as React names them, and what stands in it. */
export type FormulaElement = [
  name: string,
  properties: Record<string, string | Record<string, string>>,
  ...parts: FormulaNode[],
];
export type FormulaNode = string | FormulaElement;

/** An equation with its formula set by KaTeX when the site was built, so that no page loads the typesetter. */
export interface EquationEntry {
  record: EquationRecord;
  formula: readonly FormulaNode[];
  symbols: readonly { tex: string; formula: readonly FormulaNode[]; meaning: string; unit: string }[];
}

/** The equations of one room of the model. */
export interface EquationsRoomEntry {
  id: string;
  title: string;
  equations: readonly EquationEntry[];
}

/** A part of a long list, whose entries stand on a page of their own, as the list shows it. */
export interface PartSummary {
  id: string;
  title: string;
  entries: readonly PartedEntry[];
}

/** An entry of a long list: its anchor on the page of its part, and its name. */
export interface PartedEntry {
  id: string;
  title: string;
  /** Anchors of what stands in it on that page, and had addresses in the list before it was parted. */
  within?: readonly string[];
}

/** The sources of one subject. */
export interface SourcesEntry {
  id: string;
  title: string;
  sources: readonly CslItem[];
}

export interface CheckRow {
  id: string;
  what: string;
  published: number;
  ours: number;
  difference: number;
  tolerance: number;
  reason: string;
  unit: string;
  citation: Citation;
  verdict: 'within' | 'known difference' | 'fails' | 'compared';
  /** Why a known difference is there. */
  exception?: string;
}

export interface CheckEntry {
  set: Pick<CheckSet, 'id' | 'title' | 'kind' | 'about'>;
  /** How many values it has; the page of its room may show fewer rows. */
  values: number;
  rows: readonly CheckRow[];
  failures: number;
  exceptions: number;
  worst: number | null;
  /** Of its values, how many stand in a source; the others are our own by another road. */
  published: number;
}

/** The checks of one part of the work, as its page shows them. */
export interface CheckRoomEntry {
  id: string;
  title: string;
  counts: CheckCounts;
  sets: readonly CheckEntry[];
}

/** A room as the page of all checks lists it. */
export interface CheckRoomSummary extends Omit<CheckRoomEntry, 'sets'> {
  sets: readonly Omit<CheckEntry, 'rows'>[];
}

/** All checks: what they come to, and where each stands. */
export interface ChecksSummary {
  counts: CheckCounts;
  rooms: readonly CheckRoomSummary[];
}

/** A table as its page shows it. */
/** A page of a long table: its number from 1, which row of the table is its first, what stands in its first row and its last, and how many rows it holds. */
export interface TablePart {
  part: number;
  from: number;
  first: string;
  last: string;
  rows: number;
}

/** A table, or the part of a long one that stands on one page. */
export interface TableEntry {
  definition: TableDefinition;
  part: number;
  parts: readonly TablePart[];
  rows: readonly { line: number; cells: Readonly<Record<string, string | number | null>> }[];
}

export interface TableSummary {
  name: string;
  title: string;
  locator?: string;
  source?: string;
  rows: number;
  seen: Readonly<Record<'source-text' | 'quoted' | 'memory', number>>;
}

/** How the figures of all woods are known. */
export interface EvidenceCount {
  name: string;
  label: string;
  published: number;
  derived: number;
  memory: number;
  none: number;
}

export interface EvidenceEntry {
  woods: number;
  counts: readonly EvidenceCount[];
  /** Woods with figures from memory, each with the places to look them up. */
  toCheck: readonly {
    id: string;
    name: string;
    figures: readonly Pick<Figure, 'label' | 'value' | 'unit' | 'citation' | 'digits'>[];
  }[];
}

export interface SchemaEntry {
  file: string;
  title: string;
  description: string;
}
