import type { Citation } from '../../model/evidence/index.ts';
import type { Path, WorkedMethod } from '../case/types.ts';

/** `stop`: the method must not be followed so. `warn`: the piece or somebody's day may be spoiled. `note`: worth knowing. */
export type RuleLevel = 'stop' | 'warn' | 'note';

/** Where a rule found something. */
export interface Found {
  /** Place in the file of the method. */
  path: Path;
  /** The step that it is about, where it is about one; an exception names it. */
  step?: string;
  /** What was found, with the numbers that made it. Marked quantities (`amount`) follow the reader's units. */
  message: string;
  /** What to do instead, a sentence. */
  wayOut: string;
}

/** What a rule says of itself. */
export interface RuleWords {
  /** Stable name, lower case with hyphens: `recoat-window`. */
  id: string;
  level: RuleLevel;
  /** What it asks, as a heading: `A coat goes on while the recoat window is open`. */
  title: string;
  /** What it looks at, in a sentence for the Rules page. */
  looksAt: string;
  /** Why it is a rule, a sentence or two. */
  why: string;
  /** Where it is printed; left out where it is common practice. */
  citation?: Citation;
  /** Why no exception may be made of it, a sentence; left out where a method may depart with a reason. */
  neverExcepted?: string;
  /** True where it speaks of any calculation in general: it is silent where a rule of its own says as much of the same one. */
  general?: boolean;
}

/** A condition that a method must meet. */
export interface Rule extends RuleWords {
  find(worked: WorkedMethod): readonly Found[];
}

/** Keep a rule's type while declaring it. */
export const rule = (definition: Rule): Rule => definition;

/** What a rule found, or an exception that nothing needs any more. */
export interface Finding extends Found {
  rule: string;
  level: RuleLevel;
  /** The reason, where an exception of the method allows it. */
  excepted?: string;
}
