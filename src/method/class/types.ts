import type { DataProblem } from '../../model/data/problem.ts';
import type { Figure, ResultDocument, ResultTable, Verdict } from '../../model/evidence/index.ts';
import type { BoughtPack } from '../cost/index.ts';
import type { RuleLevel } from '../rules/rule.ts';
import type { ClassRecord } from './record.ts';

/**
 * A class worked out, as plain data: it goes through JSON unchanged, so that a worker may answer with it. Sentences hold marked quantities
 * (`amount`). Places are named by their ids throughout.
 */

/** What is asked. */
export interface ClassQuestion {
  record: ClassRecord;
  /** The method as written (YAML), and the name that its problems are told under. */
  text: string;
  file: string;
  /** Time zone of the reader, where the class names none. */
  zone: string;
}

export type ClassAnswer = { ok: true; page: ClassPage } | { ok: false; problems: readonly ClassProblem[] };

/** What keeps a class from being worked out, and where it stands. */
export interface ClassProblem {
  /** `method`, `shop`: a place in that text. `common`: a parameter of all. `sessions`: a line of the sessions. `places`: there is none. */
  where: 'method' | 'shop' | 'common' | 'sessions' | 'places';
  /** Name of the parameter, or number of the line. */
  field: string;
  message: string;
  place?: Pick<DataProblem, 'file' | 'line' | 'column'>;
}

/** A place of a class, worked out by itself. */
export interface PlacePage {
  id: string;
  name?: string;
  /** How it differs from what is common, a line each: `Wood: yellow birch`. */
  differs: readonly string[];
  /** What is wrong with its parameters, by the name of the parameter; such a place is left out of everything else. */
  problems: readonly { field: string; message: string }[];
  /** What it takes of each material, as one of its class. */
  uses: readonly { what: string; amount: number; unit: string }[];
  stops: number;
  warnings: number;
}

/** Something found at one or more places. */
export interface ClassFinding {
  rule: string;
  level: RuleLevel;
  /** Title of the step that it is about. */
  step?: string;
  message: string;
  wayOut: string;
  /** Empty where it is about the class as a whole. */
  places: readonly string[];
}

/** A line of the common order: one material, bought once for all. Amounts in `unit`. */
export interface OrderLine {
  id: string;
  what: string;
  need: number;
  unit: string;
  /** True where every reader gets it in its metric unit. */
  kept?: true;
  onHand: number;
  buy: number;
  packs: readonly BoughtPack[];
  cost: number | null;
  left: number | null;
  missing?: string;
  notProved?: true;
  /** Which places it is for, those that are asked together in one entry, with what they take together. */
  from: readonly { places: readonly string[]; amount: number; step?: string }[];
  /** Places whose need is not known, each with the reason: they are not in `need`. */
  unknown: readonly { places: readonly string[]; why: string }[];
}

export interface ClassOrder {
  currency: string;
  lines: readonly OrderLine[];
  bought: number;
  /** Materials without a price. */
  without: readonly string[];
  /** Why there is no order, a sentence each. */
  errors: readonly string[];
}

/** Resin that is mixed at once for places of one resin and one colour. */
export interface ClassMix {
  calculation: string;
  step: { id: string; number: number; title: string };
  resin: string;
  colour?: string;
  places: readonly string[];
  /** How it was asked: `alike` where all its places are the same, `shapes` where their shapes were put on one list, `mass` where their amounts were added up. */
  asked: 'alike' | 'shapes' | 'mass';
  verdict?: Verdict;
  figures: Readonly<Record<string, Figure>>;
  tables: readonly ResultTable[];
  documents: readonly ResultDocument[];
  /** Why there is no answer. */
  errors: readonly string[];
  findings: readonly ClassFinding[];
}

/** A machine, and how many of it there are. */
export interface ClassMachine {
  name: string;
  what: string;
  count: number;
}

/** A stretch of work of a session. */
export interface SessionWork {
  step: string;
  number: number;
  title: string;
  start: number;
  end: number;
  /** Clock of its start and end: 18:30. */
  from: string;
  to: string;
  /** True where it is done once for all, by whoever leads. */
  once: boolean;
  places: readonly string[];
  machines: readonly ClassMachine[];
  /** Who stands at it, in order, as many at a time as there are machines and hands. Empty where it is done once for all. */
  turns: readonly { from: string; to: string; places: readonly string[] }[];
}

/** A session of the class. */
export interface ClassSession {
  number: number;
  /** Minutes from the zero of the plan: of its opening. */
  start: number;
  end: number;
  /** Tue 2027-02-09 18:30 */
  from: string;
  /** 21:00 */
  to: string;
  /** Where no student is there: the teacher works, and no place has a turn. */
  who?: 'teacher';
  work: readonly SessionWork[];
}

export interface ClassPage {
  name: string;
  method: { title: string; makes: string; least: number; most: number };
  places: readonly PlacePage[];
  /** Gravest first. */
  findings: readonly ClassFinding[];
  order: ClassOrder;
  mixes: readonly ClassMix[];
  sessions: readonly ClassSession[];
  /** Why there is no timetable, and what would make one. */
  timeless?: { why: string; changes: readonly string[] };
  /** What the reader should know of how it was worked out, a sentence each. */
  notes: readonly string[];
  people: number;
  zone: string;
}

/** A step that a student missed, and what becomes of it. */
export interface MissedStep {
  step: string;
  number: number;
  title: string;
  /**
   * `hear`: it is told, and must be heard before anything is touched. `later`: done by the student at another time. `once`: done for all without the
   * student, and nothing is left to do. `again`: done for all, and once more for this place alone.
   */
  kind: 'hear' | 'later' | 'once' | 'again';
  /** When, where it is done later: Tue 2027-02-16 18:30. */
  at?: string;
  /** What else must be minded, a sentence each: a window that has closed and the second way, a wait. */
  minds: readonly string[];
}

/** What a student who misses a session does. */
export interface MissedSession {
  place: string;
  session: { number: number; from: string };
  /** The sentence that says how it stands. */
  verdict: Verdict;
  /** Where catching up makes dust beside wet resin or fresh finish of the class, or the class beside that of this place, the nearest time without that, and what is done instead; a sentence each. */
  dust?: readonly string[];
  /** Where whoever leads is wanted by the class and at this place at once, a sentence each. */
  twice?: readonly string[];
  steps: readonly MissedStep[];
  /** Where the piece is done with the class if somebody else does some of it that evening: which steps, and what comes of it. */
  others?: { steps: readonly string[]; sentence: string };
  /** When the piece is done by itself, and when it would have been. */
  ends?: { at: string; otherwise: string };
}
