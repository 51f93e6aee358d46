import type { Figure } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import { type Candidate, sentences } from './candidates.ts';
import { deriveCoefficient } from './derive.ts';
import type { Choice } from './ladder.ts';
import type { FigureName, OtherMovement } from './types.ts';

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

/** Two coefficients apart by no more than this agree: one unit of the last digit printed, and half a unit of rounding. */
const agreement = 0.000015;

/** Whether a printed coefficient from memory does not follow from a shrinkage that was read. */
function contradicts({ name, figure }: Candidate, derived: readonly Candidate[]): boolean {
  const other = derived.find((each) => each.name === name)?.figure;
  return figure.basis === 'memory' && other?.basis === 'derived' && Math.abs(figure.value - other.value) > agreement;
}

/** The two coefficients of a wood, and what was passed over. */
export interface CoefficientChoice {
  radialCoefficient: Choice;
  tangentialCoefficient: Choice;
}

/** The wood's own printed pair where another was chosen; a pair of which one half is missing says nothing. */
export function passedOverPair({ radialCoefficient, tangentialCoefficient }: CoefficientChoice): OtherMovement[] {
  const own = (choice: Choice) => choice.rest.find((each) => !each.group)?.figure;
  const radial = own(radialCoefficient);
  const tangential = own(tangentialCoefficient);
  if (!radial?.citation || !tangential) return [];
  const { basis, citation } = radial;
  return [{ by: 'coefficients', radial: radial.value, tangential: tangential.value, basis, citation }];
}

/**
 * Choose the pair of coefficients of a wood. Both come from one place, so that the two directions can be compared:
 * the printed pair where the wood has one of its own, else the pair derived from its shrinkage. A pair from memory is
 * believed only as far as it follows from a shrinkage that was read.
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
    const figure = deriveCoefficient(name, figures[from], figures.shrinkageStart);
    return figure === null ? [] : [{ name, figure, rung: rungs.derived, group: false }];
  });
  const own = marked.filter((each) => !each.group);
  const best = own.length > 0 && !own.some((each) => contradicts(each, derived)) ? own : derived;
  const choice = (name: FigureName): Choice => {
    const chosen = best.find((each) => each.name === name) ?? null;
    const rest = marked
      .filter((each) => each.name === name && each !== chosen)
      .map((each): Candidate => {
        if (each.group) return each;
        const note = sentences(each.figure.note, 'It does not follow from the shrinkage of the wood, which was read.');
        return { ...each, figure: { ...each.figure, ...(note ? { note } : {}) } };
      });
    return { chosen, rest };
  };
  return {
    radialCoefficient: choice('radialCoefficient'),
    tangentialCoefficient: choice('tangentialCoefficient'),
  };
}
