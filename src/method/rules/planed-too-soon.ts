import { amount } from '../../model/quantity/index.ts';
import { atStep, leastBetween, stepsBefore, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Between glue and final thickness, d. Common practice, as the page on panels gives it. */
export const leastSettling = 7;

/** A panel brought to thickness while its glue lines are still swollen. */
export const planedTooSoon = rule({
  id: 'planed-too-soon',
  level: 'note',
  title: 'A glue line dries before the panel is planed',
  looksAt: `The least time between a glue-up and the first flattening, planing or sanding after it, beside ${leastSettling} days.`,
  why: 'Glue wets the joint and swells it; a seam that is planed level too soon sinks later, and a finger finds it.',
  find: (worked) =>
    stepsThat(worked, 'glue-up').flatMap((glued) => {
      const next = stepsThat(worked, 'plane', 'flatten', 'sand').find((step) =>
        stepsBefore(worked, step).has(glued.id),
      );
      if (!next) return [];
      const minutes = leastBetween(worked, glued.id, next.id) ?? 0;
      if (minutes >= leastSettling * 24 * 60) return [];
      return [
        {
          ...atStep(next),
          message: `“${next.record.title}” may begin ${minutes > 0 ? `${amount(minutes * 60, 's', 2)} after` : 'as soon as'} the panel is glued; ${amount(leastSettling * 86_400, 's', 2)} is usual before it is brought to its final thickness.`,
          wayOut: 'Leave a little thickness for a last pass a week later, or let the step wait.',
        },
      ];
    }),
});
