import type { WorkedMethod } from '../case/types.ts';
import { foodKinds, hardestFood } from './food-words.ts';
import { askedOf, listed, placeOf, wordTold } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** A label that is worked out for easier food than the method says will lie on the piece. */
export const foodNotAsked = rule({
  id: 'food-not-asked',
  level: 'warn',
  title: 'What is asked of food is what the piece is said to be for',
  looksAt:
    'The words of the claim that name moist, fatty or hot food, and the kind of food that the calculations for food contact and for the care card were asked about.',
  why: 'Food that is moist or fatty takes up more of what is in wood, oil and resin than bread does, and the rules ask more for it.',
  find(worked: WorkedMethod) {
    const { food } = worked.record;
    const claimed = food && hardestFood(food.claim);
    if (!claimed) return [];
    return askedOf(worked, 'food-contact', 'care-card').flatMap((calculation): Found[] => {
      const { use, name } = calculation;
      // A care card knows no hot food, and is for dry where nothing is said.
      const needed = use === 'care-card' && claimed.kind === 'hot' ? 'fatty' : claimed.kind;
      const asked = wordTold(calculation, 'food') ?? (use === 'care-card' ? 'dry' : undefined);
      if (asked === undefined || foodKinds.indexOf(asked) >= foodKinds.indexOf(needed)) return [];
      return [
        {
          ...placeOf(calculation, 'with', 'food'),
          message: `The claim names ${listed(claimed.words.map((word) => `“${word}”`))}, and ${name} was asked about ${asked} food.`,
          wayOut: `Ask with food: ${needed}, or claim only ${asked} food.`,
        },
      ];
    });
  },
});
