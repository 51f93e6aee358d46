import { askedOf, atStep, layersOfResin } from './kit.ts';
import { rule } from './rule.ts';

/** Resin that is laid and nobody asked when it has cured. */
export const cureNeverAsked = rule({
  id: 'cure-never-asked',
  level: 'warn',
  title: 'When resin has cured is asked, and not guessed',
  looksAt: 'Steps that seal, pour or coat with resin, and whether any calculation of the method is a cure clock.',
  why: 'Without it nothing tells when resin may be sanded, oiled or brought near food in a shop with cold nights, and no rule can hold the waits to it.',
  find(worked) {
    const [first] = layersOfResin(worked);
    if (!first || askedOf(worked, 'cure-clock').length > 0) return [];
    return [
      {
        ...atStep(first),
        message: `“${first.record.title}” lays resin, and nothing asks when it has cured in this shop.`,
        wayOut:
          'Ask cure-clock, with the resin and the temperatures of the shop, and let sanding, oil and hand-over wait for its figures.',
      },
    ];
  },
});
