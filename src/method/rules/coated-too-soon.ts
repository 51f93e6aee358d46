import type { WorkedMethod, WorkedStep } from '../case/types.ts';
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

/** A coat of finish on one that has not dried. */
export const coatedTooSoon = rule({
  id: 'coated-too-soon',
  level: 'warn',
  title: 'A coat of finish dries before the next goes on',
  looksAt:
    'Coats of oil, wax or varnish that follow each other, and the least time between them beside the recoat time that finish-coats gives.',
  why: 'Under a second coat a soft first one wrinkles, stays sticky and smells for weeks.',
  find: (worked) =>
    coatsOf(worked).flatMap((later) => {
      const before = stepsBefore(worked, later);
      const earlier = coatsOf(worked).findLast(({ id }) => before.has(id));
      const recoat = earlier && minutesOf(answerFor(worked, earlier, 'finish-coats'), 'recoat');
      if (!earlier || recoat === undefined) return [];
      const least = leastBetween(worked, earlier.id, later.id) ?? 0;
      if (isLongEnough(least, recoat)) return [];
      return [
        {
          ...atStep(later),
          message: `“${later.record.title}” may begin ${least > 0 ? `${span(least)} after` : 'as soon as'} “${earlier.record.title}” is done; the finish takes its next coat after ${span(recoat)}.`,
          wayOut: 'Let it wait for the recoat time of finish-coats; the can comes first.',
        },
      ];
    }),
});

/** Steps that put a finish on, in the order of the file. */
const coatsOf = (worked: WorkedMethod): WorkedStep[] =>
  stepsThat(worked, 'oil', 'wax', 'coat').filter((step) => !isResinCoat(worked, step));
