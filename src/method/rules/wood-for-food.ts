import { foodScope } from '../../model/species/index.ts';
import { woodsOf } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Wood under food that its assessment speaks against, or knows too little of. */
export const woodForFood = rule({
  id: 'wood-for-food',
  level: 'stop',
  title: 'The wood suits the food that is said to lie on it',
  looksAt: 'What the method says of food, and the assessment of every wood that its parameters and calculations name.',
  why: `${foodScope} What is not known of a wood does not speak for it.`,
  citation: { source: 'fda-food-code', locator: '4-101.17 (B)', seen: 'quoted' },
  find(worked) {
    const { food } = worked.record;
    if (!food || (food.touches !== 'wood' && food.touches !== 'wood-and-resin')) return [];
    const woods = woodsOf(worked);
    if (woods.length === 0)
      return [
        {
          path: ['food', 'touches'],
          message: `Food is said to lie on the wood (“${food.claim}”), and nowhere is the wood named.`,
          wayOut: 'Add a parameter of kind wood, or name the species in a calculation.',
        },
      ];
    return woods.flatMap(({ thing: wood, ...place }): Found[] => {
      const { level, summary } = wood.food;
      if (level === 'usual' || level === 'with-care') return [];
      return [
        {
          ...place,
          message: `${wood.name} under food (“${food.claim}”): ${summary.charAt(0).toLowerCase()}${summary.slice(1)}.`,
          wayOut:
            level === 'better-not'
              ? 'Take another wood, or say that no food lies on it (touches: nothing).'
              : 'Take a wood of which enough is known, or find out what is missing before you say so.',
        },
      ];
    });
  },
});
