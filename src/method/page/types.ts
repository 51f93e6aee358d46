import type { CalculatorId } from '../../calculators/registry.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import type {
  Basis,
  Caution,
  Drawing,
  Figure,
  ResultDocument,
  ResultTable,
  Verdict,
} from '../../model/evidence/index.ts';
import type { ShopBeyond } from '../case/types.ts';
import type { Bill } from '../cost/index.ts';
import type { CaseCost } from '../plan/price.ts';
import type { ChainLink, Limits } from '../plan/words.ts';
import type { Parameter } from '../record/index.ts';
import type { RuleLevel } from '../rules/rule.ts';
import type { OpeningHours } from '../schedule/hours.ts';

/**
 * A method worked out for one case, as plain data: what its page, its sheets, the record of a batch and a class are made of. It goes through JSON
 * unchanged, so that a worker may answer with it. Sentences hold marked quantities (`amount`), which whoever shows them writes in the reader's units.
 */

/** What is asked: a method, and how the case differs from the method's own. */
export interface MethodQuestion {
  /** The method as written (YAML), and the name that its problems are told under. */
  text: string;
  file: string;
  /** Parameters by name, as texts. */
  set?: Readonly<Record<string, string>>;
  pieces?: number;
  /** The shop record as written (YAML). */
  shop?: string;
  /** A day, 2027-01-12, or a local time, 2027-01-12 18:30. Without it the timetable counts days from the first. */
  start?: string;
  end?: string;
  people?: number;
  /** Hours in which somebody is there; else those of the shop record, else assumed ones. */
  hours?: OpeningHours;
  /** First of those sessions at which students are there, as the hours write it; in those before it the teacher prepares. */
  first?: string;
  /** Inputs of calculations that were measured since: by name of the calculation, then of the input. They stand in place of what the method says. */
  measured?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** The page, or everything wrong with the file, the shop record or the case, each with its place. */
export type MethodAnswer =
  | { ok: true; page: MethodPage }
  | {
      ok: false;
      problems: readonly DataProblem[];
      /** The shop, where the method does not hold in it as its record says it: nothing of a page may then stand as if it did. */
      beyond?: ShopBeyond;
    };

/** A part of a line, with every reference put in place. */
export type ShownPart =
  | { kind: 'text'; text: string }
  | { kind: 'strong' | 'emphasis'; parts: readonly ShownPart[] }
  | { kind: 'code'; text: string }
  | { kind: 'break' }
  | { kind: 'link'; href: string; parts: readonly ShownPart[] }
  /** A value of the case where a reference stood. */
  | ({ kind: 'value' } & ShownValue);

/** A text of a method, in blocks. */
export type ShownBlock =
  | { kind: 'paragraph'; parts: readonly ShownPart[] }
  | { kind: 'list'; start?: number; items: readonly (readonly ShownBlock[])[] };

/** A value as it stands in a text. */
export interface ShownValue {
  pointer: string;
  /** As read aloud: a marked quantity, a name, a sentence; `none here` where this case has none. */
  text: string;
  label: string;
  /** Ends of the band as one marked text, where there is one: `440 to 470 g`. */
  between?: string;
  /** What the band means. */
  band?: string;
  basis?: Basis;
  /** The calculation that it comes from, where it comes from one: the page opens what it rests on. */
  calculation?: string;
  missing?: boolean;
}

/** A calculation of a step as asked and answered. */
export interface ShownCalculation {
  name: string;
  use: CalculatorId;
  /** Title of the calculator. */
  title: string;
  /** Its inputs as texts, for a link that opens the calculator with the same case; empty where the calculator's own example is to give way. */
  inputs: Readonly<Record<string, string>>;
  verdict?: Verdict;
  figures: Readonly<Record<string, Figure>>;
  drawings: readonly Drawing[];
  tables: readonly ResultTable[];
  documents: readonly ResultDocument[];
  /** Why there is no answer. */
  errors: readonly string[];
}

/** What can be read off with a rule, a scale, a thermometer or a meter while a step is done. */
export interface Measurable {
  /** What is measured: `Thickness`. */
  label: string;
  /** Marked quantity that is expected, and between what it may lie, where that is known. */
  expected: string;
  between?: string;
  pointer: string;
}

export interface ShownStep {
  /** From 1, in the order of the file. */
  number: number;
  id: string;
  title: string;
  act: { id: string; label: string };
  does: readonly ShownBlock[];
  why?: readonly ShownBlock[];
  tell?: readonly ShownBlock[];
  wrong?: readonly ShownBlock[];
  /** Hands-on time, min. */
  hands: { setUp: number; each: number };
  people: number;
  interrupt: 'anywhere' | 'between-pieces' | 'never';
  /** What it waits for, a sentence each; none where it only follows the step above it. */
  waits: readonly string[];
  /** What to do where its window was missed, a sentence each. */
  missed: readonly string[];
  tools: readonly { name: string; what: string; kind: string }[];
  uses: readonly { name: string; what: string; kind: string; need?: string }[];
  measures: readonly Measurable[];
  calculations: readonly ShownCalculation[];
  /** Its dangers and warnings, each with a step that has said the same before. */
  cautions: readonly (Caution & { saidIn?: number })[];
  /** Places, from 0, of the findings of the page that are about it. */
  findings: readonly number[];
}

/** A parameter as a form needs it. */
export interface ShownParameter {
  name: string;
  record: Parameter;
  /** What stands, as a field shows it, by the name that an address has for it: `wood`; of an outline each measure, `outline.length`. */
  texts: Readonly<Record<string, string>>;
  from: 'method' | 'shop' | 'reader';
  /** What may be chosen, by what the field then holds, as a reader knows it; of an outline its shapes and the names of its measures. */
  names?: Readonly<Record<string, string>>;
  /** As a line of a printed sheet says it: `Wood: white ash`. */
  words: string;
}

/** A stretch of work of the timetable. Times are minutes from the zero of the plan. */
export interface ShownWork {
  step: string;
  pieces: readonly [number, number];
  start: number;
  end: number;
  /** True where the plan would be longer if it were later. */
  critical: boolean;
  /** What is taken meanwhile: names of tools. */
  tools: readonly string[];
  people: number;
  /** Who is at it, of several people: `Maker`, `Helper 1`. */
  by?: readonly string[];
  /** True where these pieces were begun in an earlier stretch. */
  goesOn?: boolean;
}

/** A wait that nobody must stand by: a cure, a drying. */
export interface ShownWait {
  /** Step that is over, and the one that waits. */
  step: string;
  until: string;
  start: number;
  end: number;
}

/** From when and until when some pieces of a step may be begun, by the step before it as it is planned. Minutes from the zero of the plan. */
export interface ShownBound {
  /** Step that is over, or begun, and the one that waits for it. */
  step: string;
  until: string;
  pieces: readonly [number, number];
  counts: 'start' | 'end';
  /** Least and most time between the two, min. */
  least?: number;
  most?: number;
  earliest?: number;
  latest?: number;
}

/** Local clock of a moment. */
export interface ShownMoment {
  /** 2027-01-12 */
  date: string;
  /** mon, tue … */
  weekday: string;
  /** 18:30 */
  time: string;
  /** Day of the plan, from 1. */
  day: number;
}

export interface ShownTimetable {
  zone: string;
  /** True where no day was asked for: only days of the plan are known, no dates. */
  relative: boolean;
  /** True where nobody told the hours. */
  assumedHours: boolean;
  /** How many people are taken to be there, where nobody told. */
  assumedPeople?: number;
  start: number;
  end: number;
  /** RFC 3339 of minute 0, to count from; not of use where `relative`. */
  zero: string;
  /** Local clocks of every minute that is named here, by minute. */
  moments: Readonly<Record<number, ShownMoment>>;
  steps: readonly { id: string; start: number; end: number; hands: number; slack: number }[];
  sessions: readonly {
    start: number;
    end: number;
    work: readonly ShownWork[];
    /** Who has nothing to do for more than a rest while others work or all wait. */
    free?: readonly { who: readonly string[]; start: number; end: number }[];
  }[];
  waits: readonly ShownWait[];
  bounds?: readonly ShownBound[];
  /** Everybody of the plan, by name. */
  people?: readonly string[];
  /** When somebody may be there, within the plan. */
  open: readonly { start: number; end: number }[];
  critical: readonly ChainLink[];
  limits?: Limits;
  advice: readonly string[];
  secondWays: readonly { step: string; after: string; do: string }[];
  /** Whether no plan is shorter; else the sentence that says what is known. */
  proved: boolean;
  known?: string;
}

export interface ShownFinding {
  rule: string;
  level: RuleLevel;
  /** Id and number of the step that it is about. */
  step?: string;
  number?: number;
  message: string;
  wayOut: string;
  /** The reason, where an exception of the method allows it. */
  excepted?: string;
  line: number;
  column: number;
}

export interface MethodPage {
  file: string;
  title: string;
  for: string;
  about?: readonly ShownBlock[];
  language: string;
  version?: string;
  makes: { what: string; pieces: number; least: number; most: number; usual: number };
  /** How it is taught to a class: id of a calendar, how many people, at how many of its last sessions students are there. */
  taught?: { calendar: string; people: number; evenings: number };
  food?: { claim: string; touches: string; market: string; papers?: string };
  sources: readonly { text: string; url?: string }[];
  /** The first screen. */
  brief: {
    /** Hands-on time for all pieces, min. */
    hands: number;
    /** From the first stroke to the last, min; left out where there is no timetable. */
    lasts?: number;
    /** Marked or formatted sum for one piece, where a shop record has prices. */
    pieceCost?: string;
    price?: string;
    /** What the work gives off or leaves behind, each once, as it is said: `dust`, `a sharp edge`. */
    hazards?: readonly string[];
    /** Each danger once, with the numbers of its steps. */
    dangers: readonly { caution: Caution; steps: readonly number[] }[];
    /** Findings of each level that no exception allows. */
    stops: number;
    warnings: number;
  };
  parameters: readonly ShownParameter[];
  steps: readonly ShownStep[];
  /**
   * What is still being worked out and follows in the next answer; absent in the last. While the judgement is to come, findings, bill and price are
   * those of the case before.
   */
  toCome?: 'judgement' | 'timetable' | 'advice';
  /** Absent while only the numbers are worked out yet. */
  timetable?: ShownTimetable;
  /** Why there is no timetable, and what would make one. */
  impossible?: { why: string; changes: readonly string[] };
  bill?: Bill;
  cost?: CaseCost;
  /** Why there is no bill or price, a sentence each. */
  costless: readonly string[];
  findings: readonly ShownFinding[];
  exceptions: readonly { rule: string; step?: string; reason: string }[];
  materials: readonly { name: string; what: string; kind: string; need?: string; steps: readonly number[] }[];
  tools: readonly { name: string; what: string; kind: string; count: number; steps: readonly number[] }[];
  /** Name of the shop record whose values stand in it. */
  shop?: string;
  /** The currency of that record, by its code in ISO 4217. */
  currency?: string;
  /** What the pieces are made of, by name: each wood with its botanical name where one is recorded. */
  madeOf?: { woods: readonly { name: string; botanical?: string }[]; finishes: readonly string[] };
}
