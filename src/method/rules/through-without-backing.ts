import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import { askedOf, atStep, hasOwnCaution, kindsAt, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** A hole, or a cut out of end grain, with nothing behind the fibres where the edge comes out. */
export const throughWithoutBacking = rule({
  id: 'through-without-backing',
  level: 'warn',
  title: 'What goes through goes into a backing',
  looksAt:
    'Steps that bore, and steps that rout to a template whose outline lets the bit out of the end grain: whether they say backed, or blind where what they cut ends within the wood.',
  why: 'Where an edge comes out, nothing holds the last fibres, and they break away. A flat piece of waste, tight against them, does.',
  find(worked) {
    const routed = askedOf(worked, 'template-fit')
      .filter((calculation) => hasOwnCaution(calculation, 'end-exit'))
      .flatMap((calculation) => trimmedBy(worked, calculation.step) ?? []);
    return [...new Set([...stepsThat(worked, 'bore'), ...routed])].flatMap((step) => {
      if (step.record.backed || step.record.blind || step.record.wayRound !== undefined) return [];
      return [
        {
          ...atStep(step),
          message:
            step.act.id === 'bore'
              ? `“${step.record.title}” bores, and says neither that the hole goes through into a backing nor that it is blind.`
              : `In “${step.record.title}” the bit comes out of the end grain, and nothing is said of a backing.`,
          wayOut:
            step.act.id === 'bore'
              ? 'Clamp a flat piece of waste under the hole and say backed: true; of a hole that ends within the wood say blind: true, and of one that is finished from the other side say so under wayRound.'
              : 'Clamp a flat piece of waste against the edge where the bit comes out and say backed: true, or say the way round it.',
        },
      ];
    });
  },
});

/** The step that routs an outline: the one that asks about it, or the last that routs to a template. A recess is routed before it. */
function trimmedBy(worked: WorkedMethod, asking: string): WorkedStep | undefined {
  const routing = stepsThat(worked, 'rout');
  return routing.find(({ id }) => id === asking) ?? routing.findLast((step) => kindsAt(worked, step).has('template'));
}
