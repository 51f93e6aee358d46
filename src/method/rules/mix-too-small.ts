import { amount } from '../../model/quantity/index.ts';
import { dosingLimits } from '../../model/resin/dose.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import { askedOf, figureOf, numberTold, placeOf, stepsThat, toolsOf, wordTold } from './kit.ts';
import { rule } from './rule.ts';

/** A mix that the scale cannot weigh. */
export const mixTooSmall = rule({
  id: 'mix-too-small',
  level: 'warn',
  title: 'The scale is fine enough for the mix',
  looksAt: `How far the ratio of the smallest cup can be off, by reading and by rounding, in each resin-dose: at most ${dosingLimits.mend} %. Where a scale of the method (kind scale) is coarser than the division that the dose was told, the reading is taken for that scale.`,
  why: 'A ratio that is off leaves resin soft for good, and no heat or time mends it.',
  find: (worked) =>
    askedOf(worked, 'resin-dose').flatMap((calculation) => {
      const reading = figureOf(calculation, 'dosingError')?.value;
      if (reading === undefined) return [];
      const told = numberTold(calculation, 'scaleDivision');
      const bench = wordTold(calculation, 'measureBy') === 'volume' ? undefined : benchDivision(worked, calculation);
      const coarser = told !== undefined && bench !== undefined && bench > told * 1.001;
      const off = reading * (coarser ? bench / told : 1) + (figureOf(calculation, 'roundingError')?.value ?? 0);
      if (off <= dosingLimits.mend) return [];
      return [
        {
          ...placeOf(calculation),
          message: `The ratio of the smallest cup can be ${off.toFixed(1)} % off${coarser ? `, weighed on a scale of ${amount(bench, 'g', 2, true)}, where the dose is told ${amount(told, 'g', 2, true)}` : ''}; up to ${dosingLimits.mend} % does no harm.`,
          wayOut: 'Weigh on a finer scale, or mix more at once than the place needs.',
        },
      ];
    }),
});

/** Smallest division, g, of the coarsest scale in the steps that weigh for a dose: its own and those that mix. */
function benchDivision(worked: WorkedMethod, { step }: WorkedCalculation): number | undefined {
  const own = worked.steps.filter(({ id }) => id === step);
  const scalesOf = (steps: typeof worked.steps) =>
    steps
      .flatMap((each) => toolsOf(worked, each))
      .filter(({ record }) => record.kind === 'scale')
      .flatMap(({ limits }) => limits.division?.value ?? []);
  const here = scalesOf(own);
  const all = here.length > 0 ? here : scalesOf(stepsThat(worked, 'mix'));
  return all.length > 0 ? Math.max(...all) : undefined;
}
