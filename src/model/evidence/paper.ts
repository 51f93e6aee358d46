import type { Block, ResultDocument } from './result.ts';

/** A piece of a sheet for the bench: those that every answer has, and those of a whole piece of work. */
export type PaperBlock =
  | Block
  /** A step of the work, with a box to tick: never cut in two on paper where it fits one sheet. */
  | {
      kind: 'step';
      number: number;
      title: string;
      /** When it is due and how long it takes, at the end of its line. */
      when?: string;
      blocks: readonly PaperBlock[];
      /** What is looked at while it is done; beside it where there is room. */
      beside: readonly PaperBlock[];
    }
  /** What is measured, with a line to write on beside what is expected. */
  | { kind: 'measured'; rows: readonly MeasuredRow[] }
  /** Pieces in two columns where there is room. */
  | { kind: 'columns'; blocks: readonly PaperBlock[] }
  | AddressCode;

/** What is measured: marked quantities, and the ends that it may lie between where they are known. */
export interface MeasuredRow {
  label: string;
  expected: string;
  between?: string;
}

/** An address as a code that a telephone reads, with the address in letters beside it. */
export interface AddressCode {
  kind: 'code';
  /** What is behind it. */
  text: string;
  address: string;
  /** Modules along a side, the white edge included. */
  size: number;
  /** The dark modules as one path of an SVG whose unit is a module. */
  path: string;
}

/** A document of such pieces. */
export interface PaperDocument extends Omit<ResultDocument, 'blocks'> {
  blocks: readonly PaperBlock[];
}
