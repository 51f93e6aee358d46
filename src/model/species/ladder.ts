import type { Figure } from '../evidence/index.ts';
import type { Candidate } from './candidates.ts';
import type { FigureName } from './types.ts';

/** One figure chosen for a name, and what it was chosen over. */
export interface Choice {
  chosen: Candidate | null;
  rest: Candidate[];
}

/**
 * Choose the firmest figure for a name, in the order of authority (authority.ts); within a rung the first in the order of
 * the tables. A value of a group is never chosen.
 */
export function choose(name: FigureName, candidates: readonly Candidate[]): Choice {
  const mine = candidates.filter((candidate) => candidate.name === name);
  const chosen = mine
    .filter((candidate) => !candidate.group)
    .reduce<Candidate | null>((best, each) => (best !== null && best.rung <= each.rung ? best : each), null);
  return { chosen, rest: mine.filter((candidate) => candidate !== chosen) };
}

/** Figure of a choice, or null where nothing is published. */
export function figureOf(choice: Choice): Figure | null {
  return choice.chosen?.figure ?? null;
}
