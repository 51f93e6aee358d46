import type { Basis, Seen } from './basis.ts';
import type { SourceId } from './sources/index.ts';

/** Where a figure, statement or caution can be looked up: a source and the place in it. */
export interface Citation {
  /** Key of the source list. */
  source: SourceId;
  /** Table, equation, section or page, for example `Table 4-3, Maple: Sugar`. */
  locator?: string;
  /** How the place was read; absent where nothing was transcribed. */
  seen?: Seen;
}

/** One number with its unit, its band and its basis. */
export interface Figure {
  /** Short label in sentence case, for example `Tangential shrinkage`. */
  label: string;
  value: number;
  /** UCUM code, for example `mm`, `%`, `Cel`, `N`, `kg/m3`; `1` where the figure has no unit. */
  unit: string;
  /** Ends of the band where the figure is uncertain, in the same unit. */
  low?: number;
  high?: number;
  /** What the band means, in one sentence. Required wherever `low` or `high` is given. */
  band?: string;
  basis: Basis;
  citation?: Citation;
  /** What a reader must know beside the number: how it was derived, what was capped, what was assumed. */
  note?: string;
  /** Significant digits that the figure deserves when shown; 3 unless told. */
  digits?: number;
  /** True where every reader gets its metric unit, as with resin in grams: scales and cups are marked in it, whatever boards are measured in. */
  kept?: boolean;
}

/** Values against an axis, for a chart and for the table behind it. */
export interface Series {
  /** Stable name, used in downloads. */
  id: string;
  title: string;
  /** The axis: categories (months) or numbers with a unit. */
  axis: { label: string; unit?: string; values: readonly (string | number)[] };
  lines: readonly SeriesLine[];
  /** One sentence that says what the chart shows, for a reader who cannot see it. */
  description: string;
}

export interface SeriesLine {
  id: string;
  label: string;
  /** UCUM code of `values`. */
  unit: string;
  /** One a value of the axis; fewer where the line ends before the axis does. */
  values: readonly number[];
  low?: readonly number[];
  high?: readonly number[];
}

/** Rows of an answer that are neither figures nor a chart: a cutting list, the steps of a sequence. */
export interface ResultTable {
  /** Stable name, used in downloads. */
  id: string;
  title: string;
  columns: readonly ResultColumn[];
  /** One cell a column; null where there is nothing to say. Numbers are in the unit of their column. */
  rows: readonly (readonly (string | number | null)[])[];
  /** How the figures of the table are known. */
  basis: Basis;
}

export interface ResultColumn {
  id: string;
  label: string;
  /** UCUM code of the numbers in it; absent where it holds words or counts. */
  unit?: string;
  /** Significant digits that the numbers deserve; 3 unless told. */
  digits?: number;
  /** True where every reader gets its metric unit; see `Figure.kept`. */
  kept?: boolean;
}

/** A drawing in true proportion: shapes in millimetres, y upwards. */
export interface Drawing {
  id: string;
  title: string;
  /** Text alternative: what is drawn and what it shows, with its numbers. */
  description: string;
  shapes: readonly DrawingShape[];
  /** How many times differences were enlarged to be seen; 1 where the drawing is true. */
  exaggeration?: number;
}

export interface DrawingShape {
  /** What the shape is; the view picks line weight and pattern from it. */
  role:
    | 'outline-now'
    | 'outline-dry'
    | 'outline-wet'
    | 'ring'
    | 'pith'
    | 'stave'
    | 'inlay'
    | 'axis'
    | 'board'
    | 'blank'
    | 'defect'
    | 'offcut'
    | 'place'
    | 'edge'
    | 'uphill'
    | 'uphill-steep'
    | 'end-grain'
    | 'rough'
    | 'left'
    | 'grain';
  /** Written in the middle of the shape where the role is one that carries words: board, blank, defect, offcut, place. */
  label?: string;
  closed: boolean;
  /** [x, y] in mm. */
  points: readonly (readonly [number, number])[];
}

/** What can hurt somebody or spoil the work. */
export interface Caution {
  id: string;
  /** `danger` can hurt somebody; `warning` can spoil the work; `note` is worth knowing. */
  level: 'danger' | 'warning' | 'note';
  /** What to do, in a line or two. */
  text: string;
  /** Why, and what else the source says; it stands behind the line. */
  why?: string;
  /** True where this very case brought it up: it stands before what holds for every case. */
  own?: boolean;
  basis: Basis;
  citation?: Citation;
}

/** Something that an answer rests on: an equation, a table row, an assumption. */
export interface EvidenceNote {
  /** Id of an equation, where the note is about one: it links to the Equations page. */
  equation?: string;
  text: string;
  basis: Basis;
  citation?: Citation;
}

/**
 * What an answer comes to.
 *
 * `good`: nothing stands in the way. `care`: it can be done if what the text names is minded. `stop`: it must not, or cannot, be done
 * so. `unknown`: a figure that decides was not given or two contradict each other; the text says which, and the answer then holds no
 * number that looks like advice.
 */
export interface Verdict {
  level: 'good' | 'care' | 'stop' | 'unknown';
  /** The sentence that a maker would say, with the numbers that matter. */
  text: string;
}

/** What every calculator gives, whatever asked for it: a page, the printer or the command line. */
export interface Result {
  /** What it comes to: first on the page, on paper and in the terminal. */
  verdict: Verdict;
  figures: Record<string, Figure>;
  series?: readonly Series[];
  tables?: readonly ResultTable[];
  drawings?: readonly Drawing[];
  cautions: readonly Caution[];
  evidence: readonly EvidenceNote[];
}
