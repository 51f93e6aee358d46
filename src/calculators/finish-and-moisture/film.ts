import { type CoatingResistance, coatingResistance, type Finish, finishById } from '../../model/finish/index.ts';
import type { Inputs } from './inputs.ts';

/** What is on the faces of a board. */
export interface Film {
  finish: Finish;
  coats: number;
  both: boolean;
  /** Null where the finish is taken as bare wood, or the reader gave a resistance of their own. */
  coating: CoatingResistance | null;
  /** s/m. */
  resistance: number;
}

/** The finish that was asked for, in the coats that were said or are usual, and what it holds back. */
export function filmOf(given: Inputs): Film {
  // The field takes the id of a finish and nothing else.
  const finish = finishById(given.finish) as Finish;
  const coats = given.coats ?? finish.figures.coats.value;
  const coating =
    given.coating === undefined && finish.excluding.class ? coatingResistance(finish.excluding.class, coats) : null;
  return {
    finish,
    coats,
    both: given.faces !== 'one',
    coating,
    resistance: given.coating ?? coating?.resistance ?? 0,
  };
}
