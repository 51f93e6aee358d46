import type { Basis } from './basis.ts';
import type { Citation, Drawing, Figure, ResultTable, Series } from './figure.ts';

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

/** Something that happens at a time: a coat may follow, a layer is due, a board may be handed over. */
export interface TimedEvent {
  /** Stable name, for example `sandable`; layers and coats are numbered behind it, as `layer-2`. */
  id: string;
  /** What happens, in sentence case. */
  label: string;
  /** s from the zero of its timeline. */
  at: number;
  /** Earliest and latest, s from the same zero, where the time is uncertain. */
  low?: number;
  high?: number;
  /** Id of the event that it waits for, where it waits for one. */
  after?: string;
  basis: Basis;
  note?: string;
}

/** What happens when. What never happens in this case is not an event: the verdict says so. */
export interface Timeline {
  /** What the times are counted from, as it stands in a sentence: `mixing`, `the first coat`. */
  zero: string;
  /** In the order of time. */
  events: readonly TimedEvent[];
}

/** Something that the work uses up or must buy: boards, grams of resin, litres of oil, discs. */
export interface Use {
  /** Stable name, for example `part-a`. */
  id: string;
  /** What it is, in sentence case, as it would stand on a bill: `Sugar maple, 5/4 rough`. */
  what: string;
  amount: number;
  /** UCUM code; `{count}` for things that are counted. */
  unit: string;
  low?: number;
  high?: number;
  /** Ids of the uses that count the same stuff already: the boards as board feet, the part of the mix that takes a colour. A bill takes one or the other. */
  within?: readonly string[];
  basis: Basis;
  note?: string;
}

/** A piece of a printed document. Sentences may hold marked quantities, as everywhere in a result. */
export type Block =
  | { kind: 'heading'; text: string }
  | {
      kind: 'text';
      text: string;
      /** Larger, for the line that must be read from half a metre. */
      large?: boolean;
      /** For the line that must not be overlooked. */
      strong?: boolean;
      /** For the small print. */
      small?: boolean;
      /** Words before it that say what it is about: `Right when`. They stand out. */
      lead?: string;
    }
  | {
      kind: 'list';
      items: readonly string[];
      /** What the lines are about, in a word or two: it stands beside them. */
      heading?: string;
    }
  /** Lines to tick with a pencil. */
  | { kind: 'ticks'; items: readonly string[] }
  /** Names with a line to write on. */
  | { kind: 'blanks'; labels: readonly string[] }
  | { kind: 'warning'; level: Caution['level']; text: string }
  | {
      kind: 'table';
      table: ResultTable;
      /** Ids of columns whose cells get a box to tick; an empty text gets the box alone, nothing (`null`) gets none. */
      ticks?: readonly string[];
      /** Ids of columns to read from half a metre. */
      large?: readonly string[];
      /** Names of further columns, empty, to write in with a pencil. */
      write?: readonly string[];
    }
  | {
      kind: 'drawing';
      drawing: Drawing;
      /** On paper it is drawn at 1 to this, and says so; else as wide as there is room. */
      scale?: number;
    };

/**
 * Something to print or to copy by itself: a mixing sheet, a label, a care card, a template, a cut list.
 *
 * A sheet and drawings at true size bear their title on paper; a card of a quarter sheet has no room for it and bears its blocks alone.
 */
export interface ResultDocument {
  /** Stable name, for example `mixing-sheet`. */
  id: string;
  title: string;
  /**
   * How it lies on paper: a sheet of its own, a card that is cut out and folded, a sheet of labels that are sold in that size, drawings at true
   * size on as many sheets as they take.
   */
  form: 'sheet' | 'card' | 'labels' | 'true-size';
  /** What to do with it, a line or two for the screen, not for the paper: `Fill in what stands in brackets.` */
  help?: string;
  /** True where the answer shows the same: the page folds it, and its paper is printed whole. */
  folded?: boolean;
  blocks: readonly Block[];
}

/** What every calculator gives, whatever asked for it: a page, the printer or the command line. */
export interface Result {
  /** What it comes to: first on the page, on paper and in the terminal. */
  verdict: Verdict;
  figures: Record<string, Figure>;
  series?: readonly Series[];
  tables?: readonly ResultTable[];
  drawings?: readonly Drawing[];
  /** What happens when, from one zero. */
  timeline?: Timeline;
  /** What is used up. */
  uses?: readonly Use[];
  /** What is printed or copied by itself. */
  documents?: readonly ResultDocument[];
  cautions: readonly Caution[];
  evidence: readonly EvidenceNote[];
}
