import { powered } from './by-hand.ts';
import { atStep, inSentence, kindsAt, toolsOf } from './kit.ts';
import { rule } from './rule.ts';

/** Gloves where something turns that can draw them in. */
export const glovesAtBlade = rule({
  id: 'gloves-at-blade',
  level: 'stop',
  title: 'No gloves at a turning blade',
  looksAt: 'Steps of an act with a blade that list a machine and gloves.',
  why: 'A blade, bit or drum that catches a glove takes the hand with it.',
  neverExcepted: 'No reason makes a glove let go.',
  find: (worked) =>
    worked.steps.flatMap((step) => {
      if (!step.act.hazards.includes('blade') || !kindsAt(worked, step).has('gloves')) return [];
      const machines = toolsOf(worked, step).filter(({ record }) => powered.includes(record.kind));
      if (machines.length === 0) return [];
      return [
        {
          ...atStep(step),
          message: `“${step.record.title}” lists gloves beside a machine with a blade (${inSentence(machines[0]?.record.what ?? '')}).`,
          wayOut: 'Take the gloves out of the step; what needs gloves is a step of its own, before or after.',
        },
      ];
    }),
});
