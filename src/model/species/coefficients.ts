import type { Figure } from '../evidence/index.ts';
import { type Candidate, rungs, sentences } from './candidates.ts';
import { deriveCoefficient } from './derive.ts';
import type { Choice } from './ladder.ts';
import type { FigureName } from './types.ts';

/**
 * Rows of Table 13-5 that do not follow from the shrinkage of their own wood: they print the value of another wood of
 * the group, so the coefficients of these five woods are derived instead. A test holds that each is still needed.
 */
export const groupCoefficientRows: Readonly<Record<string, string>> = {
  'Ash, green': 'white ash',
  'Birch, sweet': 'yellow birch',
  'Elm, cedar': 'winged elm',
  'Maple, black': 'sugar maple',
  'Oak, black': 'California black oak',
};

const pairs = [
  ['radialCoefficient', 'radialShrinkage'],
  ['tangentialCoefficient', 'tangentialShrinkage'],
] as const;

/** The two coefficients of a wood, and what was passed over. */
export interface CoefficientChoice {
  radialCoefficient: Choice;
  tangentialCoefficient: Choice;
}

/**
 * Choose the pair of coefficients of a wood. Both come from one place, so that the two directions can be compared:
 * the printed pair where it is the wood's own and no pair derived from shrinkage is firmer, else the derived pair.
 *
 * @param printed candidates from Table 13-5; a group's row never stands for one wood
 * @param label printed label of the wood's own row, if it has one
 * @param figures shrinkage and its start, as resolved
 */
export function chooseCoefficients(
  printed: readonly Candidate[],
  label: string | undefined,
  figures: Readonly<Record<'radialShrinkage' | 'tangentialShrinkage' | 'shrinkageStart', Figure | null>>,
): CoefficientChoice {
  const owner = label === undefined ? undefined : groupCoefficientRows[label];
  const marked = printed.map(
    (each): Candidate =>
      owner === undefined || each.group
        ? each
        : {
            ...each,
            group: true,
            figure: {
              ...each.figure,
              label: `${each.figure.label} (of the group)`,
              note: `The row prints the value of ${owner}, which does not follow from this wood’s own shrinkage.`,
            },
          },
  );
  const derived = pairs.flatMap(([name, from]): Candidate[] => {
    const shrinkage = figures[from];
    const figure = deriveCoefficient(name, shrinkage, figures.shrinkageStart);
    if (figure === null) return [];
    return [{ name, figure, rung: figure.basis === 'memory' ? rungs.memory : rungs.derived, group: false }];
  });
  const own = marked.filter((each) => !each.group);
  const weakest = (pair: readonly Candidate[]) => Math.max(...pair.map((each) => each.rung));
  // A derived pair that is complete may beat a printed one; a single derived direction stands where nothing is printed.
  const usePrinted = own.length > 0 && (derived.length < own.length || weakest(own) <= weakest(derived));
  const best = usePrinted ? own : derived;
  const choice = (name: FigureName): Choice => {
    const chosen = best.find((each) => each.name === name) ?? null;
    const passedOver =
      chosen && !usePrinted
        ? 'The printed coefficient was passed over for one that rests on a read shrinkage.'
        : undefined;
    const rest = marked
      .filter((each) => each.name === name && each !== chosen)
      .map((each): Candidate => {
        if (each.group) return each;
        const note = sentences(each.figure.note, passedOver);
        return { ...each, figure: { ...each.figure, ...(note ? { note } : {}) } };
      });
    return { chosen, rest };
  };
  return {
    radialCoefficient: choice('radialCoefficient'),
    tangentialCoefficient: choice('tangentialCoefficient'),
  };
}
