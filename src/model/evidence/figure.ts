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
  /** What the figure means, for a reader who meets it first; shown where it stands. */
  help?: string;
  /** True where it stands behind the tables and charts: it is for whoever looks twice. */
  minor?: boolean;
  /** True where every reader gets its metric unit, as with resin in grams: scales and cups are marked in it, whatever boards are measured in. */
  kept?: boolean;
  /** True where only the seasons show it: nobody can measure it on the day. */
  foretold?: boolean;
  /** True of a length that must not be passed: it is shown rounded down. */
  limit?: boolean;
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

/** A line of a series: a value for each of its axis. */
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

/** A column of a table of a result. */
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

/** A shape of a drawing. */
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
    | 'finished'
    | 'rough'
    | 'left'
    | 'grain';
  /** Written in the middle of the shape where the role is one that carries words: board, blank, defect, offcut, place. */
  label?: string;
  closed: boolean;
  /** [x, y] in mm. */
  points: readonly (readonly [number, number])[];
}
