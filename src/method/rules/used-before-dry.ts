import {
  answerFor,
  atStep,
  isLongEnough,
  isResinCoat,
  leastBetween,
  minutesOf,
  span,
  stepsBefore,
  stepsThat,
} from './kit.ts';
import { rule } from './rule.ts';

/** A hand-over before the finish may be used. */
export const usedBeforeDry = rule({
  id: 'used-before-dry',
  level: 'warn',
  title: 'A finish has cured before the piece is used',
  looksAt:
    'The least time between the last coat of finish and the hand-over, beside the time to use that finish-coats gives.',
  why: 'A finish that has not cured smells, marks and is rubbed off into food.',
  find: (worked) =>
    stepsThat(worked, 'hand-over').flatMap((given) => {
      const before = stepsBefore(worked, given);
      const first = stepsThat(worked, 'oil', 'wax', 'coat').find(
        (step) => before.has(step.id) && !isResinCoat(worked, step),
      );
      const needed = first && minutesOf(answerFor(worked, first, 'finish-coats'), 'use');
      if (!first || needed === undefined) return [];
      const least = leastBetween(worked, first.id, given.id) ?? 0;
      if (isLongEnough(least, needed)) return [];
      return [
        {
          ...atStep(given),
          message: `“${given.record.title}” may begin ${least > 0 ? `${span(least)} after` : 'as soon as'} “${first.record.title}” is done; the finish may be used ${span(needed)} after its first coat.`,
          wayOut: 'Let it wait for the time to use of finish-coats; the can comes first.',
        },
      ];
    }),
});
