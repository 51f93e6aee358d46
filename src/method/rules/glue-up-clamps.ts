import { amount } from '../../model/quantity/index.ts';
import { atStep, leastBetween, stepsThat, toolsOf } from './kit.ts';
import { rule } from './rule.ts';

/** Least that clamps stay on a joint that is not strained, min. Common practice for white and yellow glue in a warm shop; its label wins. */
export const leastClamped = 30;

/** Clamps that come off before the glue holds. */
export const glueUpClamps = rule({
  id: 'glue-up-clamps',
  level: 'warn',
  title: 'Clamps stay until the glue holds',
  looksAt: `Steps that glue up: whether they hold clamps until a later step, and whether at least ${leastClamped} minutes lie in between.`,
  why: 'A joint that is let go too soon creeps open, and shows it only when the panel is planed.',
  find: (worked) =>
    stepsThat(worked, 'glue-up').flatMap((step) => {
      const clamps = new Set(
        toolsOf(worked, step).flatMap(({ name, record }) => (record.kind === 'clamp' ? [name] : [])),
      );
      // Without any clamp the step lacks a tool, which is another rule's.
      if (clamps.size === 0) return [];
      const held = (step.record.holds ?? []).filter(({ tool }) => clamps.has(tool));
      const title = `“${step.record.title}”`;
      if (held.length === 0)
        return [
          {
            ...atStep(step),
            message: `${title} takes its clamps off as soon as it is done.`,
            wayOut:
              'List the clamps under holds, until the step at whose end they come off, and let that step wait for the glue.',
          },
        ];
      return held.flatMap(({ until }) => {
        const between = leastBetween(worked, step.id, until) ?? 0;
        if (between >= leastClamped) return [];
        return [
          {
            ...atStep(step, 'holds'),
            message: `Clamps of ${title} may come off ${between > 0 ? `after ${amount(between * 60, 's', 2)}` : 'at once'}; ${amount(leastClamped * 60, 's', 2)} is the least that is usual.`,
            wayOut: 'Let the step that takes them off wait as long as the label of the glue says (after: least).',
          },
        ];
      });
    }),
});
