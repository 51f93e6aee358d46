import type { ReaderUnits } from '../../model/quantity/index.ts';
import type { WorkedMethod } from '../case/types.ts';
import type { RuleLevel } from '../rules/rule.ts';
import type { Shop } from '../shop/index.ts';

/** Text to put in place of a stretch of a text, by offsets in it; the splices of one edit all count in the text as it was, in its order. */
export interface Splice {
  from: number;
  to: number;
  insert: string;
}

/** A file that the services know. */
export type RecordKind = 'method' | 'shop';

/** Something that is named by an id. */
export interface NamedOption {
  value: string;
  label: string;
  detail?: string;
}

/** Lists of ids, fetched when the place asks for one: whoever calls decides where they come from and what is loaded for them. */
export type NameLoaders = Readonly<
  Partial<Record<'wood' | 'resin' | 'finish' | 'place' | 'calculator' | 'zone', () => Promise<readonly NamedOption[]>>>
>;

/** What is known beside the text. */
export interface EditContext {
  /** Which record it is; told by its first field unless given. */
  kind?: RecordKind;
  names?: NameLoaders;
  /** The case as last worked out: values stand beside references, and events and uses are known by name. */
  worked?: Pick<WorkedMethod, 'at' | 'calculations'>;
  /** The shop record that the method is worked out with: its ids and what a parameter may be taken from. */
  shop?: Shop;
  /** Of whoever reads; metric unless given. */
  units?: ReaderUnits;
}

/** One thing that may be written at a place. */
export interface Completion {
  /** As it is listed, and what typing is compared with. */
  label: string;
  /** Beside it, a word or two: a unit, a title. */
  detail?: string;
  /** What it means, a sentence or two. */
  info?: string;
  /** What is written. */
  insert: string;
  /** A name of a field, a value, a reference. */
  sort: 'name' | 'value' | 'reference';
}

/** What may be written from `from` to `to`, the likeliest first. */
export interface Completions {
  from: number;
  to: number;
  options: readonly Completion[];
}

/** What is said of a stretch of a text. */
export interface Hover {
  from: number;
  to: number;
  title: string;
  /** Paragraphs. */
  words: readonly string[];
}

/** A mend with one right answer. */
export interface Fix {
  /** What it does: `Write act`. */
  title: string;
  splice: Splice;
}

/** Something wrong with a text, or found in it by a rule. */
export interface EditProblem {
  from: number;
  to: number;
  line: number;
  column: number;
  /** `error`: it cannot be read or worked out. The others are levels of rules. */
  level: 'error' | RuleLevel;
  /** Path of what it is about. */
  path: readonly (string | number)[];
  /** Marked quantities are written in the units that were asked for. */
  message: string;
  /** The rule that found it. */
  rule?: string;
  /** Why the method may depart from the rule. */
  excepted?: string;
  fixes: readonly Fix[];
}
