import { atStep, layersOfResin, stepsBefore, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Resin that is mixed without a rehearsal. */
export const noDryRun = rule({
  id: 'no-dry-run',
  level: 'note',
  title: 'A pour is rehearsed before it is mixed',
  looksAt: 'The first step that mixes or lays resin, and whether a step that briefs comes before it.',
  why: 'Once the parts are together there is no time to look for a stick, or to ask where a hot cup goes.',
  find(worked) {
    const wet = new Set([...stepsThat(worked, 'mix'), ...layersOfResin(worked)].map(({ id }) => id));
    const first = worked.steps.find(({ id }) => wet.has(id));
    if (!first) return [];
    const before = stepsBefore(worked, first);
    if (stepsThat(worked, 'brief').some(({ id }) => before.has(id))) return [];
    return [
      {
        ...atStep(first),
        message: `Nothing is rehearsed before “${first.record.title}”.`,
        wayOut: 'Add a step (act: brief) that walks through it with empty cups, and says where a hot cup goes.',
      },
    ];
  },
});
