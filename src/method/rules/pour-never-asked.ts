import { askedOf, atStep, stepsThat } from './kit.ts';
import { rule } from './rule.ts';

/** Resin that is poured and nobody asked how warm it grows. */
export const pourNeverAsked = rule({
  id: 'pour-never-asked',
  level: 'warn',
  title: 'How deep a pour may be is asked before it is poured',
  looksAt: 'Steps that pour, and whether any calculation of the method is a pour-heat.',
  why: 'How deep a resin may be poured depends on the shop’s temperature, and a printed method is followed in another shop.',
  find(worked) {
    const [first] = stepsThat(worked, 'pour');
    if (!first || askedOf(worked, 'pour-heat').length > 0) return [];
    return [
      {
        ...atStep(first),
        message: `“${first.record.title}” pours resin, and nothing asks how deep it may be in this shop.`,
        wayOut: 'Ask pour-heat in the step, with the resin, the depth and the temperature of the shop.',
      },
    ];
  },
});
