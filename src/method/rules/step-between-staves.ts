import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** A difference in thickness of neighbours that a finger feels, mm; half of it shows on each face. Common practice. */
export const feltStep = 0.15;

/** Steps that the year raises between staves of a panel. */
export const stepBetweenStaves = rule({
  id: 'step-between-staves',
  level: 'note',
  title: 'Staves stay level with each other',
  looksAt: `The greatest difference in thickness that the year makes between neighbouring staves, beside ${amount(feltStep, 'mm', 2)}.`,
  why: 'Staves of unlike woods or cuts change thickness differently; half of the difference shows on each face, and a finger feels it.',
  find: (worked) =>
    askedOf(worked, 'seasonal-movement').flatMap((calculation) => {
      const step = figureOf(calculation, 'step');
      if (!step || step.value <= feltStep) return [];
      return [
        {
          ...placeOf(calculation),
          message: `Neighbouring staves come to differ by ${amount(step.value, 'mm', 2)} in thickness through the year; from ${amount(feltStep, 'mm', 2)} a finger feels it.`,
          wayOut: 'Keep to staves of one wood and one cut, or sand to final thickness in the middle of the season.',
        },
      ];
    }),
});
